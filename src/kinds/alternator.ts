// An alternator: a source of direct current that gives no more than its rating, whatever hangs on it.
import { stud } from "./in-line.ts";
import type { Kind } from "./kind.ts";

export const alternator: Kind = {
	name: "alternator",
	summary: "Makes direct current while the engine runs, up to its rating.",
	example: `battery engine flooded 12 V 80 Ah
alternator alt 90 A 14 V
feed charge from engine.+ by single 4 AWG red
  within 7 in to F1: fuse ANL 100 A
  4 ft to alt.+
feed back from engine.- by single 4 AWG black
  4 ft to alt.-
`,
	system: "dc",
	stands: ["top", "hop"],
	attributes: [
		{
			name: "rating",
			takes: "quantity",
			dimension: "current",
			least: 5,
			most: 500,
			required: true,
			summary: "the most it gives",
		},
		{ name: "voltage", takes: "quantity", dimension: "voltage", least: 6, most: 60, summary: "12 V if not said" },
	],
	build: (said) => {
		const rating = said.quantity("rating")?.value;
		const volts = said.quantity("voltage")?.value ?? 12;
		return {
			terminals: [stud(said, "+", "positive", "+"), stud(said, "-", "negative", "-")],
			source: {
				sort: "other",
				system: "dc",
				volts,
				hot: ["+"],
				neutral: "-",
				...(rating === undefined ? {} : { limit: rating }),
				bonding: "floating",
				supplyProtects: true,
			},
			sides: [
				{ name: "+", knots: { positive: "+", negative: "-" }, lone: { knot: "+", role: "positive" } },
				{ name: "-", knots: { negative: "-" }, lone: { knot: "-", role: "negative" } },
			],
			onward: "+",
			enclosure: { sort: "equipment", metal: false },
			face: {
				text: `alternator${rating === undefined ? "" : ` ${rating} A`} ${volts} V`,
				wiring: "alternator-face",
				oneLine: "alternator",
				traits: ["source"],
			},
		};
	},
};
