// What feeds each point: the pole its hot comes from and the last protective device on the way, with the contact it comes through.
import type { Protection } from "../circuit/circuit.ts";
import type { Network } from "./network.ts";
import { isHot, type Pole, type PoleMap } from "./poles.ts";

/** Where a point's hot comes from. */
export interface Feeder {
	readonly pole: Pole;
	/** The last protective device on the shortest way from the source; undefined where there is none. */
	readonly protection: Protection | undefined;
	/** The contact of that device; undefined for the device in a far supply. */
	readonly contact: number | undefined;
	/** For a device in line with others, as a fused spur is: the feeder of the circuit it is a part of. */
	readonly circuit?: Feeder;
}

/** The feeder whose neutral a load shares by right: a device in line has no neutral of its own. */
export function feederOfCircuit(feeder: Feeder): Feeder {
	return feeder.circuit ?? feeder;
}

/** The feeder of every point that a hot reaches. */
export function traceFeeders({ circuit }: Network, poles: PoleMap): ReadonlyMap<number, Feeder> {
	const feeders = new Map<number, Feeder>();
	poles.poles.forEach((pole, index) => {
		if (!isHot(pole.role)) return;
		const reach = poles.reaches[index];
		const protection = circuit.protections.find((candidate) => candidate.source === pole.source);
		const start: Feeder = { pole, protection, contact: undefined };
		const mine = new Map<number, Feeder>();
		for (const point of reach?.points ?? []) {
			const edge = reach?.cameBy(point);
			const before = edge === undefined ? start : (mine.get(edge.from) ?? start);
			const link = edge?.by.kind === "link" ? edge.by.link : undefined;
			const isInLine =
				circuit.partByName.get(link?.part ?? "")?.enclosure.sort !== "panel" && before.protection !== undefined;
			const feeder =
				link?.protection === undefined
					? before
					: {
							pole,
							protection: circuit.protections[link.protection],
							contact: link.index,
							...(isInLine ? { circuit: feederOfCircuit(before) } : {}),
						};
			mine.set(point, feeder);
			if (!feeders.has(point)) feeders.set(point, feeder);
		}
	});
	return feeders;
}
