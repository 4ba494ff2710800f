// Switches that nobody throws: a float switch by a level, a thermostat by a temperature. Each opens the one pole it lies in.
import { inLine } from "./in-line.ts";
import type { Kind } from "./kind.ts";

/** One row a kind: its word and what it is. */
const rows = [
	{ word: "float-switch", what: "float switch", by: "a level" },
	{ word: "thermostat", what: "thermostat", by: "a temperature" },
] as const;

/** The kinds of this file, in the order of their rows. */
export const automaticSwitches: readonly Kind[] = rows.map(({ word, what, by }) => ({
	name: word,
	summary: `A ${what}: opens and closes by ${by}, in the positive of direct current or the hot of mains.`,
	example: `battery house lithium 12.8 V 100 Ah
fuse-block FB
  slot 1: fuse 10 A
feed small from house.+, house.- by pair 8 AWG
  bolted to F1: fuse 60 A
  3 ft to FB
circuit bilge from FB.1 by pair 14 AWG
  6 ft to s1: ${word} 10 A
  4 ft to p1: pump 60 W
`,
	stands: ["top", "hop", "box"],
	attributes: [
		{
			name: "rating",
			takes: "quantity",
			dimension: "current",
			least: 0.5,
			most: 63,
			summary: "what it may switch",
		},
	],
	build: (said) => {
		const rating = said.quantity("rating")?.value;
		const { enclosure: _case, ...wired } = inLine(said, "handle");
		return {
			...wired,
			face: {
				text: rating === undefined ? what : `${rating} A ${what}`,
				wiring: "switch-face",
				oneLine: "switch",
				traits: ["switch"],
				...(rating === undefined ? {} : { rating }),
			},
		};
	},
}));
