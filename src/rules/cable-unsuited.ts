// A cable made for direct current on an alternating-current circuit: no ground in it, and colours that say something else.
import type { Analysis } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import type { Cable, Circuit, Enclosure } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import type { Role } from "../kinds/kind.ts";
import { byEye } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const cableUnsuited: Rule = {
	code: "cable-unsuited",
	level: "danger",
	what: "A cable for direct current, of a positive and a negative, leads to or from something for alternating current.",
	why: "It has no ground, its insulation is seldom rated for this voltage, and its black is a return where everywhere else black is live.",
	help: "Use a cable with hot, neutral and ground.",
	basis: "common practice; NFPA 70 551.47 and 250.114, recalled",
	meter: [byEye("read the voltage and the type that are printed on the jacket")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
  9 ft by pair 12 AWG to b2: receptacle
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by duplex 12 AWG
  9 ft to l1: light 9 W
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
`,
	],
	check: ({ circuit }: Analysis) => {
		const kept = boxesOf(circuit, ["hot", "hot2", "hot3", "neutral"]);
		const mixed = boxesOf(circuit, ["positive", "negative"]);
		const isUnsuited = ({ name }: Enclosure): boolean => kept.has(name) && !mixed.has(name);
		return circuit.cables.flatMap((cable) =>
			cable.system === "dc" && (isUnsuited(cable.from) || isUnsuited(cable.to)) && !joinsSystems(circuit, cable)
				? [tell(cable)]
				: [],
		);
	},
};

/** Whether a wire of it leads from one system to the other: then that is the fault to tell. */
function joinsSystems({ conductors, points }: Circuit, cable: Cable): boolean {
	return cable.conductors.some((index) => {
		const systems = conductors[index]?.ends.flatMap(({ point }) => {
			const role = point === undefined ? undefined : points[point]?.role;
			return role === undefined || role === "ground" ? [] : [systemOfRole(role)];
		});
		return new Set(systems).size > 1;
	});
}

/** The boxes with a terminal of one of the roles in them; what has both sorts, as an inverter, takes both sorts of cable. */
function boxesOf(circuit: Circuit, roles: readonly Role[]): ReadonlySet<string> {
	return new Set(
		circuit.points.flatMap(({ role, kind, enclosure }) =>
			kind === "terminal" && roles.includes(role) ? [enclosure.name] : [],
		),
	);
}

function tell(cable: Cable): Finding {
	return finding({
		code: cableUnsuited.code,
		level: "danger",
		title: `${cable.tag} (${cable.make}) is for direct current: it has no hot, neutral and ground for ${cable.to.name}`,
		span: cable.span,
		label: "for direct current",
		marks: [cable.tag, cable.to.name],
		why: cableUnsuited.why,
		help: `Use a cable such as \`by 12-2\` or \`by 3G2.5\` in place of ${cable.make} for ${cable.tag}.`,
		basis: cableUnsuited.basis,
		key: keyOfCable(cable.tag),
	});
}

/** The key of the finding on a cable: what is missing behind it follows from it. */
export function keyOfCable(tag: string): string {
	return `${cableUnsuited.code}@${tag}`;
}
