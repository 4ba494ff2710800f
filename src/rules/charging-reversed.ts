// A converter, dc-dc charger or solar controller whose `in` and `out` are exchanged, or lead to one battery.
import type { Analysis } from "../analysis/analysis.ts";
import type { DirectState } from "../analysis/direct.ts";
import { type ExchangedSides, findExchangedSides } from "../analysis/exchanged-sides.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding, type Level } from "../base/finding.ts";
import { live } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const controller = (battery: string, sun: string): string => `solar roof 200 W, open 22 V, short 11 A
solar-controller mppt 20 A 12 V, limit 50 V
battery house lithium 12.8 V 100 Ah
feed charge from house.+, house.- by pair 10 AWG
  within 7 in to F1: fuse 30 A
  4 ft to mppt.${battery}
feed sun from roof.+, roof.- by pair 10 AWG
  12 ft to D1: disconnect 30 A
  2 ft to mppt.${sun}
`;

export const chargingReversed: Rule = {
	code: "charging-reversed",
	level: "danger",
	what: "In and out of a converter, a dc-dc charger or a solar controller are exchanged, or are on one battery.",
	why: "It does not work, empties the battery it should fill, or gives its volts to what is not made for them and burns out.",
	help: "Lead what gives the current to `in`, and what is to be charged or fed to `out`.",
	basis: "common practice",
	meter: [
		live(
			"digital voltmeter",
			"between the two conductors of each side, both taken off the converter, charger or controller",
			"other volts than those printed beside the terminals they came from, or none at `in`",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		controller("in", "out"),
		`battery bank lithium 25.6 V 100 Ah
converter step 20 A 24 V / 12 V
feed up from bank.+, bank.- by pair 10 AWG
  bolted to F1: fuse 30 A
  3 ft to step.out
`,
	],
	right: [controller("out", "in")],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	return findExchangedSides(circuit, direct).map((exchanged) => {
		const part = certain(circuit.partByName.get(exchanged.part), exchanged.part);
		const { shownBy } = exchanged;
		return finding({
			code: chargingReversed.code,
			level: levels[exchanged.sort],
			title: tell(exchanged),
			span: part.span,
			label: exchanged.sort === "joined" ? "in and out are joined" : "in and out exchanged",
			also: shownBy === undefined ? [] : [{ span: shownBy.span, label: "on `out`" }],
			marks: [part.name, ...(shownBy === undefined ? [] : [shownBy.name])],
			why: chargingReversed.why,
			help:
				exchanged.sort === "joined"
					? `Lead ${part.name}.in and ${part.name}.out to different batteries.`
					: `Exchange the cables on ${part.name}.in and ${part.name}.out.`,
			basis: chargingReversed.basis,
			key: `${chargingReversed.code}@${part.name}`,
		});
	});
}

const levels: Readonly<Record<ExchangedSides["sort"], Level>> = {
	joined: "error",
	volts: "danger",
	modules: "danger",
	alternator: "warning",
	engine: "warning",
};

function tell({ part, sort, shownBy }: ExchangedSides): string {
	const name = shownBy?.name ?? "";
	switch (sort) {
		case "joined":
			return `${part} charges from the battery it charges: its in and out are joined`;
		case "volts":
			return `In and out of ${part} are exchanged: ${name} is on out and has the volts of in`;
		case "modules":
			return `In and out of ${part} are exchanged: ${name}, a solar module, is on the battery side`;
		case "alternator":
			return `In and out of ${part} are exchanged: it charges the battery that ${name} charges already, from the other one`;
		case "engine":
			return `In and out of ${part} are exchanged: it charges ${name}, which stands beside the engine, from the other one`;
	}
}
