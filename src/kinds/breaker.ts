// Breakers that plug on to a panel's bus: one pole, two poles, and with ground-fault protection.

import { awg } from "../base/gauge.ts";
import type { AttributeSpec, Blueprint, Kind, Said } from "./kind.ts";
import { cage } from "./terminals.ts";

const shared: readonly AttributeSpec[] = [
	{
		name: "rating",
		takes: "quantity",
		dimension: "current",
		least: 1,
		most: 400,
		required: true,
		summary: "the current it is marked with",
	},
	{
		name: "interrupting",
		takes: "quantity",
		dimension: "current",
		word: "interrupting",
		least: 100,
		most: 200_000,
		summary: "the fault current it can open",
	},
	{ name: "poles", takes: "choice", words: ["single-pole", "two-pole"], summary: "one hot, or two that open together" },
	{
		name: "tied",
		takes: "name",
		word: "tied",
		summary: "the breaker whose handle is tied to its own, so that both open together",
	},
];

export const breaker: Kind = {
	name: "breaker",
	summary: "A breaker in a slot of a panel. Two half-size ones share a space: slots `1A` and `1B`.",
	example: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  slot 1A: breaker 20 A
  slot 1B: breaker 15 A
circuit bunks from LC.1A by 12-2
  14 ft to b1: receptacle
`,
	stands: ["panel"],
	attributes: shared,
	build: (said) =>
		said.slot?.name === "main" ? main(said) : said.choice("poles") === "two-pole" ? twoPole(said) : singlePole(said),
};

export const groundFaultBreaker: Kind = {
	name: "ground-fault-breaker",
	also: ["gfci-breaker"],
	summary:
		"A breaker that also opens on a ground fault. The circuit's neutral lands on it; its own white tail goes to the neutral bar.",
	example: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  slot 1: ground-fault-breaker 20 A
circuit bath from LC.1 by 12-2
  14 ft to b1: receptacle
`,
	stands: ["panel"],
	attributes: [
		...shared.slice(0, 2),
		{
			name: "trip",
			takes: "quantity",
			dimension: "current",
			word: "trip",
			least: 0.004,
			most: 0.5,
			summary: "the leak it opens on; 5 mA if not said",
		},
	],
	build: (said) => {
		const trip = (said.quantity("trip")?.value ?? 0.005) * 1000;
		return {
			...face(said, 1, "ground-fault breaker", "breaker-gfci-face", "breaker-gfci"),
			terminals: [
				stab(said, "stab", "hot"),
				cage(said.region, "load.hot", "hot", "load-hot", { side: "load", also: ["load"], screw: "brass" }),
				cage(said.region, "load.neutral", "neutral", "load-neutral", { side: "load", screw: "silver" }),
				{ ...cage(said.region, "tail", "neutral", undefined, { side: "line" }), clamp: "lead" },
			],
			links: [contact("stab", "load.hot", true), contact("tail", "load.neutral", false)],
			plugs: plugs(said, ["stab"]),
			leads: [{ mine: "tail", ownerKnot: "neutral", colour: said.region === "us" ? "white" : "blue", gauge: awg(12) }],
			groundFault: {
				line: { hot: "stab", neutral: "tail" },
				load: { hot: "load.hot", neutral: "load.neutral" },
				ownOutlet: false,
				trip,
			},
			sides: [{ name: "load", knots: { hot: "load-hot", neutral: "load-neutral", ground: "^ground" } }],
			onward: "load",
		};
	},
};

function singlePole(said: Said): Blueprint {
	return {
		...face(said, 1, "breaker", "breaker-face", "breaker"),
		terminals: [
			stab(said, "stab", "hot"),
			cage(said.region, "load", "hot", "load-hot", { side: "load", screw: "brass" }),
		],
		links: [contact("stab", "load", true)],
		plugs: plugs(said, ["stab"]),
		sides: [{ name: "load", knots: { hot: "load-hot", neutral: "^neutral", ground: "^ground" } }],
		onward: "load",
	};
}

function twoPole(said: Said): Blueprint {
	return {
		...face(said, 2, "two-pole breaker", "breaker-face", "breaker-2p"),
		terminals: [
			stab(said, "stab.1", "hot"),
			stab(said, "stab.2", "hot2"),
			cage(said.region, "load.1", "hot", "load-hot", { side: "load", screw: "brass" }),
			cage(said.region, "load.2", "hot2", "load-hot2", { side: "load", screw: "brass" }),
		],
		links: [contact("stab.1", "load.1", true), contact("stab.2", "load.2", true)],
		plugs: plugs(said, ["stab.1", "stab.2"]),
		sides: [{ name: "load", knots: { hot: "load-hot", hot2: "load-hot2", neutral: "^neutral", ground: "^ground" } }],
		onward: "load",
	};
}

/** A main: fed on its lugs, it feeds the bus. */
function main(said: Said): Blueprint {
	const poles = said.slot?.legs.length === 2 ? [".1", ".2"] : [""];
	return {
		...face(
			said,
			poles.length,
			poles.length === 2 ? "two-pole main" : "main",
			"breaker-face",
			poles.length === 2 ? "breaker-2p" : "breaker",
		),
		terminals: poles.flatMap((pole, index) => {
			const role = index === 0 ? ("hot" as const) : ("hot2" as const);
			return [
				cage(said.region, `line${pole}`, role, role, { side: "line", screw: "brass" }),
				{ ...stab(said, `stab${pole}`, role), side: "load" as const },
			];
		}),
		links: poles.map((pole) => contact(`line${pole}`, `stab${pole}`, true)),
		plugs: plugs(
			said,
			poles.map((pole) => `stab${pole}`),
		),
		sides: [{ name: "line", knots: { hot: "hot", hot2: "hot2", neutral: "^neutral", ground: "^ground" } }],
		onward: "line",
	};
}

function stab(said: Said, name: string, role: "hot" | "hot2") {
	return { ...cage(said.region, name, role, undefined, { side: "line" }), clamp: "stab" as const, capacity: 0 };
}

function contact(from: string, to: string, protects: boolean) {
	return {
		between: [from, to] as const,
		nature: "contact" as const,
		contact: { group: "trip", positions: 2, closed: [1] },
		protects,
	};
}

function plugs(said: Said, stabs: readonly string[]): { mine: string; owner: string }[] {
	const legs = said.slot?.legs ?? [];
	return stabs.flatMap((mine, index) => {
		const owner = legs[index] ?? legs[0];
		return owner === undefined ? [] : [{ mine, owner }];
	});
}

function face(
	said: Said,
	poles: number,
	what: string,
	wiring: string,
	oneLine: string,
): Pick<Blueprint, "face" | "protection"> {
	const rating = said.quantity("rating")?.value;
	return {
		protection: { ...(rating === undefined ? {} : { rating }), sort: "breaker", poles },
		face: {
			text: rating === undefined ? what : `${rating} A ${what}`,
			wiring,
			oneLine,
			traits: ["breaker"],
			...(rating === undefined ? {} : { rating }),
		},
	};
}
