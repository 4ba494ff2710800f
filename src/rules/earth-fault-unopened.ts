// On a supply whose earth is an electrode (TT), an outlet or load that no residual-current device stands before.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Part, Source } from "../circuit/circuit.ts";
import { live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const earthFaultUnopened: Rule = {
	code: "earth-fault-unopened",
	level: "error",
	what: "On a TT supply, whose earth is an electrode in the ground, something is behind no residual-current device.",
	why: "The ground lets a few amperes through: no breaker opens, and a case that touches the hot stays live.",
	help: "Put a residual-current device ahead of everything: as the main of the board, or on the way to it.",
	basis:
		"computed: 230 V over an electrode of 100 ohm drive 2.3 A; disconnection times of IEC 60364-4-41 Table 41.1, recalled",
	meter: [live("residual-current tester", "at the outlet with the rated residual current", "no trip")],
	applies: { regions: ["iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`plan "Hut"
  region iec
  rules building
inlet supply 16 A 230 V TT
panel DB main 16 A two-pole from supply by 3G2.5, 8 m
circuit lights from DB breaker 6 A by 3G1.5
  4 m to l1: light 9 W
`,
	],
	right: [
		`plan "Hut"
  region iec
  rules building
inlet supply 16 A 230 V TT
panel DB main 25 A rcd 300 mA selective from supply by 3G2.5, 8 m
circuit lights from DB breaker 6 A by 3G1.5
  4 m to l1: light 9 W
`,
		`plan "Hut"
  region iec
  rules building
inlet supply 16 A 230 V TN-S
panel DB main 16 A two-pole from supply by 3G2.5, 8 m
circuit lights from DB breaker 6 A by 3G1.5
  4 m to l1: light 9 W
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode({ circuit }: Analysis, state: ModeState): Finding[] {
	return circuit.sources
		.filter((source) => source.ownEarth && state.mode.live.includes(source.name))
		.flatMap((source) => {
			const open = circuit.loads.flatMap(({ part, between }) => {
				const isFed = between.some((point) => state.feeders.get(point)?.pole.source === source.name);
				const isOpen = isFed && between.some((point) => state.coverage.deviceAt(point) === null);
				return isOpen ? (circuit.partByName.get(part) ?? []) : [];
			});
			const parts = [...new Set(open)];
			return parts.length === 0 ? [] : [tell(source, parts)];
		});
}

function tell(source: Source, parts: readonly Part[]): Finding {
	const names = parts.map(({ name }) => name);
	return finding({
		code: earthFaultUnopened.code,
		level: "error",
		title: `${source.name} has an earth electrode of its own, and no residual-current device stands before ${listNames(names)}`,
		span: source.span,
		label: "TT",
		also: parts.slice(0, 8).map(({ span, name }) => ({ span, label: name })),
		marks: [source.name, ...names],
		why: earthFaultUnopened.why,
		help: "Let the panel's main be one, `main 25 A rcd 30 mA` or `main 16 A rcbo 30 mA`, or put one on the way to it: `to R1: rcd 25 A 30 mA`.",
		basis: earthFaultUnopened.basis,
		key: `${earthFaultUnopened.code}@${source.name}`,
	});
}
