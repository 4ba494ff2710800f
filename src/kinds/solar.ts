// Solar modules, and the controller that charges a battery from a string of them.

import { inAndOut, limitedSource, twoPostSource } from "./direct-source.ts";
import { directVoltage, rated } from "./figures.ts";
import type { Kind } from "./kind.ts";

export const solarModule: Kind = {
	name: "solar",
	also: ["solar-array", "array"],
	summary: "A solar module. Several in series are joined plus to minus, several in parallel on two buses.",
	example: `solar roof 200 W, open 22 V, short 11 A
solar-controller mppt 20 A 12 V, limit 75 V
battery house lithium 12.8 V 100 Ah
feed sun from roof.+, roof.- by pair 10 AWG
  12 ft to D1: disconnect 30 A
  2 ft to mppt.in
feed charge from house.+, house.- by pair 10 AWG
  within 7 in to F1: fuse 30 A
  4 ft to mppt.out
`,
	system: "dc",
	stands: ["top"],
	attributes: [
		{
			name: "power",
			takes: "quantity",
			dimension: "power",
			least: 1,
			most: 20_000,
			summary: "what it gives in full sun",
		},
		{
			name: "open",
			takes: "quantity",
			dimension: "voltage",
			word: "open",
			least: 5,
			most: 600,
			required: true,
			summary: "its open-circuit voltage",
		},
		{
			name: "short",
			takes: "quantity",
			dimension: "current",
			word: "short",
			least: 0.1,
			most: 100,
			required: true,
			summary: "its short-circuit current",
		},
		{
			name: "coefficient",
			takes: "quantity",
			dimension: "share",
			word: "coefficient",
			least: -0.01,
			most: -0.0005,
			summary: "what its open-circuit voltage changes by a degree: `coefficient -0.29 %`",
		},
		{
			name: "coldest",
			takes: "quantity",
			dimension: "temperature",
			word: "coldest",
			least: -60,
			most: 30,
			summary: "the coldest day where it stands",
		},
		{
			name: "fuse",
			takes: "quantity",
			dimension: "current",
			word: "fuse",
			least: 0.5,
			most: 100,
			summary: "the largest fuse its maker allows in series with it",
		},
	],
	build: (said) => {
		const open = said.quantity("open")?.value ?? 22;
		const short = said.quantity("short")?.value;
		const watts = said.quantity("power")?.value;
		return {
			...twoPostSource(said),
			source: limitedSource(open, short, { sort: "solar" }),
			face: {
				text: `solar module${watts === undefined ? "" : ` ${watts} W`}, open ${open} V`,
				wiring: "solar-array-face",
				oneLine: "solar-array",
				traits: ["source"],
			},
		};
	},
};

export const solarController: Kind = {
	name: "solar-controller",
	summary: "Charges a battery from a string of modules: the string on `in`, the battery on `out`.",
	example: solarModule.example,
	system: "both",
	stands: ["top", "hop"],
	attributes: [
		rated(1, 200, "the most it gives to the battery"),
		directVoltage("of the battery; 12 V if not said"),
		{
			name: "limit",
			takes: "quantity",
			dimension: "voltage",
			word: "limit",
			least: 10,
			most: 600,
			summary: "the most volts its input bears",
		},
	],
	build: (said) => {
		const rating = said.quantity("rating")?.value;
		const volts = said.quantity("voltage")?.value ?? 12;
		return {
			...inAndOut(said),
			links: [{ between: ["in.-", "out.-"], nature: "solid" }],
			loads: [{ between: ["in.+", "in.-"], continuous: true, outlet: false }],
			source: limitedSource(volts, rating, { posts: ["out.+", "out.-"] }),
			face: {
				text: `solar controller${rating === undefined ? "" : ` ${rating} A`} ${volts} V`,
				wiring: "solar-controller-face",
				oneLine: "solar-controller",
				traits: ["source"],
			},
		};
	},
};
