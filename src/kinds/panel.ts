// A panel or load centre: its case, its hot bus, and what it brings: main breaker, neutral bar, ground bar.

import { neutralAhead } from "./board-head.ts";
import type { Brought, Kind, Said } from "./kind.ts";
import { residualAttributes } from "./residual-current.ts";
import { markings } from "./terminal-marking.ts";
import { cage } from "./terminals.ts";

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
		{
			name: "sort",
			takes: "choice",
			words: ["single-pole", "two-pole", "rcd", "rcbo", "switch"],
			summary:
				"what the main is: a breaker in the hots alone, one that opens the neutral too, a residual-current device, a breaker that is one too, or a switch",
		},
		...residualAttributes,
		{
			name: "interrupting",
			takes: "quantity",
			dimension: "current",
			word: "interrupting",
			least: 1000,
			most: 200_000,
			kept: true,
			summary: "the fault current that it and its breakers are marked for",
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
		{
			name: "voltages",
			takes: "pair",
			dimension: "voltage",
			least: 5,
			most: 600,
			summary: "`120 V / 240 V` for two hot legs, as `legs 2`",
		},
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
		...markings,
		{ name: "plastic", takes: "flag", summary: "its case is not metal" },
	],
	build: (said) => {
		const main = said.quantity("main");
		const legs =
			said.count("legs") === 2 || said.pair("voltages") !== undefined
				? (["bus.A", "bus.B"] as const)
				: (["bus.A"] as const);
		const lugs = main === undefined;
		const head = headOf(said, legs.length);
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
					: {
							name: "in",
							knots: {
								hot: "^hot",
								hot2: "^hot2",
								neutral: head.opensNeutral ? neutralAhead : "^neutral",
								ground: "^ground",
							},
						},
			],
			onward: "in",
			enclosure: { sort: "panel", metal: said.flag("plastic") !== true },
			brings: [
				...(main === undefined
					? []
					: [{ name: "main", kind: head.kind, values: new Map([["rating", main], ...head.values]) }]),
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

/** What the main is, by the words behind it: one with a leak said for it is a breaker that opens on that too. */
function headOf(
	said: Said,
	legs: number,
): { readonly kind: string; readonly opensNeutral: boolean; readonly values: Brought["values"] } {
	const word = said.choice("sort");
	const trip = said.quantity("trip");
	const type = said.choice("type");
	const residual = new Map<string, NonNullable<typeof trip> | string | true>([
		...(trip === undefined ? [] : [["trip", trip] as const]),
		...(type === undefined ? [] : [["type", type] as const]),
		...(said.flag("selective") === true || said.quantity("delay") !== undefined ? [["selective", true] as const] : []),
	]);
	if (word === "rcd") return { kind: "residual-current-device", opensNeutral: true, values: residual };
	if (word === "switch") return { kind: "disconnect", opensNeutral: true, values: new Map() };
	if (word === "rcbo" || residual.size > 0)
		return { kind: "ground-fault-breaker", opensNeutral: true, values: residual };
	const poles = word === "two-pole" ? new Map([["poles", word]]) : new Map<string, string>();
	return { kind: "breaker", opensNeutral: word === "two-pole" && legs === 1, values: poles };
}
