// How far a branch circuit may be loaded, and what ratings it may have.
import type { Provenance, Sourced } from "./provenance.ts";
import { type Clause, clauseTable, type Table } from "./table.ts";

/** When a load counts as continuous, and what that asks of conductor and device. */
export const continuousLoad: Sourced<{
	/** Hours at full current from which a load is continuous. */
	readonly hours: number;
	/** The share of a continuous load that conductor and device must carry. */
	readonly factor: number;
	/** The share of its rating to which a standard breaker is loaded continuously: 1 / factor. */
	readonly share: number;
}> = {
	hours: 3,
	factor: 1.25,
	share: 0.8,
	provenance: { source: "NFPA 70 Article 100, 210.19(A)(1) and 210.20(A)", edition: "2020, 2023", known: "read" },
};

/** Ratings that a branch circuit with several outlets may have, amperes. */
export const multiOutletRatings: Sourced<{ readonly amperes: readonly number[] }> = {
	amperes: [15, 20, 30, 40, 50],
	provenance: { source: "NFPA 70 210.3", edition: "2011", known: "read" },
};

/** The share of a 15 or 20 A circuit that one cord-and-plug appliance may take. */
const portableShare: Sourced<{ readonly share: number }> = {
	share: 0.8,
	provenance: { source: "NFPA 70 210.23(A)(1)", known: "read" },
};

/** The share of a 15 or 20 A circuit that fastened appliances may take where lights or receptacles hang on it too. */
const fastenedShare: Sourced<{ readonly share: number }> = {
	share: 0.5,
	provenance: { source: "NFPA 70 210.23(A)(2)", known: "read", note: "24 CFR 3280.805(a)(3)(i) asks the same" },
};

const feedThrough: Provenance = { source: "wiring pages on ground-fault receptacles", known: "read" };

/** The rules of branch circuits, in our words. */
export const branchCircuitClauses: Table<Clause> = clauseTable(
	"branch-circuits",
	"Branch circuits: loading and ground-fault wiring",
	[
		{
			clause: "continuous load",
			topic: "loading",
			says: `the largest current expected for ${continuousLoad.hours} hours or more`,
			provenance: { source: "NFPA 70 Article 100", known: "read" },
		},
		{
			clause: "210.19(A)(1), 210.20(A)",
			topic: "loading",
			says: "conductor (before derating) and device at least the noncontinuous load and 125 % of the continuous; feeders alike (215.2, 215.3)",
			provenance: continuousLoad.provenance,
		},
		{
			clause: "80 % working form",
			topic: "loading",
			says: "a breaker not marked for full duty is loaded to at most 80 % of its rating continuously",
			provenance: { source: "UL 489, as quoted in trade articles", known: "read" },
		},
		{
			clause: "210.3",
			topic: "ratings",
			says: "a circuit with several outlets is rated 15, 20, 30, 40 or 50 A; the device sets the rating even if the wire is larger",
			provenance: multiOutletRatings.provenance,
		},
		{
			clause: "210.23(A)(1)",
			topic: "loading",
			says: "on 15 and 20 A circuits one cord-and-plug appliance takes at most 80 % of the rating",
			provenance: portableShare.provenance,
		},
		{
			clause: "210.23(A)(2)",
			topic: "loading",
			says: "on 15 and 20 A circuits with lights or receptacles, fastened appliances together take at most 50 % of the rating",
			provenance: fastenedShare.provenance,
		},
		{
			clause: "feed-through receptacle",
			topic: "ground-fault wiring",
			says: "the supply lands on line; a ground-fault receptacle protects itself and what hangs on its load terminals; what is fed from line is not protected",
			provenance: {
				...feedThrough,
				note: "that the load side protects downstream was read; the rest is common practice",
			},
		},
		{
			clause: "protected neutral",
			topic: "ground-fault wiring",
			says: "the protected part's neutral returns through the load neutral terminal alone; a neutral borrowed from elsewhere or touching ground downstream trips the device",
			provenance: {
				source: "UL 943, as read in a trade forum",
				edition: "2006",
				known: "read",
				note: "the neutral-to-ground part was read; the rest is common practice",
			},
		},
		{
			clause: "406.4(D)(2)",
			topic: "ground-fault wiring",
			says: "a ground-fault receptacle works on a two-wire circuit without equipment ground and is then marked so",
			provenance: { source: "NFPA 70 406.4(D)(2)", known: "read" },
		},
	],
);
