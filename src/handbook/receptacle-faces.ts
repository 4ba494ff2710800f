// How receptacles look from the front: which slot is which.
import type { Known } from "./provenance.ts";
import { type Table, table } from "./table.ts";

/** The face of one receptacle pattern. */
export interface ReceptacleFace {
	readonly pattern: string;
	readonly looks: string;
}

const pages = "wiring pages on North American receptacles";
const rows: readonly (readonly [string, string, Known, string])[] = [
	[
		"NEMA 5-15R",
		"two parallel slots and a U ground; the neutral slot is the taller; ground hole down, it is on the left",
		"read",
		pages,
	],
	["NEMA 5-15R slots", "12.7 mm apart; hot about 6.4 mm, neutral about 7.9 mm tall", "recalled", "NEMA WD 6"],
	["NEMA 5-20R", "as 5-15R, the neutral slot a T on its side", "read", pages],
	["NEMA TT-30R", "30 A 125 V, two slanted slots and a round or U ground", "recalled", "NEMA WD 6"],
	["NEMA 14-50R", "50 A 125/250 V, two straight hots, a straight neutral, a U ground", "recalled", "NEMA WD 6"],
	["BS 1363", "earth up, live lower right, neutral lower left", "recalled", "BS 1363"],
	["CEE 7/4", "two round pins either way round: the outlet has no polarity to check", "recalled", "CEE 7"],
	[
		"IEC 60309-2 blue 16 A",
		"two poles and earth, 230 V, keyway at 6 h",
		"read",
		"IEC 60309-2, in a UK guide to the wiring regulations",
	],
];

/** Receptacle faces. */
export const receptacleFaces: Table<ReceptacleFace> = table<ReceptacleFace>(
	"receptacle-faces",
	"Receptacles from the front",
	[
		["pattern", (row) => row.pattern],
		["from the front", (row) => row.looks],
	],
	rows.map(([pattern, looks, known, source]) => ({ pattern, looks, provenance: { source, known } })),
);
