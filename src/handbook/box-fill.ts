// How much room each thing in a box takes: volume by conductor size, and what counts for how much.
import { certain } from "../base/certain.ts";
import { compareGauges, formatGauge, type Gauge } from "../base/gauge.ts";
import type { Known, Provenance, Sourced } from "./provenance.ts";
import { type AwgLabel, awgOf } from "./sizes.ts";
import { type Table, table } from "./table.ts";

/** Free space in a box for one conductor of a size. */
export interface ConductorVolume {
	readonly gauge: Gauge;
	readonly cubicInches: number;
	/** As printed beside the inches. */
	readonly cubicCentimetres: number;
}

const volumes: Provenance = { source: "NFPA 70 Table 314.16(B)", known: "read" };
const rows: readonly (readonly [AwgLabel, number, number])[] = [
	["18", 1.5, 24.6],
	["16", 1.75, 28.7],
	["14", 2, 32.8],
	["12", 2.25, 36.9],
	["10", 2.5, 41],
	["8", 3, 49.2],
	["6", 5, 81.9],
];

/** Volume by conductor size. */
export const conductorVolumes: Table<ConductorVolume> = table<ConductorVolume>(
	"conductor-volumes",
	"Free space within a box for each conductor",
	[
		["size", (row) => formatGauge(row.gauge)],
		["in3", (row) => row.cubicInches],
		["cm3", (row) => row.cubicCentimetres],
	],
	rows.map(([label, cubicInches, cubicCentimetres]) => ({
		gauge: awgOf(label),
		cubicInches,
		cubicCentimetres,
		provenance: volumes,
	})),
);

/** What is counted in a box. */
export type BoxContent =
	| "conductor that ends or is spliced"
	| "conductor that passes unbroken"
	| "unbroken loop, twice the free length or more"
	| "conductor wholly inside"
	| "internal clamps"
	| "clamp outside the box"
	| "luminaire stud or hickey"
	| "device yoke"
	| "equipment grounds, up to four"
	| "each equipment ground over four"
	| "terminal block";
/** Whose volume one allowance is. */
export type AllowanceOf =
	| "its own size"
	| "the largest in the box"
	| "the largest connected to it"
	| "the largest ground";

/** How much one sort of content counts. */
export interface BoxAllowance {
	readonly content: BoxContent;
	/** Allowances for each, or in all where `inAll`. */
	readonly allowances: number;
	readonly of: AllowanceOf;
	readonly inAll: boolean;
}

const clause = (part: string, known: Known, note?: string): Provenance => ({
	source: `NFPA 70 314.16(B)(${part})`,
	known,
	...(note === undefined ? {} : { note }),
});
const device = clause(
	"4",
	"read",
	"for each gang of a wider device, and of the conductor connected: recalled; some pages take the largest in the box",
);
const grounds = clause("5", "read", "before 2020 all grounds counted one, and isolated grounds one more (recalled)");
const allowances: readonly (readonly [BoxContent, number, AllowanceOf, boolean, Provenance])[] = [
	["conductor that ends or is spliced", 1, "its own size", false, clause("1", "read")],
	["conductor that passes unbroken", 1, "its own size", false, clause("1", "read")],
	["unbroken loop, twice the free length or more", 2, "its own size", false, clause("1", "recalled")],
	["conductor wholly inside", 0, "its own size", false, clause("1", "read")],
	["internal clamps", 1, "the largest in the box", true, clause("2", "read")],
	["clamp outside the box", 0, "the largest in the box", true, clause("2", "recalled")],
	["luminaire stud or hickey", 1, "the largest in the box", false, clause("3", "read")],
	["device yoke", 2, "the largest connected to it", false, device],
	["equipment grounds, up to four", 1, "the largest ground", true, grounds],
	["each equipment ground over four", 0.25, "the largest ground", false, clause("5", "recalled", "since 2020")],
	["terminal block", 1, "the largest in the box", false, clause("6", "recalled", "since 2023; low confidence")],
];

/** The counting rules. Up to four fixture wires under 14 AWG with their ground may be left out under a canopy (recalled). */
export const boxAllowances: Table<BoxAllowance> = table<BoxAllowance>(
	"box-fill",
	"What counts in a box, and for how much",
	[
		["content", (row) => row.content],
		["allowances", (row) => row.allowances],
		["of", (row) => row.of],
		["counted", (row) => (row.inAll ? "once for all" : "each")],
	],
	allowances.map(([content, count, of, inAll, provenance]) => ({ content, allowances: count, of, inAll, provenance })),
);

/** The volume of one conductor; a size between two rows takes that of the thicker one. Undefined above 6 AWG. */
export function conductorVolume(gauge: Gauge): Sourced<ConductorVolume> | undefined {
	return conductorVolumes.rows.find((row) => compareGauges(row.gauge, gauge) >= 0);
}

/** How much one sort of content counts. */
export function boxAllowance(content: BoxContent): Sourced<BoxAllowance> {
	return certain(
		boxAllowances.rows.find((row) => row.content === content),
		`the allowance for a ${content}`,
	);
}
