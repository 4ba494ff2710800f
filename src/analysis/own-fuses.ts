// Whose fuse a device is: the battery at whose post it stands. Devices of batteries in parallel share what is behind them.
import { groupBy } from "../base/group.ts";
import type { Protection, Source } from "../circuit/circuit.ts";
import { type JoinedSets, joinWhere } from "./joined-sets.ts";
import type { Edge, Network } from "./network.ts";

/** The battery whose plus is within so many metres of a point, with no device between; undefined where none is. */
export function batteryWithin({ circuit, edges }: Network, start: number, most: number): Source | undefined {
	const batteries = circuit.sources.filter(({ sort }) => sort === "battery");
	const metresTo = new Map([[start, 0]]);
	for (const [point, metres] of metresTo) {
		const battery = batteries.find(({ hot }) => hot.includes(point));
		if (battery !== undefined) return battery;
		for (const { by, to } of edges[point] ?? []) {
			if (metresTo.has(to) || (by.kind === "link" && by.link.protection !== undefined)) continue;
			const conductor = by.kind === "conductor" ? circuit.conductors[by.index] : undefined;
			const more = conductor === undefined || conductor.sort !== "core" ? 0 : conductor.length;
			if (more !== undefined && metres + more <= most) metresTo.set(to, metres + more);
		}
	}
	return undefined;
}

/** What stands between batteries and what they feed, with every switch closed. */
export interface OwnFuses {
	/** Points with no device between them. */
	readonly sets: JoinedSets;
	/** The sets in which a battery has its plus, with the batteries. */
	readonly batteriesIn: ReadonlyMap<number, readonly Source[]>;
	/** The devices that part a set from a battery's, by that set. */
	readonly devicesAt: ReadonlyMap<number, readonly Protection[]>;
	/** The same devices by the set of the battery. */
	readonly devicesOf: ReadonlyMap<number, readonly Protection[]>;
}

/** The batteries' own fuses of a network. */
export function traceOwnFuses(network: Network): OwnFuses {
	const { circuit } = network;
	const sets = joinWhere(network, isUnprotected);
	const batteriesIn = groupBy(
		circuit.sources.filter(({ sort, hot }) => sort === "battery" && hot.length > 0),
		({ hot }) => sets.find(hot[0] ?? 0),
	);
	const pairs = circuit.protections.flatMap((device) =>
		device.links.flatMap((index) => {
			const [one, other] = circuit.links[index]?.between.map((point) => sets.find(point)) ?? [];
			if (one === undefined || other === undefined || one === other) return [];
			return [
				...(batteriesIn.has(one) ? [{ device, from: one, to: other }] : []),
				...(batteriesIn.has(other) ? [{ device, from: other, to: one }] : []),
			];
		}),
	);
	const by = (setOf: (pair: (typeof pairs)[number]) => number): ReadonlyMap<number, readonly Protection[]> =>
		new Map([...groupBy(pairs, setOf)].map(([set, group]) => [set, group.map(({ device }) => device)] as const));
	return { sets, batteriesIn, devicesAt: by(({ to }) => to), devicesOf: by(({ from }) => from) };
}

/** Lets pass all but what protective devices open. */
export function isUnprotected({ by }: Edge): boolean {
	return by.kind === "conductor" || by.link.protection === undefined;
}
