// Inlets and plugs by which a vehicle, boat or cabin takes its supply, and the supply a vehicle's circuits ask for.
import type { Known, Provenance, Sourced } from "./provenance.ts";
import type { Region } from "./scope.ts";
import { type Clause, clauseTable, type Table, table } from "./table.ts";

/** An inlet or plug. */
export interface SupplyInlet {
	readonly pattern: string;
	readonly region: Region;
	readonly ampere: number;
	/** Volts between hot and neutral, or line to line with the line to neutral before it. */
	readonly volts: readonly number[];
	/** Current-carrying poles; the ground comes besides. */
	readonly poles: 2 | 3;
	readonly used: string;
}

const park = "a plug of this kind was read for park trailers";
type Row = readonly [string, Region, number, readonly number[], 2 | 3, string, Known, string, string?];
const rows: readonly Row[] = [
	["NEMA 5-15", "us", 15, [120], 2, "one 15 A circuit", "recalled", "NFPA 70 551.44"],
	["NEMA 5-20", "us", 20, [120], 2, "one 20 A circuit", "recalled", "NFPA 70 551.44"],
	["NEMA TT-30", "us", 30, [120], 2, "two to five 15 or 20 A circuits", "read", "NFPA 70 551.44 and Article 552", park],
	["NEMA L5-30", "us", 30, [120], 2, "boats, locking", "recalled", "NEMA WD 6"],
	["NEMA 14-50", "us", 50, [120, 240], 3, "six or more circuits", "read", "NFPA 70 551.44 and Article 552", park],
	[
		"IEC 60309-2, blue, 6 h",
		"iec",
		16,
		[230],
		2,
		"caravans, motor caravans and boats",
		"read",
		"IEC 60364-7-721, in a UK guide to the wiring regulations",
	],
	["IEC 60309-2, blue, 6 h", "iec", 32, [230], 2, "larger boats and sites", "recalled", "IEC 60309-2"],
];

/** Inlets and plugs. */
export const supplyInlets: Table<SupplyInlet> = table<SupplyInlet>(
	"supply-inlets",
	"Inlets and plugs of the supply",
	[
		["pattern", (row) => row.pattern],
		["region", (row) => row.region],
		["A", (row) => row.ampere],
		["V", (row) => row.volts],
		["poles", (row) => row.poles],
		["used for", (row) => row.used],
	],
	rows.map(([pattern, region, ampere, volts, poles, used, known, source, note]) => ({
		pattern,
		region,
		ampere,
		volts,
		poles,
		used,
		provenance: { source, known, ...(note === undefined ? {} : { note }) },
	})),
);

/** The cord of a caravan by the rating of its inlet. */
export interface CaravanCord {
	readonly ampere: number;
	readonly mm2: number;
}

const table721: Provenance = { source: "IEC 60364-7-721 Table 721", known: "recalled" };
const cordRows: readonly (readonly [number, number])[] = [
	[16, 2.5],
	[25, 4],
	[32, 6],
	[63, 16],
	[100, 35],
];

/** Caravan cords. */
export const caravanCords: Table<CaravanCord> = table<CaravanCord>(
	"caravan-cords",
	"Smallest conductor of a caravan's supply cord",
	[
		["inlet, A", (row) => row.ampere],
		["mm2", (row) => row.mm2],
	],
	cordRows.map(([ampere, mm2]) => ({ ampere, mm2, provenance: table721 })),
);

/** Lengths and places of the supply cord. */
export const supplyClauses: Table<Clause> = clauseTable("supply-clauses", "Supply cord and point of entrance", [
	{
		clause: "551.46(B)",
		topic: "cord length, recreational vehicles",
		says: "at least 25 ft with the entry at the side, 30 ft at the rear; more by its height where it is over 3 ft above ground",
		provenance: { source: "NFPA 70 551.46(B)", known: "recalled", note: "25 ft at the side was read in a forum" },
	},
	{
		clause: "Article 552 cord",
		topic: "cord length, park trailers",
		says: "at least 23 ft at the side, 28 ft at the rear, at most 36.5 ft",
		provenance: { source: "NFPA 70 Article 552", edition: "2008", known: "read" },
	},
	{
		clause: "551.46(E)",
		topic: "point of entrance",
		says: "within 15 ft of the rear, left of the lengthwise centre",
		provenance: { source: "NFPA 70 551.46(E)", edition: "2020", known: "read" },
	},
	{
		clause: "721 cord",
		topic: "cord, caravans",
		says: "25 m (2 m more or less), rubber H05RN-F or equal, with a protective conductor, plug and connector to IEC 60309-2",
		provenance: { source: "IEC 60364-7-721, as DIN VDE 0100-721", known: "read" },
	},
]);

/** Inlets of a region and rating in amperes, in the order of the table. */
export function supplyInletsOf(region: Region, ampere: number): readonly Sourced<SupplyInlet>[] {
	return supplyInlets.rows.filter((row) => row.region === region && row.ampere === ampere);
}
