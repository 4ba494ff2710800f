// A starter motor: what cranks an engine, on the one cable that by custom and rule has no fuse.
import { directVoltage } from "./figures.ts";
import { stud } from "./in-line.ts";
import type { Kind } from "./kind.ts";

export const starter: Kind = {
	name: "starter",
	summary: "The starter motor of an engine. Its cable from the battery needs no fuse.",
	example: `battery engine flooded 12 V 80 Ah
feed crank from engine.+ by single 2/0 red
  2 ft to D1: disconnect 300 A
  4 ft to st: starter 200 A
feed back from engine.- by single 2/0 black
  5 ft to st.-
`,
	system: "dc",
	stands: ["hop", "top"],
	attributes: [
		{
			name: "current",
			takes: "quantity",
			dimension: "current",
			least: 10,
			most: 2000,
			summary: "what it draws while it cranks",
		},
		directVoltage("what it is made for"),
	],
	build: (said) => {
		const amperes = said.quantity("current")?.value;
		const volts = said.quantity("voltage")?.value;
		return {
			terminals: [stud(said, "+", "positive", "+"), stud(said, "-", "negative", "-")],
			loads: [
				{
					between: ["+", "-"],
					...(amperes === undefined ? {} : { watts: amperes * (volts ?? 12) }),
					...(volts === undefined ? {} : { volts }),
					continuous: false,
					outlet: false,
				},
			],
			sides: [
				{ name: "+", knots: { positive: "+", negative: "-" }, lone: { knot: "+", role: "positive" } },
				{ name: "-", knots: { negative: "-" }, lone: { knot: "-", role: "negative" } },
			],
			onward: "+",
			enclosure: { sort: "equipment", metal: false },
			face: {
				text: amperes === undefined ? "starter motor" : `starter motor ${Math.round(amperes)} A`,
				wiring: "load-face",
				oneLine: "motor",
				traits: ["load", "starter"],
			},
		};
	},
};
