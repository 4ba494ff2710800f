// Which colours a conductor of each role has, by region and rule set: the usual ones first, then what is allowed.
import { certain } from "../base/certain.ts";
import { type Colour, colourParts, type PlainColour } from "./colours.ts";
import type { Provenance, Sourced } from "./provenance.ts";
import type { Region, RuleSet } from "./scope.ts";
import { type Table, table } from "./table.ts";

/** What a conductor is for. `hot2` is the second leg, or a second hot in one cable. */
export type ColourRole = "hot" | "hot2" | "neutral" | "ground" | "positive" | "negative";

/** The colours of one role. */
export interface RoleColours {
	readonly region: Region;
	readonly rules: readonly RuleSet[];
	readonly role: ColourRole;
	/** What the trade takes, first choice first. */
	readonly usual: readonly Colour[];
	/** Everything that does not contradict the role; the usual ones are among them. */
	readonly allowed: readonly Colour[];
	/** Stripes that say the role on any base but green: the white or grey stripes of a neutral. */
	readonly stripes: readonly PlainColour[];
}

const anywhere: readonly RuleSet[] = ["camper", "boat", "building"];
const ashore: readonly RuleSet[] = ["camper", "building"];
const afloat: readonly RuleSet[] = ["boat"];

const grounded: Provenance = {
	source: "NFPA 70 200.6",
	known: "read",
	note: "from 4 AWG up a conductor may be marked white or grey at its ends",
};
const grounding: Provenance = {
	source: "NFPA 70 250.119",
	known: "read",
	note: "from 4 AWG up a conductor may be re-marked green (recalled)",
};
const ungrounded: Provenance = {
	source: "NFPA 70 200.6, 250.119 and 210.5",
	known: "read",
	note: "any colour not kept for neutral or ground; black first and red second leg read, blue third is common practice",
};
const boatAc: Provenance = { source: "ABYC E-11 alternating-current wiring colours", known: "read" };
const boatDc: Provenance = { source: "ABYC E-11 engine and accessory wiring colours", known: "read" };
const metricAc: Provenance = { source: "IEC 60445", known: "read" };
const craftDc: Provenance = {
	source: "ISO 10133",
	known: "recalled",
	note: "black or yellow; yellow where alternating current is aboard too, so that black stays its hot",
};
const vehicle: Provenance = { source: "vehicle and camper trade", known: "common practice" };

/** Green is ground everywhere; white and grey are neutral ashore in North America. */
const freeUs: readonly Colour[] = [
	"black",
	"red",
	"blue",
	"brown",
	"orange",
	"yellow",
	"violet",
	"pink",
	"turquoise",
	"tan",
];
const freeBoat: readonly Colour[] = ["black", "brown", "red", "orange", "blue"];
/** IEC 60445's list of colours, less blue, green, yellow and green-and-yellow. */
const freeIec: readonly Colour[] = ["brown", "black", "grey", "red", "orange", "violet", "white", "pink", "turquoise"];
const accessory: readonly Colour[] = [
	"red",
	"orange",
	"brown",
	"violet",
	"blue",
	"pink",
	"tan",
	"grey",
	"yellow-red",
	"brown-yellow",
];
const greens: readonly Colour[] = ["bare", "green", "green-yellow"];
const yellowNote = "yellow where alternating current is aboard too, so that black stays its hot (recalled)";
const metricNote = "a bare protective conductor inside a sheath is sleeved green-yellow at its ends (recalled)";
const disputed =
	"IEC 60445:2017 is recalled as red and white and reprinted as brown and blue: the standard's own colours are not verified";

type Row = readonly [Region, readonly RuleSet[], ColourRole, readonly Colour[], readonly Colour[], Provenance];
const rows: readonly Row[] = [
	["us", ashore, "hot", ["black", "red", "blue"], freeUs, ungrounded],
	["us", ashore, "hot2", ["red", "black", "blue"], freeUs, ungrounded],
	["us", ashore, "neutral", ["white", "grey"], ["white", "grey"], grounded],
	["us", ashore, "ground", greens, greens, grounding],
	["us", ashore, "positive", ["red"], accessory, vehicle],
	["us", ashore, "negative", ["black", "yellow"], ["black", "yellow", "black-yellow"], vehicle],
	["us", afloat, "hot", ["black", "brown"], freeBoat, boatAc],
	["us", afloat, "hot2", ["red", "black"], freeBoat, boatAc],
	["us", afloat, "neutral", ["white", "blue"], ["white", "blue"], { ...boatAc, note: "the blue is light blue" }],
	["us", afloat, "ground", ["green", "green-yellow"], greens, { ...boatAc, note: "bare for direct current only" }],
	["us", afloat, "positive", ["red"], accessory, boatDc],
	["us", afloat, "negative", ["yellow", "black"], ["yellow", "black", "black-yellow"], { ...boatDc, note: yellowNote }],
	["iec", anywhere, "hot", ["brown", "black", "grey"], freeIec, metricAc],
	["iec", anywhere, "hot2", ["black", "grey", "brown"], freeIec, metricAc],
	["iec", anywhere, "neutral", ["blue"], ["blue"], { ...metricAc, note: "preferably light blue" }],
	["iec", anywhere, "ground", ["green-yellow"], ["green-yellow", "bare"], { ...metricAc, note: metricNote }],
	["iec", anywhere, "positive", ["red", "brown"], accessory, { ...vehicle, note: disputed }],
	["iec", ashore, "negative", ["black", "blue"], ["black", "blue"], { ...vehicle, note: disputed }],
	["iec", afloat, "negative", ["yellow", "black"], ["yellow", "black", "black-yellow", "blue"], craftDc],
];

/** Conductor colours by role. */
export const roleColours: Table<RoleColours> = table<RoleColours>(
	"conductor-colours",
	"Conductor colours by role",
	[
		["region", (row) => row.region],
		["rules", (row) => row.rules],
		["role", (row) => row.role],
		["usual", (row) => row.usual],
		["allowed", (row) => row.allowed],
		["stripes that say it", (row) => row.stripes],
	],
	rows.map(([region, rules, role, usual, allowed, provenance]) => {
		const stripes: readonly PlainColour[] = region === "us" && role === "neutral" ? ["white", "grey"] : [];
		return { region, rules, role, usual, allowed, stripes, provenance };
	}),
);

/** The colours of a role. */
export function coloursOf(region: Region, role: ColourRole, rules: RuleSet = "camper"): Sourced<RoleColours> {
	return certain(
		roleColours.rows.find((row) => row.region === region && row.role === role && row.rules.includes(rules)),
		`the colours of ${role}`,
	);
}

/** Whether a colour agrees with a role: it is allowed, or base and stripe both are, or its stripe says the role. */
export function colourSuits(colours: RoleColours, colour: Colour): boolean {
	if (colours.allowed.includes(colour)) return true;
	const { base, stripe } = colourParts(colour);
	if (stripe === undefined || colour === "green-yellow") return false;
	if (colours.stripes.includes(stripe) && base !== "green") return true;
	return colours.allowed.includes(base) && colours.allowed.includes(stripe);
}
