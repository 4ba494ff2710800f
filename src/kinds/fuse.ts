// A fuse: in its holder in a conductor, or in a way of a fuse block.
import { rated } from "./figures.ts";
import { inBlock } from "./in-block.ts";
import { inLine } from "./in-line.ts";
import type { Kind } from "./kind.ts";

export const fuse: Kind = {
	name: "fuse",
	summary: "A fuse in its holder, in the positive of what it stands in; or in a way of a fuse block.",
	example: `battery house lithium 12.8 V 100 Ah
pump bilge 60 W
feed plus from house.+ by single 10 AWG red
  within 6 in to F1: fuse class-T 30 A
  2 ft to main: disconnect 100 A
  2 ft to bilge.+
feed minus from house.- by single 10 AWG black
  4 ft to bilge.-
`,
	system: "dc",
	stands: ["hop", "panel", "top"],
	attributes: [
		rated(0.1, 1000, "the current it is marked with"),
		{
			name: "class",
			takes: "choice",
			words: ["class-T", "ANL", "strip", "cube", "blade", "glass"],
			summary: "its build",
		},
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
			summary: "the most volts it may open",
		},
	],
	build: (said) => {
		const rating = said.quantity("rating")?.value;
		const made = said.choice("class");
		const shared = {
			protection: { ...(rating === undefined ? {} : { rating }), sort: "fuse" as const, poles: 1 },
			face: {
				text: [rating === undefined ? "" : `${rating} A `, made === undefined ? "" : `${made} `, "fuse"].join(""),
				wiring: "fuse-face",
				oneLine: "fuse",
				traits: ["breaker"] as const,
				...(rating === undefined ? {} : { rating }),
			},
		};
		return said.slot === undefined ? { ...inLine(said, "trip"), ...shared } : { ...inBlock(said), ...shared };
	},
};
