// Flexible cord that runs on from box to box, in place of cable for fixed wiring.
import type { Analysis } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import type { Cable, Circuit } from "../circuit/circuit.ts";
import { byEye } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const cordAsWiring: Rule = {
	code: "cord-as-wiring",
	level: "warning",
	what: "Flexible cord is used for fixed wiring: it feeds outlets or switches, or goes on from one box to the next.",
	why: "Cord in a wall is not held where it enters a box, chafes with every shake, and its jacket is not made to keep a fire in.",
	help: "Use house cable, `by 12-2`; leave cord to what is plugged in, to an appliance, or to the supply.",
	basis: "NFPA 70 400.12, recalled",
	meter: [byEye("read the type printed on the jacket: what begins with S is cord")],
	applies: { regions: ["us"], rules: ["camper", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 15 A by cord 14-3
  14 ft to b1: receptacle
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  9 ft to s1: switch
  6 ft by cord 14-3 to l1: light 9 W
  6 ft to l2: light 9 W
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by cord 10-3, 12 ft
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit heat from LC breaker 15 A by 14-2
  9 ft to d1: disconnect 20 A
  3 ft by cord 14-3 to h1: heater 1400 W
`,
		`plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by cord 3G2.5, 3.5 m
circuit sockets from DB breaker 10 A two-pole by cord 3G1.5
  2 m to a1: socket
`,
	],
	check: ({ circuit }: Analysis) => {
		const cords = circuit.cables.filter(
			({ flexible, system, runSort }) => flexible && system === "ac" && runSort === "circuit",
		);
		if (cords.length === 0) return [];
		const ends = boxesWithMore(circuit);
		return cords.flatMap((cable) =>
			isFixed(circuit, cable.to.name, ends) || isFixed(circuit, cable.from.name, ends) ? [tell(cable)] : [],
		);
	},
};

/** How many cables that bring power come into each enclosure. */
function boxesWithMore({ cables }: Circuit): ReadonlyMap<string, number> {
	const counts = new Map<string, number>();
	for (const { from, to } of cables.filter(({ runSort }) => runSort !== "bond"))
		for (const { name } of [from, to]) counts.set(name, (counts.get(name) ?? 0) + 1);
	return counts;
}

/** A box with an outlet or switch in it, or one that a chain goes on from: what is left is an appliance at the end of its cord. */
function isFixed({ enclosureByName, parts }: Circuit, box: string, ends: ReadonlyMap<string, number>): boolean {
	if (enclosureByName.get(box)?.sort !== "box") return false;
	const inside = parts.filter(({ enclosure }) => enclosure.name === box);
	const isWired = inside.some(({ face }) =>
		face.traits.some((trait) => trait === "receptacle" || trait === "switch" || trait === "dimmer"),
	);
	const isJoint = inside.length === 0 || inside.every(({ face }) => face.traits.includes("junction"));
	const isAppliance = inside.some(({ face }) =>
		face.traits.some((trait) => trait === "light" || trait === "heater" || trait === "fan" || trait === "load"),
	);
	return isWired || isJoint || (isAppliance && (ends.get(box) ?? 0) > 1);
}

function tell(cable: Cable): Finding {
	return finding({
		code: cordAsWiring.code,
		level: cordAsWiring.level,
		title: `${cable.tag} (${cable.make}) is flexible cord, and runs as fixed wiring from ${cable.from.name} to ${cable.to.name}`,
		span: cable.span,
		label: "cord",
		marks: [cable.tag],
		why: cordAsWiring.why,
		help: `Use house cable for ${cable.tag}, such as \`by 12-2\`. The rule is recalled from memory: look it up in the code in force.`,
		basis: cordAsWiring.basis,
		key: `${cordAsWiring.code}@${cable.tag}`,
	});
}
