// The hots of two sources for alternating current that are joined while both are on.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { areParalleled, type Bridge } from "../analysis/crossings.ts";
import { type Finding, finding } from "../base/finding.ts";
import { dead } from "./meter-test.ts";
import { followsWorse, placeMistake, tellRoot } from "./mistake-wording.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const sourcesParalleled: Rule = {
	code: "sources-paralleled",
	level: "danger",
	what: "Two sources for alternating current feed the same wires at the same time.",
	why: "Two sources that do not run in step drive a short-circuit current through each other, and the pins of a dead inlet are live.",
	help: "Let only one feed at a time: through a transfer switch, or an inverter-charger that passes shore power through.",
	basis: "NFPA 70 551.30 and 702.5 (transfer equipment), recalled; ISO 13297, recalled",
	meter: [
		dead("between the hots of the two sources, both off and unplugged, the transfer in each position", "continuity"),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
panel LC main 30 A from shore by 10-2, 12 ft
feed backup from inv by 10-2
  5 ft to LC
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
mode both: shore, inv
`,
	],
	right: [
		`inlet shore 30 A 120 V
generator gen 3600 W 120 V, bonds neutral to frame
transfer-switch TS 30 A two-pole
feed line from shore by 10-2
  12 ft to TS.1
feed backup from gen by 10-2
  8 ft to TS.2
panel LC main 30 A from TS by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
mode both: shore, gen TS at gen
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	return state.crossings.bridges
		.filter(({ between }) => areParalleled(between))
		.map((bridge) => tell(analysis, state, bridge));
}

function tell(analysis: Analysis, state: ModeState, { root, between: [one, other] }: Bridge): Finding {
	return finding({
		code: sourcesParalleled.code,
		level: sourcesParalleled.level,
		title: `${one.source} and ${other.source} are joined in ${root.enclosure}: ${tellRoot(analysis, root)}`,
		label: "two sources meet",
		...placeMistake(analysis, state, root, []),
		why: sourcesParalleled.why,
		help: `Let only one of ${one.source} and ${other.source} feed at a time: through a transfer switch or an inverter-charger that passes shore power through, or by a circuit of its own for each.`,
		basis: sourcesParalleled.basis,
		...followsWorse(state.crossings, root, "paralleled"),
	});
}
