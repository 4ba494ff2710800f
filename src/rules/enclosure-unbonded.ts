// Metal boxes, panels and cases that nothing joins to ground for good.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Break } from "../analysis/breaks.ts";
import { groundless } from "../analysis/grounding.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import { cureBreak, keyBehindBreak, markBreak, pointAtVictims, tellBreak } from "./break-wording.ts";
import { dead } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const enclosureUnbonded: Rule = {
	code: "enclosure-unbonded",
	level: "danger",
	what: "The metal of a box or case with live wires in it is not joined to ground.",
	why: "A hot that touches the metal inside makes the whole box live, and no breaker opens until somebody touches it.",
	help: "Join the metal to the grounds in the box with a pigtail and a green screw.",
	basis: "NFPA 70 250.148(C) and 314.4, IEC 60364-4-41, recalled",
	meter: [dead("from the bare metal of the box or case to the ground bar", "more than about 1 ohm, or no continuity")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle, box metal
  9 ft to b2: receptacle
at b1
  join bunks-1.bare, bunks-2.bare, b1.ground
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle, box metal
  9 ft to b2: receptacle
at b1
  join bunks-1.bare, bunks-2.bare, b1.ground, b1.case
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	return groundless(state, "body").map(({ lost, points }) => tell(analysis, state, lost, points));
}

function tell(analysis: Analysis, state: ModeState, lost: Break, bodies: readonly number[]): Finding {
	const boxes = listNames(bodies.map((point) => analysis.circuit.points[point]?.enclosure.name ?? ""));
	// What leaves ground terminals without ground as well is told there.
	const behind = bodies.length < lost.victims.length ? `ground-broken@${lost.place}` : keyBehindBreak(state, lost);
	return finding({
		code: enclosureUnbonded.code,
		level: "danger",
		title: `The metal of ${boxes} is not grounded: ${tellBreak(analysis, { ...lost, victims: bodies })}`,
		label: "not grounded",
		span: lost.span,
		also: pointAtVictims(analysis, { ...lost, victims: bodies }),
		marks: markBreak(analysis, { ...lost, victims: bodies }),
		why: enclosureUnbonded.why,
		help: cureBreak(analysis, { ...lost, victims: bodies }),
		basis: enclosureUnbonded.basis,
		key: `${enclosureUnbonded.code}@${lost.place}`,
		...(behind === undefined ? {} : { consequenceOf: behind }),
	});
}
