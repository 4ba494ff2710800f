// The direct-current side of one mode: its graph, and the potentials that its sources put on it.
import type { Circuit, Mode, Source } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { findChoices } from "./choices.ts";
import { type Demand, traceDirectDemand } from "./demand.ts";
import { type Feeder, traceFeeders } from "./feeders.ts";
import { buildNetwork, type Edge, liveSources, type Network } from "./network.ts";
import { type OwnFuses, traceOwnFuses } from "./own-fuses.ts";
import { traceDirectExposure } from "./parallel-fuses.ts";
import { notABond, type PoleMap, tracePoles } from "./poles.ts";
import { PotentialSets } from "./potentials.ts";
import type { Exposure } from "./protection.ts";

/** What is known of the direct current of a mode. */
export interface DirectState {
	readonly network: Network;
	/** Which poles reach which points. */
	readonly poles: PoleMap;
	/** Volts between points, with every contact closed that can be. */
	readonly potentials: PotentialSets;
	/** What protective devices let through to each point. */
	readonly exposure: ReadonlyMap<number, Exposure>;
	/** The pole and the last protective device of every point that a positive reaches. */
	readonly feeders: ReadonlyMap<number, Feeder>;
	/** The fuses that stand at batteries. */
	readonly ownFuses: OwnFuses;
	/** What each protective device has to carry. */
	readonly demand: ReadonlyMap<string, Demand>;
	/** Sources whose posts are joined already, by wires or by others, with the volts that are there without them. */
	readonly contradicted: readonly { readonly source: Source; readonly volts: number }[];
}

/** Whether anything of a circuit meets a terminal for direct current: most plans have none, and pay nothing for it. */
export function hasDirectCurrent({ sources, points, conductors }: Circuit): boolean {
	const isDirect = (point: number | undefined): boolean => {
		const found = point === undefined ? undefined : points[point];
		return found !== undefined && systemOfRole(found.role) === "dc";
	};
	return (
		sources.some(({ system }) => system === "dc") ||
		conductors.some(({ ends: [one, other] }) => isDirect(one.point) || isDirect(other.point))
	);
}

/** The direct-current side of a mode. */
export function traceDirect(circuit: Circuit, mode: Mode): DirectState {
	const network = buildNetwork(circuit, mode, "dc");
	const potentials = new PotentialSets(circuit.points.length);
	const choices = findChoices(network, notABond);
	const throws: Edge[] = [];
	for (const edges of network.edges)
		for (const edge of edges)
			if (edge.by.kind === "link" && choices.has(edge.by.link.index)) throws.push(edge);
			else potentials.join(edge.from, edge.to, 0);
	const contradicted = liveSources(network).flatMap((source) => {
		const [plus] = source.hot;
		if (plus === undefined || source.neutral === undefined) return [];
		const volts = potentials.between(plus, source.neutral);
		potentials.join(plus, source.neutral, source.volts);
		return volts === undefined || isAlike(volts, source.volts) ? [] : [{ source, volts }];
	});
	// Two throws are never on together: they join nothing that sources hold apart, and bring what is behind them its volts.
	for (const { from, to } of throws) potentials.join(from, to, 0);
	const poles = tracePoles(network);
	let exposure: ReadonlyMap<number, Exposure> | undefined;
	let feeders: ReadonlyMap<number, Feeder> | undefined;
	let ownFuses: OwnFuses | undefined;
	let demand: ReadonlyMap<string, Demand> | undefined;
	const state: DirectState = {
		network,
		poles,
		potentials,
		get exposure() {
			exposure ??= traceDirectExposure(network);
			return exposure;
		},
		get feeders() {
			feeders ??= traceFeeders(network, poles);
			return feeders;
		},
		get ownFuses() {
			ownFuses ??= traceOwnFuses(network);
			return ownFuses;
		},
		get demand() {
			demand ??= traceDirectDemand(state);
			return demand;
		},
		contradicted,
	};
	return state;
}

/** What of a mode the direct-current side hangs on: modes in which this is the same share one side. */
export function directKey({ sources, links, points }: Circuit, mode: Mode): string {
	const live = sources.filter(({ system, name }) => system === "dc" && mode.live.includes(name));
	const closed = links.filter(
		({ modes, between: [one] }) =>
			modes?.has(mode.name) === true && systemOfRole(points[one]?.role ?? "ground") !== "ac",
	);
	return JSON.stringify([live.map(({ name }) => name), closed.map(({ index }) => index)]);
}

/** Whether two figures are one nominal voltage: 12.8 V lithium, 13.8 V alternator and 12 V are (common practice). */
export function isAlike(one: number, other: number): boolean {
	return Math.abs(one - other) <= sameNominal * Math.max(Math.abs(one), Math.abs(other));
}

const sameNominal = 0.25;
