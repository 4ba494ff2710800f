// What standards and trade ask of the direct-current side: protection, wire, layout, bonding.
import { certain } from "../base/certain.ts";
import type { Provenance, Sourced } from "./provenance.ts";
import { type Clause, clauseTable, type Table } from "./table.ts";

const federal: Provenance = { source: "33 CFR 183.455", known: "read" };
const grounded: Provenance = {
	source: "46 CFR 183.380 and 120.380",
	known: "read",
	note: "that no fuse stands in the negative is common practice",
};
const craft: Provenance = { source: "ISO 10133 clause 7", edition: "2012", known: "read" };
const trade: Provenance = { source: "common practice", known: "common practice" };

/** The direct-current rules, in our words. */
export const dcClauses: Table<Clause> = clauseTable(
	"dc-protection",
	"Protection and layout on the direct-current side",
	[
		{
			clause: "device at the source",
			topic: "protection",
			says: "every ungrounded conductor has a fuse or trip-free breaker at its source of power; where that cannot be, within 7 in, or within 40 in if sheathed or enclosed all the way",
			provenance: federal,
		},
		{
			clause: "cranking motor",
			topic: "protection",
			says: "cranking-motor conductors are exempt; protecting them is still advised",
			provenance: { source: "ABYC E-11, in a marine article", known: "read" },
		},
		{
			clause: "device rating",
			topic: "protection",
			says: "under 50 V at most 150 % of the conductor's table value; from 50 V at most the value, or the next standard size up to 150 %",
			provenance: federal,
		},
		{
			clause: "device voltage",
			topic: "protection",
			says: "voltage rating at least that of the circuit: parts marked 32 V are unfit for 48 V systems, which charge at up to 58 V",
			provenance: { ...federal, note: "read in part, the rest recalled" },
		},
		{
			clause: "what the device protects",
			topic: "protection",
			says: "the wire: it is sized to the smallest wire behind it; an appliance may need a smaller one by its label",
			provenance: { source: "ABYC E-11, in marine articles", known: "read" },
		},
		{
			clause: "grounded conductor",
			topic: "protection",
			says: "a grounded conductor is not opened unless all ungrounded ones open with it; no fuse in the negative of a negative-ground system",
			provenance: grounded,
		},
		{
			clause: "smallest wire, boats",
			topic: "wire",
			says: "insulated stranded copper, 16 AWG alone, 18 AWG in a sheath and at most 30 in out of it",
			provenance: { source: "33 CFR 183.425", known: "read" },
		},
		{
			clause: "smallest wire, metric",
			topic: "wire",
			says: "alone and longer than 200 mm at least 1 mm2; in a sheath at least 0.75 mm2, at most 800 mm out of it",
			provenance: craft,
		},
		{
			clause: "exposed stud",
			topic: "layout",
			says: "a terminal that is always live and not protected is covered by a boot, cap or shield",
			provenance: { source: "33 CFR 183.445", known: "read" },
		},
		{
			clause: "abrasion",
			topic: "layout",
			says: "conductors through bulkheads, structure and boxes are protected from abrasion",
			provenance: { source: "33 CFR 183.445", known: "read" },
		},
		{
			clause: "support",
			topic: "layout",
			says: "supported at most every 450 mm; battery cable at most 300 mm to the switch, first support within 1 m",
			provenance: craft,
		},
		{
			clause: "separation, boats",
			topic: "layout",
			says: "direct and alternating current are not in one wiring system unless separated by sheath or compartment",
			provenance: craft,
		},
		{
			clause: "separation, vehicles",
			topic: "layout",
			says: "low-voltage wiring keeps at least 1/2 in from power wiring; splices are mechanically and electrically secure",
			provenance: { source: "NFPA 70 Article 552", edition: "2020", known: "read" },
		},
		{
			clause: "low-voltage wire, vehicles",
			topic: "wire",
			says: "copper; single conductors stranded; 18 to 6 AWG; a metal chassis may be the return",
			provenance: { source: "NFPA 70 Article 552", known: "read" },
		},
		{
			clause: "busbar",
			topic: "layout",
			says: "carries at least its feeding device, or the sum of what can feed it",
			provenance: trade,
		},
		{
			clause: "common negative",
			topic: "bonding",
			says: "one common negative bus, bonded to the chassis at one point; the bond is no smaller than the largest conductor that could feed a fault, and at least 8 AWG where the alternating-current rules apply",
			provenance: { ...trade, note: "8 AWG: NFPA 70 551.56(C), read" },
		},
		{
			clause: "ground tie, boats",
			topic: "bonding",
			says: "the alternating-current ground bus and the direct-current negative bus are joined at one point",
			provenance: { source: "ABYC E-11", known: "read", note: "in a blog; partly recalled" },
		},
		{
			clause: "main disconnect",
			topic: "layout",
			says: "a battery switch in the positive conductor, near the battery and within reach",
			provenance: trade,
		},
		{
			clause: "parallel banks",
			topic: "fault current",
			says: "short-circuit currents of batteries in parallel add, in series they do not",
			provenance: { source: "ABYC E-11, in a boating forum", known: "read" },
		},
		{
			clause: "interrupting practice",
			topic: "fault current",
			says: "lead-acid 5 kA, large banks 10 kA, lithium 20 kA",
			provenance: { source: "boating course page on interrupting ratings", known: "read" },
		},
	],
);

/** A rule of the direct-current side by its short name. */
export function dcClause(name: string): Sourced<Clause> {
	return certain(
		dcClauses.rows.find((row) => row.clause === name),
		`the clause ${name}`,
	);
}
