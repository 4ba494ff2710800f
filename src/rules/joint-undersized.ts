// Joint connectors that carry less than the breaker or fuse ahead of them lets through.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Protection, Splice } from "../circuit/circuit.ts";
import { byEye, live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const jointUndersized: Rule = {
	code: "joint-undersized",
	level: "error",
	what: "A joint connector is made for fewer amperes than the device ahead of it lets through.",
	why: "The connector runs hot before the breaker opens, and a hot joint loosens and burns.",
	help: "Use a connector that carries as much as the breaker lets through, or a smaller breaker.",
	basis: "NFPA 70 110.3(B): listed products are used as they are marked",
	meter: [
		byEye("read the amperes on the connector and on the breaker"),
		live(
			"thermometer that does not touch",
			"pointed at the closed box, under full load",
			"a box that is warmer than its neighbours",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`plan "Thin joints"
  joints lever 3, 15 A
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  9 ft to b2: receptacle
`,
	],
	right: [
		`plan "Joints as strong as their breaker"
  joints lever 3, 20 A
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  9 ft to b2: receptacle
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode({ circuit }: Analysis, state: ModeState): Finding[] {
	const told = new Set<string>();
	return circuit.points.flatMap((point) => {
		if (point.kind !== "splice" || point.rating === undefined) return [];
		const ahead = state.feeders.get(point.index)?.protection;
		if (ahead?.rating === undefined || ahead.rating <= point.rating) return [];
		// Joints of one sort behind one device are one mistake.
		const kind = `${ahead.part} ${point.connector} ${point.rating}`;
		if (told.has(kind)) return [];
		told.add(kind);
		return [tell(state, point, point.rating, ahead, ahead.rating)];
	});
}

function tell(state: ModeState, splice: Splice, rating: number, ahead: Protection, amperes: number): Finding {
	const [small, large] = [`${formatNumber(rating, 1)} A`, `${formatNumber(amperes, 1)} A`];
	return finding({
		code: jointUndersized.code,
		level: jointUndersized.level,
		title: `The joint ${splice.name} carries ${small}, and ${ahead.part} ahead of it lets ${large} through`,
		span: splice.span,
		label: `${small} joint`,
		also: [{ span: ahead.span, label: large }],
		marks: [splice.name, ahead.part],
		path: state.poles.reachOf(splice.index, "hot")?.pathTo(splice.index) ?? [],
		figures: [{ name: "protection", found: amperes, limit: rating, unit: "A", source: jointUndersized.basis }],
		why: jointUndersized.why,
		help: `Use connectors for ${large} or more, or protect the circuit with ${small}.`,
		basis: jointUndersized.basis,
		key: `${jointUndersized.code}@${splice.name}`,
	});
}
