// A receptacle: single, duplex or split. Fed in parallel: hot, neutral and ground come in and go on.

import { mainsVoltage } from "./figures.ts";
import type { Blueprint, Kind, LoadSpec, Role, Said, SideSpec, TerminalSpec } from "./kind.ts";
import { markedMetal } from "./terminal-marking.ts";
import { deviceTerminal, secondSide, switchedSide } from "./terminals.ts";

export const receptacle: Kind = {
	name: "receptacle",
	also: ["outlet", "socket"],
	summary:
		"An outlet for plugs. `single` has one, `duplex` two; `split` has the tab on its brass side removed, so that its halves have their own hots.",
	example: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle 15 A duplex
   9 ft to b2: receptacle 20 A single
`,
	stands: ["top", "hop", "box"],
	attributes: [
		{
			name: "rating",
			takes: "quantity",
			dimension: "current",
			least: 5,
			most: 63,
			summary: "what it is rated for; 15 A, or 16 A in IEC countries, if not said",
		},
		mainsVoltage("240 V for one on two hots, without a neutral"),
		{
			name: "legs",
			takes: "pair",
			dimension: "voltage",
			least: 5,
			most: 600,
			summary: "`120 V / 240 V` for one on two hots and a neutral",
		},
		{
			name: "shape",
			takes: "choice",
			words: ["duplex", "single", "split"],
			summary: "how many outlets, and whether the hot tab is removed",
		},
		{
			name: "hot tab",
			takes: "phrase",
			phrases: ["no hot tab", "no brass tab"],
			summary: "the tab between the brass screws is broken off, as with `split`",
		},
		{
			name: "neutral tab",
			takes: "phrase",
			phrases: ["no neutral tab", "no silver tab"],
			summary: "the tab between the silver screws is broken off: each half has its own neutral",
		},
		markedMetal,
		{ name: "weatherproof", takes: "flag", summary: "has a cover for wet places" },
		{ name: "dedicated", takes: "flag", summary: "meant to be alone on its circuit" },
		{
			name: "height",
			takes: "quantity",
			dimension: "length",
			word: "height",
			least: 0.05,
			most: 5,
			kept: true,
			summary: "how high above the floor it is",
		},
	],
	build: (said) => {
		const us = said.region === "us";
		const rating = said.quantity("rating")?.value ?? (us ? 15 : 16);
		const isWhole = said.choice("hot tab") === undefined && said.choice("neutral tab") === undefined;
		const shape = said.choice("shape") ?? (twoHotsOf(said) === undefined && (us || !isWhole) ? "duplex" : "single");
		if (twoHotsOf(said) !== undefined) return onTwoHots(said, rating, twoHotsOf(said) === "with neutral");
		if (shape !== "single" && (shape === "split" || !isWhole)) return withoutTabs(said, rating);
		const capacity = shape === "single" ? 1 : 2;
		return {
			terminals: [
				deviceTerminal(said.region, rating, "hot", "hot", "hot", { also: ["brass"], capacity }),
				deviceTerminal(said.region, rating, "neutral", "neutral", "neutral", { also: ["silver"], capacity }),
				deviceTerminal(said.region, rating, "ground", "ground", "ground", { also: ["green"] }),
			],
			loads: [outlet("hot", "neutral")],
			sides: [feedSide, switchedSide, secondSide],
			onward: "feed",
			face: {
				text: `${rating} A ${shape}`,
				wiring: us ? `receptacle-${shape}-face` : `socket-outlet-${shape}-face`,
				oneLine: "receptacle",
				traits: ["receptacle"],
				rating,
				outlets: shape === "single" ? 1 : 2,
			},
		};
	},
};

const feedSide = {
	name: "feed",
	knots: { hot: "hot", hot2: "hot2", neutral: "neutral", ground: "ground" },
} as const satisfies SideSpec;

/** A duplex with tabs broken off: its halves have hots of their own, neutrals of their own, or both. */
function withoutTabs(said: Said, rating: number): Blueprint {
	const hotTab = said.choice("shape") !== "split" && said.choice("hot tab") === undefined;
	const neutralTab = said.choice("neutral tab") === undefined;
	const screw = (name: string, role: Role, knot: string, capacity: number, ...also: string[]): TerminalSpec =>
		deviceTerminal(said.region, rating, name, role, knot, { also, capacity });
	const [lowerHot, upperHot] = hotTab ? (["hot", "hot"] as const) : (["hot.lower", "hot.upper"] as const);
	const [lowerNeutral, upperNeutral] = neutralTab
		? (["neutral", "neutral"] as const)
		: (["neutral.lower", "neutral.upper"] as const);
	const upper = { hot: hotTab ? "hot" : "hot2", neutral: neutralTab ? "neutral" : "neutral-upper" };
	return {
		terminals: [
			...(hotTab
				? [screw("hot", "hot", "hot", 2, "brass")]
				: [screw("hot.lower", "hot", "hot", 1, "brass.lower"), screw("hot.upper", "hot2", "hot2", 1, "brass.upper")]),
			...(neutralTab
				? [screw("neutral", "neutral", "neutral", 2, "silver")]
				: [
						screw("neutral.lower", "neutral", "neutral", 1, "silver.lower"),
						screw("neutral.upper", "neutral", "neutral-upper", 1, "silver.upper"),
					]),
			deviceTerminal(said.region, rating, "ground", "ground", "ground", { also: ["green"] }),
		],
		loads: [outlet(lowerHot, lowerNeutral), outlet(upperHot, upperNeutral)],
		sides: [
			feedSide,
			{ name: "upper", knots: { ...upper, ground: "ground" } },
			// What comes back from a switch feeds the upper half; the lower one is always on.
			hotTab ? switchedSide : { ...switchedSide, knots: { ...switchedSide.knots, hot: "hot2" } },
			secondSide,
		],
		onward: "feed",
		face: {
			text: `${rating} A duplex, ${tabText(hotTab, neutralTab)} removed`,
			wiring: said.region === "us" ? "receptacle-split-face" : "socket-outlet-split-face",
			oneLine: hotTab ? "receptacle" : "receptacle-split",
			traits: ["receptacle"],
			rating,
			outlets: 2,
		},
	};
}

function tabText(hotTab: boolean, neutralTab: boolean): string {
	return hotTab ? "neutral tab" : neutralTab ? "hot tab" : "both tabs";
}

/** Whether it is for two hots, by the voltage it is said to be for; in IEC countries 230 V stand between one hot and neutral. */
function twoHotsOf(said: Said): "with neutral" | "alone" | undefined {
	if (said.region !== "us") return undefined;
	if (said.pair("legs") !== undefined) return "with neutral";
	return (said.quantity("voltage")?.value ?? 0) > 200 ? "alone" : undefined;
}

/** One outlet on two hots, as for a welder, or with a neutral, as for a range or another vehicle's cord. */
function onTwoHots(said: Said, rating: number, withNeutral: boolean): Blueprint {
	const screw = (name: string, role: Role, ...also: string[]): TerminalSpec =>
		deviceTerminal(said.region, rating, name, role, name, { also });
	return {
		terminals: [
			screw("hot", "hot", "brass"),
			screw("hot2", "hot2", "brass2"),
			...(withNeutral ? [screw("neutral", "neutral", "silver")] : []),
			screw("ground", "ground", "green"),
		],
		loads: [outlet("hot", "hot2"), ...(withNeutral ? [outlet("hot", "neutral"), outlet("hot2", "neutral")] : [])],
		sides: [feedSide],
		onward: "feed",
		face: {
			text: `${rating} A single, ${withNeutral ? "120/240" : "240"} V`,
			wiring: "receptacle-single-face",
			oneLine: "receptacle",
			traits: ["receptacle"],
			rating,
			outlets: 1,
		},
	};
}

function outlet(from: string, to: string): LoadSpec {
	return { between: [from, to], continuous: false, outlet: true };
}
