// What NFPA 70 asks of recreational vehicles beyond a table of numbers.
import type { Provenance } from "./provenance.ts";
import { type Clause, clauseTable, type Table } from "./table.ts";

const nfpa = (section: string, known: Provenance["known"], note?: string): Provenance => ({
	source: `NFPA 70 ${section}`,
	known,
	...(note === undefined ? {} : { note }),
});
const twin =
	"the twin rules for commercial coaches (WAC 296-150C-1310) and park trailers (Article 552) were read; the section number is recalled";

/** Recreational vehicles, NFPA 70 Article 551. About half is recalled: say so where a verdict rests on it. */
export const camperClauses: Table<Clause> = clauseTable("camper-clauses", "Recreational vehicles", [
	{
		clause: "551.54(C)",
		topic: "neutral",
		says: "the neutral is insulated from grounds, enclosures and other grounded parts everywhere in the vehicle; bonding screws, straps and buses are taken out",
		provenance: nfpa("551.54(C)", "read", twin),
	},
	{
		clause: "551.45(A)",
		topic: "panel",
		says: "listed panel; neutral bar insulated from the enclosure, ground bar attached inside it",
		provenance: nfpa("551.45(A)", "read", twin),
	},
	{
		clause: "551.45(B)",
		topic: "panel",
		says: "clear space in front at least 24 in wide and 30 in deep",
		provenance: nfpa("551.45(B)", "read"),
	},
	{
		clause: "551.45(C)",
		topic: "panel",
		says: "dead front; a main device is needed with fuses or more than two branch circuits",
		provenance: nfpa("551.45(C)", "recalled"),
	},
	{
		clause: "551.42",
		topic: "circuits",
		says: "one 15 A circuit; or one 20 A circuit; or two to five 15 or 20 A circuits on a 30 A 120 V supply; or six and more on a 50 A 120/240 V supply",
		provenance: nfpa("551.42", "recalled", "that there are these four arrangements was read"),
	},
	{
		clause: "551.40",
		topic: "ground-fault",
		says: "120 V systems have ground-fault protection; with a single circuit it stands where the supply ends or in the plug",
		provenance: nfpa("551.40", "read", "the requirement was read, the detail recalled"),
	},
	{
		clause: "551.41(A)",
		topic: "receptacles",
		says: "on wall spaces of 2 ft and more, no point along the floor is over 6 ft from a receptacle",
		provenance: nfpa("551.41(A)", "recalled"),
	},
	{
		clause: "551.41(B)",
		topic: "receptacles",
		says: "by counters (one each side of the sink where the counter is 12 in and more), by the refrigerator and gas range",
		provenance: nfpa("551.41(B)", "recalled"),
	},
	{
		clause: "551.41(D)",
		topic: "receptacles",
		says: "none face-up in a counter",
		provenance: nfpa("551.41(D)", "recalled"),
	},
	{
		clause: "551.55(E)",
		topic: "ground",
		says: "grounds that enter a box are joined so that taking out a device does not break the ground of others",
		provenance: nfpa("551.55(E)", "read"),
	},
	{
		clause: "551.56(B), (C)",
		topic: "bonding",
		says: "a bonding conductor of at least 8 AWG copper from the panel's ground to a chassis terminal within reach",
		provenance: nfpa("551.56(B) and (C)", "read", "8 AWG read, the path recalled"),
	},
	{
		clause: "551.56(E)",
		topic: "bonding",
		says: "metal pipes, roof, skin, furnace and ducts are bonded",
		provenance: nfpa("551.56(E)", "recalled", "read in part in an owner's manual"),
	},
	{
		clause: "551.20(C)",
		topic: "bonding",
		says: "a converter's enclosure is bonded with at least 8 AWG copper",
		provenance: nfpa("551.20(C)", "read"),
	},
	{ clause: "551.20(E)", topic: "converters", says: "no autotransformers", provenance: nfpa("551.20(E)", "read") },
	{
		clause: "551.30(A)",
		topic: "generator",
		says: "mounted so that it is bonded to the chassis",
		provenance: nfpa("551.30(A)", "read"),
	},
	{
		clause: "551.31, 551.33",
		topic: "several sources",
		says: "two alternating sources are never connected to the circuits at once, the neutral included",
		provenance: nfpa("551.31 and 551.33", "recalled"),
	},
	{
		clause: "551.47",
		topic: "wiring",
		says: "metallic and nonmetallic methods are not mixed; no bend is under five cable diameters",
		provenance: nfpa("551.47", "read"),
	},
	{
		clause: "551.71",
		topic: "site",
		says: "every site has 20 A 125 V; 30 A 125 V; 50 A 125/250 V, with a 30 A besides; 15 and 20 A receptacles there are ground-fault protected",
		provenance: nfpa("551.71", "read"),
	},
]);
