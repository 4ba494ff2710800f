// Which terminals and joints take conductors of aluminium: usual markings; what is marked on the part decides.
import type { Known } from "./provenance.ts";
import { type Table, table } from "./table.ts";

/** A terminal or joint, by what it is found on. */
export type MetalPlace = "device up to 20 A" | "device above 20 A" | "panel, breaker or bar" | "joint" | "crimp";
/** Whether it takes aluminium unless it is marked otherwise. */
export interface TerminalMetal {
	readonly place: MetalPlace;
	readonly aluminium: boolean;
	readonly marking: string;
}

const rows: readonly (readonly [MetalPlace, boolean, string, Known, string])[] = [
	["device up to 20 A", false, "CO/ALR where it takes aluminium", "recalled", "NFPA 70 406.3(C) and 404.14(C)"],
	["device above 20 A", true, "AL-CU", "recalled", "NFPA 70 406.3(C)"],
	["panel, breaker or bar", true, "AL9CU or AL7CU", "common practice", "common practice"],
	["joint", false, "AL/CU where it takes aluminium", "recalled", "NFPA 70 110.14"],
	["crimp", true, "AL9CU, with the tool it names", "common practice", "common practice"],
];

/** Terminals and joints by the metal of conductor they take. */
export const terminalMetals: Table<TerminalMetal> = table<TerminalMetal>(
	"terminal-metals",
	"Terminals and joints that take aluminium, unless they are marked otherwise",
	[
		["place", (row) => row.place],
		["takes aluminium", (row) => (row.aluminium ? "yes" : "no")],
		["marking", (row) => row.marking],
	],
	rows.map(([place, aluminium, marking, known, source]) => ({
		place,
		aluminium,
		marking,
		provenance: { source, known },
	})),
);
