// What each protective device has to carry when every fixed load behind it runs, pole by pole.
import type { Load, Protection } from "../circuit/circuit.ts";
import type { DirectState } from "./direct.ts";
import type { Network } from "./network.ts";
import type { PoleMap } from "./poles.ts";
import type { Exposure, Passage } from "./protection.ts";

/** The fixed loads behind one pole of a protective device. */
export interface Demand {
	readonly device: Protection;
	/** Amperes of loads that run for three hours or more, and of the others. */
	readonly continuous: number;
	readonly other: number;
	/** Loads with a known power, in the order of the plan. */
	readonly loads: readonly Load[];
	/** Loads whose power is not known; outlets are not among them. */
	readonly unknown: readonly Load[];
	/** Whether other protective devices stand behind it. */
	readonly feedsDevices: boolean;
	/** What hangs on it without another device between: loads and outlets. */
	readonly own: readonly Load[];
}

/** A demand while it is added up. */
interface Growing extends Demand {
	continuous: number;
	other: number;
	readonly loads: Load[];
	readonly unknown: Load[];
	feedsDevices: boolean;
	readonly own: Load[];
}

/** The demand on every pole of a protective device that a hot reaches, by device and pole. */
export function traceDemand(
	network: Network,
	poles: PoleMap,
	exposure: ReadonlyMap<number, Exposure>,
): ReadonlyMap<string, Demand> {
	return addUp(network, exposure, (load, hots) => voltsAcross(network, poles, load, hots));
}

/** The same for direct current, at the volts that lie across each load; the nominal 12 V where none do. */
export function traceDirectDemand({ network, exposure, potentials }: DirectState): ReadonlyMap<string, Demand> {
	return addUp(network, exposure, ({ between, volts }) =>
		Math.max(Math.abs(potentials.between(...between) ?? volts ?? usualVolts), leastVolts),
	);
}

/** Of a vehicle's direct-current side, where nothing else is known (common practice). */
const usualVolts = 12;
/** No load runs on less; what hangs on one pole twice is told elsewhere. */
const leastVolts = 3;

function addUp(
	network: Network,
	exposure: ReadonlyMap<number, Exposure>,
	voltsOf: (load: Load, hots: readonly number[]) => number,
): ReadonlyMap<string, Demand> {
	const demands = new Map<string, Growing>();
	const ahead = new Map<string, Passage>();
	for (const { nearest, by } of exposure.values()) {
		if (nearest !== undefined) demandOf(demands, nearest);
		if (nearest === undefined || by?.by.kind !== "link" || by.by.link.protection === undefined) continue;
		const before = exposure.get(by.from)?.nearest;
		if (before === undefined) continue;
		ahead.set(keyOf(nearest), before);
		demandOf(demands, before).feedsDevices = true;
	}
	for (const load of network.circuit.loads) {
		const hots = load.between.filter((point) => exposure.has(point));
		const amperes = load.watts === undefined ? undefined : load.watts / voltsOf(load, hots);
		for (const hot of hots) {
			const nearest = exposure.get(hot)?.nearest;
			if (nearest === undefined) continue;
			demandOf(demands, nearest).own.push(load);
			if (network.mode.running?.has(load.part) === false) continue;
			for (let passage: Passage | undefined = nearest; passage !== undefined; passage = ahead.get(keyOf(passage)))
				addLoad(demandOf(demands, passage), load, amperes);
		}
	}
	return demands;
}

function addLoad(demand: Growing, load: Load, amperes: number | undefined): void {
	if (amperes === undefined) {
		if (!load.outlet) demand.unknown.push(load);
		return;
	}
	demand.loads.push(load);
	if (load.continuous) demand.continuous += amperes;
	else demand.other += amperes;
}

/** Volts of the source that feeds a load: those of one leg, or of both where its terminals are for two hots. */
function voltsAcross(network: Network, poles: PoleMap, load: Load, hots: readonly number[]): number {
	const reach = poles.reaches.findIndex(
		(candidate, index) => isHotPole(poles, index) && hots.some((hot) => candidate.has(hot)),
	);
	const source = network.circuit.sources.find((candidate) => candidate.name === poles.poles[reach]?.source);
	// By what its terminals are for: one that lacks its second hot still asks for both legs.
	const roles = load.between.map((point) => network.circuit.points[point]?.role);
	const acrossLegs = roles.includes("hot") && roles.includes("hot2");
	return (source?.volts ?? 120) * (acrossLegs ? 2 : 1);
}

function isHotPole(poles: PoleMap, index: number): boolean {
	const role = poles.poles[index]?.role;
	return role === "hot" || role === "hot2";
}

function demandOf(demands: Map<string, Growing>, passage: Passage): Growing {
	const key = keyOf(passage);
	const known = demands.get(key);
	if (known !== undefined) return known;
	const demand: Growing = {
		device: passage.device,
		continuous: 0,
		other: 0,
		loads: [],
		unknown: [],
		feedsDevices: false,
		own: [],
	};
	demands.set(key, demand);
	return demand;
}

function keyOf({ device, pole }: Passage): string {
	return `${device.index}/${pole}`;
}
