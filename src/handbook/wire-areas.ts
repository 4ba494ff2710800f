// Conductor areas as they are printed: for comparing with the formula, and for SAE wire, which is thinner than AWG.
import { formatGauge, type Gauge } from "../base/gauge.ts";
import type { Provenance, Sourced } from "./provenance.ts";
import { type AwgLabel, awgOf } from "./sizes.ts";
import { type Table, table } from "./table.ts";

/** A printed area or diameter of one size. */
export interface WireArea {
	readonly gauge: Gauge;
	/** Area as a university physics table prints it, circular mils. */
	readonly circularMils: number;
	/** Area as NFPA 70 Chapter 9 Table 8 rounds it, circular mils. */
	readonly table8: number | undefined;
	/** Smallest area of SAE wire of the same number, circular mils. */
	readonly sae: number | undefined;
	/** Diameter of the solid conductor as a reference page prints it, millimetres. */
	readonly diameter: number;
}

const provenance: Provenance = {
	source:
		"university physics table of the American wire gauge; NFPA 70 Chapter 9 Table 8; SAE J1127 and J1128 areas; reference page of wire diameters",
	known: "read",
	note: "a circular mil is 0.000506707 mm2; the 18 AWG SAE figure has one reading only",
};
type Cell = number | undefined;
const rows: readonly (readonly [AwgLabel, number, Cell, Cell, number])[] = [
	["22", 642.4, undefined, undefined, 0.6452],
	["20", 1021.5, undefined, undefined, 0.8128],
	["18", 1624.3, 1620, 1537, 1.0236],
	["16", 2582.9, 2580, 2336, 1.2903],
	["14", 4106.8, 4110, 3702, 1.6281],
	["12", 6529, 6530, 5833, 2.0523],
	["10", 10381, 10380, 9343, 2.5883],
	["8", 16509, 16510, 14810, 3.2639],
	["6", 26250, 26240, 24538, 4.1148],
	["4", 41742, 41740, 37360, 5.1892],
	["3", 52634, 52620, undefined, 5.8268],
	["2", 66373, 66360, 62450, 6.543],
	["1", 83694, 83690, 77790, 7.3482],
	["1/0", 105530, 105600, 98980, 8.2525],
	["2/0", 133080, 133100, 125100, 9.2659],
	["3/0", 167810, 167800, 158600, 10.4038],
	["4/0", 211600, 211600, 205500, 11.684],
];

/** Printed areas and diameters. */
export const wireAreas: Table<WireArea> = table<WireArea>(
	"wire-areas",
	"American wire gauge: areas and diameters as printed",
	[
		["size", (row) => formatGauge(row.gauge)],
		["area, circular mils", (row) => row.circularMils],
		["Chapter 9 Table 8", (row) => row.table8],
		["least SAE area", (row) => row.sae],
		["diameter, mm", (row) => row.diameter],
	],
	rows.map(([label, circularMils, table8, sae, diameter]) => ({
		gauge: awgOf(label),
		circularMils,
		table8,
		sae,
		diameter,
		provenance,
	})),
);

/** The printed areas of a size by its label: `12`, `4/0`. */
export function wireAreaOf(label: string): Sourced<WireArea> | undefined {
	return wireAreas.rows.find((row) => row.gauge.label === label);
}
