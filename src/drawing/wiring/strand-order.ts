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
	const waiting: { node: FeedNode; from: readonly Cable[] }[] = roots.flatMap((root) =>
		root.right.map((node) => ({ node, from: root.links })),
	);
	for (const { node, from } of waiting) {
		const fed = from.some((cable) => hasSecondHot(circuit, cable));
		for (const cable of node.links) {
			if (!hasSecondHot(circuit, cable)) continue;
			const firstThere = fed ? from.some((before) => secondFirst.has(before)) : from.length > 0;
			if (firstThere) secondFirst.add(cable);
		}
		for (const next of node.right) waiting.push({ node: next, from: node.links });
	}
	const known = new Map<Cable, readonly Conductor[]>();
	return (cable) => {
		const before = known.get(cable);
		if (before !== undefined) return before;
		const rank = (conductor: Conductor): number =>
			conductor.role === "hot2" && secondFirst.has(cable) ? -1 : ranks[conductor.role];
		const strands = cable.conductors
			.flatMap((index) => circuit.conductors[index] ?? [])
			.sort((one, other) => rank(one) - rank(other));
		known.set(cable, strands);
		return strands;
	};
}

function hasSecondHot(circuit: Circuit, cable: Cable): boolean {
	return cable.conductors.some((index) => circuit.conductors[index]?.role === "hot2");
}

const ranks: Record<Role, number> = { hot: 0, positive: 0, hot2: 1, hot3: 1, neutral: 2, negative: 2, ground: 3 };
