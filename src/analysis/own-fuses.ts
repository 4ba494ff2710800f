// Whose fuse a device is: the battery at whose post it stands, and which therefore pushes nothing through it to its own lead.
import type { Source } from "../circuit/circuit.ts";
import type { Network } from "./network.ts";

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
