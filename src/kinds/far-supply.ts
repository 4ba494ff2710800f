// Supplies from outside: a shore inlet with the pedestal behind it, a utility service, a generator. Their own breaker protects what they feed.

import { legVoltages, mainsVoltage, rated } from "./figures.ts";
import type { AttributeSpec, Blueprint, Kind, LinkSpec, Said } from "./kind.ts";
import { cage } from "./terminals.ts";

/** How the far supply is earthed, by the words of IEC 60364-1 (recalled). */
const earthing: AttributeSpec = {
	name: "earthing",
	takes: "choice",
	words: ["TN", "TN-S", "TN-C-S", "TT"],
	summary:
		"IEC: TN leads the supply's own earth to the inlet; TT gives an earth electrode of the place, so that only a residual-current device opens on an earth fault",
};

export const inlet: Kind = {
	name: "inlet",
	summary:
		"Where shore power comes in. The pedestal behind it has a breaker of the inlet's rating and joins neutral to ground, unless `floating`.",
	example: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
	stands: ["top"],
	attributes: [
		rated(5, 100, "what the inlet and the pedestal's breaker are rated for"),
		mainsVoltage("between hot and neutral; 120 V, or 230 V in IEC countries, if not said"),
		legVoltages,
		{
			name: "adapter",
			takes: "quantity",
			dimension: "current",
			word: "adapter",
			least: 5,
			most: 50,
			summary: "for an inlet with two hot legs on an adapter from a pedestal with one: that pedestal's breaker",
		},
		{ name: "floating", takes: "flag", summary: "the far supply does not join neutral to ground" },
		earthing,
	],
	build: (said) => supply(said, "shore", said.flag("floating") === true, ratingOf(said), true),
};

export const generator: Kind = {
	name: "generator",
	summary: "A generator with its own breaker. Its neutral floats unless `bonds neutral to frame` is said.",
	example: `generator gen 3000 W 120 V, bonds neutral to frame
panel LC main 30 A from gen by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
	stands: ["top"],
	attributes: [
		{
			name: "power",
			takes: "quantity",
			dimension: "power",
			least: 100,
			most: 50_000,
			summary: "what it gives for long",
		},
		{
			name: "rating",
			takes: "quantity",
			dimension: "current",
			least: 1,
			most: 200,
			summary: "its breaker; its power over its volts if not said",
		},
		mainsVoltage("between hot and neutral"),
		legVoltages,
		{
			name: "bonding",
			takes: "phrase",
			phrases: ["bonds neutral to frame", "bonding plug", "no bonding plug", "bonds neutral never", "floating"],
			summary: "whether its neutral is joined to its frame: inside, or by a plug made for that in one of its outlets",
		},
		{ name: "breaker", takes: "flag", summary: "`no breaker` for one that has none of its own" },
	],
	build: (said) => {
		const power = said.quantity("power")?.value;
		const volts = said.pair("legs")?.[1].value ?? voltsOf(said);
		const rating = said.quantity("rating")?.value ?? (power === undefined ? undefined : power / volts);
		const bonding = said.choice("bonding");
		const floats = bonding !== "bonds neutral to frame" && bonding !== "bonding plug";
		return supply(said, "generator", floats, rating, said.flag("breaker") !== false);
	},
};

export const utility: Kind = {
	name: "utility",
	also: ["service"],
	summary:
		"The supply of a place that stands still, behind its meter, with a breaker of its rating there. It joins neutral to ground at the meter; with `no ground` it brings none, and the first panel has the bonding screw.",
	example: `plan "Cabin"
  rules building
utility grid 60 A 120/240 V
panel LC main 60 A 120/240 V from grid by 4-3, 20 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
	stands: ["top"],
	attributes: [
		rated(5, 400, "what the breaker at the meter is rated for"),
		mainsVoltage("between hot and neutral; 120 V, or 230 V in IEC countries, if not said"),
		legVoltages,
		{ name: "ground", takes: "flag", summary: "`no ground` where only hots and neutral come in" },
		earthing,
	],
	build: (said) => supply(said, "utility", false, said.quantity("rating")?.value, true),
};

function supply(
	said: Said,
	sort: "shore" | "generator" | "utility",
	floating: boolean,
	rating: number | undefined,
	supplyProtects: boolean,
): Blueprint {
	const twoLegs = said.pair("legs") !== undefined;
	// An adapter from a pedestal with one hot joins both legs of the inlet to it.
	const isBridged = twoLegs && sort === "shore" && said.quantity("adapter") !== undefined;
	const volts = voltsOf(said);
	const arrangement = sort === "generator" ? undefined : said.choice("earthing");
	const groundless = sort === "utility" && said.flag("ground") === false;
	const plugged = sort === "generator" && said.choice("bonding") === "bonding plug";
	const more = [
		...(arrangement === undefined ? [] : [arrangement]),
		...(plugged ? ["bonding plug"] : []),
		...(groundless ? ["no ground"] : []),
	];
	return {
		terminals: [
			cage(said.region, "hot", "hot", "hot", { also: ["brass"], screw: "brass" }),
			...(twoLegs ? [cage(said.region, "hot2", "hot2", "hot2", { screw: "brass" })] : []),
			cage(said.region, "neutral", "neutral", "neutral", { also: ["silver"], screw: "silver" }),
			...(groundless
				? []
				: [cage(said.region, "ground", "ground", "ground", { also: ["green", "case"], screw: "green" })]),
		],
		links: [
			...(floating || groundless ? [] : [bondOf(sort)]),
			...(isBridged ? [{ between: ["hot", "hot2"], nature: "solid" } as const] : []),
		],
		source: {
			sort,
			system: "ac",
			volts,
			hot: twoLegs && !isBridged ? ["hot", "hot2"] : ["hot"],
			neutral: "neutral",
			...(groundless ? { groundAtBond: true } : { ground: "ground" }),
			...(rating === undefined ? {} : { limit: rating }),
			bonding: floating ? "floating" : "supply",
			...(arrangement === "TT" ? { ownEarth: true } : {}),
			supplyProtects,
		},
		sides: [
			{
				name: "out",
				knots: { hot: "hot", hot2: "hot2", neutral: "neutral", ...(groundless ? {} : { ground: "ground" }) },
			},
		],
		onward: "out",
		enclosure: { sort: "equipment", metal: false },
		face: {
			text: `${words[sort]}${rating === undefined ? "" : ` ${Math.round(rating)} A`} · ${twoLegs && !isBridged ? `${volts}/${volts * 2}` : volts} V${isBridged ? " on an adapter" : ""}${more.map((word) => ` · ${word}`).join("")}`,
			wiring:
				sort === "shore" ? inletFace(said, rating, twoLegs) : sort === "generator" ? "generator-face" : "meter-face",
			oneLine: marks[sort],
			traits: ["source"],
			...(rating === undefined ? {} : { rating }),
		},
	};
}

const words = { shore: "shore inlet", generator: "generator", utility: "utility service" } as const;
const marks = { shore: "shore-inlet", generator: "generator", utility: "ac-source" } as const;

/** As inlets are sold (common practice): round pins in IEC countries; elsewhere straight blades up to 15 A, above that a lock by a turn. */
function inletFace(said: Said, rating: number | undefined, twoLegs: boolean): string {
	if (said.region === "iec") return "shore-inlet-pins-face";
	if (twoLegs) return "shore-inlet-two-legs-face";
	return rating !== undefined && rating <= 15 ? "shore-inlet-blades-face" : "shore-inlet-face";
}

/** A pedestal's bond goes with its cord; that in a generator or at a meter stays where it is wired in, be it on or off. */
function bondOf(sort: "shore" | "generator" | "utility"): LinkSpec {
	const bond = { between: ["neutral", "ground"], nature: "bond" } as const;
	return sort === "shore" ? { ...bond, when: "source-live" } : bond;
}

/** What the pedestal's breaker lets through: an adapter stands for a smaller pedestal. */
function ratingOf(said: Said): number | undefined {
	return (said.quantity("adapter") ?? said.quantity("rating"))?.value;
}

/** Volts between hot and neutral: as said, else the region's nominal voltage. */
function voltsOf(said: Said): number {
	return said.pair("legs")?.[0].value ?? said.quantity("voltage")?.value ?? (said.region === "us" ? 120 : 230);
}
