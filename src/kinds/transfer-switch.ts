// A transfer switch: its output hangs on one of two inputs or, with a centre off, on neither. What it moves: the hots, or the
// hots and the neutral. Grounds are joined whatever it does.

import { legVoltages, rated } from "./figures.ts";
import type { Blueprint, Kind, LinkSpec, Said, TerminalSpec } from "./kind.ts";
import { cage } from "./terminals.ts";

export const transferSwitch: Kind = {
	name: "transfer-switch",
	also: ["changeover-switch"],
	summary:
		"Hangs its output on one of two sources, never on both. It moves hot and neutral; `single-pole` moves the hot alone, and the neutrals stay joined.",
	example: `inlet shore 30 A 120 V
generator gen 3600 W 120 V, bonds neutral to frame
transfer-switch TS 30 A two-pole centre off
feed line from shore by 10-2
  12 ft to TS.1
feed backup from gen by 10-2
  8 ft to TS.2
panel LC main 30 A from TS by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
	stands: ["top", "hop"],
	attributes: [
		rated(5, 400, "what its contacts may carry"),
		{
			name: "poles",
			takes: "choice",
			words: ["single-pole", "two-pole", "three-pole"],
			summary:
				"how many conductors it moves: on one leg the hot alone or the neutral too, on two legs both hots or the neutral too; all of them if not said",
		},
		legVoltages,
		{
			name: "centre",
			takes: "phrase",
			phrases: ["centre off", "center off"],
			summary: "a third position, in which its output hangs on nothing",
		},
		{ name: "automatic", takes: "flag", summary: "moves by itself when its first source comes or goes" },
		{ name: "plastic", takes: "flag", summary: "its case is not metal" },
	],
	build: (said) => {
		const twoLegs = said.pair("legs") !== undefined || said.choice("poles") === "three-pole";
		const alone = said.choice("poles") === (twoLegs ? "two-pole" : "single-pole");
		const positions = said.choice("centre") === undefined ? ["1", "2"] : ["1", "2", "off"];
		const roles = twoLegs ? (["hot", "hot2", "neutral"] as const) : (["hot", "neutral"] as const);
		const links = roles.flatMap((role) =>
			["1", "2"].map(
				(input, index): LinkSpec =>
					role === "neutral" && alone
						? { between: [`${input}.neutral`, "out.neutral"], nature: "solid" }
						: {
								between: [`${input}.${role}`, `out.${role}`],
								nature: "contact",
								contact: { group: "transfer", positions: positions.length, closed: [index] },
							},
			),
		);
		const rating = said.quantity("rating")?.value;
		return {
			terminals: [
				...["1", "2", "out"].flatMap((side) => [...roles, "ground" as const].map((role) => terminal(said, side, role))),
			],
			links: [
				...links,
				{ between: ["1.ground", "out.ground"], nature: "solid" },
				{ between: ["2.ground", "out.ground"], nature: "solid" },
				{ between: ["out.ground", "^case"], nature: "solid" },
			],
			transfer: { group: "transfer", positions },
			sides: ["1", "2", "out"].map((name) => side(name, twoLegs)),
			onward: "out",
			enclosure: { sort: "equipment", metal: said.flag("plastic") !== true },
			face: {
				text: tell(said, rating, roles.length - (alone ? 1 : 0)),
				wiring: "disconnect-2p-face",
				oneLine: "transfer-switch",
				traits: ["disconnect", "transfer"],
				...(rating === undefined ? {} : { rating }),
			},
		};
	},
};

function terminal(said: Said, side: string, role: "hot" | "hot2" | "neutral" | "ground"): TerminalSpec {
	return cage(said.region, `${side}.${role}`, role, `${side}-${role}`, {
		side: side === "out" ? "load" : "line",
		screw: role === "neutral" ? "silver" : role === "ground" ? "green" : "brass",
	});
}

function side(name: string, twoLegs: boolean): Blueprint["sides"][number] {
	const second = twoLegs ? { hot2: `${name}-hot2` } : {};
	return {
		name,
		knots: { hot: `${name}-hot`, ...second, neutral: `${name}-neutral`, ground: `${name}-ground` },
	};
}

function tell(said: Said, rating: number | undefined, poles: number): string {
	const words = ["single-pole", "two-pole", "three-pole"][poles - 1] ?? "";
	return [
		...(rating === undefined ? [] : [`${rating} A`]),
		words,
		...(said.flag("automatic") === true ? ["automatic"] : []),
		"transfer switch",
		...(said.choice("centre") === undefined ? [] : ["with a centre off"]),
	].join(" ");
}
