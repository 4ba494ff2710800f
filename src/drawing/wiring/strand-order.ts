// The order of each cable's conductors from top to bottom, the same at both its ends.
import type { Cable, Circuit, Conductor } from "../../circuit/circuit.ts";
import type { Role } from "../../kinds/kind.ts";
import type { FeedNode } from "./feed-graph.ts";

/** The conductors of a cable in strand order. */
export type Strands = (cable: Cable) => readonly Conductor[];

/**
 * Hot, second hot, neutral, ground. Behind a device that makes the second hot of a two-wire feed (a switched red), that one
 * comes first, for it leaves the device above what passes by.
 */
export function orderStrands(circuit: Circuit, roots: readonly FeedNode[]): Strands {
	const secondFirst = new Set<Cable>();
	/** Cables of switch loops behind a pair of travellers: these go on first, and what comes back to the light below them. */
	const bringsBack = new Set<Cable>();
	const waiting: { node: FeedNode; from: readonly Cable[] }[] = roots.flatMap((root) =>
		root.right.map((node) => ({ node, from: root.links })),
	);
	for (const { node, from } of waiting) {
		const fed = from.some((cable) => hasSecondHot(circuit, cable));
		for (const cable of node.links) {
			if (!hasSecondHot(circuit, cable)) continue;
			if (from.some((before) => bringsBack.has(before) || isPairWithNeutral(circuit, before))) bringsBack.add(cable);
			const firstThere = fed ? from.some((before) => secondFirst.has(before)) : from.length > 0;
			const goesOnAsThree =
				!isPairWithNeutral(circuit, cable) &&
				node.right.some(({ links }) => links.some((next) => countSecondHots(circuit, next) > 1));
			if (firstThere && !takesBack(circuit, cable) && !goesOnAsThree) secondFirst.add(cable);
		}
		for (const next of node.right) waiting.push({ node: next, from: node.links });
	}
	const known = new Map<Cable, readonly Conductor[]>();
	return (cable) => {
		const before = known.get(cable);
		if (before !== undefined) return before;
		const own = cable.conductors.flatMap((index) => circuit.conductors[index] ?? []);
		// Of two second hots the re-marked one passes by, and the other is a traveller of the first hot.
		const pairs = own.filter(({ role }) => role === "hot2");
		const rank = (conductor: Conductor): number => {
			if (!secondFirst.has(cable) || conductor.role !== "hot2") return ranks[conductor.role];
			if (pairs.length === 1) return -2;
			if (isMarked(conductor)) return bringsBack.has(cable) ? -2 : ranks.neutral;
			return bringsBack.has(cable) ? -1 : ranks.hot2;
		};
		const strands = own.toSorted((one, other) => rank(one) - rank(other));
		known.set(cable, strands);
		return strands;
	};
}

function isMarked({ ends }: Conductor): boolean {
	return ends.some(({ marked }) => marked !== undefined);
}

/** Whether a cable's red brings back what a switch at its far end switches: it then goes to the device below. */
function takesBack(circuit: Circuit, cable: Cable): boolean {
	return cable.conductors.some((index) => {
		const conductor = circuit.conductors[index];
		const point = circuit.points[conductor?.ends[1].point ?? -1];
		return conductor?.role === "hot2" && !isMarked(conductor) && point?.kind === "terminal" && point.side === "load";
	});
}

function isPairWithNeutral(circuit: Circuit, cable: Cable): boolean {
	const roles = cable.conductors.map((index) => circuit.conductors[index]?.role);
	return roles.includes("hot2") && roles.includes("neutral");
}

function hasSecondHot(circuit: Circuit, cable: Cable): boolean {
	return countSecondHots(circuit, cable) > 0;
}

function countSecondHots(circuit: Circuit, cable: Cable): number {
	return cable.conductors.filter((index) => circuit.conductors[index]?.role === "hot2").length;
}

const ranks: Record<Role, number> = { hot: 0, positive: 0, hot2: 1, hot3: 1, neutral: 2, negative: 2, ground: 3 };
