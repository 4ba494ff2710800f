// Fuse families of 12, 24 and 48 V systems. Typical of the family only: what is marked on the fuse decides.
import { certain } from "../base/certain.ts";
import type { Provenance, Sourced } from "./provenance.ts";
import { type Table, table } from "./table.ts";

export type FuseFamilyName =
	| "mini blade"
	| "blade"
	| "large blade"
	| "small bolt-in strip"
	| "large bolt-in strip"
	| "ANL"
	| "terminal cube"
	| "class T";
/** One family. */
export interface FuseFamily {
	readonly name: FuseFamilyName;
	/** Ratings it is made in, amperes. */
	readonly ratings: readonly number[];
	/** Highest direct voltage. */
	readonly volts: number;
	/** Typical interrupting rating, amperes, at `interruptingAt` volts. */
	readonly interrupting: number;
	readonly interruptingAt: number;
	/** At more volts less: volts with amperes, in rising order of volts. */
	readonly interruptingAbove?: readonly (readonly [number, number])[];
}

const recalled = (source: string, note?: string): Provenance => ({
	source,
	known: "recalled",
	...(note === undefined ? {} : { note }),
});
const bladeNote = "the type letter was read on the standard's title page";
const cube: Provenance = {
	source: "boating forums on lithium bank fuses",
	known: "read",
	note: "10 kA at 14 V read; 5000 A at 32 V, 2000 A at 58 V and the ratings recalled",
};
/** Recalled. */
const cubeAbove = [
	[32, 5000],
	[58, 2000],
] as const;
const classT: Provenance = {
	source: "UL 248-15, boating pages on interrupting ratings",
	known: "read",
	note: "20 kA at 125 V direct current read, ratings recalled; the same family is 200 kA on alternating current (read)",
};
type Row = readonly [FuseFamilyName, number, number, number, Provenance, readonly number[]];
const rows: readonly Row[] = [
	["mini blade", 32, 1000, 32, recalled("ISO 8820-3 type F", bladeNote), [2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30]],
	["blade", 32, 1000, 32, recalled("ISO 8820-3 type C", bladeNote), [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40]],
	["large blade", 32, 1000, 32, recalled("ISO 8820-3 type E", bladeNote), [20, 30, 40, 50, 60, 70, 80]],
	[
		"small bolt-in strip",
		32,
		2000,
		32,
		recalled("ISO 8820-5, holes 30 mm apart", "some parts are marked 5000 A at 32 V; 58 V versions exist"),
		[30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200],
	],
	[
		"large bolt-in strip",
		32,
		2000,
		32,
		recalled("ISO 8820-5, holes 51 mm apart", "58 and 70 V versions exist"),
		[80, 100, 125, 150, 175, 200, 225, 250, 300, 400, 500],
	],
	[
		"ANL",
		32,
		6000,
		32,
		recalled("marine trade practice", "some parts are marked 2700 A at 80 V"),
		[35, 40, 50, 60, 80, 100, 130, 150, 175, 200, 225, 250, 275, 300, 325, 350, 400, 500, 600, 750],
	],
	["terminal cube", 58, 10000, 14, cube, [30, 40, 50, 60, 75, 80, 90, 100, 125, 150, 175, 200, 225, 250, 300]],
	[
		"class T",
		125,
		20000,
		125,
		classT,
		[
			1, 3, 6, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350,
			400, 450, 500, 600, 700, 800, 1000, 1200,
		],
	],
];

/** Fuse families. Almost all recalled: no check may pass on a family's figure alone. */
export const fuseFamilies: Table<FuseFamily> = table<FuseFamily>(
	"dc-fuses",
	"Fuse families for direct current: typical figures, the marked ones decide",
	[
		["family", (row) => row.name],
		["up to, V", (row) => row.volts],
		["interrupts, A", (row) => row.interrupting],
		["at, V", (row) => row.interruptingAt],
		["ratings, A", (row) => row.ratings],
	],
	rows.map(([name, volts, interrupting, interruptingAt, provenance, ratings]) => ({
		name,
		ratings,
		volts,
		interrupting,
		interruptingAt,
		...(name === "terminal cube" ? { interruptingAbove: cubeAbove } : {}),
		provenance,
	})),
);

/** What is typical of a family at so many volts, amperes; undefined where it is made for fewer. */
export function interruptingAt(family: FuseFamily, volts: number): number | undefined {
	if (volts <= family.interruptingAt) return family.interrupting;
	return family.interruptingAbove?.find(([most]) => volts <= most)?.[1];
}

/** The body colour of a blade fuse. */
export interface BladeColour {
	readonly ampere: number;
	readonly colour: string;
}

const blades: readonly (readonly [number, string])[] = [
	[1, "black"],
	[2, "grey"],
	[3, "violet"],
	[4, "pink"],
	[5, "tan"],
	[7.5, "brown"],
	[10, "red"],
	[15, "blue"],
	[20, "yellow"],
	[25, "clear"],
	[30, "green"],
	[35, "blue-green"],
	[40, "orange"],
];

/** Blade fuse colours. */
export const bladeColours: Table<BladeColour> = table<BladeColour>(
	"blade-colours",
	"Body colours of blade fuses",
	[
		["rating, A", (row) => row.ampere],
		["colour", (row) => row.colour],
	],
	blades.map(([ampere, colour]) => ({ ampere, colour, provenance: recalled("ISO 8820-3") })),
);

/** How long a fuse of a family lasts at a multiple of its rating. */
export interface FusePoint {
	readonly family: FuseFamilyName;
	readonly multiple: number;
	/** Seconds: no sooner than, no later than (undefined: no limit). */
	readonly soonest: number;
	readonly latest: number | undefined;
}

const low = "low confidence";
const points: readonly (readonly [FuseFamilyName, number, number, number | undefined, string?])[] = [
	["blade", 1.1, 360000, undefined],
	["blade", 1.35, 0.75, 600],
	["blade", 1.6, 0.25, 50],
	["blade", 2, 0.15, 5],
	["blade", 3.5, 0.04, 0.5],
	["blade", 6, 0.02, 0.1],
	["small bolt-in strip", 1.35, 120, 1800, low],
	["small bolt-in strip", 2, 1, 15, low],
	["small bolt-in strip", 3.5, 0.3, 5, low],
	["small bolt-in strip", 6, 0.1, 1, low],
	["large bolt-in strip", 1.35, 120, 1800, low],
	["large bolt-in strip", 2, 1, 15, low],
	["large bolt-in strip", 3.5, 0.3, 5, low],
	["large bolt-in strip", 6, 0.1, 1, low],
];

/** Time-current points of fuses. */
export const fusePoints: Table<FusePoint> = table<FusePoint>(
	"fuse-points",
	"Time-current points of direct-current fuses",
	[
		["family", (row) => row.family],
		["multiple", (row) => row.multiple],
		["no sooner than, s", (row) => row.soonest],
		["no later than, s", (row) => row.latest],
	],
	points.map(([family, multiple, soonest, latest, note]) => ({
		family,
		multiple,
		soonest,
		latest,
		provenance: recalled(family === "blade" ? "ISO 8820-3" : "ISO 8820-5", note),
	})),
);

/** What is typical of a family. */
export function fuseFamily(name: FuseFamilyName): Sourced<FuseFamily> {
	return certain(
		fuseFamilies.rows.find((row) => row.name === name),
		`the ${name} fuse`,
	);
}
