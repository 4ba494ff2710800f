// Sources turned round, and leads that went to another of several alike.
import type { Circuit, Source } from "../../circuit/circuit.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { moveEnds } from "../rewire.ts";
import { endsOn, placesOf, placesOfPart } from "../wire-ends.ts";
import { exchange } from "./exchange.ts";

export const turnedRound: Operator = {
	name: "a battery or module turned round",
	*find(circuit): Iterable<Mistake> {
		for (const source of directSources(circuit)) {
			const part = circuit.partByName.get(source.part);
			const [plus] = source.hot;
			const minus = source.neutral;
			if (part === undefined || plus === undefined || minus === undefined) continue;
			yield {
				at: part.name,
				wrong: () => turn(circuit, plus, minus),
				places: placesOfPart(circuit, part),
			};
		}
	},
};

export const swappedBetweenStrings: Operator = {
	name: "leads exchanged between two batteries or modules",
	*find(circuit): Iterable<Mistake> {
		const sources = directSources(circuit);
		for (const [index, one] of sources.entries())
			for (const other of sources.slice(index + 1)) {
				if (!isWithinReach(circuit, one, other)) continue;
				for (const first of postsOf(one).flatMap((post) => endsOn(circuit, post)))
					for (const second of postsOf(other).flatMap((post) => endsOn(circuit, post)))
						if (first.conductor !== second.conductor)
							yield {
								at: `${first.conductor.name} at ${one.part} and ${second.conductor.name} at ${other.part}`,
								wrong: () => exchange(circuit, first, second),
								places: [...placesOf(first), ...placesOf(second)],
							};
			}
	},
};

/** The circuit with everything on one post, wires and what is bolted to it, on the other. */
export function turn(circuit: Circuit, plus: number, minus: number): Circuit {
	const moved = moveEnds(circuit, [
		...endsOn(circuit, plus).map((end) => ({ ...end, to: minus })),
		...endsOn(circuit, minus).map((end) => ({ ...end, to: plus })),
	]);
	const part = circuit.points[plus];
	const other = (point: number): number => (point === plus ? minus : point === minus ? plus : point);
	return {
		...moved,
		links: moved.links.map((link) =>
			part?.kind === "terminal" && link.part !== part.part && link.between.some((point) => other(point) !== point)
				? { ...link, between: [other(link.between[0]), other(link.between[1])] }
				: link,
		),
	};
}

/** Whether two are of one bank or string: alike, and in one place. */
function isWithinReach({ partByName }: Circuit, one: Source, other: Source): boolean {
	const places = [one, other].map(({ part }) => partByName.get(part)?.enclosure.place);
	return one.sort === other.sort && (one.sort === "battery" || one.sort === "solar") && places[0] === places[1];
}

function directSources(circuit: Circuit): readonly Source[] {
	return circuit.sources.filter(({ system }) => system === "dc");
}

function postsOf({ hot, neutral }: Source): readonly number[] {
	return [...hot, ...(neutral === undefined ? [] : [neutral])];
}
