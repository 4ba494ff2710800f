// Whether the devices of a box can stand between its rows, and which row each of their terminals hangs on.
import { type BoxContent, farTie, isCore, pointOf, type Wire } from "./box-content.ts";
import { drawnTerminals } from "./box-free.ts";
import { pairBySplice, planRows, type RowPlan } from "./box-rows.ts";
import { sideText } from "./terminal-letters.ts";

/** A terminal, the wire on it and the row that leads to; one that nothing is on has neither. */
export interface Meeting {
	/** Index of the device; the stud on the metal of the box comes behind them. */
	readonly device: number;
	readonly point: number;
	readonly wire?: Wire;
	readonly row?: number;
}
/** The rows of such a box and all that hangs on them. */
export interface BetweenRows {
	readonly rows: RowPlan;
	/** How many of the rows come in by the first cables: the devices stand among these. */
	readonly mainRows: number;
	readonly meetings: readonly Meeting[];
}

/** One to three devices that one cable feeds, all of whose terminals hang on its rows; undefined for anything else. */
export function readBetween(content: BoxContent): BetweenRows | undefined {
	const { circuit, devices, left, right, wires, landings, enclosure } = content;
	if (devices.length === 0 || devices.length > 3 || left.length !== 1) return undefined;
	if (devices.length > 1 && right.length > 1) return undefined;
	if (devices.some((device) => device.face.named === true || sideText(circuit, device, "line") !== undefined))
		return undefined;
	const kindAt = (wire: Wire, end: "from" | "to"): string | undefined => circuit.points[pointOf(wire[end]) ?? -1]?.kind;
	const isPlain = (wire: Wire): boolean => {
		const kinds = [kindAt(wire, "from"), kindAt(wire, "to")];
		if (isCore(wire)) return kinds[1] === "splice" || kinds[1] === "terminal";
		return kinds.includes("splice") && (kinds.includes("terminal") || kinds.includes("body"));
	};
	if (!wires.every(isPlain)) return undefined;
	const rows = planRows(content, pairBySplice(content));
	const mainRows = rows.rows.filter(({ group }) => group === 0).length;
	if ([...rows.homeOf.values()].some((row) => row >= mainRows)) return undefined;
	const meetings: Meeting[] = [];
	const meet = (device: number, point: number): boolean => {
		const [wire, ...more] = landings.get(point) ?? [];
		if (wire === undefined) meetings.push({ device, point });
		const row = wire === undefined ? undefined : rowOf(rows, wire, point);
		if (wire !== undefined && row !== undefined) meetings.push({ device, point, wire, row });
		return more.length === 0 && (wire === undefined || (row !== undefined && row < mainRows));
	};
	for (const [index, device] of devices.entries())
		for (const point of drawnTerminals(content, device)) if (!meet(index, point)) return undefined;
	const { body } = enclosure;
	if (body !== undefined && landings.has(body) && !meet(devices.length, body)) return undefined;
	return { rows, mainRows, meetings };
}

function rowOf({ rowOf: rows, homeOf }: RowPlan, wire: Wire, point: number): number | undefined {
	return isCore(wire) ? rows.get(wire) : homeOf.get(pointOf(farTie(wire, point)) ?? -1);
}
