// A jumper too many: two points of a box that belong apart, joined.
import type { Mistake, Operator } from "../mistake.ts";
import { addJumper } from "../rewire.ts";
import { placesOfPoint, spotsByEnclosure } from "../wire-ends.ts";

export const bridged: Operator = {
	name: "two points bridged",
	*find(circuit): Iterable<Mistake> {
		for (const spots of spotsByEnclosure(circuit).values())
			for (const [index, one] of spots.entries())
				for (const other of spots.slice(index + 1))
					yield {
						at: `${one.name} and ${other.name}`,
						wrong: () => addJumper(circuit, one, other),
						places: [...placesOfPoint(one), ...placesOfPoint(other)],
					};
	},
};
