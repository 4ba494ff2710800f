// Loads for direct current that are not fed by the fuse their circuit is said to come from, and blocks fed through a fuse of their own.
import { groupBy } from "../base/group.ts";
import type { Circuit, Conductor, Link, Point, Protection, Terminal } from "../circuit/circuit.ts";
import type { DirectState } from "./direct.ts";
import type { Landings } from "./landings.ts";
import { findMislabelled, type Mislabelled } from "./mislabelled.ts";
import { type Edge, reachFrom } from "./network.ts";
import { isHot, notABond } from "./poles.ts";

/** Every load of a mode that another circuit's fuse feeds, or that is fed past its own. */
export function findMislabelledFuses(
	circuit: Circuit,
	landings: Landings,
	{ feeders, poles }: DirectState,
): readonly Mislabelled[] {
	const saidOf = new Map(circuit.plan.runs.map((run) => [run.name, run.protection]));
	return findMislabelled(circuit, landings, { feeders, crossings: { poles } }).filter(({ point, found }) => {
		let isMixedUp = false;
		for (const { by } of poles.reachOf(point, "hot")?.edgesTo(point) ?? []) {
			if (by.kind === "link") {
				// What a relay switches on is its own matter, unless the wires to it are mixed up already.
				if (isMovedByCoil(circuit, by.link)) return isMixedUp;
				if (by.link.protection !== undefined) isMixedUp = false;
				continue;
			}
			const said = saidOf.get(circuit.cableByTag.get(circuit.conductors[by.index]?.cable ?? "")?.run ?? "");
			if (said !== undefined && said !== found) isMixedUp = true;
		}
		return true;
	});
}

function isMovedByCoil({ loads }: Circuit, { part, contact, protection }: Link): boolean {
	return contact !== undefined && protection === undefined && loads.some((load) => load.part === part);
}

/** A fuse of a circuit through which everything beside it in its block is fed, from its load side. */
export interface FedBackward {
	readonly device: Protection;
	readonly load: Terminal;
	/** The wire that feeds it there. */
	readonly conductor: Conductor;
}

/** Every such fuse of a mode. What gives current by right, as a solar controller on a way of the block does, is of its circuit's run. */
export function findFedBackward(circuit: Circuit, { feeders, network, poles }: DirectState): readonly FedBackward[] {
	const runsOf = groupBy(
		circuit.plan.runs.filter(({ protection }) => protection !== undefined),
		({ protection }) => protection,
	);
	return circuit.protections.flatMap((device) => {
		const runs = runsOf.get(device.part);
		if (runs === undefined) return [];
		return device.links.flatMap((index): FedBackward[] => {
			const [one, other] = circuit.links[index]?.between.map((point) => circuit.points[point]) ?? [];
			const [load, line] = isLoad(one) ? [one, other] : isLoad(other) ? [other, one] : [];
			if (load === undefined || line === undefined || feeders.get(line.index)?.contact !== index) return [];
			const isOther = ({ by }: Edge): boolean => by.kind === "conductor" || by.link.index !== index;
			const starts = poles.poles.flatMap(({ role, points }) => (isHot(role) ? points : []));
			if (reachFrom(network, starts, (edge) => notABond(edge) && isOther(edge)).has(line.index)) return [];
			const way = poles.reachOf(load.index, "hot")?.edgesTo(load.index) ?? [];
			const conductor = lastCore(circuit, way);
			const run = conductor === undefined ? undefined : circuit.cableByTag.get(conductor.cable ?? "")?.run;
			return conductor === undefined || runs.some(({ name }) => name === run) ? [] : [{ device, load, conductor }];
		});
	});
}

function isLoad(point: Point | undefined): point is Terminal {
	return point?.kind === "terminal" && point.side === "load";
}

function lastCore({ conductors }: Circuit, way: readonly Edge[]): Conductor | undefined {
	for (const { by } of way.toReversed()) {
		const conductor = by.kind === "conductor" ? conductors[by.index] : undefined;
		if (conductor?.sort === "core") return conductor;
	}
	return undefined;
}
