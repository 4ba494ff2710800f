// A switch or dimmer in the hot: fed on line, going on from its switched side; neutral and ground pass by.

import { inLine } from "./in-line.ts";
import type { Blueprint, Kind, Said } from "./kind.ts";
import { markedMetal } from "./terminal-marking.ts";
import { deviceTerminal } from "./terminals.ts";
import { switchFace, travellerSwitch, travellerWords } from "./traveller-switch.ts";
import { twoPoles, voltageOfPoles } from "./two-poles.ts";

export const wallSwitch: Kind = {
	name: "switch",
	summary:
		"Opens the hot of what follows it. `two-pole` opens hot and neutral together. Neutral and ground are spliced past it.",
	example: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  7 ft to s1: switch "Porch light"
  9 ft to l1: light 9 W
`,
	stands: ["top", "hop", "box"],
	attributes: [
		{
			name: "rating",
			takes: "quantity",
			dimension: "current",
			least: 1,
			most: 63,
			summary: "what it may switch; 15 A, or 16 A in IEC countries, if not said",
		},
		{
			name: "poles",
			takes: "choice",
			words: ["single-pole", "two-pole"],
			summary: "whether it opens the hot alone or the neutral with it",
		},
		voltageOfPoles,
		markedMetal,
		{
			name: "ways",
			takes: "choice",
			words: travellerWords,
			summary: "one of several that govern the same load: at the end of the travellers, or between them",
		},
	],
	build: (said) => {
		if (said.system === "dc") return onDirectCurrent(said, "switch", "switch-face", ["switch"]);
		const ways = said.choice("ways");
		if (ways !== undefined) return travellerSwitch(said, ways);
		return said.choice("poles") === "two-pole"
			? bothPoles(said)
			: hotOnly(said, "single-pole switch", switchFace(said), ["switch"]);
	},
};

export const dimmer: Kind = {
	name: "dimmer",
	summary: "A switch that also dims the lights behind it.",
	example: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  7 ft to d1: dimmer
  9 ft to l1: light 9 W
`,
	stands: ["top", "hop", "box"],
	attributes: [
		{ name: "rating", takes: "quantity", dimension: "current", least: 0.5, most: 20, summary: "what it may switch" },
		{ name: "negative", takes: "flag", summary: "in direct current: it dims in the negative, and the positive passes" },
	],
	build: (said) =>
		said.system === "dc"
			? onDirectCurrent(said, "dimmer", "dimmer-face", ["switch", "dimmer"])
			: hotOnly(said, "dimmer", "dimmer-face", ["switch", "dimmer"]),
};

/** In the positive, or in the negative where that is said; the other pole passes. */
function onDirectCurrent(said: Said, what: string, wiring: string, traits: Blueprint["face"]["traits"]): Blueprint {
	const rating = said.quantity("rating")?.value;
	const { enclosure: _case, ...wired } = inLine(
		said,
		"handle",
		said.flag("negative") === true ? "negative" : "positive",
	);
	return {
		...wired,
		face: {
			text: rating === undefined ? what : `${rating} A ${what}`,
			wiring,
			oneLine: "switch",
			traits,
			...(rating === undefined ? {} : { rating }),
		},
	};
}

function hotOnly(said: Said, text: string, wiring: string, traits: Blueprint["face"]["traits"]): Blueprint {
	const rating = said.quantity("rating")?.value ?? usualRating(said);
	// Two hots without a neutral are the legs of one feed: the second one passes by.
	const isTwoLegs = said.arriving?.secondHot === true && !said.arriving.neutral;
	return {
		terminals: [
			deviceTerminal(said.region, rating, "line", "hot", "line-hot", { side: "line", also: ["1", "feed"] }),
			deviceTerminal(said.region, rating, "load", "hot", "load-hot", { side: "load", also: ["2", "switched"] }),
			deviceTerminal(said.region, rating, "ground", "ground", "ground", { also: ["green"] }),
		],
		links: [{ between: ["line", "load"], nature: "contact", contact: { group: "handle", positions: 2, closed: [1] } }],
		sides: [
			{ name: "line", knots: { hot: "line-hot", hot2: "^hot2", neutral: "^neutral", ground: "ground" } },
			{
				name: "load",
				knots: { hot: "load-hot", neutral: "^neutral", ground: "ground" },
				// A three-conductor cable onward carries the always-live hot on black and the switched hot on red.
				withSecondHot: isTwoLegs
					? { hot: "load-hot", hot2: "^hot2", ground: "ground" }
					: { hot: "line-hot", hot2: "load-hot", neutral: "^neutral", ground: "ground" },
			},
		],
		onward: "load",
		loop: { sort: "plain", supply: "line-hot", back: "load-hot" },
		face: { text: `${rating} A ${text}`, wiring, oneLine: "switch", traits, rating },
	};
}

function bothPoles(said: Said): Blueprint {
	const rating = said.quantity("rating")?.value ?? usualRating(said);
	return {
		...twoPoles(said, rating),
		face: {
			text: `${rating} A two-pole switch`,
			wiring: said.region === "us" ? "switch-2p-face" : switchFace(said),
			oneLine: "switch-2p",
			traits: ["switch"],
			rating,
		},
	};
}

/** A wall switch is sold for 15 A, in IEC countries for 16 A (common practice). */
function usualRating(said: Said): number {
	return said.region === "us" ? 15 : 16;
}
