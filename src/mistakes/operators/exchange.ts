// Two wires exchanged: at one part, or anywhere in one box.
import type { Circuit } from "../../circuit/circuit.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { moveEnds } from "../rewire.ts";
import { endsByEnclosure, placesOf, type WireEnd } from "../wire-ends.ts";

export const exchangedAtPart: Operator = {
	name: "two wires exchanged at a part",
	find: (circuit) => exchanges(circuit, isOneParts),
};

export const exchangedInBox: Operator = {
	name: "two wires exchanged in a box",
	find: (circuit) => exchanges(circuit, (one, other) => !isOneParts(one, other)),
};

function* exchanges(circuit: Circuit, concerns: (one: WireEnd, other: WireEnd) => boolean): Iterable<Mistake> {
	for (const [enclosure, ends] of endsByEnclosure(circuit))
		for (const [index, one] of ends.entries())
			for (const other of ends.slice(index + 1)) {
				if (
					one.point === other.point ||
					one.conductor === other.conductor ||
					isToldOtherwise(one, other) ||
					!concerns(one, other)
				)
					continue;
				yield {
					at: `${one.conductor.name} and ${other.conductor.name} in ${enclosure.name}`,
					wrong: () => exchange(circuit, one, other),
					places: [...placesOf(one), ...placesOf(other)],
				};
			}
}

/** The circuit with two ends on one another's points. */
export function exchange(circuit: Circuit, one: WireEnd, other: WireEnd): Circuit {
	return moveEnds(circuit, [
		{ ...one, to: other.point.index },
		{ ...other, to: one.point.index },
	]);
}

function isOneParts(one: WireEnd, other: WireEnd): boolean {
	return one.point.kind === "terminal" && other.point.kind === "terminal" && one.point.part === other.point.part;
}

/** Two pigtails exchanged in their joints are the same as exchanged on their terminals. */
function isToldOtherwise(one: WireEnd, other: WireEnd): boolean {
	return [one, other].every(({ conductor, point }) => conductor.sort === "pigtail" && point.kind === "splice");
}
