// How many volts are lost on the way to each fixed load when all of them run: a sum along the run, nothing solved.
import type { Circuit, Conductor, Load, Protection } from "../circuit/circuit.ts";
import { resistivityInService } from "../handbook/copper.ts";
import type { ModeState } from "./analysis.ts";
import type { Network } from "./network.ts";
import { isHot, type PoleMap } from "./poles.ts";
import type { Exposure } from "./protection.ts";

/** What is lost on the way to one load, there and back. */
export interface Drop {
	readonly load: Load;
	/** Volts of what feeds it, across its terminals. */
	readonly volts: number;
	/** Volts lost in all, and behind the last protective device alone. */
	readonly lost: number;
	readonly lostInBranch: number;
	/** Amperes the load draws. */
	readonly amperes: number;
	/** The last protective device ahead of it. */
	readonly device: Protection | undefined;
	/** The source that feeds it. */
	readonly source: string;
	/** The hot terminal by which it is fed. */
	readonly hot: number;
}

/** The drops of a mode. */
export interface Drops {
	readonly loads: readonly Drop[];
	/** Cables on the way to a load whose length is not known: what is lost there is missing in the sums. */
	readonly unmeasured: ReadonlySet<string>;
}

/** The drop to every fixed load for alternating current that is fed in a mode. */
export function findDrops({ crossings, exposure, network }: ModeState): Drops {
	const { circuit } = network;
	const draws = drawsOf(circuit, crossings.poles, exposure);
	const unmeasured = new Set<string>();
	if (draws.length === 0) return { loads: [], unmeasured };
	const currents = sumCurrents(draws, exposure);
	const ways = sumDrops(crossings.network, exposure, currents, unmeasured);
	const loads = draws.map(({ load, volts, amperes, hots }): Drop => {
		const legs = hots.flatMap((hot) => ways.get(hot) ?? []);
		// Between two hots each is one way; else what goes out on the hot comes back on as long a neutral.
		const times = legs.length > 1 ? 1 : 2;
		const nearest = exposure.get(hots[0] ?? -1);
		return {
			load,
			volts,
			amperes,
			lost: legs.reduce((sum, { lost }) => sum + lost * times, 0),
			lostInBranch: legs.reduce((sum, { lostInBranch }) => sum + lostInBranch * times, 0),
			device: nearest?.nearest?.device,
			source: nearest?.source ?? "",
			hot: hots[0] ?? -1,
		};
	});
	return { loads, unmeasured };
}

/** Cables behind the last protective device on the way to a load, the nearest to the source first. */
export function branchCables({ exposure, network: { circuit } }: ModeState, { hot }: Drop): readonly string[] {
	const cables: string[] = [];
	for (let by = exposure.get(hot)?.by; by !== undefined; by = exposure.get(by.from)?.by) {
		if (by.by.kind === "link") {
			if (by.by.link.protection !== undefined) break;
			continue;
		}
		const cable = circuit.conductors[by.by.index]?.cable;
		if (cable !== undefined) cables.unshift(cable);
	}
	return cables;
}

interface Draw {
	readonly load: Load;
	readonly volts: number;
	readonly amperes: number;
	readonly hots: readonly number[];
}

function drawsOf(circuit: Circuit, poles: PoleMap, exposure: ReadonlyMap<number, Exposure>): Draw[] {
	const volts = new Map(circuit.sources.map((source) => [source.name, source.volts]));
	return circuit.loads.flatMap((load): Draw[] => {
		if (load.outlet || load.watts === undefined || load.watts === 0) return [];
		const hots = load.between.filter(
			(point) => exposure.has(point) && [...poles.rolesAt(point)].some((role) => isHot(role)),
		);
		const source = exposure.get(hots[0] ?? -1)?.source;
		const leg = source === undefined ? undefined : volts.get(source);
		if (leg === undefined) return [];
		const across = leg * hots.length;
		return [{ load, volts: across, amperes: load.watts / across, hots }];
	});
}

/** What flows to each point when every load runs, and no more than the devices ahead of it let through. */
function sumCurrents(draws: readonly Draw[], exposure: ReadonlyMap<number, Exposure>): ReadonlyMap<number, number> {
	const currents = new Map<number, number>();
	for (const { hots, amperes } of draws) for (const hot of hots) currents.set(hot, (currents.get(hot) ?? 0) + amperes);
	// Points stand behind the point they were reached from.
	for (const [point, { by, amperes }] of [...exposure].reverse()) {
		const current = currents.get(point);
		if (current === undefined) continue;
		const limited = Math.min(current, amperes);
		currents.set(point, limited);
		if (by !== undefined) currents.set(by.from, (currents.get(by.from) ?? 0) + limited);
	}
	return currents;
}

interface WayLoss {
	readonly lost: number;
	readonly lostInBranch: number;
}

function sumDrops(
	{ circuit }: Network,
	exposure: ReadonlyMap<number, Exposure>,
	currents: ReadonlyMap<number, number>,
	unmeasured: Set<string>,
): ReadonlyMap<number, WayLoss> {
	const ways = new Map<number, WayLoss>();
	for (const [point, { by }] of exposure) {
		const current = currents.get(point);
		if (current === undefined) continue;
		const before = by === undefined ? undefined : ways.get(by.from);
		const conductor = by?.by.kind === "conductor" ? circuit.conductors[by.by.index] : undefined;
		const own = conductor === undefined ? 0 : current * ohmsOf(circuit, conductor);
		if (conductor?.cable !== undefined && conductor.length === undefined) unmeasured.add(conductor.cable);
		const isDevice = by?.by.kind === "link" && by.by.link.protection !== undefined;
		ways.set(point, {
			lost: (before?.lost ?? 0) + own,
			lostInBranch: isDevice ? 0 : (before?.lostInBranch ?? 0) + own,
		});
	}
	return ways;
}

/** Ohms of a conductor one way; 0 where its length is not known. */
function ohmsOf({ plan }: Circuit, { length, gauge, material }: Conductor): number {
	return length === undefined ? 0 : (resistivityInService(plan.settings.region, material).value * length) / gauge.mm2;
}
