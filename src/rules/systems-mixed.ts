// A conductor that leads from something for alternating current to something for direct current.
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Conductor, End, Point } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { dcClause } from "../handbook/dc-clauses.ts";
import { citation } from "../handbook/provenance.ts";
import type { System } from "../kinds/kind.ts";
import { dead } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const systemsMixed: Rule = {
	code: "systems-mixed",
	level: "danger",
	what: "A conductor joins a terminal for alternating current and one for direct current.",
	why: "Mains reaches thin low-voltage wires, battery terminals and whoever touches them, or a battery is shorted through mains wiring.",
	help: "Take the conductor off the terminal of the other system; only the ground is shared.",
	basis: `${citation(dcClause("separation, boats").provenance)}; ${citation(dcClause("separation, vehicles").provenance)}`,
	meter: [
		dead(
			"from mains hot and from mains neutral to battery plus and to battery minus, the battery and every mains source taken off",
			"continuity",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at inv
  supply-1.black on inv.+
`,
	],
	right: [
		`battery house lithium 12.8 V 100 Ah
inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
feed plus from house.+ by single 2 AWG red
  6 in to F1: fuse class-T 125 A
  2 ft to inv.+
feed minus from house.- by single 2 AWG black
  2 ft to inv.-
circuit desk from inv.out by 14-2
  3 ft to d1: receptacle
`,
	],
	check: ({ circuit, states }) =>
		states.some(({ direct }) => direct !== undefined)
			? [...groupBy(findMixed(circuit), ({ bundle }) => bundle).values()].flatMap((group) => tell(circuit, group))
			: [],
};

/** The key of the finding on a conductor of a box that ends on the other system: what it should have been on is empty by that. */
export function keyOfMixedIn(circuit: Circuit, box: string): string | undefined {
	const mixed = findMixed(circuit);
	const here = mixed.find(({ conductor }) => conductor.ends.some(({ enclosure }) => enclosure.name === box));
	const first = mixed.find(({ bundle }) => bundle === here?.bundle);
	return first === undefined ? undefined : `${systemsMixed.code}@${first.conductor.name}`;
}

/** A conductor with an end on each system; those of one cable that nobody said the place of are one bundle. */
interface Mixed {
	readonly conductor: Conductor;
	readonly alternating: End;
	readonly direct: End;
	readonly bundle: string;
}

function findMixed(circuit: Circuit): Mixed[] {
	return circuit.conductors.flatMap((conductor): Mixed[] => {
		const [one, other] = conductor.ends;
		const [here, there] = [systemAt(circuit, one), systemAt(circuit, other)];
		const alternating = here === "ac" ? one : there === "ac" ? other : undefined;
		const direct = here === "dc" ? one : there === "dc" ? other : undefined;
		if (alternating === undefined || direct === undefined) return [];
		const isSaid = alternating.said || direct.said;
		return [{ conductor, alternating, direct, bundle: isSaid ? conductor.name : (conductor.cable ?? conductor.name) }];
	});
}

function tell(circuit: Circuit, group: readonly Mixed[]): Finding[] {
	const [first] = group;
	if (first === undefined) return [];
	const { alternating, direct } = first;
	const said = [alternating, direct].find((end) => end.said) ?? direct;
	const names = listNames(group.map(({ conductor }) => conductor.name));
	const [one, other] = [alternating, direct].map((end) => pointAt(circuit, end.point)?.name ?? "");
	return [
		finding({
			code: systemsMixed.code,
			level: "danger",
			title:
				group.length === 1
					? `${names} joins ${one}, for alternating current, and ${other}, for direct current`
					: `${names} join ${one} and its like, for alternating current, and ${other} and its like, for direct current`,
			span: (said.said ? undefined : circuit.cableByTag.get(first.bundle)?.span) ?? said.span,
			label: "two systems meet",
			marks: [...group.map(({ conductor }) => conductor.name), one ?? "", other ?? ""],
			why: systemsMixed.why,
			help: `Take ${names} off ${said === alternating ? one : other}; nothing but the ground is shared between the two systems.`,
			basis: systemsMixed.basis,
		}),
	];
}

function systemAt(circuit: Circuit, { point }: End): System | undefined {
	const found = pointAt(circuit, point);
	return found === undefined ? undefined : systemOfRole(found.role);
}

function pointAt({ points }: Circuit, point: number | undefined): Point | undefined {
	return point === undefined ? undefined : points[point];
}
