// How much of what a battery holds is taken from it day by day, so that it lasts.
import type { Sourced } from "./provenance.ts";
import { type Table, table } from "./table.ts";

/** The share of its capacity that a battery of a chemistry gives without harm. */
export interface BatteryDepth {
	readonly chemistry: string;
	readonly percent: number;
}

/** Usable depth by chemistry. No published table was read: the maker's paper goes first. */
export const batteryDepths: Table<BatteryDepth> = table<BatteryDepth>(
	"battery-depth",
	"Share of a battery's capacity that is used day by day, by its chemistry",
	[
		["chemistry", (row) => row.chemistry],
		["usable, %", (row) => row.percent],
	],
	[
		["lithium", 80],
		["agm", 50],
		["gel", 50],
		["flooded", 50],
	].map(([chemistry, percent]) => ({
		chemistry: String(chemistry),
		percent: Number(percent),
		provenance: { source: "common practice", known: "common practice", note: "the maker's paper goes first" },
	})),
);

/** The usable depth of a chemistry; the least there is where it is not said. */
export function batteryDepth(chemistry: string | undefined): Sourced<BatteryDepth> | undefined {
	return batteryDepths.rows.find((row) => row.chemistry === chemistry) ?? batteryDepths.rows.at(-1);
}
