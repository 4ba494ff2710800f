// Two mistakes at once, each of which hides the other from a look or a meter: the list of known traps.

import { bothEnds } from "../../analysis/landings.ts";
import { sortOfRole } from "../../analysis/poles.ts";
import type { Cable, Circuit, Conductor } from "../../circuit/circuit.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { addJumper, moveEnds } from "../rewire.ts";
import { endsOn, placesOfPart, placesOfPoint } from "../wire-ends.ts";
import { dropBond, tellLink } from "./bond.ts";

/** A lamp and a meter at the far end find everything in order; the wires of the cable carry what they must not. */
export const exchangedAtBothEnds: Operator = {
	name: "trap: two cores exchanged at both ends of a cable",
	*find(circuit): Iterable<Mistake> {
		for (const cable of circuit.cables)
			for (const [one, other] of pairsOf(circuit, cable))
				yield {
					at: `${one.name} and ${other.name}`,
					wrong: () =>
						moveEnds(
							circuit,
							bothEnds.flatMap((which) => [
								{ conductor: one, which, to: other.ends[which].point },
								{ conductor: other, which, to: one.ends[which].point },
							]),
						),
					places: [...[cable.tag, one.name, other.name], ...[cable.from.name, cable.to.name]],
				};
	},
};

/** The device is reversed, and what hangs on it is right again. */
export const reversedTwice: Operator = {
	name: "trap: reversed at a box, and again behind it",
	*find(circuit): Iterable<Mistake> {
		for (const before of circuit.cables)
			for (const after of circuit.cables) {
				if (before.to !== after.from || before === after) continue;
				const [one] = pairsOf(circuit, before).filter(isHotAndReturn);
				const [other] = pairsOf(circuit, after).filter(isHotAndReturn);
				if (one === undefined || other === undefined) continue;
				yield {
					at: `${before.tag} and ${after.tag} in ${before.to.name}`,
					wrong: () => moveEnds(circuit, [...swap(one, 1), ...swap(other, 0)]),
					places: [...[before.tag, after.tag, before.to.name], ...[...one, ...other].map(({ name }) => name)],
				};
			}
	},
};

/** Hot to ground reads right and so does a plug-in tester: the ground is fed from the neutral. */
export const groundFromNeutral: Operator = {
	name: "trap: ground left off and taken from the neutral",
	*find(circuit): Iterable<Mistake> {
		for (const part of circuit.parts) {
			const points = part.points.flatMap((index) => circuit.points[index] ?? []);
			const ground = points.find(({ role, kind }) => role === "ground" && kind === "terminal");
			const neutral = points.find(({ role }) => role === "neutral");
			if (ground === undefined || neutral === undefined || !part.face.traits.includes("receptacle")) continue;
			const ends = endsOn(circuit, ground.index);
			if (ends.length === 0) continue;
			yield {
				at: part.name,
				wrong: () =>
					addJumper(
						moveEnds(
							circuit,
							ends.map((end) => ({ ...end, to: undefined })),
						),
						neutral,
						ground,
					),
				places: [...placesOfPart(circuit, part), ...placesOfPoint(ground)],
			};
		}
	},
};

/** Neutral and ground are joined once, as they must be, and in the wrong place. */
export const bondElsewhere: Operator = {
	name: "trap: the bond left out, and one made elsewhere",
	*find(circuit): Iterable<Mistake> {
		const bars = circuit.parts.filter(({ face }) => face.traits.includes("neutral-bar"));
		for (const link of circuit.links) {
			if (link.nature !== "bond") continue;
			for (const bar of bars) {
				const neutral = circuit.points[bar.points.at(-1) ?? -1];
				const ground = circuit.points.find(
					(point) => point.enclosure === bar.enclosure && point.role === "ground" && point.kind !== "splice",
				);
				if (neutral === undefined || ground === undefined || link.part === bar.name) continue;
				yield {
					at: `${tellLink(circuit, link)}; ${neutral.name} to ${ground.name} instead`,
					wrong: () => addJumper(dropBond(circuit, link), neutral, ground),
					places: [...placesOfPoint(neutral), ...placesOfPoint(ground), link.part],
				};
			}
		}
	},
};

type Pair = readonly [Conductor, Conductor];

/** Two cores of a cable that are for different things. */
function pairsOf(circuit: Circuit, { conductors }: Cable): readonly Pair[] {
	const cores = conductors.flatMap((index) => circuit.conductors[index] ?? []);
	return cores.flatMap((one, index) =>
		cores
			.slice(index + 1)
			.filter((other) => other.role !== one.role)
			.map((other) => [one, other] as const),
	);
}

function isHotAndReturn([one, other]: Pair): boolean {
	const sorts = [sortOfRole(one.role), sortOfRole(other.role)];
	return sorts.includes("hot") && sorts.includes("neutral");
}

/** Two cores on one another's points at one of their ends. */
function swap([one, other]: Pair, which: 0 | 1) {
	return [
		{ conductor: one, which, to: other.ends[which].point },
		{ conductor: other, which, to: one.ends[which].point },
	];
}
