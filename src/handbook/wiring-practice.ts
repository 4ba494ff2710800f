// Wiring facts that every electrician knows and few standards print: the convention by which a plan is filled in.
import type { Provenance } from "./provenance.ts";
import { type Clause, clauseTable, type Table } from "./table.ts";

const trade: Provenance = { source: "common practice", known: "common practice" };

/** The trade's convention. */
export const wiringPractice: Table<Clause> = clauseTable("wiring-practice", "Wiring by the trade's convention", [
	{
		clause: "12 AWG with 20 A",
		topic: "sizes",
		says: "12 AWG copper goes with a 20 A breaker, 14 AWG with 15 A, 10 AWG with 30 A",
		provenance: { source: "common practice, from NFPA 70 240.4(D)", known: "common practice" },
	},
	{
		clause: "switch in the hot",
		topic: "switching",
		says: "a switch opens the hot; neutral and ground pass by it unbroken",
		provenance: trade,
	},
	{
		clause: "first switch governs",
		topic: "switching",
		says: "what hangs behind a switch, in the order of the wires, is dead while that switch is off",
		provenance: trade,
	},
	{
		clause: "protected downstream",
		topic: "ground-fault",
		says: "a ground-fault receptacle is fed on line and protects what goes on from its load side",
		provenance: { source: "wiring pages on ground-fault receptacles", known: "read" },
	},
	{
		clause: "pigtails",
		topic: "boxes",
		says: "where a cable goes on, each role is spliced and a pigtail goes to the device, so that taking it out breaks nothing",
		provenance: trade,
	},
	{
		clause: "end of the line",
		topic: "boxes",
		says: "in the last box the conductors land straight on the device",
		provenance: trade,
	},
	{
		clause: "grounds together",
		topic: "ground",
		says: "all grounds in a box join, with the box if it is metal and every device that has a ground terminal",
		provenance: trade,
	},
]);
