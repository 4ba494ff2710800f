// Terminals: what the colour of a screw says, which conductor end suits which clamp, how many conductors one takes.
import { certain } from "../base/certain.ts";
import type { Known, Provenance, Sourced } from "./provenance.ts";
import { type Clause, clauseTable, type Table, table } from "./table.ts";

/** How a terminal holds a conductor. `port` is a lever or push-in hole; `lead` a wire that comes with the device. */
export type ClampKind = "screw" | "plate" | "cage" | "stud" | "port" | "lead" | "stab";
/** How a conductor's end is made up: `solid` is a solid conductor, `bare` are bare strands. */
export type EndKind = "solid" | "bare" | "fork" | "ring" | "ferrule" | "lug" | "pin";
/** The finish of a device's screw. */
export type ScrewFinish = "brass" | "silver" | "green" | "dark";

/** What the finish of a screw on a North American device says. */
export interface ScrewRole {
	readonly finish: ScrewFinish;
	readonly role: "hot" | "neutral" | "ground" | "common";
}

const screws: readonly (readonly [ScrewFinish, ScrewRole["role"], Known, string])[] = [
	["brass", "hot", "read", "wiring pages on North American receptacles"],
	["silver", "neutral", "read", "wiring pages on North American receptacles; NFPA 70 200.10 (recalled)"],
	["green", "ground", "read", "wiring pages on North American receptacles"],
	["dark", "common", "common practice", "the odd screw of a three-way switch"],
];

/** Screw finishes of North American devices. */
export const screwRoles: Table<ScrewRole> = table<ScrewRole>(
	"screws",
	"What the colour of a device's screw says",
	[
		["screw", (row) => row.finish],
		["conductor", (row) => row.role],
	],
	screws.map(([finish, role, known, source]) => ({ finish, role, provenance: { source, known } })),
);

/** How well an end suits a clamp. */
export type Fit = "well" | "acceptable" | "unsuited";
/** The ends that suit one clamp; those not named are unsuited. */
export interface ClampEnds {
	readonly clamp: ClampKind;
	readonly well: readonly EndKind[];
	readonly acceptable: readonly EndKind[];
	readonly because: string;
}

const practice: Provenance = {
	source: "common practice",
	known: "common practice",
	note: "published views differ on stranded wire under a screw, see terminal-clauses; what is marked on the device decides",
};
const clampRows: readonly (readonly [ClampKind, readonly EndKind[], readonly EndKind[], string])[] = [
	[
		"screw",
		["solid", "fork", "ring"],
		["ferrule"],
		"bare strands creep out from under the head and can touch the next part",
	],
	[
		"plate",
		["solid", "bare"],
		["ferrule", "pin"],
		"the plate holds strands together; a fork or ring only if the maker says so",
	],
	["cage", ["solid", "ferrule", "pin"], ["bare"], "a ferrule keeps strands from spreading under the screw"],
	["stud", ["ring", "lug"], [], "only a closed eye stays on when the nut loosens"],
	[
		"port",
		["solid", "ferrule"],
		["bare"],
		"as marked: levers take strands, many push-in holes take them only with a ferrule",
	],
	["lead", ["solid", "bare"], ["ferrule"], "a lead is spliced: the splice decides"],
	["stab", [], [], "a stab meets its bus, not a conductor"],
];

/** Conductor ends by clamp. */
export const clampEnds: Table<ClampEnds> = table<ClampEnds>(
	"terminations",
	"Which conductor end suits which clamp",
	[
		["clamp", (row) => row.clamp],
		["well", (row) => row.well],
		["acceptable", (row) => row.acceptable],
		["because", (row) => row.because],
	],
	clampRows.map(([clamp, well, acceptable, because]) => ({ clamp, well, acceptable, because, provenance: practice })),
);

/** Where a clamp is found, as far as the number of conductors depends on it. */
export type ClampPlace = "device" | "breaker" | "neutral bar" | "ground bar" | "post" | "splice";
/** Conductors under one terminal, unless it is marked for more. */
export interface ClampCount {
	readonly clamp: ClampKind;
	readonly place: ClampPlace;
	readonly most: number;
}

const one = "NFPA 70 110.14(A)";
const counts: readonly (readonly [ClampKind, ClampPlace, number, Known, string])[] = [
	["screw", "device", 1, "read", one],
	["plate", "device", 2, "common practice", "one under each side of the plate, where the device is marked so"],
	["cage", "device", 1, "read", one],
	["cage", "breaker", 1, "read", one],
	["cage", "neutral bar", 1, "recalled", "NFPA 70 408.41"],
	["cage", "ground bar", 2, "common practice", "the panel's label decides; two or three of 14 or 12 AWG are usual"],
	["stud", "post", 4, "recalled", "ABYC E-11"],
	["port", "splice", 1, "read", "NFPA 70 110.3(B), as marked on the package"],
];

/** Conductors per terminal. */
export const clampCounts: Table<ClampCount> = table<ClampCount>(
	"conductors-per-terminal",
	"Conductors under one terminal unless it is marked for more",
	[
		["clamp", (row) => row.clamp],
		["place", (row) => row.place],
		["most", (row) => row.most],
	],
	counts.map(([clamp, place, most, known, source]) => ({ clamp, place, most, provenance: { source, known } })),
);

/** What the published views say of stranded conductors under screws. They disagree: name the one in force. */
export const terminalClauses: Table<Clause> = clauseTable("terminal-clauses", "Stranded conductors under screws", [
	{
		clause: "listed receptacles",
		topic: "US listing",
		says: "screws and clamp plates of listed receptacles take solid or stranded building wire; a fork or ring only if the maker says so",
		provenance: {
			source: "UL product guide information for receptacles",
			known: "read",
			note: "quoted in trade forums",
		},
	},
	{
		clause: "snap switches",
		topic: "US listing",
		says: "terminals of snap switches take solid wire unless the device or its instructions say otherwise",
		provenance: {
			source: "UL product guide information for snap switches",
			known: "read",
			note: "quoted in trade forums",
		},
	},
	{
		clause: "110.14(A)",
		topic: "North America",
		says: "a wire-binding screw is for 10 AWG or smaller; a terminal for several conductors is marked so; finely stranded wire only where marked (the last is recalled)",
		provenance: { source: one, known: "read" },
	},
	{
		clause: "BS 7671 526.8",
		topic: "UK and IEC",
		says: "ends of fine or multi-strand conductors are treated, or a suitable terminal is used, so that strands do not spread",
		provenance: { source: "BS 7671 526.8 and 526.9", known: "read", note: "quoted in a trade forum" },
	},
	{
		clause: "boats",
		topic: "boats",
		says: "stranded copper only, on ring or captive-spade terminals; nothing bare under a screw head",
		provenance: { source: "ABYC E-11", known: "recalled" },
	},
]);

/** What the finish of a screw says. */
export function screwRole(finish: ScrewFinish): Sourced<ScrewRole> {
	return certain(
		screwRoles.rows.find((row) => row.finish === finish),
		`the ${finish} screw`,
	);
}

/** How well an end suits a clamp. */
export function terminationFit(clamp: ClampKind, end: EndKind): Fit {
	const row = endsFor(clamp);
	if (row.well.includes(end)) return "well";
	return row.acceptable.includes(end) ? "acceptable" : "unsuited";
}

/** The ends that suit a clamp, with the reason. */
export function endsFor(clamp: ClampKind): Sourced<ClampEnds> {
	return certain(
		clampEnds.rows.find((row) => row.clamp === clamp),
		`the ${clamp} clamp`,
	);
}

/** Conductors one terminal takes unless marked for more; undefined where none land. */
export function conductorsPerTerminal(clamp: ClampKind, place: ClampPlace): Sourced<ClampCount> | undefined {
	return clampCounts.rows.find((row) => row.clamp === clamp && row.place === place);
}
