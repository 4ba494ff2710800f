// A receptacle that is meant to be alone on its circuit, and is not.
import type { Analysis } from "../analysis/analysis.ts";
import type { Demand } from "../analysis/demand.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Part } from "../circuit/circuit.ts";
import { foldName } from "../plan/names.ts";
import { live } from "./meter-test.ts";
import { modesOf } from "./mode-names.ts";
import type { Rule } from "./rule.ts";

export const dedicatedCircuitShared: Rule = {
	code: "dedicated-circuit-shared",
	level: "warning",
	what: "A receptacle said to be dedicated shares its breaker with something else.",
	why: "What the circuit was kept free for may open the breaker together with the rest, or go dark with it.",
	help: "Give it a breaker of its own, or leave `dedicated` out.",
	basis: "common practice: the builder's own word",
	meter: [
		live(
			"loading voltage tester",
			"from hot to neutral at every other outlet, the breaker of this one off",
			"nothing at one that should be live",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit cold from LC breaker 20 A by 12-2
  8 ft to c1: receptacle 20 A dedicated "Refrigerator"
  4 ft to c2: receptacle
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit cold from LC breaker 20 A by 12-2
  8 ft to c1: receptacle 20 A single dedicated "Refrigerator"
circuit rest from LC breaker 20 A by 12-2
  4 ft to c2: receptacle
`,
	],
	check: (analysis) => {
		const shared = new Map<string, { part: Part; demand: Demand; modes: Set<string> }>();
		for (const state of analysis.states)
			for (const demand of state.demand.values())
				for (const part of dedicatedOn(analysis, demand)) {
					const known = shared.get(part.name);
					if (known === undefined) shared.set(part.name, { part, demand, modes: new Set([state.mode.name]) });
					else known.modes.add(state.mode.name);
				}
		return [...shared.values()].map(({ part, demand, modes }) => tell(analysis, part, demand, modes));
	},
};

/** The dedicated receptacles on a device that has more on it. */
function dedicatedOn(analysis: Analysis, demand: Demand): Part[] {
	const names = new Set(demand.own.map((load) => load.part));
	if (names.size < 2 && !demand.feedsDevices) return [];
	return [...names].flatMap((name) => {
		const part = analysis.circuit.partByName.get(name);
		const said = analysis.circuit.plan.thingByName.get(foldName(name))?.said;
		return part !== undefined && said?.flag("dedicated") === true ? [part] : [];
	});
}

function tell(analysis: Analysis, part: Part, demand: Demand, modes: ReadonlySet<string>): Finding {
	const others = [...new Set(demand.own.map((load) => load.part))].filter((name) => name !== part.name);
	const told = others.length === 0 ? "other circuits" : listNames(others);
	return finding({
		code: dedicatedCircuitShared.code,
		level: "warning",
		title: `${part.name} is dedicated, but ${told} ${others.length === 1 ? "hangs" : "hang"} on ${demand.device.part} too`,
		span: part.span,
		label: "not alone",
		also: others.slice(0, 8).flatMap((name) => {
			const other = analysis.circuit.partByName.get(name);
			return other === undefined ? [] : [{ span: other.span, label: "on the same breaker" }];
		}),
		marks: [part.name, demand.device.part, ...others],
		why: dedicatedCircuitShared.why,
		help: dedicatedCircuitShared.help,
		modes: modesOf(analysis, modes),
		basis: dedicatedCircuitShared.basis,
	});
}
