// Neutral and ground joined where they must not be, or apart where they must be joined.
import { groupBy } from "../../base/group.ts";
import type { Circuit, Link, Point } from "../../circuit/circuit.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { netsOf } from "../nets.ts";
import { addJumper, changeLinks } from "../rewire.ts";
import { placesOfPart, placesOfPoint, spotsByEnclosure } from "../wire-ends.ts";

export const bondAdded: Operator = {
	name: "a bond added",
	*find(circuit): Iterable<Mistake> {
		const nets = netsOf(circuit);
		for (const spots of spotsByEnclosure(circuit).values()) {
			const returns = firstOfEachNet(
				nets,
				spots.filter(({ role }) => role === "neutral"),
			);
			const grounds = firstOfEachNet(
				nets,
				spots.filter(({ role }) => role === "ground"),
			);
			for (const one of returns)
				for (const other of grounds)
					yield {
						at: `${one.name} to ${other.name}`,
						wrong: () => addJumper(circuit, one, other),
						places: [...placesOfPoint(one), ...placesOfPoint(other)],
					};
		}
	},
};

export const bondLeftOut: Operator = {
	name: "a bond left out",
	*find(circuit): Iterable<Mistake> {
		for (const link of circuit.links) {
			if (link.nature !== "bond") continue;
			const part = circuit.partByName.get(link.part);
			yield {
				at: tellLink(circuit, link),
				wrong: () => dropBond(circuit, link),
				places: part === undefined ? [] : [...placesOfPart(circuit, part), part.owner ?? part.name],
			};
		}
	},
};

/** The circuit with a bond that never closes. */
export function dropBond(circuit: Circuit, link: Link): Circuit {
	const contact = { group: `${link.part}:bond left out`, positions: 1, closed: [] };
	return changeLinks(circuit, new Set([link.index]), (bond) => ({ ...bond, nature: "contact", contact }));
}

export function tellLink(circuit: Circuit, { part, between }: Link): string {
	return `${part}: ${between.map((point) => circuit.points[point]?.name ?? "").join(" to ")}`;
}

function firstOfEachNet(nets: Int32Array, points: readonly Point[]): readonly Point[] {
	return [...groupBy(points, ({ index }) => nets[index]).values()].flatMap(([first]) => first ?? []);
}
