// A conductor of a colour that says something else than it is for, or one whose re-marking was forgotten.
import type { Circuit, Conductor } from "../../circuit/circuit.ts";
import { systemOfRole } from "../../circuit/systems.ts";
import { colourSuits, coloursOf } from "../../handbook/colour-roles.ts";
import type { Colour } from "../../handbook/colours.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { changeConductors } from "../rewire.ts";

export const wrongColour: Operator = {
	name: "the wrong colour",
	*find(circuit): Iterable<Mistake> {
		for (const conductor of circuit.conductors) {
			if (isGiven(circuit, conductor)) continue;
			for (const colour of misleadingFor(circuit, conductor))
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

/** Whether a hand has no choice: its colour is its cable's, or that of the wire a pigtail was cut from, of which a plan says nothing. */
function isGiven(circuit: Circuit, { cable, sort }: Conductor): boolean {
	return cable === undefined ? sort === "pigtail" : (circuit.cableByTag.get(cable)?.conductors.length ?? 1) > 1;
}

/** The colours of the reels at hand, one for each use, that say something else than the conductor is for. */
function misleadingFor(circuit: Circuit, { role }: Conductor): readonly string[] {
	const { region, rules } = circuit.plan.settings;
	const right = coloursOf(region, role === "hot3" ? "hot2" : role, rules);
	const others = systemOfRole(role) === "dc" ? directReels : region === "iec" ? iecReels : americanReels;
	return others.filter((colour) => !colourSuits(right, colour));
}

/** Common practice. */
const directReels: readonly Colour[] = ["red", "black", "green"];
const iecReels: readonly Colour[] = ["brown", "blue", "green-yellow"];
const americanReels: readonly Colour[] = ["black", "white", "green"];

function placesOf({ name, cable, ends }: Conductor): readonly string[] {
	return [name, ...(cable === undefined ? [] : [cable]), ...ends.map(({ enclosure }) => enclosure.name)];
}
