// Two sources of direct current of different voltage joined with one another.
import type { Analysis } from "../analysis/analysis.ts";
import { type DirectState, isAlike } from "../analysis/direct.ts";
import { findExchangedSides } from "../analysis/exchanged-sides.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { live } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const voltagesMixed: Rule = {
	code: "voltages-mixed",
	level: "danger",
	what: "Sources of direct current with different voltages are joined.",
	why: "The higher one drives all the current it can into the lower one, and everything on the lower side gets too much voltage.",
	help: "Keep them apart, and join them through a converter between the two voltages.",
	basis: "common practice",
	meter: [
		live(
			"digital voltmeter",
			"between the two leads of one source, taken off its posts",
			"the voltage of the other source",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`battery house lithium 12.8 V 100 Ah
battery bank lithium 25.6 V 100 Ah
feed house-plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse class-T 60 A
  1 ft to plus: bus 250 A
feed bank-plus from bank.+ by single 6 AWG red
  within 7 in to F2: fuse class-T 60 A
  1 ft to plus
feed house-minus from house.- by single 6 AWG black
  1 ft to minus: bus 250 A
feed bank-minus from bank.- by single 6 AWG black
  1 ft to minus
`,
	],
	right: [
		`battery house agm 12.6 V 100 Ah
battery bank agm 12 V 100 Ah
feed house-plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse class-T 60 A
  1 ft to plus: bus 250 A
feed bank-plus from bank.+ by single 6 AWG red
  within 7 in to F2: fuse class-T 60 A
  1 ft to plus
feed house-minus from house.- by single 6 AWG black
  1 ft to minus: bus 250 A
feed bank-minus from bank.- by single 6 AWG black
  1 ft to minus
`,
	],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	if (direct.contradicted.length === 0) return [];
	const exchanged = new Set(findExchangedSides(circuit, direct).map(({ part }) => part));
	return direct.contradicted.flatMap(({ source, volts }) => {
		// Where in and out are exchanged, that is the fault to tell.
		if (exchanged.has(source.part)) return [];
		if (volts === 0 || isAlike(-volts, source.volts)) return [];
		const others = circuit.sources.filter((other) => other.system === "dc" && other !== source);
		const other = others.find((candidate) => isAlike(candidate.volts, volts)) ?? others[0];
		const [own, met] = [formatNumber(source.volts, 1), formatNumber(volts, 1)];
		return [
			finding({
				code: voltagesMixed.code,
				level: "danger",
				title: `${source.name} gives ${own} V and is joined to ${met} V${other === undefined ? "" : ` of ${other.name}`}`,
				span: source.span,
				label: `${own} V`,
				also: other === undefined ? [] : [{ span: other.span, label: `${formatNumber(other.volts, 1)} V` }],
				marks: [source.name, ...(other === undefined ? [] : [other.name])],
				figures: [{ name: "voltage", found: source.volts, limit: volts, unit: "V", source: voltagesMixed.basis }],
				why: voltagesMixed.why,
				help: `Keep ${source.name} apart from ${met} V, or join them through a converter.`,
				basis: voltagesMixed.basis,
			}),
		];
	});
}
