// How many amperes an insulated copper conductor carries by IEC installation method, and on small craft by ISO.
import { formatGauge, type Gauge, squareMillimetres } from "../base/gauge.ts";
import type { Provenance, Sourced } from "./provenance.ts";
import { rowAtOrBelow } from "./sizes.ts";
import { type Table, table } from "./table.ts";

/**
 * Installation methods: `a1` insulated conductors in conduit in an insulated wall, `b1` in conduit on a wall,
 * `b2` multicore cable in conduit on a wall, `c` cable on a wall.
 */
export type InstallationMethod = "a1" | "b1" | "b2" | "c";

/** Amperes of one size of PVC-insulated copper, 30 C. Undefined: not in the table read. */
export interface IecAmpacity {
	readonly loaded: 2 | 3;
	readonly gauge: Gauge;
	readonly a1: number | undefined;
	readonly b1: number | undefined;
	readonly b2: number;
	readonly c: number;
}

const twoLoaded: Provenance = {
	source: "IEC 60364-5-52 Table B.52.2",
	edition: "2009",
	known: "recalled",
	note: "not found in stored text; the three-loaded table and the ambient factors were read and agree with the same memory",
};
const twoLoaded25: Provenance = {
	...twoLoaded,
	note: "a1 and b1 of this row were read in a trade forum that quotes BS 7671 Table 4D1A",
};
const threeLoaded: Provenance = {
	source: "IEC 60364-5-52 Table B.52.4",
	known: "read",
	note: "reprinted in an industrial machine instruction book",
};
const threeLoaded15: Provenance = {
	...threeLoaded,
	note: "method c as printed; the standard is recalled to have 17.5 A",
};

type Cell = number | undefined;
const rows: readonly (readonly [2 | 3, number, Cell, Cell, number, number, Provenance])[] = [
	[2, 1.5, 14.5, 17.5, 16.5, 19.5, twoLoaded],
	[2, 2.5, 19.5, 24, 23, 27, twoLoaded],
	[2, 4, 26, 32, 30, 36, twoLoaded],
	[2, 6, 34, 41, 38, 46, twoLoaded],
	[2, 10, 46, 57, 52, 63, twoLoaded],
	[2, 16, 61, 76, 69, 85, twoLoaded],
	[2, 25, 80, 101, 90, 112, twoLoaded25],
	[2, 35, 99, 125, 111, 138, twoLoaded],
	[3, 1.5, undefined, undefined, 15, 17, threeLoaded15],
	[3, 2.5, undefined, undefined, 20, 24, threeLoaded],
	[3, 4, undefined, undefined, 27, 32, threeLoaded],
	[3, 6, undefined, undefined, 34, 41, threeLoaded],
	[3, 10, undefined, undefined, 46, 57, threeLoaded],
	[3, 16, undefined, undefined, 62, 76, threeLoaded],
	[3, 25, undefined, undefined, 80, 96, threeLoaded],
	[3, 35, undefined, undefined, 99, 119, threeLoaded],
];

/** Ampacity by installation method. */
export const iecAmpacities: Table<IecAmpacity> = table<IecAmpacity>(
	"iec-ampacity",
	"Current-carrying capacity of PVC-insulated copper by installation method, 70 C conductor, 30 C air",
	[
		["loaded conductors", (row) => row.loaded],
		["size", (row) => formatGauge(row.gauge)],
		["A1, A", (row) => row.a1],
		["B1, A", (row) => row.b1],
		["B2, A", (row) => row.b2],
		["C, A", (row) => row.c],
	],
	rows.map(([loaded, mm2, a1, b1, b2, c, provenance]) => ({
		loaded,
		gauge: squareMillimetres(mm2),
		a1,
		b1,
		b2,
		c,
		provenance,
	})),
);

/** Insulation ratings of the small-craft table, degrees Celsius; 90 stands for 85 to 90. */
export const craftColumns = [60, 70, 90, 105, 125, 200] as const;
export type CraftColumn = (typeof craftColumns)[number];
/** Amperes of one metric size on small craft. */
export interface CraftAmpacity {
	readonly gauge: Gauge;
	readonly amperes: Readonly<Record<CraftColumn, number>>;
}

const craft: Provenance = {
	source: "ISO 10133 Annex A",
	edition: "2012",
	known: "recalled",
	note: "moderate confidence: not for a verdict by itself until someone reads the standard",
};
const craftRows: readonly (readonly [number, number, number, number, number, number, number])[] = [
	[0.75, 6, 10, 12, 16, 20, 25],
	[1, 8, 14, 18, 20, 25, 35],
	[1.5, 12, 18, 21, 25, 30, 40],
	[2.5, 17, 25, 30, 35, 40, 45],
	[4, 22, 35, 40, 45, 50, 55],
	[6, 29, 45, 50, 60, 70, 75],
	[10, 40, 65, 70, 90, 100, 120],
	[16, 54, 90, 100, 130, 150, 170],
	[25, 71, 120, 140, 170, 185, 200],
	[35, 87, 160, 185, 210, 225, 240],
	[50, 105, 210, 230, 270, 300, 325],
	[70, 135, 265, 285, 330, 360, 375],
	[95, 165, 310, 330, 390, 410, 430],
];

/** Ampacity on small craft by metric size, outside engine spaces. */
export const craftAmpacities: Table<CraftAmpacity> = table<CraftAmpacity>(
	"craft-ampacity",
	"Allowable continuous current of single conductors on small craft, 30 C",
	[
		["size", (row) => formatGauge(row.gauge)],
		...craftColumns.map((column) => [`${column} C, A`, (row: CraftAmpacity) => row.amperes[column]] as const),
	],
	craftRows.map(([mm2, at60, at70, at90, at105, at125, at200]) => ({
		gauge: squareMillimetres(mm2),
		amperes: { 60: at60, 70: at70, 90: at90, 105: at105, 125: at125, 200: at200 },
		provenance: craft,
	})),
);

/** Amperes by method; a size between two rows has the figure of the thinner one. Undefined where the table has none. */
export function iecAmpacity(
	gauge: Gauge,
	method: InstallationMethod,
	loaded: 2 | 3 = 2,
): Sourced<{ readonly gauge: Gauge; readonly ampere: number }> | undefined {
	const row = rowAtOrBelow(
		iecAmpacities.rows.filter((candidate) => candidate.loaded === loaded),
		gauge,
	);
	const ampere = row?.[method];
	return row === undefined || ampere === undefined
		? undefined
		: { gauge: row.gauge, ampere, provenance: row.provenance };
}

/** Amperes on small craft by metric size, of the thinner row and the cooler column; undefined for what the table does not know. */
export function craftAmpacity(
	gauge: Gauge,
	celsius: number,
): Sourced<{ readonly gauge: Gauge; readonly column: CraftColumn; readonly ampere: number }> | undefined {
	const row = rowAtOrBelow(craftAmpacities.rows, gauge);
	const column = craftColumns.findLast((each) => each <= celsius);
	if (row === undefined || column === undefined) return undefined;
	return { gauge: row.gauge, column, ampere: row.amperes[column], provenance: row.provenance };
}
