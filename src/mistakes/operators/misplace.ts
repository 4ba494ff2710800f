// A wire's end in the wrong place of its box, or on nothing.
import type { Circuit, Point } from "../../circuit/circuit.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { moveEnds } from "../rewire.ts";
import { endsByEnclosure, isBar, placesOf, placesOfPoint, spotsByEnclosure, type WireEnd } from "../wire-ends.ts";

export const misplaced: Operator = {
	name: "an end in the wrong place",
	*find(circuit): Iterable<Mistake> {
		const spots = spotsByEnclosure(circuit);
		for (const [enclosure, ends] of endsByEnclosure(circuit))
			for (const end of ends)
				for (const spot of spots.get(enclosure) ?? []) {
					// A pigtail with both ends on one point is a mistake that nobody makes.
					if (end.conductor.ends.some(({ point }) => point === spot.index) || isOtherBar(circuit, end, spot)) continue;
					yield {
						at: `${end.conductor.name} on ${spot.name} instead of ${end.point.name}`,
						wrong: () => moveEnds(circuit, [{ ...end, to: spot.index }]),
						places: [...placesOf(end), ...placesOfPoint(spot)],
					};
				}
	},
};

/** A wire on the wrong bar is a slip of its own. */
function isOtherBar(circuit: Circuit, { point }: WireEnd, spot: Point): boolean {
	if (point.kind !== "terminal" || spot.kind !== "terminal" || point.part === spot.part) return false;
	return isBar(circuit, point.part) && isBar(circuit, spot.part);
}

export const loosened: Operator = {
	name: "an end left loose",
	*find(circuit): Iterable<Mistake> {
		for (const [enclosure, ends] of endsByEnclosure(circuit))
			for (const end of ends)
				yield {
					at: `${end.conductor.name} off ${end.point.name} in ${enclosure.name}`,
					wrong: () => moveEnds(circuit, [{ ...end, to: undefined }]),
					places: placesOf(end),
				};
	},
};
