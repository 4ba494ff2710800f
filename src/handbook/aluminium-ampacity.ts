// How many amperes an insulated aluminium conductor carries in a cable or raceway, and its largest device where it is thin.
import { compareGauges, formatGauge, type Gauge } from "../base/gauge.ts";
import type { TemperatureColumn } from "./copper-ampacity.ts";
import type { Provenance, Sourced } from "./provenance.ts";
import { type AwgLabel, awgOf, rowAtOrBelow } from "./sizes.ts";
import { type Table, table } from "./table.ts";

/** Ampacities of one size, amperes, at 30 C and with at most three current-carrying conductors. */
export interface AluminiumAmpacity {
	readonly gauge: Gauge;
	readonly at60: number;
	readonly at75: number;
	readonly at90: number;
}

const provenance: Provenance = {
	source: "NFPA 70 Table 310.16",
	edition: "2020, 2023",
	known: "recalled",
	note: "the columns for aluminium and copper-clad aluminium; 14 AWG has none",
};
const rows: readonly (readonly [AwgLabel, number, number, number])[] = [
	["12", 15, 20, 25],
	["10", 25, 30, 35],
	["8", 35, 40, 45],
	["6", 40, 50, 55],
	["4", 55, 65, 75],
	["3", 65, 75, 85],
	["2", 75, 90, 100],
	["1", 85, 100, 115],
	["1/0", 100, 120, 135],
	["2/0", 115, 135, 150],
	["3/0", 130, 155, 175],
	["4/0", 150, 180, 205],
];

/** Ampacity of insulated aluminium, before correction for ambient and bundling. */
export const aluminiumAmpacities: Table<AluminiumAmpacity> = table<AluminiumAmpacity>(
	"aluminium-ampacity",
	"Ampacity of insulated aluminium conductors in raceway, cable or earth, at most three carrying current, 30 C",
	[
		["size", (row) => formatGauge(row.gauge)],
		["60 C, A", (row) => row.at60],
		["75 C, A", (row) => row.at75],
		["90 C, A", (row) => row.at90],
	],
	rows.map(([label, at60, at75, at90]) => ({ gauge: awgOf(label), at60, at75, at90, provenance })),
);

/** The limit for one size of thin aluminium. */
export interface SmallAluminium {
	readonly gauge: Gauge;
	/** Largest protective device, amperes. */
	readonly largest: number;
}

/** Small aluminium conductors and their largest device. */
export const smallAluminiums: Table<SmallAluminium> = table<SmallAluminium>(
	"small-aluminium",
	"Largest overcurrent device for small aluminium conductors",
	[
		["size", (row) => formatGauge(row.gauge)],
		["largest device, A", (row) => row.largest],
	],
	[
		{ gauge: awgOf("12"), largest: 15, provenance: { source: "NFPA 70 240.4(D)", known: "recalled" } },
		{ gauge: awgOf("10"), largest: 25, provenance: { source: "NFPA 70 240.4(D)", known: "recalled" } },
	],
);

/**
 * Amperes of an aluminium conductor at a temperature rating, before correction. A size between two rows has the figure of
 * the thinner one. Undefined below 12 AWG or 60 C: the table has no row.
 */
export function aluminiumAmpacity(
	gauge: Gauge,
	celsius: number,
): Sourced<{ readonly gauge: Gauge; readonly column: TemperatureColumn; readonly ampere: number }> | undefined {
	const row = rowAtOrBelow(aluminiumAmpacities.rows, gauge);
	if (row === undefined || celsius < 60) return undefined;
	const column = celsius >= 90 ? 90 : celsius >= 75 ? 75 : 60;
	return {
		gauge: row.gauge,
		column,
		ampere: { 60: row.at60, 75: row.at75, 90: row.at90 }[column],
		provenance: row.provenance,
	};
}

/** The limit for a thin aluminium conductor; undefined from 8 AWG up, where the clause sets none. */
export function smallAluminiumLimit(gauge: Gauge): Sourced<SmallAluminium> | undefined {
	return compareGauges(gauge, awgOf("8")) >= 0 ? undefined : rowAtOrBelow(smallAluminiums.rows, gauge);
}
