// What takes direct current at one voltage and gives it at another, or charges one battery from another.
import { stud } from "./in-line.ts";
import type { Blueprint, Kind, Said, SideSpec, TerminalSpec } from "./kind.ts";

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
		{
			name: "rating",
			takes: "quantity",
			dimension: "current",
			least: 0.5,
			most: 300,
			required: true,
			summary: "the most it gives",
		},
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
		terminals: [...twoPosts(said, "in"), ...twoPosts(said, "out")],
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
		source: {
			sort: "other",
			system: "dc",
			volts: out,
			hot: ["out.+"],
			neutral: "out.-",
			...(rating === undefined ? {} : { limit: rating }),
			bonding: "floating",
			supplyProtects: true,
		},
		sides: [pairSide("in"), pairSide("out"), ...loneSides("in"), ...loneSides("out")],
		onward: "out",
		enclosure: { sort: "equipment", metal: false },
		face: {
			text: `${what}${rating === undefined ? "" : ` ${rating} A`} ${into} V / ${out} V`,
			wiring: "dc-dc-face",
			oneLine: "dc-dc",
			traits: ["source"],
		},
	};
}

/** Positive and negative of one side of a device for direct current. */
export function twoPosts(said: Said, side: "in" | "out"): TerminalSpec[] {
	const at = side === "in" ? ("line" as const) : ("load" as const);
	return [
		{ ...stud(said, `${side}.+`, "positive", `${side}+`), side: at },
		{ ...stud(said, `${side}.-`, "negative", `${side}-`), side: at },
	];
}

/** Where a pair meets such a side. */
export function pairSide(side: "in" | "out"): SideSpec {
	return { name: side, system: "dc", knots: { positive: `${side}+`, negative: `${side}-` } };
}

/** Where conductors that run by themselves meet it: `in.+`, `in.-`. */
export function loneSides(side: "in" | "out"): SideSpec[] {
	return [
		{
			name: `${side}.+`,
			system: "dc",
			knots: { positive: `${side}+`, negative: `${side}-` },
			lone: { knot: `${side}+`, role: "positive" },
		},
		{ name: `${side}.-`, system: "dc", knots: { negative: `${side}-` }, lone: { knot: `${side}-`, role: "negative" } },
	];
}

/** Where it is not said (common practice). */
const usualEfficiency = 0.9;
