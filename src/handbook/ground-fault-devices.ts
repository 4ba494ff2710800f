// When ground-fault and residual-current devices trip, and how long they may take.
import type { Known, Provenance, Sourced } from "./provenance.ts";
import { type Clause, clauseTable, type Table, table } from "./table.ts";

/** The class A device of North America: what it holds, what it must trip on. */
export const classA: Sourced<{
	/** Milliamperes below which it does not trip. */
	readonly holds: number;
	/** Milliamperes from which it must trip. */
	readonly trips: number;
	/** Milliamperes at which the time formula ends. */
	readonly formulaUpTo: number;
}> = {
	holds: 4,
	trips: 6,
	formulaUpTo: 264,
	provenance: {
		source: "UL 943",
		known: "read",
		note: "three readings; the often printed 25 ms is the 264 mA point, at 6 mA it may take 5.6 s",
	},
};

/** Longest time for one fault current. */
export interface ClassATime {
	readonly milliamperes: number;
	/** Seconds; undefined where it need not trip. */
	readonly longest: number | undefined;
}

const computed: Provenance = { source: "UL 943 formula T = (20 / I)^1.43", known: "computed" };

/** Longest trip times of class A devices at some currents. */
export const classATimes: Table<ClassATime> = table<ClassATime>(
	"class-a-times",
	"Ground-fault circuit-interrupter, class A: longest trip time",
	[
		["fault, mA", (row) => row.milliamperes],
		["longest, s", (row) => (row.longest === undefined ? undefined : Number(row.longest.toFixed(4)))],
	],
	[4, 5, 6, 10, 15, 20, 30, 50, 100, 264].map((milliamperes) => ({
		milliamperes,
		longest: classALongest(milliamperes),
		provenance: milliamperes < classA.trips ? classA.provenance : computed,
	})),
);

/** Longest trip time in seconds, (20 / I)^1.43; undefined below the trip threshold; from 264 mA up that of 264 mA. */
export function classALongest(milliamperes: number): number | undefined {
	if (milliamperes < classA.trips) return undefined;
	return (20 / Math.min(milliamperes, classA.formulaUpTo)) ** 1.43;
}

/** How a residual-current device of an IEC country trips at a multiple of its rated current. */
export interface ResidualTime {
	readonly sort: "general" | "selective";
	readonly multiple: number;
	/** Shortest and longest break time, milliseconds; both undefined where it must not trip. */
	readonly shortest: number | undefined;
	readonly longest: number | undefined;
}

const general: Provenance = {
	source: "IEC 61008-1 and 61009-1 Table 1",
	known: "read",
	note: "in a certification body's article and test-instrument manuals; to 30 mA the five-fold test may be made at 250 mA",
};
const selective: Provenance = {
	source: "IEC 61008-1 and 61009-1 Table 1",
	known: "read",
	note: "in test-instrument manuals",
};
type Cell = number | undefined;
const rows: readonly (readonly [ResidualTime["sort"], number, Cell, Cell, Provenance])[] = [
	["general", 0.5, undefined, undefined, general],
	["general", 1, undefined, 300, general],
	["general", 2, undefined, 150, general],
	["general", 5, undefined, 40, general],
	["selective", 1, 130, 500, selective],
	["selective", 2, 50, 200, selective],
	["selective", 5, 50, 150, selective],
];

/** Break times of residual-current devices. */
export const residualTimes: Table<ResidualTime> = table<ResidualTime>(
	"residual-current-times",
	"Residual-current devices: break times by multiple of the rated residual current",
	[
		["sort", (row) => row.sort],
		["multiple", (row) => row.multiple],
		["shortest, ms", (row) => row.shortest],
		["longest, ms", (row) => row.longest ?? "must not trip"],
	],
	rows.map(([sort, multiple, shortest, longest, provenance]) => ({ sort, multiple, shortest, longest, provenance })),
);

/** Longest disconnection time of a final circuit. */
export interface DisconnectionTime {
	readonly earthing: "TN" | "TT";
	/** Volts to earth: above the first, up to the second. */
	readonly above: number;
	readonly upTo: number;
	readonly seconds: number;
}

const disconnection: Provenance = { source: "IEC 60364-4-41 Table 41.1", known: "recalled" };

/** Disconnection times, recalled. */
export const disconnectionTimes: Table<DisconnectionTime> = table<DisconnectionTime>(
	"disconnection-times",
	"Longest disconnection time of final circuits",
	[
		["earthing", (row) => row.earthing],
		["above, V", (row) => row.above],
		["up to, V", (row) => row.upTo],
		["longest, s", (row) => row.seconds],
	],
	[
		{ earthing: "TN", above: 50, upTo: 120, seconds: 0.8, provenance: disconnection },
		{ earthing: "TN", above: 120, upTo: 230, seconds: 0.4, provenance: disconnection },
		{ earthing: "TT", above: 50, upTo: 120, seconds: 0.3, provenance: disconnection },
		{ earthing: "TT", above: 120, upTo: 230, seconds: 0.2, provenance: disconnection },
	],
);

const guide = (source: string, known: Known): Provenance => ({ source, known });

/** What else holds for these devices. */
export const groundFaultClauses: Table<Clause> = clauseTable(
	"ground-fault-devices",
	"Ground-fault and residual-current devices",
	[
		{
			clause: "class A threshold",
			topic: "North America",
			says: `does not trip below ${classA.holds} mA, trips from ${classA.trips} mA; 30 mA devices for equipment or whole boats are not class A`,
			provenance: classA.provenance,
		},
		{
			clause: "grounded neutral",
			topic: "North America",
			says: "a neutral that touches ground on the load side trips it too, by the same formula",
			provenance: { source: "UL 943", edition: "2006", known: "read" },
		},
		{
			clause: "additional protection",
			topic: "IEC",
			says: "against shock: rated at most 30 mA and at most 40 ms at five times that",
			provenance: guide("BS 7671 415.1.1, 17th edition", "read"),
		},
		{
			clause: "practical threshold",
			topic: "IEC",
			says: "a 30 mA device may trip anywhere from 15 to 30 mA",
			provenance: guide("IEC 61008-1, in a maker's training page", "read"),
		},
	],
);

/** The break time of a residual-current device at exactly this multiple; undefined where the table has none. */
export function residualTime(sort: ResidualTime["sort"], multiple: number): Sourced<ResidualTime> | undefined {
	return residualTimes.rows.find((row) => row.sort === sort && row.multiple === multiple);
}
