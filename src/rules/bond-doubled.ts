// Neutral and ground joined on purpose in more than one place at a time.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Link } from "../circuit/circuit.ts";
import { neutralBondIn } from "../handbook/neutral-bond.ts";
import { citation } from "../handbook/provenance.ts";
import { isOfSource, tellBond } from "./bond-wording.ts";
import { keyOfPair } from "./inlet-live.ts";
import { dead, live } from "./meter-test.ts";
import { keyOfMistake } from "./mistake-wording.ts";
import { modesOf } from "./mode-names.ts";
import type { Rule } from "./rule.ts";

export const bondDoubled: Rule = {
	code: "bond-doubled",
	level: "danger",
	what: "In one source mode neutral and ground are bonded in two or more places.",
	why: "Part of every load's current then flows back over the ground and through every case, and ground-fault devices upstream trip.",
	help: "Keep the bond of the source that feeds; take the other out.",
	basis: `${citation(neutralBondIn("shore").provenance)}; ${citation(neutralBondIn("inverting").provenance)}; NFPA 70 250.24(A)(5) and 250.30, recalled`,
	meter: [
		dead("from the neutral bar to the ground bar, the source that feeds taken off with its own bond", "continuity"),
		live("clamp meter", "around the ground conductor of the feed, with loads on", "part of the current of the loads"),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A bonded from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
		`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral to frame
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
	],
	right: [
		`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
		`plan "Off-grid cabin"
  rules building
generator gen 3000 W 120 V
panel LC main 25 A bonded from gen by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
	],
	check: (analysis) => {
		const doubles = findDoubles(analysis);
		return [...doubles.values()]
			.filter((double) => !isToldAlready(double, doubles))
			.map((double) => tell(analysis, double));
	},
};

/** A bond too many, and the bonds it doubles by mode. */
interface Double {
	readonly bond: Link;
	readonly others: Set<Link>;
	readonly modes: Set<string>;
	/** The far supply it is at, where that is off and only its cord is in. */
	readonly faraway: string | undefined;
	/** The way by which the neutral comes to it then. */
	readonly path: Finding["path"];
	/** The key of what joined two sources, where their bonds double each other by that. */
	readonly behind: string | undefined;
}

function findDoubles({ circuit, states }: Analysis): ReadonlyMap<number, Double> {
	const doubles = new Map<number, Double>();
	for (const state of states)
		for (const { bonds, sources, faraway } of state.bonds) {
			// The bond of the source that feeds is the one to keep; of several others the first.
			const live = new Set(sources.map((source) => source.part));
			const keep =
				bonds.find((bond) => live.has(bond.part)) ?? bonds.find((bond) => isOfSource(circuit, bond)) ?? bonds[0];
			for (const bond of [...bonds, ...faraway]) {
				if (bond === keep || keep === undefined) continue;
				const behind = live.has(bond.part) ? keyOfJoinedSources(state) : keyOfFedSource(state, bond);
				const isFar = faraway.includes(bond);
				const known = doubles.get(bond.index) ?? {
					bond,
					others: new Set(),
					modes: new Set(),
					faraway: isFar ? bond.part : undefined,
					path: isFar ? pathToNeutral(state, bond) : [],
					behind,
				};
				known.others.add(keep);
				known.modes.add(state.mode.name);
				doubles.set(bond.index, known);
			}
		}
	return doubles;
}

/** Whether two bonds double each other by one cause that is told of the other, or of their hots. */
function isToldAlready({ bond, others, faraway, behind }: Double, doubles: ReadonlyMap<number, Double>): boolean {
	if (faraway === undefined) return false;
	return behind !== undefined || [...others].some((other) => doubles.get(other.index)?.others.has(bond) === true);
}

/** The key of the finding that a source which is off is fed from behind: then its bond is not the only thing wired in too much. */
function keyOfFedSource({ network: { circuit }, feeders }: ModeState, bond: Link): string | undefined {
	const source = circuit.sources.find(({ part }) => part === bond.part);
	const by = source?.hot.map((point) => feeders.get(point)?.pole.source).find((name) => name !== undefined);
	return source === undefined || by === undefined ? undefined : keyOfPair(source.name, by);
}

function keyOfJoinedSources({ crossings }: ModeState): string | undefined {
	const joined = crossings.bridges.find(({ between: [one, other] }) => one.source !== other.source);
	return joined === undefined ? undefined : keyOfMistake(crossings, joined.root.key);
}

function pathToNeutral({ poles, network: { circuit } }: ModeState, { between }: Link): Finding["path"] {
	const point = between.find((index) => circuit.points[index]?.role === "neutral") ?? between[0];
	return poles.reachOf(point, "neutral")?.pathTo(point) ?? [];
}

function tell(analysis: Analysis, double: Double): Finding {
	const { bond, others, modes, faraway, path, behind } = double;
	const { circuit } = analysis;
	const first = listNames([...others].map((other) => tellBond(circuit, other)));
	const held = modesOf(analysis, modes);
	const inMode = held.length === 0 ? "" : ` in mode ${listNames(held)}`;
	const withCord = faraway === undefined ? "" : ` while the cord of ${faraway} is still in`;
	return finding({
		code: bondDoubled.code,
		level: "danger",
		title: `Neutral and ground are bonded twice${inMode}${withCord}: ${first}, and again ${tellBond(circuit, bond)}`,
		span: bond.span,
		label: "a bond too many",
		also: [...others].map((other) => ({ span: other.span, label: "already bonded here" })),
		marks: [...bond.between.map((point) => circuit.points[point]?.name ?? ""), bond.part],
		path,
		why: bondDoubled.why,
		help:
			faraway !== undefined
				? `Let the neutral of ${faraway} be parted together with its hot while another source feeds: nothing may join the two sides of what transfers it.`
				: isOfSource(circuit, bond)
					? `Set ${bond.part} so that it does not bond while another source feeds, or feed it through a transfer switch that moves the neutral too, or by a circuit of its own.`
					: `Take out the bonding screw of ${bond.part} (leave out \`bonded\`): the neutral stays on its standoffs.`,
		modes: held,
		basis: bondDoubled.basis,
		key: `${bondDoubled.code}@${bond.part}`,
		...(behind === undefined ? {} : { consequenceOf: behind }),
	});
}
