// A joint with no box around it: a connector in the run itself, as a crimped joint in a direct-current cable is.

import type { Kind } from "./kind.ts";
import { markings } from "./terminal-marking.ts";
import { passAll } from "./terminals.ts";

export const splice: Kind = {
	name: "splice",
	summary:
		"A joint connector in a run, without a box: each core is joined to its like, and cables may branch off there.",
	example: `battery house lithium 12.8 V 100 Ah
feed lamps from house.+, house.- by pair 14 AWG
  6 in to F1: fuse 10 A
  9 ft to s1: splice crimp, ports 3, 10 A
  6 ft to l1: light 5 W
  from s1
    6 ft to l2: light 5 W
`,
	stands: ["hop", "top"],
	attributes: [
		{
			name: "connector",
			takes: "choice",
			words: ["lever", "push-in", "twist-on", "crimp"],
			summary: "what joins them; crimp if not said",
		},
		{
			name: "ports",
			takes: "count",
			word: "ports",
			least: 2,
			most: 24,
			summary: "how many cores each takes",
		},
		{
			name: "rating",
			takes: "quantity",
			dimension: "current",
			least: 1,
			most: 400,
			summary: "what it may carry",
		},
		...markings.filter((marking) => marking.takes === "gauge"),
	],
	build: (said) => {
		const connector = said.choice("connector");
		const [ports, rating] = [said.count("ports"), said.quantity("rating")?.value];
		const [smallest, largest] = [said.gauge("smallest"), said.gauge("largest")];
		return {
			terminals: [],
			sides: [passAll("feed")],
			onward: "feed",
			enclosure: { sort: "open", metal: false },
			joint: {
				connector: connector ?? "crimp",
				...(ports === undefined ? {} : { ports }),
				...(rating === undefined ? {} : { rating }),
				...(smallest === undefined ? {} : { smallest }),
				...(largest === undefined ? {} : { largest }),
			},
			face: {
				text: `${connector ?? "crimp"} joint${rating === undefined ? "" : ` ${rating} A`}, no box`,
				wiring: "junction-box",
				oneLine: "junction",
				traits: ["junction"],
			},
		};
	},
};
