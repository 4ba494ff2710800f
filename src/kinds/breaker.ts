// Breakers that plug on to a panel's bus: one pole, two poles, and with ground-fault protection.

import { boardHead } from "./board-head.ts";
import { rated } from "./figures.ts";
import { inBlock } from "./in-block.ts";
import { inLine } from "./in-line.ts";
import type { AttributeSpec, Blueprint, Kind, Said } from "./kind.ts";
import { neutralLead } from "./neutral-lead.ts";
import { residualAttributes, residualOf, residualText, usualTrip } from "./residual-current.ts";
import { cage, neutralKnot } from "./terminals.ts";

const shared: readonly AttributeSpec[] = [
	rated(1, 400, "the current it is marked with"),
	{
		name: "interrupting",
		takes: "quantity",
		dimension: "current",
		word: "interrupting",
		least: 100,
		most: 200_000,
		summary: "the fault current it can open",
	},
	{
		name: "voltage",
		takes: "quantity",
		dimension: "voltage",
		least: 6,
		most: 1500,
		summary: "in direct current: the most volts it may open",
	},
	{
		name: "poles",
		takes: "choice",
		words: ["single-pole", "two-pole"],
		summary: "one hot, or two that open together; under IEC, on one leg, the hot and its neutral",
	},
	{
		name: "tied",
		takes: "name",
		word: "tied",
		summary: "the breaker whose handle is tied to its own, so that both open together",
	},
	{
		name: "fastening",
		takes: "phrase",
		phrases: ["held down"],
		summary: "screwed or clipped to the panel, as one that feeds its bus must be",
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
	stands: ["panel", "hop"],
	attributes: shared,
	build: (said) => {
		if (said.slot === undefined)
			return { ...inLine(said, "trip"), ...face(said, 1, "breaker", "breaker-face", "breaker") };
		if (said.system === "dc") return { ...inBlock(said), ...face(said, 1, "breaker", "breaker-face", "breaker") };
		const both = said.choice("poles") === "two-pole";
		const onTwoLegs = said.slot.legs.length === 2;
		if (said.slot.name === "main")
			return boardHead(said, {
				what: "main",
				oneLine: onTwoLegs || both ? "breaker-2p" : "breaker",
				traits: ["breaker"],
				protects: true,
				opensNeutral: both && !onTwoLegs,
			});
		if (!both) return singlePole(said);
		return said.region === "iec" && !onTwoLegs ? withNeutral(said) : twoPole(said);
	},
};

export const groundFaultBreaker: Kind = {
	name: "ground-fault-breaker",
	also: ["gfci-breaker", "residual-current-breaker", "rcbo"],
	summary:
		"A breaker that also opens on a ground fault. The circuit's neutral lands on it; its own white tail goes to the neutral bar.",
	example: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  slot 1: ground-fault-breaker 20 A
circuit bath from LC.1 by 12-2
  14 ft to b1: receptacle
`,
	stands: ["panel"],
	attributes: [...shared.map((spec) => (spec.name === "rating" ? { ...spec, least: 4 } : spec)), ...residualAttributes],
	build: (said) => {
		const trip = usualTrip(said);
		if (said.slot?.name === "main")
			return boardHead(said, {
				what: "ground-fault main",
				oneLine: "breaker-gfci",
				traits: ["breaker"],
				protects: true,
				usualTrip: 30,
				opensNeutral: true,
			});
		const hots = said.choice("poles") === "two-pole" && said.slot?.legs.length === 2 ? [".1", ".2"] : [""];
		const loads = hots.map((pole) => (pole === "" ? "load.hot" : `load${pole}`));
		const [hot = "stab", hot2] = hots.map((pole) => `stab${pole}`);
		const [load = "load.hot", load2] = loads;
		const what = hot2 === undefined ? "ground-fault breaker" : "two-pole ground-fault breaker";
		return {
			...face(said, hots.length, `${what} ${residualText(said, trip)}`, "breaker-gfci-face", "breaker-gfci"),
			terminals: [
				...hots.flatMap((pole, index) => {
					const second = index === 1;
					return [
						stab(said, `stab${pole}`, second ? "hot2" : "hot"),
						cage(said.region, loads[index] ?? load, second ? "hot2" : "hot", second ? "load-hot2" : "load-hot", {
							side: "load",
							screw: "brass",
							...(pole === "" ? { also: ["load"] } : {}),
						}),
					];
				}),
				cage(said.region, "load.neutral", "neutral", "load-neutral", { side: "load", screw: "silver" }),
				{ ...cage(said.region, "tail", "neutral", undefined, { side: "line" }), clamp: "lead" },
			],
			links: [
				...hots.map((pole, index) => contact(`stab${pole}`, loads[index] ?? load, true)),
				contact("tail", "load.neutral", false),
			],
			plugs: plugs(
				said,
				hots.map((pole) => `stab${pole}`),
			),
			leads: [neutralLead(said, "tail", neutralKnot(said))],
			groundFault: {
				line: { hot, ...(hot2 === undefined ? {} : { hot2 }), neutral: "tail" },
				load: { hot: load, ...(load2 === undefined ? {} : { hot2: load2 }), neutral: "load.neutral" },
				ownOutlet: false,
				...residualOf(said, trip),
			},
			sides: [
				{
					name: "load",
					knots: {
						hot: "load-hot",
						...(hot2 === undefined ? {} : { hot2: "load-hot2" }),
						neutral: "load-neutral",
						ground: "^ground",
					},
				},
			],
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
		sides: [{ name: "load", knots: { hot: "load-hot", neutral: `^${neutralKnot(said)}`, ground: "^ground" } }],
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

/** On one leg of an IEC board: the hot from the bus, the neutral from its bar, both opened together. */
function withNeutral(said: Said): Blueprint {
	return {
		...face(said, 1, "two-pole breaker", "breaker-face", "breaker-2p"),
		terminals: [
			stab(said, "stab", "hot"),
			cage(said.region, "load.hot", "hot", "load-hot", { side: "load", also: ["load", "2"] }),
			cage(said.region, "load.neutral", "neutral", "load-neutral", { side: "load", also: ["N"] }),
			{ ...cage(said.region, "line.neutral", "neutral", undefined, { side: "line" }), clamp: "lead" },
		],
		links: [contact("stab", "load.hot", true), contact("line.neutral", "load.neutral", false)],
		plugs: plugs(said, ["stab"]),
		leads: [neutralLead(said, "line.neutral", neutralKnot(said))],
		sides: [{ name: "load", knots: { hot: "load-hot", neutral: "load-neutral", ground: "^ground" } }],
		onward: "load",
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
			traits: said.choice("fastening") === undefined ? ["breaker"] : ["breaker", "held-down"],
			...(rating === undefined ? {} : { rating }),
		},
	};
}
