// What takes direct current at one voltage and gives it at another, or charges one battery from another.

import { inAndOut, limitedSource } from "./direct-source.ts";
import { rated } from "./figures.ts";
import type { Blueprint, Kind, Said } from "./kind.ts";

/** One row a kind: its word and what it is. */
const rows = [
	{ word: "dc-dc", what: "dc-dc charger" },
	{ word: "converter", what: "converter" },
] as const;

/** The kinds of this file, in the order of their rows. */
export const converters: readonly Kind[] = rows.map(({ word, what }) => ({
	name: word,
	...(word === "dc-dc" ? { also: ["dc-dc-charger"] } : {}),
	summary: `A ${what}: takes direct current on \`in\`, gives up to its rating on \`out\`. Both share the negative unless \`isolated\`.`,
	example: `battery bank lithium 25.6 V 100 Ah
${word} step 20 A 24 V / 12 V
feed up from bank.+, bank.- by pair 10 AWG
  bolted to F1: fuse 30 A
  3 ft to step.in
feed down from step.out by pair 10 AWG
  2 ft to l1: light 20 W 12 V
`,
	system: "both",
	stands: ["top", "hop"],
	attributes: [
		rated(0.5, 300, "the most it gives"),
		{
			name: "voltages",
			takes: "pair",
			dimension: "voltage",
			least: 5,
			most: 600,
			summary: "what comes in and what goes out: `24 V / 12 V`",
		},
		{ name: "isolated", takes: "flag", summary: "its two negatives are not joined" },
	],
	build: (said) => build(said, what),
}));

function build(said: Said, what: string): Blueprint {
	const rating = said.quantity("rating")?.value;
	const [taken, given] = said.pair("voltages") ?? [];
	const [into, out] = [taken?.value ?? 12, given?.value ?? 12];
	return {
		...inAndOut(said),
		links: said.flag("isolated") === true ? [] : [{ between: ["in.-", "out.-"], nature: "solid" }],
		loads: [
			{
				between: ["in.+", "in.-"],
				...(rating === undefined ? {} : { watts: (rating * out) / usualEfficiency }),
				volts: into,
				continuous: true,
				outlet: false,
			},
		],
		source: limitedSource(out, rating, { posts: ["out.+", "out.-"] }),
		face: {
			text: `${what}${rating === undefined ? "" : ` ${rating} A`} ${into} V / ${out} V`,
			wiring: "dc-dc-face",
			oneLine: "dc-dc",
			traits: ["source"],
		},
	};
}

/** Where it is not said (common practice). */
const usualEfficiency = 0.9;
