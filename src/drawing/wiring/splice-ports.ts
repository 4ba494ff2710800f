// Which wires of a splice leave it upright rather than along its row, which way, and in what order, so that few cross.
import { type BoxContent, isCore, type Wire } from "./box-content.ts";
import type { RowPlan } from "./box-rows.ts";

/** The upright wires of one splice, each list from left to right. */
export interface SplicePorts {
	readonly up: readonly Wire[];
	readonly down: readonly Wire[];
}

/** The way an inner wire leaves a splice; undefined: along the row. */
export type InnerWay = (wire: Wire, splice: number) => "up" | "down" | undefined;

/** The upright ports of each splice that stands on a row. */
export function planSplicePorts(content: BoxContent, rows: RowPlan, innerWay: InnerWay): Map<number, SplicePorts> {
	const ports = new Map<number, SplicePorts>();
	for (const [splice, home] of rows.homeOf) {
		const up: { wire: Wire; reach: number }[] = [];
		const down: { wire: Wire; reach: number }[] = [];
		for (const wire of new Set(content.landings.get(splice) ?? [])) {
			const row = rows.rowOf.get(wire);
			if (isCore(wire)) {
				if (row === undefined || row === home) continue;
				(row < home ? up : down).push({ wire, reach: Math.abs(row - home) });
				continue;
			}
			const way = innerWay(wire, splice);
			if (way !== undefined) (way === "up" ? up : down).push({ wire, reach: innerReach });
		}
		ports.set(splice, { up: order(up), down: order(down) });
	}
	return ports;
}

/** Wires go on to the right, so the one that goes furthest turns furthest left: then none crosses its sisters. */
function order(list: readonly { readonly wire: Wire; readonly reach: number }[]): Wire[] {
	return list.toSorted((one, other) => other.reach - one.reach).map((entry) => entry.wire);
}

/** Pigtails go beyond all rows. */
const innerReach = 1000;
