// How much a crystalline solar module's open-circuit voltage rises in the cold.
import { certain } from "../base/certain.ts";
import type { Provenance, Sourced } from "./provenance.ts";
import { type Table, table } from "./table.ts";

/** The factor on the open-circuit voltage where the coldest day is no colder than so many degrees. */
export interface ColdFactor {
	/** Degrees Celsius. */
	readonly downTo: number;
	readonly factor: number;
}

const source: Provenance = { source: "NFPA 70 Table 690.7(A)", known: "recalled" };
const rows: readonly (readonly [number, number])[] = [
	[20, 1.02],
	[15, 1.04],
	[10, 1.06],
	[5, 1.08],
	[0, 1.1],
	[-5, 1.12],
	[-10, 1.14],
	[-15, 1.16],
	[-20, 1.18],
	[-25, 1.2],
	[-30, 1.21],
	[-35, 1.23],
	[-40, 1.25],
];

/** Cold factors, from mild to cold. */
export const coldFactors: Table<ColdFactor> = table<ColdFactor>(
	"solar-cold",
	"Rise of the open-circuit voltage of crystalline modules in the cold",
	[
		["down to, C", (row) => row.downTo],
		["factor", (row) => row.factor],
	],
	rows.map(([downTo, factor]) => ({ downTo, factor, provenance: source })),
);

/** The factor for the coldest day; that of the last row where nothing is known of it or it is colder still. */
export function coldFactor(coldest: number | undefined): Sourced<ColdFactor> {
	const last = certain(coldFactors.rows.at(-1), "the coldest row");
	return coldest === undefined ? last : (coldFactors.rows.find(({ downTo }) => coldest >= downTo) ?? last);
}
