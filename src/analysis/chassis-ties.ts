// How the minus of a battery, or the case of a machine, gets to the metal of a vehicle where no lead that bears a fault leads there.
import { compareGauges, type Gauge } from "../base/gauge.ts";
import type { Circuit, Conductor, Part, Source } from "../circuit/circuit.ts";
import { oneSizeBelow } from "../handbook/trade-sizes.ts";
import { positivesOf, thickestOf } from "./chassis-bonds.ts";
import type { DirectState } from "./direct.ts";
import { joinAll, joinWhere } from "./joined-sets.ts";
import { type Edge, type Network, reachFrom } from "./network.ts";
import { ownLinks } from "./own-links.ts";

/** A battery that is joined to the metal only through what charges or converts. */
export interface MinusTie {
	readonly battery: Source;
	readonly metal: Part;
	/** What the way leads through. */
	readonly through: string;
	readonly way: readonly Edge[];
}

/** Every such battery of a mode. */
export function findMinusTies(
	circuit: Circuit,
	{ network }: DirectState,
	metals: readonly Part[],
): readonly MinusTie[] {
	const givers = new Set(
		circuit.sources.flatMap(({ system, sort, part }) => (system === "dc" && sort === "other" ? [part] : [])),
	);
	if (givers.size === 0) return [];
	const inside = ownLinks(circuit, givers);
	const apart = joinWhere(network, ({ by }) => by.kind === "conductor" || !inside.has(by.link.index));
	const joined = joinAll(network);
	return circuit.sources.flatMap((battery): MinusTie[] => {
		const { sort, neutral } = battery;
		if (sort !== "battery" || neutral === undefined) return [];
		const onMetal = metals.filter(({ points: [stud] }) => stud !== undefined && joined.isJoined(stud, neutral));
		const [metal] = onMetal;
		if (
			metal === undefined ||
			onMetal.some(({ points: [stud] }) => stud !== undefined && apart.isJoined(stud, neutral))
		)
			return [];
		const way = wayTo(network, neutral, metal);
		const through = way.flatMap(({ by }) => (by.kind === "link" && inside.has(by.link.index) ? [by.link.part] : []));
		return through[0] === undefined ? [] : [{ battery, metal, through: through[0], way }];
	});
}

/** A machine whose case is joined to the metal only by conductors too thin for a fault of its positive. */
export interface CaseTie {
	readonly part: Part;
	readonly metal: Part;
	/** The conductor on its positive, and the thinnest on the way from its case. */
	readonly positive: Conductor;
	readonly thinnest: Conductor;
	readonly needed: Gauge;
	readonly way: readonly Edge[];
}

/** Every such machine of a mode; what has a lead of its own to the metal is judged by that. */
export function findCaseTies(circuit: Circuit, { network }: DirectState, metals: readonly Part[]): readonly CaseTie[] {
	const studs = new Set(metals.flatMap(({ points }) => points));
	const landed = new Set(
		circuit.conductors.flatMap(({ ends: [one, other] }) => [
			...(studs.has(one.point ?? -1) ? [other.point] : []),
			...(studs.has(other.point ?? -1) ? [one.point] : []),
		]),
	);
	const batteries = new Set(circuit.sources.flatMap(({ sort, part }) => (sort === "battery" ? [part] : [])));
	return [...positivesOf(circuit)].flatMap(([name, own]): CaseTie[] => {
		const part = circuit.partByName.get(name);
		const positive = thickestOf(own);
		const needed = positive === undefined ? undefined : oneSizeBelow(positive.gauge);
		const grounds = part?.points.filter((point) => circuit.points[point]?.role === "ground") ?? [];
		if (part === undefined || positive === undefined || needed === undefined || grounds.length === 0) return [];
		if (batteries.has(name) || grounds.some((ground) => landed.has(ground))) return [];
		const bears = reachFrom(network, grounds, ({ by }) => {
			const conductor = by.kind === "conductor" ? circuit.conductors[by.index] : undefined;
			return conductor === undefined || compareGauges(conductor.gauge, needed) >= 0;
		});
		if ([...studs].some((stud) => bears.has(stud))) return [];
		const reach = reachFrom(network, grounds, () => true);
		const metal = metals.find(({ points: [stud] }) => stud !== undefined && reach.has(stud));
		const way = metal?.points[0] === undefined ? [] : reach.edgesTo(metal.points[0]);
		const thinnest = thinnestOn(circuit, way);
		return metal === undefined || thinnest === undefined ? [] : [{ part, metal, positive, thinnest, needed, way }];
	});
}

function thinnestOn({ conductors }: Circuit, way: readonly Edge[]): Conductor | undefined {
	return way.reduce<Conductor | undefined>((thinnest, { by }) => {
		const conductor = by.kind === "conductor" ? conductors[by.index] : undefined;
		if (conductor === undefined) return thinnest;
		return thinnest === undefined || compareGauges(conductor.gauge, thinnest.gauge) < 0 ? conductor : thinnest;
	}, undefined);
}

function wayTo(network: Network, point: number, { points: [stud] }: Part): readonly Edge[] {
	return stud === undefined ? [] : reachFrom(network, [point], () => true).edgesTo(stud);
}
