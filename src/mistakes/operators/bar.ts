// A wire on the wrong bar of its panel: a neutral with the grounds, or a ground with the neutrals.
import type { Mistake, Operator } from "../mistake.ts";
import { moveEnds } from "../rewire.ts";
import { endsByEnclosure, isBar, placesOf, placesOfPoint, spotsByEnclosure } from "../wire-ends.ts";

export const wrongBar: Operator = {
	name: "a wire on the wrong bar",
	*find(circuit): Iterable<Mistake> {
		const spots = spotsByEnclosure(circuit);
		for (const [enclosure, ends] of endsByEnclosure(circuit))
			for (const end of ends) {
				if (end.point.kind !== "terminal" || !isBar(circuit, end.point.part)) continue;
				for (const spot of spots.get(enclosure) ?? [])
					if (spot.kind === "terminal" && spot.part !== end.point.part && isBar(circuit, spot.part))
						yield {
							at: `${end.conductor.name} on ${spot.name} instead of ${end.point.name}`,
							wrong: () => moveEnds(circuit, [{ ...end, to: spot.index }]),
							places: [...placesOf(end), ...placesOfPoint(spot)],
						};
			}
	},
};
