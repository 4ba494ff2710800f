// What ambient temperature and bunching do to an IEC current-carrying capacity.
import type { SourcedFactor } from "./ampacity-corrections.ts";
import type { Known } from "./provenance.ts";
import { type Table, table } from "./table.ts";

/** The factor at one ambient temperature, PVC in air, 30 C basis. */
export interface IecAmbientFactor {
	readonly celsius: number;
	readonly factor: number;
}

const ambient: readonly (readonly [number, number, Known])[] = [
	[10, 1.22, "recalled"],
	[15, 1.17, "recalled"],
	[20, 1.12, "recalled"],
	[25, 1.06, "recalled"],
	[30, 1, "read"],
	[35, 0.94, "read"],
	[40, 0.87, "read"],
	[45, 0.79, "read"],
	[50, 0.71, "read"],
	[55, 0.61, "read"],
	[60, 0.5, "recalled"],
];

/** Ambient factors for PVC insulation. */
export const iecAmbientFactors: Table<IecAmbientFactor> = table<IecAmbientFactor>(
	"iec-ambient-factors",
	"Ambient temperature factors, PVC-insulated cables in air, 30 C basis",
	[
		["ambient, C", (row) => row.celsius],
		["factor", (row) => row.factor],
	],
	ambient.map(([celsius, factor, known]) => ({
		celsius,
		factor,
		provenance: { source: "IEC 60364-5-52 Table B.52.14", edition: "2009", known },
	})),
);

/** The factor for a number of circuits bunched together. */
export interface IecBunchingFactor {
	readonly circuits: number;
	readonly factor: number;
}

const bunched: readonly (readonly [number, number, Known])[] = [
	[1, 1, "recalled"],
	[2, 0.8, "read"],
	[3, 0.7, "read"],
	[4, 0.65, "read"],
	[5, 0.6, "read"],
	[6, 0.57, "read"],
	[7, 0.54, "read"],
	[8, 0.52, "read"],
	[9, 0.5, "read"],
	[10, 0.48, "read"],
	[12, 0.45, "recalled"],
	[16, 0.41, "recalled"],
	[20, 0.38, "recalled"],
];

/** Bunching factors. */
export const iecBunchingFactors: Table<IecBunchingFactor> = table<IecBunchingFactor>(
	"iec-bunching-factors",
	"Factors for circuits bunched together",
	[
		["circuits", (row) => row.circuits],
		["factor", (row) => row.factor],
	],
	bunched.map(([circuits, factor, known]) => ({
		circuits,
		factor,
		provenance: { source: "IEC 60364-5-52 Table B.52.17", edition: "2009", known },
	})),
);

/** The factor of the next warmer row; undefined above 60 C. */
export function iecAmbientFactor(celsius: number): SourcedFactor | undefined {
	return iecAmbientFactors.rows.find((row) => row.celsius >= celsius);
}

/** The factor of the next larger row; undefined above 20 circuits or below one. */
export function iecBunchingFactor(circuits: number): SourcedFactor | undefined {
	return circuits < 1 ? undefined : iecBunchingFactors.rows.find((row) => row.circuits >= circuits);
}
