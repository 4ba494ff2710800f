// A disconnect: isolates what follows it by hand; hot alone, or hot and neutral together.

import { boardHead } from "./board-head.ts";
import { inLine } from "./in-line.ts";
import type { Kind } from "./kind.ts";
import { markings } from "./terminal-marking.ts";
import { deviceTerminal } from "./terminals.ts";
import { twoPoles, voltageOfPoles } from "./two-poles.ts";

export const disconnect: Kind = {
	name: "disconnect",
	also: ["isolator"],
	summary: "Cuts off what follows it, so that it can be worked on. Opens hot and neutral unless `single-pole`.",
	example: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit heater from LC breaker 20 A by 12-2
  8 ft to hd: disconnect 20 A
  3 ft to wh: heater 1440 W continuous
`,
	stands: ["top", "hop", "box"],
	attributes: [
		{
			name: "rating",
			takes: "quantity",
			dimension: "current",
			least: 1,
			most: 600,
			summary: "what it may carry; 30 A if not said",
		},
		{
			name: "poles",
			takes: "choice",
			words: ["two-pole", "single-pole"],
			summary: "whether it opens the neutral with the hot",
		},
		voltageOfPoles,
		{
			name: "make",
			takes: "quantity",
			dimension: "current",
			word: "make",
			least: 1,
			most: 100_000,
			kept: true,
			summary: "what it may be closed on",
		},
		{
			name: "break",
			takes: "quantity",
			dimension: "current",
			word: "break",
			least: 1,
			most: 100_000,
			kept: true,
			summary: "what it can open",
		},
		{
			name: "resistance",
			takes: "quantity",
			dimension: "resistance",
			word: "resistance",
			least: 0.000001,
			most: 0.1,
			kept: true,
			summary: "what it has when it is closed",
		},
		...markings,
	],
	build: (said) => {
		if (said.slot?.name === "main")
			return boardHead(said, {
				what: "main switch",
				oneLine: "disconnect-2p",
				traits: ["breaker", "disconnect"],
				protects: false,
				opensNeutral: true,
			});
		const rating = said.quantity("rating")?.value ?? 30;
		if (said.system === "dc")
			return {
				...inLine(said, "handle"),
				face: {
					text: `${rating} A disconnect`,
					wiring: "disconnect-face",
					oneLine: "disconnect",
					traits: ["disconnect"],
					rating,
				},
			};
		if (said.choice("poles") !== "single-pole")
			return {
				...twoPoles(said, rating),
				face: {
					text: `${rating} A two-pole disconnect`,
					wiring: "disconnect-2p-face",
					oneLine: "disconnect-2p",
					traits: ["disconnect"],
					rating,
				},
			};
		return {
			terminals: [
				deviceTerminal(said.region, rating, "line", "hot", "line-hot", { side: "line", also: ["1"] }),
				deviceTerminal(said.region, rating, "load", "hot", "load-hot", { side: "load", also: ["2"] }),
				deviceTerminal(said.region, rating, "ground", "ground", "ground", { also: ["green"] }),
			],
			links: [
				{ between: ["line", "load"], nature: "contact", contact: { group: "handle", positions: 2, closed: [1] } },
			],
			sides: [
				{ name: "line", knots: { hot: "line-hot", hot2: "^hot2", neutral: "^neutral", ground: "ground" } },
				{ name: "load", knots: { hot: "load-hot", hot2: "^hot2", neutral: "^neutral", ground: "ground" } },
			],
			onward: "load",
			face: {
				text: `${rating} A disconnect`,
				wiring: "disconnect-face",
				oneLine: "disconnect",
				traits: ["disconnect"],
				rating,
			},
		};
	},
};
