// Ground terminals that nothing joins to ground for good: a loose end, a missing wire, a wire on the wrong terminal.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Break } from "../analysis/breaks.ts";
import { groundless } from "../analysis/grounding.ts";
import { type Finding, finding } from "../base/finding.ts";
import { cureBreak, keyBehindBreak, markBreak, pointAtVictims, tellBreak } from "./break-wording.ts";
import { dead, live } from "./meter-test.ts";
import { tellVictims, victimsOf } from "./mistake-wording.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const groundBroken: Rule = {
	code: "ground-broken",
	level: "danger",
	what: "A ground terminal of something that can be live is not joined to ground by ground conductors alone, or only through a switch.",
	why: "A hot that touches metal there makes it live, and no breaker opens until somebody touches it.",
	help: "Land the loose or missing ground, and join all grounds of the box.",
	basis: "NFPA 70 250.110 and 250.148, 551.54 in vehicles, IEC 60364-4-41, all recalled",
	meter: [
		dead(
			"from the ground terminal to the ground bar, the bond open: with it closed a ground that comes through the neutral looks sound",
			"more than about 1 ohm, or no continuity",
		),
		live(
			"digital voltmeter",
			"from hot to ground",
			"anything between nothing and the full voltage where the ground is open, which a loading voltage tester brings down to near 0 V; the full voltage where it comes through the neutral",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
  9 ft to b2: receptacle
at b1
  bunks-1.bare loose
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
  9 ft to b2: receptacle
at b1
  join bunks-1.bare, bunks-2.bare
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle, box metal
  9 ft to b2: receptacle
circuit later from LC breaker 20 A by 12-2
  5 ft to e1: end
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	return groundless(state, "terminal").map(({ lost, points }) => tell(analysis, state, lost, points));
}

function tell(analysis: Analysis, state: ModeState, lost: Break, terminals: readonly number[]): Finding {
	const { circuit } = analysis;
	const names = tellVictims(circuit, terminals);
	const many = victimsOf(circuit, terminals).length > 1;
	const by = terminals.map((point) => state.grounding.byWayOf(point)).find((way) => way !== undefined);
	const [have, their] = many ? ["have", "their"] : ["has", "its"];
	const what = {
		neutral: `${names} ${many ? "get" : "gets"} ${their} ground through the neutral`,
		detour: `${names} ${have} ${their} ground only by way of a switch or of a terminal for another wire`,
		none: `${names} ${have} no ground`,
	};
	const behind = keyBehindBreak(state, lost);
	return finding({
		code: groundBroken.code,
		level: "danger",
		title: `${what[by ?? "none"]}: ${tellBreak(analysis, lost)}`,
		label: "the ground is lost here",
		span: lost.span,
		also: pointAtVictims(analysis, lost),
		marks: markBreak(analysis, lost),
		path:
			state.poles.reachOf(hotNear(state, terminals[0] ?? -1), "hot")?.pathTo(hotNear(state, terminals[0] ?? -1)) ?? [],
		why:
			by === "neutral"
				? `When the neutral opens, what is plugged in makes the case of ${names} live.`
				: `A hot that touches metal at ${names} makes it live, and no breaker opens until somebody touches it.`,
		help: cureBreak(analysis, lost),
		basis: groundBroken.basis,
		key: `${groundBroken.code}@${lost.place}`,
		...(behind === undefined ? {} : { consequenceOf: behind }),
	});
}

/** A hot terminal of the part whose ground is lost: what would make its case live. */
function hotNear({ network: { circuit }, poles }: ModeState, point: number): number {
	const found = circuit.points[point];
	const part = found?.kind === "terminal" ? circuit.partByName.get(found.part) : undefined;
	return part?.points.find((other) => poles.sortsAt(other).has("hot")) ?? -1;
}
