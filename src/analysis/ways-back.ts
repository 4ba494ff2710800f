// What neutral and ground conductors may have to carry: the way back from every load, and from every case in a fault.
import type { Part } from "../circuit/circuit.ts";
import type { Network, Reach } from "./network.ts";
import { type PoleMap, sortOfRole } from "./poles.ts";
import type { Exposure } from "./protection.ts";

/** By a conductor's position: the greatest exposure of what returns through it. */
export interface WaysBack {
	/** Through neutrals, from the loads behind them. */
	readonly neutral: ReadonlyMap<number, Exposure>;
	/** Through grounds, when a hot touches a case or ground terminal behind them. */
	readonly ground: ReadonlyMap<number, Exposure>;
}

/** Follows every way back to the pole it ends at, by the shortest way, and keeps the greatest exposure on each conductor. */
export function traceWaysBack(
	network: Network,
	poles: PoleMap,
	ground: Reach,
	exposure: ReadonlyMap<number, Exposure>,
): WaysBack {
	const { circuit } = network;
	const loads = new Map<number, Exposure>();
	for (const load of circuit.loads)
		for (const [hot, back] of [load.between, load.between.toReversed()])
			if (hot !== undefined && back !== undefined && circuit.points[back]?.role === "neutral")
				keepGreater(loads, back, exposure.get(hot));
	for (const part of circuit.parts) offerBeside(network, part, exposure, loads);
	const faults = new Map<number, Exposure>();
	const boxes = new Map<string, Exposure>();
	for (const part of circuit.parts) {
		const grounds = part.points.filter((point) => circuit.points[point]?.role === "ground");
		for (const hot of part.points) {
			const here = exposure.get(hot);
			if (here === undefined) continue;
			for (const back of grounds) keepGreater(faults, back, here);
			keepGreater(boxes, part.enclosure.name, here);
		}
	}
	for (const { name, body } of circuit.enclosures) if (body !== undefined) keepGreater(faults, body, boxes.get(name));
	const neutral = new Map<number, Exposure>();
	poles.reaches.forEach((reach, index) => {
		if (poles.poles[index]?.role === "neutral") gather(reach, new Map(loads), neutral);
	});
	const grounds = new Map<number, Exposure>();
	gather(ground, faults, grounds);
	return { neutral, ground: grounds };
}

/**
 * A neutral that goes through a part beside a hot brings back what that hot may bring: by the neutral of a load between two hots, of a device
 * that opens both, and by the bar of a panel for all that its bus lets through.
 */
function offerBeside(
	{ circuit }: Network,
	part: Part,
	exposure: ReadonlyMap<number, Exposure>,
	loads: Map<number, Exposure>,
): void {
	const { traits } = part.face;
	if (traits.includes("neutral-bar")) {
		const [port] = part.points;
		const panel = circuit.partByName.get(part.owner ?? "");
		if (port === undefined || panel === undefined || !panel.face.traits.includes("panel")) return;
		for (const bus of panel.points) keepGreater(loads, port, exposure.get(bus));
		return;
	}
	for (const back of part.points) {
		const point = circuit.points[back];
		if (point?.kind !== "terminal" || point.role !== "neutral") continue;
		for (const hot of part.points) {
			const beside = circuit.points[hot];
			if (beside?.kind === "terminal" && beside.side === point.side && sortOfRole(beside.role) === "hot")
				keepGreater(loads, back, exposure.get(hot));
		}
	}
}

/** Rolls what starts at points up the tree of a reach, farthest first; `greatest` is used up. */
function gather(reach: Reach, greatest: Map<number, Exposure>, into: Map<number, Exposure>): void {
	for (const point of reach.points.toReversed()) {
		const step = reach.cameBy(point);
		const here = greatest.get(point);
		if (step === undefined || here === undefined) continue;
		keepGreater(greatest, step.from, here);
		if (step.by.kind === "conductor") keepGreater(into, step.by.index, here);
	}
}

function keepGreater<Key>(kept: Map<Key, Exposure>, key: Key, offered: Exposure | undefined): void {
	if (offered !== undefined && offered.amperes > (kept.get(key)?.amperes ?? 0)) kept.set(key, offered);
}
