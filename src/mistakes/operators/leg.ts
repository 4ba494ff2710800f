// A breaker on another leg of its panel than was planned.
import type { Mistake, Operator } from "../mistake.ts";
import { changeLinks } from "../rewire.ts";
import { placesOfPart } from "../wire-ends.ts";

export const wrongLeg: Operator = {
	name: "a breaker on the wrong leg",
	*find(circuit): Iterable<Mistake> {
		for (const link of circuit.links) {
			const part = circuit.partByName.get(link.part);
			const [bus, line] = link.between.map((index) => circuit.points[index]);
			if (part === undefined || link.nature !== "solid" || link.modes !== undefined) continue;
			// A stab on the bus of its panel, where that has two.
			if (bus?.kind !== "terminal" || line?.kind !== "terminal" || line.part !== part.name || bus.part === part.name)
				continue;
			const legs = (circuit.partByName.get(bus.part)?.points ?? []).filter(
				(index) => index !== bus.index && ["hot", "hot2"].includes(circuit.points[index]?.role ?? ""),
			);
			if (!["hot", "hot2"].includes(bus.role)) continue;
			for (const leg of legs) {
				if (circuit.points[leg]?.role === bus.role) continue;
				yield {
					at: `${line.name} on ${circuit.points[leg]?.name ?? ""} instead of ${bus.name}`,
					wrong: () => changeLinks(circuit, new Set([link.index]), (stab) => ({ ...stab, between: [leg, line.index] })),
					places: [...placesOfPart(circuit, part), bus.name],
				};
			}
		}
	},
};
