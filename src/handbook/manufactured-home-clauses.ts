// What public law asks of manufactured homes, the nearest cousin of a tiny house on wheels.
import type { Provenance } from "./provenance.ts";
import { type Clause, clauseTable, type Table } from "./table.ts";

const federal = (section: string): Provenance => ({ source: `24 CFR ${section}`, known: "read" });
const coach: Provenance = { source: "WAC 296-150C-1310", known: "read" };

/** Manufactured homes, public law: the nearest cousin of a tiny house on wheels. */
export const manufacturedHomeClauses: Table<Clause> = clauseTable(
	"manufactured-home-clauses",
	"Manufactured homes and commercial coaches",
	[
		{
			clause: "3280.815(a)(1)",
			topic: "polarity",
			says: "white is the neutral only, on the white terminal; in a switched circuit the neutral is the wire without a switch",
			provenance: federal("3280.815(a)(1)"),
		},
		{
			clause: "3280.815(a)(2)",
			topic: "polarity",
			says: "in a cable's switch loop white may be the supply to the switch, never the return, re-marked at every visible end",
			provenance: federal("3280.815(a)(2)"),
		},
		{
			clause: "3280.815(b)",
			topic: "polarity",
			says: "white used as a 240 V hot is re-coloured at each outlet",
			provenance: federal("3280.815(b)"),
		},
		{
			clause: "3280.815(c)",
			topic: "polarity",
			says: "green, plain or with yellow, is ground only",
			provenance: federal("3280.815(c)"),
		},
		{
			clause: "3280.803",
			topic: "supply",
			says: "one listed 50 A cord (40 A with gas or oil heat and cooking) or a feeder; four conductors, one green; 50 A 125/250 V plug",
			provenance: federal("3280.803"),
		},
		{
			clause: "3280.804",
			topic: "panel",
			says: "one means of disconnection near the entrance; dead-front panel",
			provenance: federal("3280.804"),
		},
		{
			clause: "550.11",
			topic: "panel",
			says: "two-pole 40 or 50 A main; branch device not over its conductors, nor over 150 % of one appliance of 13.3 A and more; clear space 30 by 30 in; not in a bathroom or clothes closet",
			provenance: { source: "NFPA 70 550.11", edition: "2008", known: "read" },
		},
		{
			clause: "3280.805(a)(1)",
			topic: "circuits",
			says: "lighting circuits: 3 x length x width / (120 x 15 or 20)",
			provenance: federal("3280.805(a)(1)"),
		},
		{
			clause: "3280.805(a)(2)",
			topic: "circuits",
			says: "two or more 20 A small-appliance circuits for kitchen, pantry and dining",
			provenance: federal("3280.805(a)(2)"),
		},
		{
			clause: "3280.805(a)(3)(i)",
			topic: "circuits",
			says: "fixed appliances at most 50 % of a circuit that also has lights",
			provenance: federal("3280.805(a)(3)(i)"),
		},
		{
			clause: "3280.801(e)",
			topic: "wiring",
			says: "no aluminium or copper-clad aluminium in branch circuits",
			provenance: federal("3280.801(e)"),
		},
		{
			clause: "WAC neutral",
			topic: "neutral",
			says: "neutral insulated from grounds and cases; neutral terminals of panel, range and dryer insulated from the case; range and dryer on four-wire cords",
			provenance: coach,
		},
		{
			clause: "WAC ground",
			topic: "ground",
			says: "no frame is joined to the neutral inside; the ground bus is grounded through the green wire of the supply",
			provenance: coach,
		},
	],
);
