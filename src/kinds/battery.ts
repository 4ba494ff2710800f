// A battery or a bank sold as one: two posts, live whatever else is switched off.
import { twoPostSource } from "./direct-source.ts";
import type { Kind, Said } from "./kind.ts";

export const battery: Kind = {
	name: "battery",
	summary: "Two posts that are always live. Several are joined by feeds between their posts.",
	example: `battery house lithium 12.8 V 280 Ah, fault 5 kA
feed plus from house.+ by single 2/0 red
  6 in to F1: fuse class-T 250 A
  1 ft to plus: bus 600 A
feed minus from house.- by single 2/0 black
  1 ft to minus: bus 600 A
`,
	system: "dc",
	stands: ["top"],
	attributes: [
		{
			name: "voltage",
			takes: "quantity",
			dimension: "voltage",
			least: 1,
			most: 120,
			required: true,
			instead: "cells",
			summary: "its nominal voltage",
		},
		{
			name: "cells",
			takes: "count",
			word: "cells",
			least: 1,
			most: 60,
			summary: "how many cells it has in series, where that is said in place of its volts",
		},
		{
			name: "resistance",
			takes: "quantity",
			dimension: "resistance",
			word: "resistance",
			least: 0.00005,
			most: 1,
			summary: "its own resistance; what it pushes into a short circuit comes from that where `fault` is not said",
		},
		{ name: "capacity", takes: "quantity", dimension: "charge", least: 0.5, most: 5000, summary: "what it holds" },
		{ name: "chemistry", takes: "choice", words: ["lithium", "agm", "gel", "flooded"], summary: "what it is made of" },
		{
			name: "fault",
			takes: "quantity",
			dimension: "current",
			word: "fault",
			least: 50,
			most: 100_000,
			summary: "what it pushes into a short circuit",
		},
		{
			name: "limit",
			takes: "quantity",
			dimension: "current",
			word: "limit",
			least: 1,
			most: 2000,
			summary: "what it gives for long",
		},
	],
	build: (said) => {
		const volts = said.quantity("voltage")?.value ?? voltsOfCells(said) ?? 12;
		const capacity = said.quantity("capacity")?.value;
		return {
			...twoPostSource(said),
			source: {
				sort: "battery",
				system: "dc",
				volts,
				hot: ["+"],
				neutral: "-",
				bonding: "floating",
				supplyProtects: false,
			},
			face: {
				text: `${said.choice("chemistry") ?? ""} battery ${volts} V${capacity === undefined ? "" : ` ${capacity} Ah`}`.trim(),
				wiring: "battery-face",
				oneLine: "battery",
				traits: ["source"],
			},
		};
	},
};

/** Cells in series, each with the nominal volts of its chemistry (common practice); undefined where no number of them is said. */
function voltsOfCells(said: Said): number | undefined {
	const cells = said.count("cells");
	return cells === undefined
		? undefined
		: Number((cells * (said.choice("chemistry") === "lithium" ? 3.2 : 2)).toFixed(1));
}
