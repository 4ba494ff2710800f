// Which receptacles may stand on which branch circuit, and the largest thing that may be plugged into them.
import type { Known, Provenance, Sourced } from "./provenance.ts";
import { type Clause, clauseTable, type Table, table } from "./table.ts";

/** Receptacle ratings that fit a circuit with two or more receptacles; one duplex counts as two. */
export interface ReceptacleRatings {
	/** Rating of the circuit, amperes: that of its protective device. */
	readonly circuit: number;
	/** Receptacle ratings that fit, amperes. */
	readonly receptacles: readonly number[];
}

const note15 = "editions to 2020 print not over 15 A, the 2023 edition not less than 15 A";
const ratings: readonly (readonly [number, readonly number[], Known, string?])[] = [
	[15, [15], "read", note15],
	[20, [15, 20], "read"],
	[30, [30], "recalled"],
	[40, [40, 50], "read"],
	[50, [50], "read"],
];

/** Receptacle ratings by circuit. */
export const receptacleRatings: Table<ReceptacleRatings> = table<ReceptacleRatings>(
	"receptacle-ratings",
	"Receptacle ratings on circuits with two or more receptacles",
	[
		["circuit, A", (row) => row.circuit],
		["receptacle, A", (row) => row.receptacles],
	],
	ratings.map(([circuit, receptacles, known, note]) => ({
		circuit,
		receptacles,
		provenance: { source: "NFPA 70 Table 210.21(B)(3)", known, ...(note === undefined ? {} : { note }) },
	})),
);

/** The largest load that may hang on one cord and plug. */
export interface CordLoad {
	/** Circuit ratings it holds for, amperes. */
	readonly circuits: readonly number[];
	readonly receptacle: number;
	/** Largest load of one cord and plug, amperes. */
	readonly largest: number;
}

const cords: readonly (readonly [readonly number[], number, number, Known])[] = [
	[[15, 20], 15, 12, "read"],
	[[20], 20, 16, "recalled"],
	[[30], 30, 24, "recalled"],
];

/** Largest cord-and-plug loads. */
export const cordLoads: Table<CordLoad> = table<CordLoad>(
	"cord-loads",
	"Largest load on one cord and plug",
	[
		["circuit, A", (row) => row.circuits],
		["receptacle, A", (row) => row.receptacle],
		["largest load, A", (row) => row.largest],
	],
	cords.map(([circuits, receptacle, largest, known]) => ({
		circuits,
		receptacle,
		largest,
		provenance: { source: "NFPA 70 Table 210.21(B)(2)", known },
	})),
);

/** What holds for a single receptacle alone on its circuit. */
export const singleReceptacle: Sourced<Clause> = {
	clause: "210.21(B)(1)",
	topic: "single receptacle on its own circuit",
	says: "rated not less than the circuit",
	provenance: { source: "NFPA 70 210.21(B)(1)", known: "read" },
};
/** Receptacle rules without a table of their own. */
export const receptacleClauses: Table<Clause> = clauseTable("receptacle-clauses", "Receptacles on circuits", [
	singleReceptacle,
]);

/** Socket-outlets of IEC countries and the largest protective device that may stand ahead of them. */
export interface SocketOutlet {
	readonly pattern: string;
	readonly rating: number;
	/** Largest protective device, amperes. */
	readonly largestDevice: number;
}

const sockets: readonly (readonly [string, number, number, Known, string])[] = [
	["two-pin with earth contact", 16, 16, "common practice", "IEC 60884-1 socket-outlets, rating as marked"],
	["fused plug, three flat pins", 13, 32, "recalled", "BS 1363 socket-outlets on BS 7671 circuits"],
	["industrial, blue, 16 A", 16, 16, "common practice", "IEC 60309-2 socket-outlets, rating as marked"],
	["industrial, blue, 32 A", 32, 32, "common practice", "IEC 60309-2 socket-outlets, rating as marked"],
];

/** IEC socket-outlets. None of these figures was read in a standard. */
export const socketOutlets: Table<SocketOutlet> = table<SocketOutlet>(
	"socket-outlets",
	"Socket-outlets of IEC countries and the protective device ahead of them",
	[
		["pattern", (row) => row.pattern],
		["rating, A", (row) => row.rating],
		["largest device, A", (row) => row.largestDevice],
	],
	sockets.map(([pattern, rating, largestDevice, known, source]) => ({
		pattern,
		rating,
		largestDevice,
		provenance: { source, known },
	})),
);

/** Receptacle ratings for a circuit of `circuit` amperes; undefined where the table has no such circuit. */
export function receptacleRatingsFor(circuit: number): Sourced<ReceptacleRatings> | undefined {
	return receptacleRatings.rows.find((row) => row.circuit === circuit);
}

/** Largest cord-and-plug load for a receptacle on a circuit, amperes; undefined where the table says nothing. */
export function cordLoadLimit(circuit: number, receptacle: number): Sourced<CordLoad> | undefined {
	return cordLoads.rows.find((row) => row.receptacle === receptacle && row.circuits.includes(circuit));
}

const asMarked: Provenance = {
	source: "the rating marked on the socket-outlet; national rules differ",
	known: "common practice",
};

/** The first IEC socket-outlet of a rating in amperes; patterns of one rating have one limit. One of no listed rating bears what is marked on it. */
export function socketOutletOf(rating: number): Sourced<SocketOutlet> {
	return (
		socketOutlets.rows.find((row) => row.rating === rating) ?? {
			pattern: "as marked",
			rating,
			largestDevice: rating,
			provenance: asMarked,
		}
	);
}
