// A conductor that leads from something for alternating current to something for direct current.
import type { Analysis } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Conductor, End, Point } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { dcClause } from "../handbook/dc-clauses.ts";
import { citation } from "../handbook/provenance.ts";
import type { System } from "../kinds/kind.ts";
import { dead } from "./meter-test.ts";
import { keyOfMistake } from "./mistake-wording.ts";
import type { Rule } from "./rule.ts";

export const systemsMixed: Rule = {
	code: "systems-mixed",
	level: "danger",
	what: "A conductor joins a terminal for alternating current and one for direct current, or a pole of direct current and the ground of a machine past its bond.",
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
	check: (analysis) => {
		const { circuit, states } = analysis;
		if (states.every(({ direct }) => direct === undefined)) return [];
		return [
			...[...groupBy(findMixed(circuit), ({ bundle }) => bundle).values()].flatMap((group) => tell(circuit, group)),
			...findOnGround(circuit).map((one) => tellOnGround(analysis, one)),
		];
	},
};

/** A conductor that is no bond, from a pole of direct current to a ground. */
interface OnGround {
	readonly conductor: Conductor;
	readonly pole: Point;
	readonly ground: Point;
}

/** Every such conductor. What leads to the metal of a vehicle or to an electrode is judged as the bond or return that it is. */
function findOnGround({ conductors, points, cableByTag, partByName }: Circuit): OnGround[] {
	return conductors.flatMap((conductor): OnGround[] => {
		const [one, other] = conductor.ends.map(({ point }) => (point === undefined ? undefined : points[point]));
		if (one === undefined || other === undefined) return [];
		const [pole, ground] = other.role === "ground" ? [one, other] : [other, one];
		if (ground.role !== "ground" || systemOfRole(pole.role) !== "dc") return [];
		if (cableByTag.get(conductor.cable ?? "")?.runSort === "bond") return [];
		const kind = ground.kind === "terminal" ? partByName.get(ground.part)?.kind : undefined;
		return kind !== undefined && earths.has(kind) ? [] : [{ conductor, pole, ground }];
	});
}

const earths: ReadonlySet<string> = new Set(["chassis", "hull", "rod"]);

function tellOnGround({ states }: Analysis, { conductor, pole, ground }: OnGround): Finding {
	const box = conductor.ends[0].enclosure.name;
	const causes = states.map(
		({ crossings, direct }) =>
			keyOfMistake(crossings, `${conductor.name}@${box}`) ??
			(direct?.poles.sortsAt(pole.index).size === 2 ? `poles-joined@${conductor.name}` : undefined),
	);
	const cause = causes.find((key) => key !== undefined);
	const isPlus = pole.role === "positive";
	return finding({
		code: systemsMixed.code,
		level: isPlus ? "danger" : "error",
		title: `${conductor.name} joins ${pole.name} and the ground ${ground.name} past the bond`,
		span: conductor.ends.find(({ said }) => said)?.span ?? conductor.span,
		label: `${isPlus ? "plus" : "minus"} on the ground`,
		marks: [conductor.name, pole.name, ground.name],
		why: isPlus
			? "Every case and box that is grounded stands on the battery's plus, and the first touch with its minus draws an arc."
			: "What the battery gives comes back through thin mains grounds and cases too, and these glow when the minus lead is loose.",
		help: `Take ${conductor.name} off ${ground.name}; minus and ground meet at one bond, from the minus bus to the metal.`,
		basis: citation(dcClause("common negative").provenance),
		key: `${systemsMixed.code}@${conductor.name}`,
		...(cause === undefined ? {} : { consequenceOf: cause }),
	});
}

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
