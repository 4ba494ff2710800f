// Where the one neutral-to-ground bond is, by the source that feeds the place.
import { certain } from "../base/certain.ts";
import type { Known, Sourced } from "./provenance.ts";
import { type Table, table } from "./table.ts";

/** What feeds the place, as far as the bond depends on it. */
export type BondMode =
	| "shore"
	| "pass-through"
	| "inverting"
	| "generator through transfer of the neutral"
	| "floating portable generator"
	| "inverter without relay"
	| "isolation transformer"
	| "feeder from a house"
	| "off-grid cabin";

/** Where the bond belongs in one mode. */
export interface NeutralBond {
	readonly mode: BondMode;
	readonly bondAt: "supply" | "inverter" | "generator" | "transformer" | "one place" | "none";
	/** The bonding relay of an inverter-charger, where there is one. */
	readonly relay: "open" | "closed" | undefined;
	readonly says: string;
}

type Row = readonly [BondMode, NeutralBond["bondAt"], NeutralBond["relay"], Known, string, string, string?];
const manuals = "inverter makers' manuals on neutral-to-ground switching";
const rows: readonly Row[] = [
	[
		"shore",
		"supply",
		"open",
		"read",
		"bonded at the site's supply; none in the vehicle's or boat's panel",
		"NFPA 70 551.54; ABYC E-11",
		"consistent across several public pages",
	],
	[
		"pass-through",
		"supply",
		"open",
		"read",
		"as on shore: the relay is open while an outside source is present",
		manuals,
	],
	[
		"inverting",
		"inverter",
		"closed",
		"read",
		"inside the inverter: the relay joins its neutral output to ground",
		manuals,
	],
	[
		"generator through transfer of the neutral",
		"generator",
		undefined,
		"read",
		"at the generator, where the transfer switch switches the neutral too",
		"recreational-vehicle safety column; NFPA 70 250.30 (recalled)",
	],
	[
		"floating portable generator",
		"none",
		undefined,
		"read",
		"nowhere: a ground detector refuses it; the cure is a bond at that generator, never in the panel",
		"recreational-vehicle safety column",
		"the symptom was read, the cure is common practice",
	],
	[
		"inverter without relay",
		"inverter",
		undefined,
		"common practice",
		"at its output or nowhere, by its manual; its neutral never meets the shore neutral on one bar",
		"inverter makers' manuals",
	],
	[
		"isolation transformer",
		"transformer",
		undefined,
		"recalled",
		"its secondary neutral is bonded on board: a source of its own",
		"ABYC E-11; NFPA 70 250.30",
	],
	[
		"feeder from a house",
		"supply",
		undefined,
		"recalled",
		"at the house's service only; the subpanel keeps its bars apart",
		"NFPA 70 250.32(B) and 250.142(B)",
	],
	[
		"off-grid cabin",
		"one place",
		undefined,
		"read",
		"one place, usually the main panel or the inverter, with the other one disabled",
		"solar trade forum on bond switching",
	],
];

/** Neutral-ground bond by source. None: a fault to a case draws no clearing current. Two: load current runs on the ground. */
export const neutralBonds: Table<NeutralBond> = table<NeutralBond>(
	"neutral-bond",
	"Where the one neutral-to-ground bond is, by source",
	[
		["mode", (row) => row.mode],
		["bond at", (row) => row.bondAt],
		["relay", (row) => row.relay],
		["in words", (row) => row.says],
	],
	rows.map(([mode, bondAt, relay, known, says, source, note]) => ({
		mode,
		bondAt,
		relay,
		says,
		provenance: { source, known, ...(note === undefined ? {} : { note }) },
	})),
);

/** Where the bond belongs in a mode. */
export function neutralBondIn(mode: BondMode): Sourced<NeutralBond> {
	return certain(
		neutralBonds.rows.find((row) => row.mode === mode),
		`the bond on ${mode}`,
	);
}
