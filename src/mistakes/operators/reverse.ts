// A device connected the wrong way round: what belongs on its line side on its load side.
import type { Circuit, Part, Terminal } from "../../circuit/circuit.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { moveEnds } from "../rewire.ts";
import { endsOn, placesOfPart } from "../wire-ends.ts";

export const reversed: Operator = {
	name: "line and load reversed",
	*find(circuit): Iterable<Mistake> {
		for (const part of circuit.parts) {
			const pairs = pairsOf(circuit, part);
			const moves = pairs.flatMap(([line, load]) => [
				...endsOn(circuit, line.index).map((end) => ({ ...end, to: load.index })),
				...endsOn(circuit, load.index).map((end) => ({ ...end, to: line.index })),
			]);
			// What plugs on to a bus has no wires on its line side to exchange.
			const isWired = pairs.some((pair) => pair.every(({ index }) => endsOn(circuit, index).length > 0));
			if (!isWired) continue;
			yield { at: part.name, wrong: () => moveEnds(circuit, moves), places: placesOfPart(circuit, part) };
		}
	},
};

/** Terminals of the line side, each with the one of the load side for the same. */
function pairsOf(circuit: Circuit, part: Part): readonly (readonly [Terminal, Terminal])[] {
	const terminals = part.points.flatMap((index) => {
		const point = circuit.points[index];
		return point?.kind === "terminal" ? [point] : [];
	});
	return terminals
		.filter(({ side }) => side === "line")
		.flatMap((line) => {
			const load = terminals.find(({ side, role }) => side === "load" && role === line.role);
			return load === undefined ? [] : [[line, load] as const];
		});
}
