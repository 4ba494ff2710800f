// A source or load for direct current that has no minus lead of its own: its current comes back through bonds and metal.
import type { Analysis } from "../analysis/analysis.ts";
import { type BondReturn, findBondReturns } from "../analysis/bond-returns.ts";
import type { DirectState } from "../analysis/direct.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit } from "../circuit/circuit.ts";
import { dead, live } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const banks = (charger: string): string => `battery start flooded 12 V 60 Ah
battery house agm 12 V 100 Ah
dc-dc step 20 A 12 V / 12 V
chassis body
feed up from start.+, start.- by pair 8 AWG
  within 12 in to F1: fuse 40 A
  9 ft to step.in
feed filled from ${charger} 10 AWG${charger.includes("pair") ? "" : " red"}
  within 12 in to F2: fuse 30 A
  2 ft to step.out${charger.includes("pair") ? "" : ".+"}
feed small from house.+, house.- by pair 12 AWG
  within 12 in to F3: fuse 20 A
  6 ft to l1: light 6 W
bond earth from house.- by single 6 AWG black
  2 ft to body
bond starter-earth from start.- by single 6 AWG black
  1 ft to body
`;

export const bondUsedAsReturn: Rule = {
	code: "bond-used-as-return",
	level: "warning",
	what: "The current of a source or load for direct current comes back through bonds and metal, for want of a minus lead of its own.",
	why: "A bond is there for faults: carrying current all day it warms, rusts at its studs and drops volts, and when it opens the current takes the next way through metal.",
	help: "Lead the minus back by a conductor of its own, as thick as the plus.",
	basis: "common practice: a bond carries no current while nothing is at fault",
	meter: [
		dead(
			"from its minus terminal to the minus of what it feeds or is fed by, all bonds off the metal",
			"no continuity",
		),
		live("clamp meter", "around the bond, while it works", "its whole current"),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [banks("house.+ by single")],
	right: [banks("house.+, house.- by pair")],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	// Where a battery is shorted or two voltages meet, that is the fault to tell.
	if (direct.contradicted.length > 0) return [];
	const found = findBondReturns(circuit, direct);
	return [...groupBy(found, ({ bonds }) => bonds.map(({ name }) => name).join(" ")).values()].map((group) =>
		tell(circuit, group),
	);
}

function tell({ partByName, cableByTag }: Circuit, group: readonly BondReturn[]): Finding {
	const parts = [...new Set(group.map(({ thing }) => thing.part))];
	const bonds = group[0]?.bonds ?? [];
	const first = certain(bonds[0], "a bond");
	const names = bonds.map(({ name }) => name);
	return finding({
		code: bondUsedAsReturn.code,
		level: "warning",
		title: `What ${listNames(parts)} ${parts.length > 1 ? "draw or give" : "draws or gives"} comes back through the bond${names.length > 1 ? "s" : ""} ${listNames(names)}`,
		span: cableByTag.get(first.cable ?? "")?.span ?? first.span,
		label: "carries it back",
		also: parts.slice(0, 8).flatMap((name) => {
			const part = partByName.get(name);
			return part === undefined ? [] : [{ span: part.span, label: name }];
		}),
		marks: [...names, ...parts],
		why: bondUsedAsReturn.why,
		help: `Join the minus of ${listNames(parts)} with the minus of what ${parts.length > 1 ? "they feed or are" : "it feeds or is"} fed by, with a lead as thick as the plus.`,
		basis: bondUsedAsReturn.basis,
		key: `${bondUsedAsReturn.code}@${names.join("/")}`,
	});
}
