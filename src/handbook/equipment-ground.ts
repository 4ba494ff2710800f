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

/** The smallest protective earth in IEC countries, by the line conductor it goes with. */
export interface ProtectiveEarth {
	/** Size of the line conductor, not exceeding, square millimetres. */
	readonly upTo: number;
	/** Square millimetres for a line conductor of a size. */
	readonly least: (line: number) => number;
	/** The same as the table prints it. */
	readonly says: string;
}

const table543: Provenance = {
	source: "IEC 60364-5-54 Table 54.2",
	known: "recalled",
	note: "for one metal; a calculation may allow less",
};
const earths: readonly ProtectiveEarth[] = [
	{ upTo: 16, least: (line) => line, says: "as the line conductor" },
	{ upTo: 35, least: () => 16, says: "16 mm2" },
	{ upTo: Number.POSITIVE_INFINITY, least: (line) => line / 2, says: "half the line conductor" },
];

/** Smallest protective earths, IEC. */
export const protectiveEarths: Table<ProtectiveEarth> = table<ProtectiveEarth>(
	"protective-earth",
	"Smallest protective earth by its line conductor, IEC",
	[
		["line conductor up to, mm2", (row) => (Number.isFinite(row.upTo) ? row.upTo : "any")],
		["protective earth", (row) => row.says],
	],
	earths.map((row) => ({ ...row, provenance: table543 })),
);

/** The smallest protective earth that goes with a line conductor, square millimetres. */
export function protectiveEarthFor(line: number): Sourced<{ readonly least: number }> {
	return { least: protectiveEarths.rows.find(({ upTo }) => line <= upTo)?.least(line) ?? line, provenance: table543 };
}
