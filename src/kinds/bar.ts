// The bars of a panel: neutral, isolated or bonded, and ground. Every port is one potential.

import type { Blueprint, Kind, Said } from "./kind.ts";
import { markedCount, markings } from "./terminal-marking.ts";
import { cage, neutralKnot } from "./terminals.ts";

const example = (bar: string) => `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  ${bar}
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;
const ports = {
	name: "ports",
	takes: "count",
	word: "ports",
	bare: true,
	least: 1,
	most: 60,
	summary: "how many it has; 14 if not said",
} as const;

export const neutralBar: Kind = {
	name: "neutral-bar",
	summary: "The neutral bar of a panel, on standoffs unless `bonded` to the case by a screw or strap.",
	example: example("NB: neutral-bar ports 8"),
	stands: ["panel"],
	attributes: [
		ports,
		markedCount,
		...markings,
		{
			name: "bond",
			takes: "choice",
			words: ["isolated", "bonded"],
			summary: "whether it stands on standoffs or is joined to the case",
		},
		{ name: "apart", takes: "flag", summary: "not strapped to the panel's other neutral bars" },
	],
	build: (said) => {
		const own = said.choice("bond");
		// What the panel says of its bar holds where the bar says nothing.
		const bonded = own === undefined ? said.flag("bonded") === true : own === "bonded";
		return bar(said, "neutral", bonded ? "bonded to the case" : "isolated", bonded ? "bond" : undefined);
	},
};

export const groundBar: Kind = {
	name: "ground-bar",
	summary: "The ground bar of a panel, screwed to its case.",
	example: example("GB: ground-bar ports 8"),
	stands: ["panel"],
	attributes: [ports, markedCount, ...markings],
	build: (said) => bar(said, "ground", "bonded to the case", "solid"),
};

export const negativeBar: Kind = {
	name: "negative-bar",
	summary: "The negative bar of a fuse block.",
	example: `battery house lithium 12.8 V 100 Ah
fuse-block FB
  slot 1: fuse 10 A
  N: negative-bar ports 8
feed small from house.+, house.- by pair 8 AWG
  within 6 in to F1: fuse 40 A
  3 ft to FB
circuit lights from FB.1 by pair 16 AWG
  9 ft to l1: light 6 W
`,
	system: "dc",
	stands: ["panel"],
	attributes: [ports],
	build: (said) => bar(said, "negative", "common", undefined),
};

function bar(
	said: Said,
	role: "neutral" | "ground" | "negative",
	state: string,
	toCase: "bond" | "solid" | undefined,
): Blueprint {
	const count = said.count("ports") ?? 14;
	// On a bar that stands apart only lands what is said to.
	const isApart = said.flag("apart") === true;
	const knot = role === "neutral" && said.behind !== undefined ? `^${neutralKnot(said)}` : "bar";
	const names = Array.from({ length: count }, (_, index) => String(index + 1));
	return {
		// A bar port takes one neutral, or two grounds where the label says so: two is the usual marking (common practice).
		terminals: names.map((name) =>
			cage(said.region, name, role, isApart ? undefined : knot, {
				gathers: true,
				...(role === "negative" ? { clamp: "screw" as const } : { screw: role === "neutral" ? "silver" : "green" }),
				capacity: role === "ground" ? 2 : 1,
			}),
		),
		links: [
			...names.slice(1).map((name) => ({ between: ["1", name] as const, nature: "solid" as const })),
			...(toCase === undefined ? [] : [{ between: ["1", "^case"] as const, nature: toCase }]),
		],
		sides: [isApart ? { name: "feed", knots: {} } : { name: "feed", knots: { [role]: knot }, lone: { knot, role } }],
		onward: "feed",
		face: {
			text: `${role} bar${said.behind === undefined ? "" : ` behind ${said.behind}`}, ${state}`,
			wiring: role === "negative" ? "bar" : `${role}-bar`,
			oneLine: role === "negative" ? "bar" : `${role}-bar`,
			traits: [role === "ground" ? "ground-bar" : "neutral-bar"],
		},
	};
}
