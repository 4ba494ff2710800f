// A string of solar modules that gives more volts on a cold day than its controller bears.
import type { Analysis } from "../analysis/analysis.ts";
import { coldFactorAt } from "../analysis/cold-strings.ts";
import type { DirectState } from "../analysis/direct.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Span } from "../base/span.ts";
import { foldName } from "../plan/names.ts";
import { live } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const stringVoltageHigh: Rule = {
	code: "string-voltage-high",
	level: "danger",
	what: "On the coldest day a string of solar modules gives more volts than its controller bears.",
	why: "The controller's input breaks down for good, and can burn.",
	help: "Put fewer modules in series, or use a controller for more volts.",
	basis:
		"NFPA 70 690.7(A), recalled: by the module's own coefficient and the coldest day where both are said, else by the table, up to 1.25 at 40 C below zero",
	meter: [
		live(
			"digital voltmeter",
			"from plus to minus of the string, open at its disconnect, on a cold sunny morning; a warm day reads less and proves nothing",
			"more than the volts printed on the controller's input",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`solar m1 200 W, open 22 V, short 11 A
solar m2 200 W, open 22 V, short 11 A
solar-controller mppt 20 A 12 V, limit 50 V
feed middle from m1.- by single 10 AWG black
  1 ft to m2.+
feed sun from m1.+, m2.- by pair 10 AWG
  10 ft to D1: disconnect 30 A
  2 ft to mppt.in
`,
	],
	right: [
		`solar m1 200 W, open 22 V, short 11 A
solar m2 200 W, open 22 V, short 11 A
solar-controller mppt 20 A 12 V, limit 75 V
feed middle from m1.- by single 10 AWG black
  1 ft to m2.+
feed sun from m1.+, m2.- by pair 10 AWG
  10 ft to D1: disconnect 30 A
  2 ft to mppt.in
`,
		`solar m1 200 W, open 22 V, short 11 A, coldest -5 C
solar m2 200 W, open 22 V, short 11 A, coldest -5 C
solar-controller mppt 20 A 12 V, limit 50 V
feed middle from m1.- by single 10 AWG black
  1 ft to m2.+
feed sun from m1.+, m2.- by pair 10 AWG
  10 ft to D1: disconnect 30 A
  2 ft to mppt.in
`,
	],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	return circuit.loads.flatMap(({ part, between: [positive, negative] }) => {
		const limit = circuit.plan.thingByName.get(foldName(part));
		const most = limit?.kind.name === "solar-controller" ? limit.said.quantity("limit")?.value : undefined;
		const volts = direct.potentials.between(positive, negative);
		if (limit?.kind.name !== "solar-controller" || volts === undefined || volts <= 0) return [];
		const factor = coldFactorAt(circuit, direct, positive);
		if (factor === undefined) return [];
		const cold = Number((volts * factor).toFixed(1));
		if (most === undefined) return [tellUnchecked(limit.span, part, cold)];
		if (cold <= most) return [];
		return [
			finding({
				code: stringVoltageHigh.code,
				level: "danger",
				title: `The string on ${part} gives ${formatNumber(volts, 1)} V, on the coldest day ${formatNumber(cold, 1)} V, and ${part} bears ${formatNumber(most, 1)} V`,
				span: limit.span,
				label: `bears ${formatNumber(most, 1)} V`,
				marks: [part],
				figures: [{ name: "voltage", found: cold, limit: most, unit: "V", source: stringVoltageHigh.basis }],
				why: stringVoltageHigh.why,
				help: `Put fewer modules in series on ${part}, or use a controller for ${formatNumber(cold, 0)} V or more.`,
				basis: stringVoltageHigh.basis,
			}),
		];
	});
}

function tellUnchecked(span: Span, part: string, cold: number): Finding {
	return finding({
		code: stringVoltageHigh.code,
		level: "note",
		unchecked: true,
		title: `Whether ${part} bears the ${formatNumber(cold, 1)} V of its string on the coldest day is not checked: its limit is missing`,
		span,
		marks: [part],
		why: stringVoltageHigh.why,
		help: "Write what its paper says of the input: `limit 100 V`.",
		basis: stringVoltageHigh.basis,
		key: `${stringVoltageHigh.code}@${part}/limit`,
	});
}
