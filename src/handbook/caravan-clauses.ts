// What IEC 60364-7-721 asks of caravans and motor caravans.
import type { Provenance } from "./provenance.ts";
import { type Clause, clauseTable, type Table } from "./table.ts";

const guide: Provenance = { source: "IEC 60364-7-721, in a UK guide to the wiring regulations", known: "read" };
const german: Provenance = { source: "IEC 60364-7-721, as DIN VDE 0100-721", known: "read" };
const recalled721: Provenance = { source: "IEC 60364-7-721", known: "recalled" };

/** Caravans and motor caravans, IEC. */
export const caravanClauses: Table<Clause> = clauseTable("caravan-clauses", "Caravans and motor caravans", [
	{
		clause: "721 inlet",
		topic: "supply",
		says: "IEC 60309-2, keyway at 6 h, at most 1.8 m above ground, spring lid",
		provenance: guide,
	},
	{
		clause: "721 residual current",
		topic: "ground-fault",
		says: "a two-pole 30 mA device, and two-pole breakers that open all live conductors",
		provenance: guide,
	},
	{
		clause: "721 main switch",
		topic: "disconnection",
		says: "opens all live conductors; with a single final circuit its overcurrent device may serve",
		provenance: german,
	},
	{
		clause: "721 frame",
		topic: "bonding",
		says: "metal frame and structure are bonded to the main earthing terminal inside",
		provenance: german,
	},
	{ clause: "721 bond size", topic: "bonding", says: "at least 4 mm2", provenance: recalled721 },
	{ clause: "721 wire size", topic: "wiring", says: "fixed wiring at least 1.5 mm2", provenance: recalled721 },
	{
		clause: "721 voltage",
		topic: "supply",
		says: "at most 230 V single-phase or 400 V three-phase; 48 V direct current",
		provenance: recalled721,
	},
	{
		clause: "721 notice",
		topic: "supply",
		says: "by the inlet: voltage, frequency, current; uncoil the cord; test the residual-current device after connecting",
		provenance: guide,
	},
]);
