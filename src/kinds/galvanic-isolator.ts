// A galvanic isolator: sits in the ground of a shore supply, blocks the small direct voltages that eat a hull, passes a fault.
import type { Kind, Role, Said, SideSpec, TerminalSpec } from "./kind.ts";
import { deviceTerminal, passSide } from "./terminals.ts";

export const galvanicIsolator: Kind = {
	name: "galvanic-isolator",
	summary:
		"Sits in the ground between a shore inlet and everything else: a fault passes, the small direct current that eats metal under water does not. Hot and neutral go past it.",
	example: `plan "Jetty"
  rules boat
inlet dock 30 A 120 V
feed supply from dock by triplex 10 AWG
  2 ft to GI: galvanic-isolator 30 A
  6 ft to AC: panel main 30 A two-pole 30 mA
circuit lamps from AC breaker 15 A by triplex 14 AWG
  6 ft to l1: light 9 W
`,
	system: "ac",
	stands: ["hop", "top"],
	attributes: [
		{
			name: "rating",
			takes: "quantity",
			dimension: "current",
			least: 10,
			most: 125,
			summary: "what it may carry, no less than the inlet's rating",
		},
		{
			name: "fail-safe",
			takes: "flag",
			kept: true,
			summary: "it goes on passing a fault when it breaks down itself",
		},
	],
	build: (said) => {
		const rating = said.quantity("rating")?.value;
		return {
			terminals: [groundPost(said, "line"), groundPost(said, "load")],
			// Its diodes stand in the way of less than a volt or two; for a fault it is a piece of wire.
			links: [{ between: ["line", "load"], nature: "solid" }],
			sides: [inGround("line"), inGround("load")],
			onward: "load",
			enclosure: { sort: "equipment", metal: false },
			face: {
				text: rating === undefined ? "galvanic isolator" : `${rating} A galvanic isolator`,
				wiring: "galvanic-isolator-face",
				oneLine: "galvanic-isolator",
				traits: ["junction"],
				...(rating === undefined ? {} : { rating }),
			},
		};
	},
};

function groundPost(said: Said, name: "line" | "load"): TerminalSpec {
	return deviceTerminal(said.region, said.quantity("rating")?.value ?? usualRating, name, "ground", name, {
		side: name,
	});
}

/** A side at which the ground lands and all else goes past. */
function inGround(name: "line" | "load"): SideSpec {
	const { knots } = passSide(name);
	return {
		name,
		knots: { ...knots, ground: name } satisfies Partial<Record<Role, string>>,
		lone: { knot: name, role: "ground" },
	};
}

/** That of the usual shore supply, where it is not said. */
const usualRating = 30;
