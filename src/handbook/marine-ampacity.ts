// How many amperes a conductor carries on a boat: a public-law table, and the best one for direct current anywhere.
import { certain } from "../base/certain.ts";
import { formatGauge, type Gauge } from "../base/gauge.ts";
import type { Known, Provenance, Sourced } from "./provenance.ts";
import { type AwgLabel, awgOf, rowAtOrBelow } from "./sizes.ts";
import { type Table, table } from "./table.ts";

/** Insulation temperature ratings of the table, degrees Celsius. */
export const marineColumns = [60, 75, 80, 90, 105, 125, 200] as const;
export type MarineColumn = (typeof marineColumns)[number];

/** Amperes of one size outside engine spaces, one figure for each of `marineColumns`. */
export interface MarineAmpacity {
	readonly gauge: Gauge;
	readonly amperes: Readonly<Record<MarineColumn, number>>;
}

const law: Provenance = {
	source: "33 CFR 183.425 Table 5",
	known: "read",
	note: "ABYC E-11 gives the same 105 C column; continuous current, single conductors, not bundled",
};
const rows: readonly (readonly [AwgLabel, number, number, number, number, number, number, number])[] = [
	["18", 10, 10, 15, 20, 20, 25, 25],
	["16", 15, 15, 20, 25, 25, 30, 35],
	["14", 20, 20, 25, 30, 35, 40, 45],
	["12", 25, 25, 35, 40, 45, 50, 55],
	["10", 40, 40, 50, 55, 60, 70, 70],
	["8", 55, 65, 70, 70, 80, 90, 100],
	["6", 80, 95, 100, 100, 120, 125, 135],
	["4", 105, 125, 130, 135, 160, 170, 180],
	["3", 120, 145, 150, 155, 180, 195, 210],
	["2", 140, 170, 175, 180, 210, 225, 240],
	["1", 165, 195, 210, 210, 245, 265, 280],
	["1/0", 195, 230, 245, 245, 285, 305, 325],
	["2/0", 225, 265, 285, 285, 330, 355, 370],
	["3/0", 260, 310, 330, 330, 385, 410, 430],
	["4/0", 300, 360, 385, 385, 445, 475, 510],
];

/** Ampacity on boats, outside engine spaces, 30 C. */
export const marineAmpacities: Table<MarineAmpacity> = table<MarineAmpacity>(
	"marine-ampacity",
	"Ampacity of conductors on boats, outside engine spaces, 30 C",
	[
		["size", (row) => formatGauge(row.gauge)],
		...marineColumns.map((column) => [`${column} C, A`, (row: MarineAmpacity) => row.amperes[column]] as const),
	],
	rows.map(([label, at60, at75, at80, at90, at105, at125, at200]) => ({
		gauge: awgOf(label),
		amperes: { 60: at60, 75: at75, 80: at80, 90: at90, 105: at105, 125: at125, 200: at200 },
		provenance: law,
	})),
);

/** The factor of one insulation rating inside an engine space (50 C). */
export interface EngineSpaceFactor {
	readonly column: MarineColumn;
	readonly factor: number;
}

const engine: readonly (readonly [MarineColumn, number, Known])[] = [
	[60, 0.58, "recalled"],
	[75, 0.75, "recalled"],
	[80, 0.78, "recalled"],
	[90, 0.82, "recalled"],
	[105, 0.85, "read"],
	[125, 0.89, "recalled"],
	[200, 1, "recalled"],
];

/** Engine-space factors. */
export const engineSpaceFactors: Table<EngineSpaceFactor> = table<EngineSpaceFactor>(
	"engine-space-factors",
	"Factors on boat ampacity inside engine spaces, 50 C",
	[
		["insulation, C", (row) => row.column],
		["factor", (row) => row.factor],
	],
	engine.map(([column, factor, known]) => ({
		column,
		factor,
		provenance: { source: "33 CFR 183.425 Table 5 note 1", known },
	})),
);

/** The factor for a number of current-carrying conductors bundled on a boat. */
export interface MarineBundling {
	readonly from: number;
	readonly upTo: number;
	readonly factor: number;
}

const marineBundle: Provenance = {
	source: "33 CFR 183.425 Table 5 note 2, as in ABYC E-11",
	known: "read",
	note: "one catalogue page, which starts at three; it sets no bundling limit under 50 V, so taking the factor there is the careful reading",
};
const bundles: readonly (readonly [number, number, number])[] = [
	[1, 2, 1],
	[3, 3, 0.7],
	[4, 6, 0.6],
	[7, 24, 0.5],
	[25, Number.MAX_SAFE_INTEGER, 0.4],
];

/** Bundling factors on boats. */
export const marineBundlings: Table<MarineBundling> = table<MarineBundling>(
	"marine-bundling-factors",
	"Factors on boat ampacity for bundled current-carrying conductors",
	[
		["conductors from", (row) => row.from],
		["up to", (row) => (row.upTo === Number.MAX_SAFE_INTEGER ? "more" : row.upTo)],
		["factor", (row) => row.factor],
	],
	bundles.map(([from, upTo, factor]) => ({ from, upTo, factor, provenance: marineBundle })),
);

/** How far a device may exceed the table value on a boat. */
export const marineDeviceAllowance: Sourced<{ readonly share: number; readonly belowVolts: number }> = {
	share: 1.5,
	belowVolts: 50,
	provenance: {
		source: "33 CFR 183.455",
		known: "read",
		note: "from 50 V up: not over the value, or the next standard size up to 150 % of it",
	},
};

/** The column for an insulation rating: the warmest it reaches; undefined below 60 C. */
function marineColumn(celsius: number): MarineColumn | undefined {
	return marineColumns.findLast((column) => column <= celsius);
}

/** Amperes on a boat outside engine spaces. A size between two rows has the figure of the thinner one. */
export function marineAmpacity(
	gauge: Gauge,
	celsius: number,
): Sourced<{ readonly gauge: Gauge; readonly column: MarineColumn; readonly ampere: number }> | undefined {
	const row = rowAtOrBelow(marineAmpacities.rows, gauge);
	const column = marineColumn(celsius);
	if (row === undefined || column === undefined) return undefined;
	return { gauge: row.gauge, column, ampere: row.amperes[column], provenance: row.provenance };
}

/** The engine-space factor of an insulation rating from 60 C up. */
export function engineSpaceFactor(celsius: number): Sourced<EngineSpaceFactor> {
	return certain(
		engineSpaceFactors.rows.findLast((row) => row.column <= celsius),
		`the engine-space factor at ${celsius} C`,
	);
}

/** The bundling factor of so many conductors on a boat. */
export function marineBundlingFactor(conductors: number): Sourced<MarineBundling> {
	return certain(
		marineBundlings.rows.find(({ upTo }) => conductors <= upTo),
		`the bundling factor of ${conductors} conductors`,
	);
}
