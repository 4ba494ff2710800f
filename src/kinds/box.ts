// A box where cables meet: every core is spliced to its like. Devices may be indented below it.

import type { Kind } from "./kind.ts";
import { passAll, secondSide, switchedSide } from "./terminals.ts";

export const box: Kind = {
	name: "box",
	also: ["junction"],
	summary: "A box in which cables meet and go on. With devices indented below it, it holds them.",
	example: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  6 ft to j1: box 18 cuin metal
  from j1
    5 ft to b1: receptacle
  from j1
    8 ft to b2: receptacle
`,
	stands: ["top", "hop"],
	attributes: [
		{ name: "volume", takes: "quantity", dimension: "volume", least: 30, most: 30_000, summary: "its room" },
	],
	build: (said) => {
		const volume = said.quantity("volume");
		return {
			terminals: [],
			sides: [passAll("feed"), switchedSide, secondSide],
			onward: "feed",
			enclosure: { sort: "box", metal: false },
			face: {
				text: volume === undefined ? "box" : `box ${volume.written} ${volume.unit}`,
				wiring: "junction-box",
				oneLine: "junction",
				traits: ["junction"],
			},
		};
	},
};
