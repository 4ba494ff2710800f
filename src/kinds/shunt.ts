// A shunt: a measuring resistance in the negative, through which all current must pass.
import { inLine } from "./in-line.ts";
import type { Kind } from "./kind.ts";

export const shunt: Kind = {
	name: "shunt",
	summary: "Measures what flows through it; every negative but its own sense lead goes on from it.",
	example: `battery house lithium 12.8 V 100 Ah
feed minus from house.- by single 6 AWG black
  1 ft to SH: shunt 500 A
  1 ft to minus: bus 250 A
`,
	system: "dc",
	stands: ["hop", "top"],
	attributes: [
		{
			name: "rating",
			takes: "quantity",
			dimension: "current",
			least: 1,
			most: 2000,
			summary: "the current it is made for",
		},
		{
			name: "drop",
			takes: "quantity",
			dimension: "voltage",
			least: 0.001,
			most: 1,
			kept: true,
			summary: "the volts it shows at that current: `50 mV`",
		},
	],
	build: (said) => {
		const rating = said.quantity("rating")?.value;
		return {
			...inLine(said, "never"),
			face: {
				text: rating === undefined ? "shunt" : `${rating} A shunt`,
				wiring: "shunt-face",
				oneLine: "shunt",
				traits: ["junction"],
			},
		};
	},
};
