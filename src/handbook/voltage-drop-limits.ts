// How much voltage drop the published guides allow.
import type { Known, Provenance, Sourced } from "./provenance.ts";
import { type Table, table } from "./table.ts";

/** Whose guide a limit is. */
export type DropGuide =
	| "NFPA 70"
	| "ABYC E-11"
	| "ISO 10133"
	| "IEC 60364-5-52 public supply"
	| "IEC 60364-5-52 private supply";
/** The sort of circuit a limit is for. */
export type DropCircuit = "branch" | "feeder and branch" | "critical" | "other" | "lighting" | "other uses";

/** One limit. */
export interface DropLimit {
	readonly guide: DropGuide;
	readonly circuit: DropCircuit;
	readonly percent: number;
	readonly applies: string;
}

const note = (guide: string, known: Known, text?: string): Provenance => ({
	source: guide,
	known,
	...(text === undefined ? {} : { note: text }),
});
const advice = note("NFPA 70 210.19 and 215.2 informational notes", "read", "advice, not a rule");
const boats = note("ABYC E-11", "read");
const craft = note("ISO 10133 clause 4", "read");
const annexG: Provenance = {
	source: "IEC 60364-5-52 Table G.52.1",
	edition: "2009",
	known: "read",
	note: "over 100 m, 0.005 % more for each metre, at most 0.5 % in all",
};
const rows: readonly (readonly [DropGuide, DropCircuit, number, string, Provenance])[] = [
	["NFPA 70", "branch", 3, "branch circuit, farthest outlet", advice],
	["NFPA 70", "feeder and branch", 5, "feeder and branch circuit together", advice],
	[
		"ABYC E-11",
		"critical",
		3,
		"panel feeders, bilge blowers, electronics, navigation lights and other critical circuits",
		boats,
	],
	["ABYC E-11", "other", 10, "other lights and non-critical circuits", boats],
	[
		"ISO 10133",
		"critical",
		3,
		"panel mains, navigation lights, bilge blowers and pumps, other safety equipment",
		craft,
	],
	["IEC 60364-5-52 public supply", "lighting", 3, "lighting", annexG],
	["IEC 60364-5-52 public supply", "other uses", 5, "other uses", annexG],
	["IEC 60364-5-52 private supply", "lighting", 6, "lighting", annexG],
	["IEC 60364-5-52 private supply", "other uses", 8, "other uses", annexG],
];

/** Voltage-drop limits. */
export const dropLimits: Table<DropLimit> = table<DropLimit>(
	"voltage-drop-limits",
	"Voltage-drop limits",
	[
		["guide", (row) => row.guide],
		["circuit", (row) => row.circuit],
		["limit, %", (row) => row.percent],
		["applies to", (row) => row.applies],
	],
	rows.map(([guide, circuit, percent, applies, provenance]) => ({ guide, circuit, percent, applies, provenance })),
);

/** One guide's limit for a sort of circuit; undefined where that guide sets none. */
export function dropLimit(guide: DropGuide, circuit: DropCircuit): Sourced<DropLimit> | undefined {
	return dropLimits.rows.find((row) => row.guide === guide && row.circuit === circuit);
}
