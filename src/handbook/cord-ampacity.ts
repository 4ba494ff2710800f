// How many amperes a flexible cord carries.
import { formatGauge, type Gauge } from "../base/gauge.ts";
import type { Known, Sourced } from "./provenance.ts";
import { type AwgLabel, awgOf, rowAtOrBelow } from "./sizes.ts";
import { type Clause, clauseTable, type Table, table } from "./table.ts";

/** Amperes of one size of cord, with two or with three of its conductors carrying current. The ground does not count. */
export interface CordAmpacity {
	readonly gauge: Gauge;
	readonly carrying: 2 | 3;
	readonly ampere: number;
}

const rows: readonly (readonly [AwgLabel, 2 | 3, number, Known])[] = [
	["18", 2, 10, "read"],
	["17", 2, 12, "read"],
	["16", 2, 13, "read"],
	["15", 2, 17, "recalled"],
	["14", 2, 18, "read"],
	["12", 2, 25, "read"],
	["10", 2, 30, "recalled"],
	["8", 2, 40, "recalled"],
	["6", 2, 55, "recalled"],
	["4", 2, 70, "recalled"],
	["2", 2, 95, "recalled"],
	["18", 3, 7, "recalled"],
	["16", 3, 10, "recalled"],
	["14", 3, 15, "recalled"],
	["12", 3, 20, "recalled"],
	["10", 3, 25, "recalled"],
	["8", 3, 35, "recalled"],
	["6", 3, 45, "recalled"],
	["4", 3, 60, "recalled"],
	["2", 3, 80, "recalled"],
];

/** Ampacity of flexible cords, 30 C. */
export const cordAmpacities: Table<CordAmpacity> = table<CordAmpacity>(
	"cord-ampacity",
	"Ampacity of flexible cords, 30 C",
	[
		["size", (row) => formatGauge(row.gauge)],
		["conductors carrying current", (row) => row.carrying],
		["A", (row) => row.ampere],
	],
	rows.map(([label, carrying, ampere, known]) => ({
		gauge: awgOf(label),
		carrying,
		ampere,
		provenance: { source: `NFPA 70 Table 400.5(A)(1), column ${carrying === 2 ? "B" : "A"}`, known },
	})),
);

/** The riders to the table. */
export const cordClauses: Table<Clause> = clauseTable("cord-clauses", "What else holds for flexible cords", [
	{
		clause: "400.5(A) bundling",
		topic: "more than three conductors",
		says: "four to six carrying current 80 %, seven to nine 70 %, ten to twenty 50 %",
		provenance: { source: "NFPA 70 400.5", known: "read", note: "quoted in a trade magazine" },
	},
	{
		clause: "400.5(A) ambient",
		topic: "ambient",
		says: "factors of the 60 C column unless the cord is marked for more",
		provenance: { source: "NFPA 70 400.5", known: "read", note: "quoted in a trade magazine" },
	},
]);

/** Amperes of a cord; a size between two rows has the figure of the thinner one. Undefined below 18 AWG. */
export function cordAmpacity(gauge: Gauge, carrying: 2 | 3): Sourced<CordAmpacity> | undefined {
	return rowAtOrBelow(
		cordAmpacities.rows.filter((row) => row.carrying === carrying),
		gauge,
	);
}
