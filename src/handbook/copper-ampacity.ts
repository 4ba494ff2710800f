// How many amperes an insulated copper conductor carries in a cable or raceway: the North American base table.
import { formatGauge, type Gauge } from "../base/gauge.ts";
import type { Provenance, Sourced } from "./provenance.ts";
import { type AwgLabel, awgOf, rowAtOrBelow } from "./sizes.ts";
import { type Clause, clauseTable, type Table, table } from "./table.ts";

/** Insulation and terminal temperatures the table knows, degrees Celsius. */
export type TemperatureColumn = 60 | 75 | 90;

/** Ampacities of one size, amperes, at 30 C and with at most three current-carrying conductors. */
export interface CopperAmpacity {
	readonly gauge: Gauge;
	readonly at60: number;
	readonly at75: number;
	readonly at90: number;
}

const provenance: Provenance = {
	source: "NFPA 70 Table 310.16",
	edition: "2020, 2023",
	known: "read",
	note: "two reprints agree; editions before 2011 printed 20 and 25 A for 14 and 12 AWG at 60 C, 110 and 150 A for 3 and 1 AWG at 90 C",
};
const rows: readonly (readonly [AwgLabel, number, number, number])[] = [
	["14", 15, 20, 25],
	["12", 20, 25, 30],
	["10", 30, 35, 40],
	["8", 40, 50, 55],
	["6", 55, 65, 75],
	["4", 70, 85, 95],
	["3", 85, 100, 115],
	["2", 95, 115, 130],
	["1", 110, 130, 145],
	["1/0", 125, 150, 170],
	["2/0", 145, 175, 195],
	["3/0", 165, 200, 225],
	["4/0", 195, 230, 260],
];

/** Ampacity of insulated copper, before correction for ambient and bundling. */
export const copperAmpacities: Table<CopperAmpacity> = table<CopperAmpacity>(
	"copper-ampacity",
	"Ampacity of insulated copper conductors in raceway, cable or earth, at most three carrying current, 30 C",
	[
		["size", (row) => formatGauge(row.gauge)],
		["60 C, A", (row) => row.at60],
		["75 C, A", (row) => row.at75],
		["90 C, A", (row) => row.at90],
	],
	rows.map(([label, at60, at75, at90]) => ({ gauge: awgOf(label), at60, at75, at90, provenance })),
);

const recalled = (source: string): Provenance => ({ source, known: "recalled" });

/** Which column of the table may be used. Recalled: say so where a verdict rests on one. */
export const ampacityClauses: Table<Clause> = clauseTable("ampacity-clauses", "Which ampacity column may be used", [
	{
		clause: "110.14(C)",
		topic: "terminals",
		says: "up to 100 A (or 14 to 1 AWG) the 60 C column holds unless every terminal is marked for 75 C; the 90 C column is only a start for derating",
		provenance: recalled("NFPA 70 110.14(C)"),
	},
	{
		clause: "334.80",
		topic: "nonmetallic-sheathed cable",
		says: "the 60 C column decides, whatever the insulation; derating may start from the 90 C column",
		provenance: recalled("NFPA 70 334.80"),
	},
]);

/** The column for an insulation or terminal rating: the warmest that the rating reaches; undefined below 60 C. */
function temperatureColumn(celsius: number): TemperatureColumn | undefined {
	return columns.find((column) => column <= celsius);
}

/**
 * Amperes of a copper conductor at a temperature rating, before correction. A size between two rows has the figure of
 * the thinner one. Undefined below 14 AWG or 60 C: the table has no row.
 */
export function copperAmpacity(
	gauge: Gauge,
	celsius: number,
): Sourced<{ readonly gauge: Gauge; readonly column: TemperatureColumn; readonly ampere: number }> | undefined {
	const row = rowAtOrBelow(copperAmpacities.rows, gauge);
	const column = temperatureColumn(celsius);
	if (row === undefined || column === undefined) return undefined;
	const ampere = { 60: row.at60, 75: row.at75, 90: row.at90 }[column];
	return { gauge: row.gauge, column, ampere, provenance: row.provenance };
}

const columns: readonly TemperatureColumn[] = [90, 75, 60];
