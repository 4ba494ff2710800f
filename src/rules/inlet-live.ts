// A source that is off, with its own terminals live from another: pins that can be touched, or a machine fed from behind.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { isHot } from "../analysis/poles.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Source } from "../circuit/circuit.ts";
import { dead, live } from "./meter-test.ts";
import { keyOfMistake } from "./mistake-wording.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const inletLive: Rule = {
	code: "inlet-live",
	level: "danger",
	what: "While one source feeds, the hot terminal of another that is off is live.",
	why: "The bare pins of an unplugged inlet are live, or a stopped generator or inverter is fed from behind and burns.",
	help: "Let a transfer choose between the sources, or feed them into an inverter-charger one at a time.",
	basis: "NFPA 70 551.31 and 702.5, recalled; common practice",
	meter: [
		dead(
			"from the hot pin of the one source to the hot terminal of the other, transfers as they stand when the one feeds",
			"continuity",
		),
		live(
			"loading voltage tester",
			"between hot and neutral, and hot and ground, of the source that is off, while the other feeds; do not touch the pins",
			"the full voltage instead of 0 V",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
generator gen 3600 W 120 V, bonds neutral to frame
panel LC main 30 A from shore by 10-2, 12 ft
feed backup from gen by 10-2
  5 ft to LC
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
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	const { poles } = state.crossings;
	return analysis.circuit.sources
		.filter((source) => !state.mode.live.includes(source.name) && source.sort !== "inverter-charger")
		.flatMap((source) =>
			source.hot.flatMap((point) => {
				const index = poles.reaches.findIndex(
					(reach, at) => isHot(poles.poles[at]?.role ?? "ground") && reach.has(point),
				);
				const pole = poles.poles[index];
				return pole === undefined
					? []
					: [tell(analysis, source, point, pole.source, poles.reaches[index]?.pathTo(point) ?? [])];
			}),
		);
}

function tell(analysis: Analysis, source: Source, live: number, by: string, path: Finding["path"]): Finding {
	const { circuit } = analysis;
	// The same two whichever of them is off.
	const names = [source.name, by].toSorted();
	const behind = keyOfJoined(analysis, names);
	const other = circuit.partByName.get(by);
	return finding({
		code: inletLive.code,
		level: "danger",
		title: `${listNames(names)} feed the same wires: while one is on, the terminals of the other are live`,
		span: source.span,
		label: `live while ${by} feeds`,
		also: other === undefined ? [] : [{ span: other.span, label: by }],
		marks: [circuit.points[live]?.name ?? "", ...names],
		path,
		why:
			source.sort === "shore"
				? `Whoever unplugs the cord of ${source.name} finds live pins in the hand.`
				: `${source.name} is fed from behind: it burns, or feeds back into whoever works on it.`,
		help: `Let a transfer choose between ${listNames(names)}, so that only one is joined at a time.`,
		basis: inletLive.basis,
		key: keyOfPair(source.name, by),
		...(behind === undefined ? {} : { consequenceOf: behind }),
	});
}

/** The key of the finding on two sources, the same whichever of them is off. */
export function keyOfPair(one: string, other: string): string {
	return `${inletLive.code}@${[one, other].toSorted().join("/")}`;
}

/** The key of the finding that two sources run against each other, where another mode has both on. */
function keyOfJoined({ states }: Analysis, names: readonly string[]): string | undefined {
	for (const { crossings } of states)
		for (const { between, root } of crossings.bridges)
			if (between.every((pole) => names.includes(pole.source)) && between[0].source !== between[1].source)
				return keyOfMistake(crossings, root.key);
	return undefined;
}
