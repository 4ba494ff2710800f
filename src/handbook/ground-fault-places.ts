// Where ground-fault (residual-current) protection is asked for: place, equipment, rule set.
import type { Provenance, Sourced } from "./provenance.ts";
import type { Region, RuleSet } from "./scope.ts";
import { type Table, table } from "./table.ts";

/** A place as far as ground-fault protection depends on it; `everywhere` is the whole installation. */
export type GroundFaultPlace =
	| "outdoor"
	| "wet"
	| "damp"
	| "basin"
	| "bath"
	| "bathroom"
	| "kitchen"
	| "laundry"
	| "garage"
	| "basement"
	| "crawl space"
	| "boathouse"
	| "engine-space"
	| "everywhere";
/** What is protected: a receptacle, a light, all that any source feeds, or all that shore does. */
export type GroundFaultEquipment = "receptacle" | "light" | "supply" | "shore supply";

/** One place that asks for protection. */
export interface GroundFaultRow {
	readonly region: Region;
	/** The rule set it belongs to; a manufactured home is a federal cousin of the tiny house on wheels. */
	readonly rules: RuleSet | "manufactured home";
	readonly equipment: GroundFaultEquipment;
	readonly place: GroundFaultPlace;
	/** Metres from the place within which it holds; undefined: in the place itself. */
	readonly within: number | undefined;
	/** Highest trip level, milliamperes: 6 is a class A device. */
	readonly trip: number;
}

/** Six feet. The metric rounding of the code (1.8 m) would leave out a distance of exactly 6 ft. */
const sixFeet = 1.8288;
const here = undefined;
const dwelling: Provenance = { source: "NFPA 70 210.8(A)", known: "recalled" };
const vehicle: Provenance = { source: "NFPA 70 551.41(C)", known: "recalled" };
const shower: Provenance = { source: "NFPA 70 551.53(B)", edition: "2020", known: "read" };
const boat: Provenance = { source: "ABYC E-11 alternating-current receptacles", known: "recalled" };
const home: Provenance = { source: "24 CFR 3280.806(b)", known: "recalled" };
const caravan: Provenance = { source: "IEC 60364-7-721, in a UK guide to the wiring regulations", known: "read" };
const sockets: Provenance = { source: "IEC 60364-4-41 411.3.3", edition: "2017", known: "recalled" };
const bathroom: Provenance = {
	source: "IEC 60364-7-701 701.415.1",
	known: "recalled",
	note: "every circuit of a room with a bath or shower",
};
const craft: Provenance = { source: "ISO 13297", known: "recalled" };

type Row = readonly [
	Region,
	GroundFaultRow["rules"],
	GroundFaultEquipment,
	GroundFaultPlace,
	number | undefined,
	number,
	Provenance,
];
const rows: readonly Row[] = [
	["us", "building", "receptacle", "bathroom", here, 6, dwelling],
	["us", "building", "receptacle", "garage", here, 6, dwelling],
	["us", "building", "receptacle", "outdoor", here, 6, dwelling],
	["us", "building", "receptacle", "crawl space", here, 6, dwelling],
	["us", "building", "receptacle", "basement", here, 6, dwelling],
	["us", "building", "receptacle", "kitchen", here, 6, dwelling],
	["us", "building", "receptacle", "basin", sixFeet, 6, dwelling],
	["us", "building", "receptacle", "boathouse", here, 6, dwelling],
	["us", "building", "receptacle", "bath", sixFeet, 6, dwelling],
	["us", "building", "receptacle", "laundry", here, 6, dwelling],
	["us", "building", "receptacle", "damp", here, 6, dwelling],
	["us", "building", "receptacle", "wet", here, 6, dwelling],
	["us", "camper", "receptacle", "bathroom", here, 6, vehicle],
	["us", "camper", "receptacle", "basin", sixFeet, 6, vehicle],
	["us", "camper", "receptacle", "bath", here, 6, vehicle],
	["us", "camper", "receptacle", "outdoor", here, 6, vehicle],
	[
		"us",
		"camper",
		"receptacle",
		"wet",
		here,
		6,
		{ source: "wet places as outside the vehicle", known: "common practice" },
	],
	["us", "camper", "light", "bath", here, 6, shower],
	["us", "boat", "receptacle", "bathroom", here, 6, boat],
	["us", "boat", "receptacle", "kitchen", here, 6, boat],
	["us", "boat", "receptacle", "engine-space", here, 6, boat],
	["us", "boat", "receptacle", "outdoor", here, 6, boat],
	["us", "boat", "receptacle", "wet", here, 6, boat],
	[
		"us",
		"boat",
		"receptacle",
		"basin",
		sixFeet,
		6,
		{ source: "as in recreational vehicles", known: "common practice" },
	],
	["us", "boat", "shore supply", "everywhere", here, 30, { source: "ABYC E-11 shore-power inlet", known: "recalled" }],
	["us", "manufactured home", "receptacle", "outdoor", here, 6, home],
	["us", "manufactured home", "receptacle", "bathroom", here, 6, home],
	["us", "manufactured home", "receptacle", "basin", sixFeet, 6, home],
	["iec", "camper", "supply", "everywhere", here, 30, caravan],
	["iec", "building", "receptacle", "everywhere", here, 30, sockets],
	["iec", "building", "light", "bath", here, 30, bathroom],
	["iec", "boat", "supply", "everywhere", here, 30, craft],
];

/** Places that ask for ground-fault protection. */
export const groundFaultPlaces: Table<GroundFaultRow> = table<GroundFaultRow>(
	"ground-fault-places",
	"Where ground-fault protection is asked for",
	[
		["region", (row) => row.region],
		["rules", (row) => row.rules],
		["equipment", (row) => row.equipment],
		["place", (row) => row.place],
		["within, m", (row) => row.within],
		["trips at most at, mA", (row) => row.trip],
	],
	rows.map(([region, rules, equipment, place, within, trip, provenance]) => ({
		region,
		rules,
		equipment,
		place,
		within,
		trip,
		provenance,
	})),
);

/** The rows that hold for one sort of equipment under one rule set. */
export function groundFaultPlacesFor(
	region: Region,
	rules: RuleSet,
	equipment: GroundFaultEquipment,
): readonly Sourced<GroundFaultRow>[] {
	return groundFaultPlaces.rows.filter(
		(row) => row.region === region && row.rules === rules && row.equipment === equipment,
	);
}
