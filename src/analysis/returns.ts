// The ways back: which loads share a neutral once the bars of the panels are taken away, and which devices feed these loads.

import { groupBy } from "../base/group.ts";
import type { Load } from "../circuit/circuit.ts";
import { type Feeder, feederOfCircuit } from "./feeders.ts";
import { JoinedSets } from "./joined-sets.ts";
import type { Landings } from "./landings.ts";
import type { Network } from "./network.ts";
import { notABond, type PoleMap } from "./poles.ts";

/** A load or outlet on a neutral. */
export interface ReturningLoad {
	readonly load: Load;
	readonly hot: number;
	readonly neutral: number;
	/** The feeder of its circuit; undefined where no hot reaches it. */
	readonly feeder: Feeder | undefined;
}
/** Neutral conductors that are joined with one another without a bar between. */
export interface Return {
	/** Those that lead through it, in the order of the circuit. */
	readonly conductors: readonly number[];
	/** Those of them that end on a bar or a source. */
	readonly home: readonly number[];
	readonly loads: readonly ReturningLoad[];
}

/** Every shared way back of a mode that has a load on it. */
export function traceReturns(
	network: Network,
	landings: Landings,
	poles: PoleMap,
	feeders: ReadonlyMap<number, Feeder>,
): readonly Return[] {
	const { circuit } = network;
	const ends = barsAndSources(network);
	const leading = Uint8Array.from(network.edges, (_, point) =>
		poles.sortsAt(point).has("neutral") && !ends.has(point) ? 1 : 0,
	);
	const leads = (point: number): boolean => leading[point] === 1;
	const sets = new JoinedSets(circuit.points.length);
	for (const edges of network.edges)
		for (const edge of edges) if (leads(edge.from) && leads(edge.to) && notABond(edge)) sets.join(edge.from, edge.to);
	const loads = circuit.loads.flatMap((load): ReturningLoad[] => {
		const [one, other] = load.between;
		const [hot, neutral] = landings.sortAt(one) === "neutral" ? [other, one] : [one, other];
		const feeder = feeders.get(hot);
		return landings.sortAt(neutral) === "neutral" && leads(neutral)
			? [{ load, hot, neutral, feeder: feeder === undefined ? undefined : feederOfCircuit(feeder) }]
			: [];
	});
	const ways: { readonly index: number; readonly set: number; readonly isHome: boolean }[] = [];
	for (const { index, ends: both } of circuit.conductors) {
		const [from, to] = [both[0].point ?? -1, both[1].point ?? -1];
		if (!leads(from) && !leads(to)) continue;
		ways.push({ index, set: sets.find(leads(from) ? from : to), isHome: !leads(from) || !leads(to) });
	}
	const waysBySet = groupBy(ways, ({ set }) => set);
	return [...groupBy(loads, ({ neutral }) => sets.find(neutral))].map(([set, sharing]) => ({
		conductors: (waysBySet.get(set) ?? []).map(({ index }) => index),
		home: (waysBySet.get(set) ?? []).filter(({ isHome }) => isHome).map(({ index }) => index),
		loads: sharing,
	}));
}

/** The ports of neutral bars and the terminals of sources: where ways back rightly come together. */
function barsAndSources({ circuit }: Network): ReadonlySet<number> {
	return new Set(
		circuit.parts
			.filter(({ face }) => face.traits.includes("neutral-bar") || face.traits.includes("source"))
			.flatMap((part) => part.points),
	);
}
