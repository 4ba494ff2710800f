// A bus: a bar with studs on which many conductors of one potential meet.
import { stud } from "./in-line.ts";
import type { Kind } from "./kind.ts";

export const bus: Kind = {
	name: "bus",
	summary: "A bar with studs for conductors of one potential; positive, negative or ground by what it is put in.",
	example: `battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 6 AWG red
  6 in to F1: fuse class-T 60 A
  1 ft to plus: bus 250 A studs 6
`,
	system: "dc",
	stands: ["hop", "top"],
	attributes: [
		{ name: "rating", takes: "quantity", dimension: "current", least: 1, most: 2000, summary: "what it may carry" },
		{ name: "studs", takes: "count", word: "studs", least: 2, most: 40, summary: "how many it has; 6 if not said" },
	],
	build: (said) => {
		const names = Array.from({ length: said.count("studs") ?? 6 }, (_, index) => String(index + 1));
		const rating = said.quantity("rating")?.value;
		return {
			terminals: names.map((name) => ({ ...stud(said, name, "positive", "bus"), inherits: true, capacity: 2 })),
			links: names.slice(1).map((name) => ({ between: ["1", name], nature: "solid" })),
			sides: [{ name: "feed", knots: { positive: "bus", negative: "bus", ground: "bus" }, lone: { knot: "bus" } }],
			onward: "feed",
			enclosure: { sort: "equipment", metal: false },
			face: {
				text: rating === undefined ? "bus" : `${rating} A bus`,
				wiring: "bus",
				oneLine: "bus",
				traits: ["hot-bus"],
			},
		};
	},
};
