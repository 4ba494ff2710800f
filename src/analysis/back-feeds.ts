// Breakers that feed the bus they are plugged on to, in place of being fed by it.
import type { Circuit, Part } from "../circuit/circuit.ts";
import type { Reach } from "./network.ts";
import { isHot, type PoleMap } from "./poles.ts";

/** A breaker that is fed on its load side. */
export interface BackFeed {
	readonly part: Part;
	/** Its terminal that is fed, and the reach by which it is. */
	readonly fed: number;
	readonly by: Reach;
}

/** Every branch breaker of a mode through which a hot comes to its bus. */
export function findBackFeeds(circuit: Circuit, { poles, reaches }: PoleMap): readonly BackFeed[] {
	const hots = reaches.filter((_, index) => isHot(poles[index]?.role ?? "ground"));
	const found = new Map<string, BackFeed>();
	for (const link of circuit.links) {
		if (link.protection === undefined || found.has(link.part)) continue;
		const [bus, load] = link.between;
		const stab = circuit.points[bus];
		if (stab?.kind !== "terminal" || stab.clamp !== "stab") continue;
		const by = hots.find((reach) => {
			const edge = reach.cameBy(bus);
			return edge?.from === load && edge.by.kind === "link" && edge.by.link === link;
		});
		const part = circuit.partByName.get(link.part);
		if (by !== undefined && part !== undefined) found.set(link.part, { part, fed: load, by });
	}
	return [...found.values()];
}
