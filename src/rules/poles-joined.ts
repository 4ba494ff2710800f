// A hot that is joined to a neutral, a ground, or the other leg: a short circuit waiting for its switch.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { areParalleled, type Bridge } from "../analysis/crossings.ts";
import { isHot, sortOfRole } from "../analysis/poles.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import { findDirectShorts } from "./direct-short.ts";
import { dead } from "./meter-test.ts";
import { followsWorse, placeMistake, tellRoot } from "./mistake-wording.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const polesJoined: Rule = {
	code: "poles-joined",
	level: "danger",
	what: "Two poles that must never meet are joined: hot with neutral or ground, two legs, or positive and negative.",
	why: "The moment it is switched on a short-circuit current flows: what is weakest burns before or while the breaker opens.",
	help: "Take the two apart where they meet.",
	basis: "common practice; NFPA 70 110.7 (wiring free from short circuits), recalled",
	meter: [dead("between the two poles at the board, every load unplugged and the source taken off", "less than 1 ohm")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  link b1.hot, b1.neutral by 12 AWG black
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
  9 ft to b2: receptacle
at b1
  join bunks-1.black, bunks-1.bare, bunks-2.black, b1.hot
`,
	],
	right: [
		`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit bunks from LC breaker 20 A two-pole by 12-3
  14 ft to b1: receptacle split
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	return [
		...state.crossings.bridges
			.filter(({ between }) => between.some((pole) => isHot(pole.role)) && !areParalleled(between))
			.map((bridge) => tell(analysis, state, bridge)),
		...findDirectShorts(analysis, state, polesJoined),
	];
}

function tell(analysis: Analysis, state: ModeState, bridge: Bridge): Finding {
	const { root, between } = bridge;
	const areHots = between.every((pole) => isHot(pole.role));
	const bridged = areHots ? findLegBridge(analysis, root.enclosure) : undefined;
	return finding({
		code: polesJoined.code,
		level: "danger",
		title: `${tellWhat(bridge)} in ${root.enclosure}: ${bridged === undefined ? tellRoot(analysis, root) : "its legs are bridged"}`,
		label: "short circuit",
		...placeMistake(analysis, state, root, []),
		why: polesJoined.why,
		...(bridged === undefined
			? {}
			: { help: `Take the bridge out of ${bridged}: it is for a supply with one hot, and this one has two.` }),
		basis: polesJoined.basis,
		...followsWorse(state.crossings, root, "shorted"),
	});
}

/** The part in a box that joins two legs on purpose, as for a supply with one hot. */
function findLegBridge({ circuit }: Analysis, enclosure: string): string | undefined {
	const roleOf = (point: number): string => circuit.points[point]?.role ?? "";
	return circuit.links.find(
		({ nature, part, between: [one, other] }) =>
			nature === "solid" &&
			roleOf(one) === "hot" &&
			roleOf(other) === "hot2" &&
			circuit.partByName.get(part)?.enclosure.name === enclosure,
	)?.part;
}

function tellWhat({ between: [one, other] }: Bridge): string {
	if (isHot(one.role) && isHot(other.role)) return `The two legs of ${one.source} are joined`;
	const order = ["hot", "neutral", "ground"];
	const sorts = [sortOfRole(one.role), sortOfRole(other.role)];
	const names = sorts.toSorted((first, second) => order.indexOf(first) - order.indexOf(second));
	const [first = "", second = ""] = names;
	return `${listNames([first.charAt(0).toUpperCase() + first.slice(1), second])} are joined`;
}
