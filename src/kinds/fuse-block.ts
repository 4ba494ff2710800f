// A fuse block: one feed, a way with its own fuse for each circuit, and a bar for the negatives.
import { stud } from "./in-line.ts";
import type { Kind } from "./kind.ts";

export const fuseBlock: Kind = {
	name: "fuse-block",
	summary: "Shares one feed out to circuits, each behind its own fuse; their negatives land on its negative bar.",
	example: `battery house lithium 12.8 V 100 Ah
fuse-block FB
  slot 1: fuse 10 A
feed small from house.+, house.- by pair 8 AWG
  within 6 in to F1: fuse 40 A
  3 ft to FB
circuit lights from FB.1 by pair 16 AWG
  9 ft to l1: light 6 W
  4 ft to l2: light 6 W
`,
	system: "dc",
	stands: ["top", "hop"],
	attributes: [
		{
			name: "rating",
			takes: "quantity",
			dimension: "current",
			least: 1,
			most: 400,
			summary: "what it may carry in all",
		},
		{
			name: "spaces",
			takes: "count",
			word: "ways",
			least: 1,
			most: 40,
			summary: "how many fuses it takes; 12 if not said",
		},
	],
	build: (said) => {
		const rating = said.quantity("rating")?.value;
		return {
			terminals: [{ ...stud(said, "bus.+", "positive", "positive"), also: ["+"], capacity: 2 }],
			sides: [
				{ name: "in", knots: { positive: "positive", negative: "^negative" } },
				{
					name: "+",
					knots: { positive: "positive", negative: "^negative" },
					lone: { knot: "positive", role: "positive" },
				},
				{ name: "-", knots: { negative: "^negative" }, lone: { knot: "^negative", role: "negative" } },
			],
			onward: "in",
			enclosure: { sort: "panel", metal: false },
			brings: [{ name: "negative", kind: "negative-bar", values: new Map() }],
			face: {
				text: rating === undefined ? "fuse block" : `${rating} A fuse block`,
				wiring: "panel",
				oneLine: "panel",
				traits: ["panel"],
			},
		};
	},
};
