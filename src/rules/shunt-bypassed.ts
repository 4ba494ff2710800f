// Current that flows past the shunt that should measure it.
import type { Analysis } from "../analysis/analysis.ts";
import type { DirectState } from "../analysis/direct.ts";
import { type BypassedShunt, findBypassedShunts } from "../analysis/shunt-bypasses.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit } from "../circuit/circuit.ts";
import { live } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const bank = (minus: string): string => `battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse class-T 60 A
  1 ft to plus: bus 100 A
feed back from house.- by single 6 AWG black
  1 ft to SH: shunt 100 A
  1 ft to minus: bus 100 A
feed small from plus, ${minus} by pair 12 AWG
  bolted to F2: fuse 15 A
  6 ft to l1: light 6 W
`;

export const shuntBypassed: Rule = {
	code: "shunt-bypassed",
	level: "warning",
	what: "A load or charger has its minus on the battery's side of the shunt, or a wire leads round it.",
	why: "What flows past it is not counted: the meter tells of charge that is not there, and the battery is emptied unseen.",
	help: "Put every minus on the bus behind the shunt, and nothing but the shunt on the battery's minus.",
	basis: "common practice: all current of a bank leads through its shunt",
	meter: [
		live(
			"clamp meter",
			"around the battery's minus, with a load on, beside what the shunt's own meter says",
			"two figures that differ by what that load draws",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		bank("house.-"),
		`${bank("minus")}feed past from house.- by single 6 AWG black
  2 ft to minus
`,
	],
	right: [bank("minus")],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	if (direct.contradicted.length > 0) return [];
	return findBypassedShunts(circuit, direct).map((bypassed) => tell(circuit, bypassed));
}

function tell({ partByName }: Circuit, { shunt, round, past }: BypassedShunt): Finding {
	const way = round.map(({ name }) => name);
	const first = round.find(({ sort }) => sort === "core") ?? round[0];
	const parts = past.flatMap((name) => {
		const part = partByName.get(name);
		return part === undefined ? [] : [{ span: part.span, label: name }];
	});
	return finding({
		code: shuntBypassed.code,
		level: "warning",
		title:
			past.length > 0
				? `What ${listNames(past)} ${past.length > 1 ? "draw or give" : "draws or gives"} flows past the shunt ${shunt.name}: ${past.length > 1 ? "their minus is" : "its minus is"} on the battery's side`
				: `Current flows past the shunt ${shunt.name} by way of ${listNames(way)}`,
		span: shunt.span,
		label: "not all flows through it",
		also: past.length > 0 ? parts.slice(0, 8) : first === undefined ? [] : [{ span: first.span, label: first.name }],
		marks: [shunt.name, ...(past.length > 0 ? past : way)],
		why: shuntBypassed.why,
		help:
			past.length > 0
				? `Land the minus of ${listNames(past)} behind ${shunt.name}.`
				: `Take ${listNames(way.slice(0, 1))} off, so that nothing but ${shunt.name} joins its two sides.`,
		basis: shuntBypassed.basis,
		key: `${shuntBypassed.code}@${shunt.name}`,
	});
}
