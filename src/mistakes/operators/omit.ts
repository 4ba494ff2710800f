// Something left out: a conductor, or the ground of a device.
import { bothEnds } from "../../analysis/landings.ts";
import { certain } from "../../base/certain.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { moveEnds, removeConductors } from "../rewire.ts";
import { endsOn, isBar, placesOfPoint } from "../wire-ends.ts";

export const omitted: Operator = {
	name: "a conductor left out",
	*find(circuit): Iterable<Mistake> {
		for (const conductor of circuit.conductors) {
			const on = bothEnds.flatMap((which) => {
				const { point } = conductor.ends[which];
				return point === undefined ? [] : [certain(circuit.points[point], "a point")];
			});
			// A lead that comes with a device cannot be left out; a core that is on nothing is not missed.
			if (on.length === 0 || on.some((point) => point.kind === "terminal" && point.clamp === "lead")) continue;
			yield {
				at: `${conductor.name}, from ${on.map(({ name }) => name).join(" to ")}`,
				wrong: () => removeConductors(circuit, new Set([conductor.index])),
				places: [
					...[conductor.name, ...(conductor.cable === undefined ? [] : [conductor.cable])],
					...on.flatMap(placesOfPoint),
				],
			};
		}
	},
};

export const groundLeftOff: Operator = {
	name: "the ground of a device left off",
	*find(circuit): Iterable<Mistake> {
		for (const point of circuit.points) {
			if (point.role !== "ground" || point.kind === "splice") continue;
			if (point.kind === "terminal" && isBar(circuit, point.part)) continue;
			const ends = endsOn(circuit, point.index);
			if (ends.length === 0) continue;
			yield {
				at: point.name,
				wrong: () =>
					moveEnds(
						circuit,
						ends.map((end) => ({ ...end, to: undefined })),
					),
				places: [...placesOfPoint(point), ...ends.map(({ conductor }) => conductor.name)],
			};
		}
	},
};
