// A receptacle: single, duplex or split. Fed in parallel: hot, neutral and ground come in and go on.

import type { Kind, TerminalSpec } from "./kind.ts";
import { deviceTerminal } from "./terminals.ts";

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
		{
			name: "shape",
			takes: "choice",
			words: ["duplex", "single", "split"],
			summary: "how many outlets, and whether the hot tab is removed",
		},
		{ name: "weatherproof", takes: "flag", summary: "has a cover for wet places" },
		{ name: "dedicated", takes: "flag", summary: "meant to be alone on its circuit" },
	],
	build: (said) => {
		const us = said.region === "us";
		const rating = said.quantity("rating")?.value ?? (us ? 15 : 16);
		const shape = said.choice("shape") ?? (us ? "duplex" : "single");
		const split = shape === "split";
		const screws = shape === "single" ? 1 : 2;
		const hots: TerminalSpec[] = split
			? [
					deviceTerminal(said.region, rating, "hot.lower", "hot", "hot", { also: ["brass.lower"] }),
					deviceTerminal(said.region, rating, "hot.upper", "hot2", "hot2", { also: ["brass.upper"] }),
				]
			: [deviceTerminal(said.region, rating, "hot", "hot", "hot", { also: ["brass"], capacity: screws })];
		const outlets = split ? ["hot.lower", "hot.upper"] : ["hot"];
		return {
			terminals: [
				...hots,
				deviceTerminal(said.region, rating, "neutral", "neutral", "neutral", { also: ["silver"], capacity: screws }),
				deviceTerminal(said.region, rating, "ground", "ground", "ground", { also: ["green"] }),
			],
			loads: outlets.map((hot) => ({ between: [hot, "neutral"], continuous: false, outlet: true })),
			sides: [{ name: "feed", knots: { hot: "hot", hot2: "hot2", neutral: "neutral", ground: "ground" } }],
			onward: "feed",
			face: {
				text: split ? `${rating} A duplex, hot tab removed` : `${rating} A ${shape}`,
				wiring: us ? `receptacle-${shape}-face` : `socket-outlet-${shape}-face`,
				oneLine: split ? "receptacle-split" : "receptacle",
				traits: ["receptacle"],
				rating,
				outlets: shape === "single" ? 1 : 2,
			},
		};
	},
};
