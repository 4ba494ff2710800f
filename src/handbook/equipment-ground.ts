// The smallest equipment grounding conductor by the rating of the protective device ahead of it.
import { formatGauge, type Gauge } from "../base/gauge.ts";
import type { Provenance, Sourced } from "./provenance.ts";
import { type AwgLabel, awgOf } from "./sizes.ts";
import { type Clause, clauseTable, type Table, table } from "./table.ts";

/** The smallest equipment ground for devices up to a rating. */
export interface EquipmentGround {
	/** Rating of the protective device, not exceeding, amperes. */
	readonly upTo: number;
	readonly copper: Gauge;
	/** Undefined beyond the sizes of wire gauge, where 250 kcmil is printed. */
	readonly aluminium: Gauge | undefined;
}

const provenance: Provenance = { source: "NFPA 70 Table 250.122", known: "read", note: "two reprints agree" };
const rows: readonly (readonly [number, AwgLabel, AwgLabel | undefined])[] = [
	[15, "14", "12"],
	[20, "12", "10"],
	[60, "10", "8"],
	[100, "8", "6"],
	[200, "6", "4"],
	[300, "4", "2"],
	[400, "3", "1"],
	[500, "2", "1/0"],
	[600, "1", "2/0"],
	[800, "1/0", "3/0"],
	[1000, "2/0", "4/0"],
	[1200, "3/0", undefined],
];

/** Smallest equipment grounding conductors. */
export const equipmentGrounds: Table<EquipmentGround> = table<EquipmentGround>(
	"equipment-ground",
	"Smallest equipment grounding conductor by the rating of the overcurrent device",
	[
		["device up to, A", (row) => row.upTo],
		["copper, AWG", (row) => row.copper.label],
		["aluminium", (row) => (row.aluminium === undefined ? "250 kcmil" : formatGauge(row.aluminium))],
	],
	rows.map(([upTo, copper, aluminium]) => ({
		upTo,
		copper: awgOf(copper),
		aluminium: aluminium === undefined ? undefined : awgOf(aluminium),
		provenance,
	})),
);

/** The riders to the table. */
export const equipmentGroundClauses: Table<Clause> = clauseTable(
	"equipment-ground-clauses",
	"What else holds for equipment grounding conductors",
	[
		{
			clause: "250.122(A)",
			topic: "upper limit",
			says: "never has to be larger than the circuit conductors",
			provenance: { source: "NFPA 70 250.122(A)", known: "read" },
		},
		{
			clause: "250.122(B)",
			topic: "larger conductors",
			says: "where the hot conductors are made larger, as for voltage drop, the ground grows in the same ratio of area",
			provenance: {
				source: "NFPA 70 250.122(B)",
				known: "read",
				note: "the published example (6 to 4 AWG, 60 A) asks for 16 511.5 circular mils and calls 8 AWG (16 510) enough: compare with a tolerance",
			},
		},
	],
);

/** The row for a protective device of `rating` amperes; between two rows the larger ground. Undefined above 1200 A. */
export function equipmentGroundFor(rating: number): Sourced<EquipmentGround> | undefined {
	return equipmentGrounds.rows.find((row) => row.upTo >= rating);
}
