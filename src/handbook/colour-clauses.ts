// What else is asked of conductor colours: re-marking, and the colours a boat gives to single circuits.
import type { Colour } from "./colours.ts";
import type { Provenance } from "./provenance.ts";
import { type Clause, clauseTable, type Table, table } from "./table.ts";

/** Rules on re-marking and on writing codes. */
export const colourClauses: Table<Clause> = clauseTable("colour-clauses", "Re-marking conductors and writing codes", [
	{
		clause: "200.7(C)",
		topic: "white as a hot",
		says: "in a cable's switch loop white may be the supply to the switch, never the switched return, and is re-marked wherever it can be seen",
		provenance: {
			source: "24 CFR 3280.815, as NFPA 70 200.7(C)",
			known: "read",
			note: "the federal text was read; the section of NFPA 70 is recalled",
		},
	},
	{
		clause: "IEC 60757 combinations",
		topic: "letter codes",
		says: "the codes of two colours on one conductor are joined in the order of the table; several conductors are joined with a plus sign",
		provenance: { source: "IEC 60757", known: "read" },
	},
	{
		clause: "IEC 60757 green and yellow",
		topic: "letter codes",
		says: "GN and YE are used together only, as GNYE",
		provenance: { source: "IEC 60757", edition: "2021", known: "read" },
	},
	{
		clause: "IEC 60445 protective conductor",
		topic: "green-and-yellow",
		says: "either colour covers 30 to 70 % of any 15 mm",
		provenance: { source: "IEC 60445", known: "read" },
	},
	{
		clause: "ABYC E-11 smallest conductor",
		topic: "boat alternating current",
		says: "at least 16 AWG; on circuits over 30 A the grounding conductor may be one size smaller than the others",
		provenance: { source: "ABYC E-11", known: "read" },
	},
]);

/** The colour of one kind of circuit on a boat. */
export interface BoatCircuitColour {
	readonly circuit: string;
	readonly colours: readonly Colour[];
}

const boat: Provenance = { source: "ABYC E-11 engine and accessory wiring colours", known: "read" };
const rows: readonly (readonly [string, readonly Colour[]])[] = [
	["positive main", ["red"]],
	["negative main", ["yellow", "black", "black-yellow"]],
	["grounding and bonding", ["green", "green-yellow", "bare"]],
	["starting", ["yellow-red"]],
	["bilge blower", ["brown-yellow", "yellow"]],
	["navigation lights, tachometer", ["grey"]],
	["pumps, alternator charge light, generator armature", ["brown"]],
	["accessory or common feed", ["orange"]],
	["ignition, instrument feed", ["violet"]],
	["cabin and instrument lights", ["blue"]],
	["oil pressure", ["blue"]],
	["water temperature", ["tan"]],
	["fuel gauge", ["pink"]],
];

/** Direct-current circuit colours of boats. Cabin lights are dark blue, oil pressure light blue, navigation dark grey. */
export const boatCircuitColours: Table<BoatCircuitColour> = table<BoatCircuitColour>(
	"boat-circuit-colours",
	"Colours of direct-current circuits on boats",
	[
		["circuit", (row) => row.circuit],
		["colours", (row) => row.colours],
	],
	rows.map(([circuit, colours]) => ({ circuit, colours, provenance: boat })),
);
