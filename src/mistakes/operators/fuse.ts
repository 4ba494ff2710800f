// A fuse or breaker that is not there, or stands at the wrong end of its wire.
import type { Circuit, Conductor, Protection } from "../../circuit/circuit.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { boltOver, changeConductors } from "../rewire.ts";
import { placesOfPart } from "../wire-ends.ts";

export const fuseLeftOut: Operator = {
	name: "a protective device left out",
	*find(circuit): Iterable<Mistake> {
		for (const device of circuit.protections) {
			const part = circuit.partByName.get(device.part);
			if (part === undefined || device.links.length === 0) continue;
			yield { at: part.name, wrong: () => boltOver(circuit, device), places: placesOfPart(circuit, part) };
		}
	},
};

export const fuseMoved: Operator = {
	name: "a fuse at the wrong end of its wire",
	*find(circuit): Iterable<Mistake> {
		for (const device of circuit.protections) {
			const part = circuit.partByName.get(device.part);
			const pair = part === undefined ? undefined : wiresOf(circuit, device);
			if (part === undefined || pair === undefined) continue;
			const [before, after] = pair;
			yield {
				at: `${part.name}, ${after.length} m from the source instead of ${before.length} m`,
				wrong: () =>
					changeConductors(circuit, new Set([before.index, after.index]), (wire) => {
						const { length, gauge } = wire.index === before.index ? after : before;
						return { ...wire, length, gauge };
					}),
				places: placesOfPart(circuit, part),
			};
		}
	},
};

/** The short wire from the source and the longer one that it protects, of a fuse that stands in line by itself. */
function wiresOf(circuit: Circuit, { links }: Protection): readonly [Conductor, Conductor] | undefined {
	const [only, ...others] = links;
	const between = only === undefined ? undefined : circuit.links[only]?.between;
	if (between === undefined || others.length > 0) return undefined;
	const [before, after] = between.map((point) =>
		circuit.conductors.find(({ ends, sort }) => sort === "core" && ends.some((end) => end.point === point)),
	);
	if (before?.length === undefined || after?.length === undefined || after.length <= before.length) return undefined;
	return [before, after];
}
