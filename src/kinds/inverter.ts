// An inverter, and an inverter-charger that passes shore power through and makes its own when there is none.

import { stud } from "./in-line.ts";
import type { AttributeSpec, Blueprint, Kind, LinkSpec, Said, SideSpec, TerminalSpec } from "./kind.ts";
import { cage } from "./terminals.ts";

const shared: readonly AttributeSpec[] = [
	{
		name: "power",
		takes: "quantity",
		dimension: "power",
		least: 50,
		most: 30_000,
		required: true,
		summary: "what it gives for long",
	},
	{
		name: "surge",
		takes: "quantity",
		dimension: "power",
		word: "surge",
		least: 50,
		most: 60_000,
		summary: "what it gives for a moment",
	},
	{
		name: "efficiency",
		takes: "quantity",
		dimension: "share",
		word: "efficiency",
		least: 0.3,
		most: 1,
		summary: "what comes out of what goes in",
	},
	{
		name: "voltages",
		takes: "pair",
		dimension: "voltage",
		least: 5,
		most: 600,
		summary: "battery side and mains side: `12 V / 120 V`",
	},
	{
		name: "cut-off",
		takes: "quantity",
		dimension: "voltage",
		word: "cut-off",
		least: 5,
		most: 100,
		kept: true,
		summary: "the volts of its battery at which it stops",
	},
	{
		name: "bonding",
		takes: "phrase",
		phrases: ["bonds neutral when inverting", "bonds neutral to frame", "bonds neutral never"],
		summary: "when it joins its output neutral to ground",
	},
];

export const inverter: Kind = {
	name: "inverter",
	summary: "Makes mains from the battery. Its neutral floats unless it is said to bond.",
	example: `inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
panel LC main 20 A from inv by 12-2, 6 ft
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`,
	system: "both",
	stands: ["top"],
	attributes: shared,
	build: (said) => ({
		...machine(said, "inverter", [], [...acTerminals(said, "", "out")], bondOf(said, "")),
		sides: [outSide, ...batterySides],
		onward: "out",
	}),
};

export const inverterCharger: Kind = {
	name: "inverter-charger",
	summary: "Passes what comes in through to its output, and makes mains from the battery when nothing comes in.",
	example: `inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
	system: "both",
	stands: ["top"],
	attributes: [
		...shared,
		{
			name: "pass-through",
			takes: "quantity",
			dimension: "current",
			word: "pass-through",
			least: 5,
			most: 200,
			summary: "what its transfer contacts carry",
		},
		{
			name: "transfer",
			takes: "phrase",
			phrases: ["transfers hot alone", "transfers hot and neutral"],
			summary: "which poles the transfer moves; hot and neutral if not said",
		},
	],
	build: (said) => {
		const both = said.choice("transfer") !== "transfers hot alone";
		const passes = (pole: "hot" | "neutral"): LinkSpec => ({
			between: [`in.${pole}`, `out.${pole}`],
			nature: "solid",
			...(pole === "neutral" && !both ? {} : { when: "input-live" }),
		});
		return {
			...machine(
				said,
				"inverter-charger",
				["out."],
				[...acTerminals(said, "in.", "in"), ...acTerminals(said, "out.", "out")],
				[
					passes("hot"),
					passes("neutral"),
					{ between: ["in.ground", "out.ground"], nature: "solid" },
					...bondOf(said, "out."),
				],
			),
			sides: [
				{ name: "in", knots: { hot: "in-hot", neutral: "in-neutral", ground: "in-ground" } },
				outSide,
				...batterySides,
			],
			onward: "out",
		};
	},
};

/** Where it is not said (common practice). */
const usualEfficiency = 0.85;

const outSide = { name: "out", knots: { hot: "out-hot", neutral: "out-neutral", ground: "out-ground" } } as const;

/** The battery side, and the stud of the case. */
const batterySides: readonly SideSpec[] = [
	{ name: "+", system: "dc", knots: { positive: "+", negative: "-" }, lone: { knot: "+", role: "positive" } },
	{ name: "-", system: "dc", knots: { negative: "-" }, lone: { knot: "-", role: "negative" } },
	{ name: "case", knots: { ground: "case" }, lone: { knot: "case", role: "ground" } },
];

/** Everything both machines share; `prefix` leads to the output terminals. */
function machine(
	said: Said,
	sort: "inverter" | "inverter-charger",
	[prefix = ""]: readonly string[],
	terminals: readonly TerminalSpec[],
	links: readonly LinkSpec[],
): Omit<Blueprint, "sides" | "onward"> {
	const power = said.quantity("power")?.value;
	const volts = said.pair("voltages")?.[1].value ?? (said.region === "us" ? 120 : 230);
	const batteryVolts = said.pair("voltages")?.[0].value;
	const passThrough = sort === "inverter" ? undefined : said.quantity("pass-through");
	return {
		terminals: [
			...terminals,
			stud(said, "+", "positive", "+"),
			stud(said, "-", "negative", "-"),
			{ ...stud(said, "lug", "ground", "case"), capacity: 2 },
		],
		links: [
			{ between: [`${prefix}ground`, "^case"], nature: "solid" },
			{ between: [`${prefix}ground`, "lug"], nature: "solid" },
			...links,
		],
		source: {
			sort,
			system: "ac",
			volts,
			hot: [`${prefix}hot`],
			neutral: `${prefix}neutral`,
			ground: `${prefix}ground`,
			...(power === undefined ? {} : { limit: power / volts }),
			bonding: bondsNeutral(said) ? "own" : "floating",
			supplyProtects: true,
		},
		loads: [
			{
				between: ["+", "-"],
				...(power === undefined ? {} : { watts: power / (said.quantity("efficiency")?.value ?? usualEfficiency) }),
				...(batteryVolts === undefined ? {} : { volts: batteryVolts }),
				continuous: false,
				outlet: false,
			},
		],
		enclosure: { sort: "equipment", metal: true },
		face: {
			text: [
				sort,
				power === undefined ? "" : ` ${Math.round(power)} W`,
				passThrough === undefined ? "" : `, passes ${passThrough.value} A`,
			].join(""),
			wiring: `${sort}-face`,
			oneLine: sort,
			traits: ["source"],
		},
	};
}

function acTerminals(said: Said, prefix: "" | "in." | "out.", side: "in" | "out"): TerminalSpec[] {
	const terminal = (role: "hot" | "neutral" | "ground", screw: string) =>
		cage(said.region, `${prefix}${role}`, role, `${side}-${role}`, { screw, side: side === "in" ? "line" : "load" });
	return [terminal("hot", "brass"), terminal("neutral", "silver"), terminal("ground", "green")];
}

/** By a relay while it inverts, or by a joint to its frame that is always there; none where it is not said to bond. */
function bondOf(said: Said, prefix: "" | "out."): LinkSpec[] {
	if (!bondsNeutral(said)) return [];
	const relay = said.choice("bonding") === "bonds neutral when inverting";
	return [
		{ between: [`${prefix}neutral`, `${prefix}ground`], nature: "bond", ...(relay ? { when: "inverting" } : {}) },
	];
}

function bondsNeutral(said: Said): boolean {
	const bonding = said.choice("bonding");
	return bonding !== undefined && bonding !== "bonds neutral never";
}
