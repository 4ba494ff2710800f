// What ambient temperature and bundling do to a North American table ampacity.
import type { TemperatureColumn } from "./copper-ampacity.ts";
import type { Known, Provenance, Sourced } from "./provenance.ts";
import { type Table, table } from "./table.ts";

/** Factors for one band of ambient temperature, on a 30 C basis. Undefined: the insulation does not bear it. */
export interface AmbientFactor {
	/** Lower and upper end of the band, degrees Celsius; the first band has no lower end. */
	readonly from: number | undefined;
	readonly upTo: number;
	readonly for60: number | undefined;
	readonly for75: number | undefined;
	readonly for90: number | undefined;
}

type Cell = number | undefined;
const ambient: readonly (readonly [Cell, number, Cell, Cell, Cell, Known])[] = [
	[undefined, 10, 1.29, 1.2, 1.15, "read"],
	[11, 15, 1.22, 1.15, 1.12, "read"],
	[16, 20, 1.15, 1.11, 1.08, "read"],
	[21, 25, 1.08, 1.05, 1.04, "read"],
	[26, 30, 1, 1, 1, "read"],
	[31, 35, 0.91, 0.94, 0.96, "read"],
	[36, 40, 0.82, 0.88, 0.91, "read"],
	[41, 45, 0.71, 0.82, 0.87, "read"],
	[46, 50, 0.58, 0.75, 0.82, "read"],
	[51, 55, 0.41, 0.67, 0.76, "read"],
	[56, 60, undefined, 0.58, 0.71, "read"],
	[61, 65, undefined, 0.47, 0.65, "recalled"],
	[66, 70, undefined, 0.33, 0.58, "recalled"],
	[71, 75, undefined, undefined, 0.5, "recalled"],
	[76, 80, undefined, undefined, 0.41, "recalled"],
	[81, 85, undefined, undefined, 0.29, "recalled"],
];

/** Ambient factors. Every one equals sqrt((Tc - Ta) / (Tc - 30)) at the upper end of its band, to two decimals. */
export const ambientFactors: Table<AmbientFactor> = table<AmbientFactor>(
	"ambient-factors",
	"Ambient temperature factors on ampacity, 30 C basis",
	[
		["from, C", (row) => row.from],
		["up to, C", (row) => row.upTo],
		["60 C", (row) => row.for60],
		["75 C", (row) => row.for75],
		["90 C", (row) => row.for90],
	],
	ambient.map(([from, upTo, for60, for75, for90, known]) => ({
		from,
		upTo,
		for60,
		for75,
		for90,
		provenance: { source: "NFPA 70 Table 310.15(B)(1)(1)", edition: "2020, 2023", known },
	})),
);

/** The factor for a number of current-carrying conductors that run together. */
export interface BundlingFactor {
	readonly from: number;
	readonly upTo: number;
	readonly factor: number;
}

const bundling: Provenance = {
	source: "NFPA 70 Table 310.15(C)(1)",
	edition: "2020, 2023",
	known: "read",
	note: "cables bundled for more than 24 in count as one; an equipment ground does not count, nor (recalled) a neutral that carries only the unbalance of two legs",
};
const bundles: readonly (readonly [number, number, number])[] = [
	[1, 3, 1],
	[4, 6, 0.8],
	[7, 9, 0.7],
	[10, 20, 0.5],
	[21, 30, 0.45],
	[31, 40, 0.4],
	[41, Number.MAX_SAFE_INTEGER, 0.35],
];

/** Bundling factors, after ambient correction. */
export const bundlingFactors: Table<BundlingFactor> = table<BundlingFactor>(
	"bundling-factors",
	"Factors for more than three current-carrying conductors in one raceway, cable or bundle",
	[
		["conductors from", (row) => row.from],
		["up to", (row) => (row.upTo === Number.MAX_SAFE_INTEGER ? "more" : row.upTo)],
		["factor", (row) => row.factor],
	],
	bundles.map(([from, upTo, factor]) => ({ from, upTo, factor, provenance: bundling })),
);

/** A factor with its source. */
export type SourcedFactor = Sourced<{ readonly factor: number }>;

/** The ambient factor for a temperature column; undefined where the insulation does not bear that ambient. */
export function ambientFactor(celsius: number, column: TemperatureColumn): SourcedFactor | undefined {
	const row = ambientFactors.rows.find(({ upTo }) => celsius <= upTo);
	if (row === undefined) return undefined;
	const factor = { 60: row.for60, 75: row.for75, 90: row.for90 }[column];
	return factor === undefined ? undefined : { factor, provenance: row.provenance };
}

/** The factor for a number of current-carrying conductors; undefined for fewer than one. */
export function bundlingFactor(conductors: number): SourcedFactor | undefined {
	return bundlingFactors.rows.find(({ from, upTo }) => conductors >= from && conductors <= upTo);
}
