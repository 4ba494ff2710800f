// A panel or load centre: its case, its hot bus, and what it brings: main breaker, neutral bar, ground bar.

import type { Kind } from "./kind.ts";
import { cage, passSide } from "./terminals.ts";

export const panel: Kind = {
	name: "panel",
	also: ["load-centre"],
	summary:
		"A load centre with slots for breakers. The neutral bar is isolated and the ground bar is on the case, unless `bonded` is said.",
	example: `inlet shore 30 A 120 V
panel LC "Load centre" main 30 A from shore by 10-2, 12 ft
  slot 1A: breaker 20 A
  slot 1B: breaker 20 A
  slot 2: breaker 15 A
circuit bunks from LC.1A by 12-2
  14 ft to b1: receptacle
`,
	stands: ["top", "hop"],
	attributes: [
		{
			name: "main",
			takes: "quantity",
			dimension: "current",
			word: "main",
			least: 5,
			most: 400,
			summary: "its main breaker",
		},
		{ name: "lugs", takes: "phrase", phrases: ["lugs only"], summary: "has no main breaker" },
		{
			name: "spaces",
			takes: "count",
			word: "spaces",
			least: 1,
			most: 84,
			summary: "how many slots it has; 12 if not said",
		},
		{ name: "legs", takes: "count", word: "legs", least: 1, most: 2, summary: "hot legs on its bus; 1 if not said" },
		{ name: "voltages", takes: "pair", dimension: "voltage", summary: "`120 V / 240 V` for two hot legs, as `legs 2`" },
		{
			name: "bridge",
			takes: "phrase",
			phrases: ["bridged legs"],
			summary: "both legs are joined on the bus, for a supply with one hot",
		},
		{
			name: "bond",
			takes: "phrase",
			phrases: ["bonding screw", "bonding strap", "no bonding screw", "no bonding strap"],
			summary: "whether the screw or strap that joins neutral bar and case is in place",
		},
		{ name: "bonded", takes: "flag", summary: "its neutral bar is joined to the case by a screw or strap" },
		{ name: "plastic", takes: "flag", summary: "its case is not metal" },
	],
	build: (said) => {
		const main = said.quantity("main");
		const legs =
			said.count("legs") === 2 || said.pair("voltages") !== undefined
				? (["bus.A", "bus.B"] as const)
				: (["bus.A"] as const);
		const lugs = main === undefined;
		const bonded = said.flag("bonded") === true || said.choice("bond")?.startsWith("bonding") === true;
		return {
			terminals: legs.map((leg, index) =>
				cage(said.region, leg, index === 0 ? "hot" : "hot2", lugs ? (index === 0 ? "hot" : "hot2") : undefined, {
					also: index === 0 ? ["bus", "lug"] : ["lug2"],
					screw: "brass",
				}),
			),
			...(legs.length === 2 && said.choice("bridge") !== undefined
				? { links: [{ between: ["bus.A", "bus.B"], nature: "solid" }] }
				: {}),
			sides: [
				lugs
					? {
							name: "in",
							knots: { hot: "hot", hot2: legs.length === 2 ? "hot2" : "^hot2", neutral: "^neutral", ground: "^ground" },
						}
					: passSide("in"),
			],
			onward: "in",
			enclosure: { sort: "panel", metal: said.flag("plastic") !== true },
			brings: [
				...(main === undefined ? [] : [{ name: "main", kind: "breaker", values: new Map([["rating", main]]) }]),
				{
					name: "neutral",
					kind: "neutral-bar",
					values: new Map(bonded ? [["bonded", true]] : []),
				},
				{ name: "ground", kind: "ground-bar", values: new Map() },
			],
			face: {
				text: `${legs.length === 2 ? "two legs" : "one leg"}${main === undefined ? ", lugs only" : ` · main ${main.value} A`}`,
				wiring: "panel",
				oneLine: "panel",
				traits: ["panel"],
				...(main === undefined ? {} : { rating: main.value }),
			},
		};
	},
};
