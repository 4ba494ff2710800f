// A branch breaker that feeds the bus of its panel and can be pulled off with its wires live.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { type BackFeed, findBackFeeds } from "../analysis/back-feeds.ts";
import { type Finding, finding } from "../base/finding.ts";
import type { Circuit } from "../circuit/circuit.ts";
import { keyOfBypassed } from "./main-bypassed.ts";
import { byEye } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const backFeedUnfastened: Rule = {
	code: "back-feed-unfastened",
	level: "error",
	what: "A panel is fed through a branch breaker that is not held down.",
	why: "Such a breaker only plugs on: pulled or shaken off its bus, its stab is bare and live with the full supply behind it.",
	help: "Fasten it with the maker's kit and say `held down` behind it, or land the feed on the panel's lugs or main.",
	basis: "NFPA 70 408.36(D), recalled",
	meter: [byEye("with the supply off, try whether the breaker comes off its bus by hand")],
	applies: { regions: ["us"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC lugs only
  slot 1: breaker 30 A
feed supply from shore by 10-2
  12 ft to LC.1
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC lugs only
  slot 1: breaker 30 A held down
feed supply from shore by 10-2
  12 ft to LC.1
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
		`inlet shore 30 A 120 V
panel LC lugs only from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode({ circuit }: Analysis, state: ModeState): Finding[] {
	// A feed that passes the panel's own main by is told as that: put right, it is no back-feed any more.
	return findBackFeeds(circuit, state.crossings.poles)
		.filter(({ part }) => !part.face.traits.includes("held-down"))
		.filter(({ part }) => keyOfBypassed(state, `${part.owner ?? ""}.main`) === undefined)
		.map((back) => tell(circuit, back));
}

function tell(circuit: Circuit, { part, fed, by }: BackFeed): Finding {
	const panel = part.owner ?? part.name;
	const point = circuit.points[fed]?.name ?? part.name;
	const edge = by.edgesTo(fed).findLast(({ by: way }) => way.kind === "conductor");
	const feed = edge?.by.kind === "conductor" ? circuit.conductors[edge.by.index] : undefined;
	return finding({
		code: backFeedUnfastened.code,
		level: "error",
		title: `${panel} is fed through ${part.name}, which is not held down`,
		span: part.span,
		label: "feeds the bus",
		also: feed === undefined ? [] : [{ span: feed.span, label: `${feed.name} brings the supply` }],
		marks: [part.name, point, ...(feed === undefined ? [] : [feed.name])],
		path: by.pathTo(fed),
		why: backFeedUnfastened.why,
		help: backFeedUnfastened.help,
		basis: backFeedUnfastened.basis,
		key: `${backFeedUnfastened.code}@${part.name}`,
	});
}
