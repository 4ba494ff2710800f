// A conductor of a colour that says something else than it is for, or one whose re-marking was forgotten.
import type { Circuit, Conductor } from "../../circuit/circuit.ts";
import { systemOfRole } from "../../circuit/systems.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { changeConductors } from "../rewire.ts";

export const wrongColour: Operator = {
	name: "the wrong colour",
	*find(circuit): Iterable<Mistake> {
		for (const conductor of circuit.conductors) {
			if (isInSheath(circuit, conductor)) continue;
			for (const colour of coloursFor(circuit, conductor))
				if (colour !== conductor.colour)
					yield {
						at: `${conductor.name}, ${colour}`,
						wrong: () => changeConductors(circuit, new Set([conductor.index]), (wire) => ({ ...wire, colour })),
						places: placesOf(conductor),
					};
		}
	},
};

export const unmarked: Operator = {
	name: "a re-marking forgotten",
	*find(circuit): Iterable<Mistake> {
		for (const conductor of circuit.conductors) {
			if (conductor.ends.every(({ marked }) => marked === undefined)) continue;
			yield {
				at: conductor.name,
				wrong: () =>
					changeConductors(circuit, new Set([conductor.index]), (wire) => ({
						...wire,
						ends: [
							{ ...wire.ends[0], marked: undefined },
							{ ...wire.ends[1], marked: undefined },
						],
					})),
				places: placesOf(conductor),
			};
		}
	},
};

/** Whether its colour is its cable's, and a hand has no choice. */
function isInSheath(circuit: Circuit, { cable, ends }: Conductor): boolean {
	if (cable !== undefined) return (circuit.cableByTag.get(cable)?.conductors.length ?? 1) > 1;
	return ends.some(({ point }) => {
		const on = point === undefined ? undefined : circuit.points[point];
		return on?.kind === "terminal" && on.clamp === "lead";
	});
}

/** The colours of the reels at hand, one for each use (IEC 60446 and NFPA 70 200.6, 250.119, 210.5, recalled). */
function coloursFor(circuit: Circuit, { role }: Conductor): readonly string[] {
	if (systemOfRole(role) === "dc") return ["red", "black", "green"];
	return circuit.plan.settings.region === "iec" ? ["brown", "blue", "green-yellow"] : ["black", "white", "green"];
}

function placesOf({ name, cable, ends }: Conductor): readonly string[] {
	return [name, ...(cable === undefined ? [] : [cable]), ...ends.map(({ enclosure }) => enclosure.name)];
}
