// Batteries that work as one and are not alike: in chemistry, in what they hold, or in the leads between them.
import type { Analysis } from "../analysis/analysis.ts";
import { type BatteryBank, findBanks, measureLeads } from "../analysis/battery-banks.ts";
import type { DirectState } from "../analysis/direct.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Source } from "../circuit/circuit.ts";
import { foldName } from "../plan/names.ts";
import { byEye, live } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const bank = (second: string, lead: string): string => `battery A1 agm 12 V 100 Ah
battery A2 ${second}
feed a1 from A1.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 100 A
  2 ft to plus: bus 250 A
feed a2 from A2.+ by single 2 AWG red
  within 7 in to F2: fuse class-T 100 A
  ${lead} to plus
feed b1 from A1.- by single 2 AWG black
  2 ft to minus: bus 250 A
feed b2 from A2.- by single 2 AWG black
  2 ft to minus
feed small from plus, minus by pair 12 AWG
  bolted to F3: fuse 15 A
  3 ft to l1: light 6 W
`;

export const batteriesUnequal: Rule = {
	code: "batteries-unequal",
	level: "error",
	what: "Batteries in parallel or in series differ in chemistry or in what they hold, or those in parallel have unequal leads.",
	why: "One works for the other: it is charged with volts that are not its own, emptied first, or worn out by most of the current.",
	help: "Use batteries of one make, size and age, with leads of one size and one length.",
	basis: "common practice",
	meter: [
		live(
			"clamp meter",
			"around the plus of each battery in parallel, under a heavy load",
			"one battery that gives much more than the others",
		),
		byEye("read what is printed on each battery, and measure its leads with a tape"),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [bank("lithium 12.8 V 100 Ah", "2 ft"), bank("agm 12 V 200 Ah", "2 ft"), bank("agm 12 V 100 Ah", "6 ft")],
	right: [bank("agm 12 V 100 Ah", "2 ft"), bank("agm 12 V 105 Ah", "26 in")],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	if (direct.contradicted.length > 0) return [];
	return findBanks(circuit, direct).flatMap((bank) => {
		const unlike = findUnlike(circuit, bank);
		if (unlike !== undefined) return [unlike];
		return bank.joined === "parallel" ? judgeLeads(circuit, direct, bank) : [];
	});
}

/** Of the same chemistry one may hold a little more than the next: makers round, and age tells. */
const mostCapacity = 1.1;
/** Leads that differ by less share the current well enough, beside what the batteries and fuses themselves resist. */
const mostResistance = 1.25;

function findUnlike(circuit: Circuit, { batteries, joined }: BatteryBank): Finding | undefined {
	const said = ({ part }: Source) => circuit.plan.thingByName.get(foldName(part))?.said;
	const chemistries = new Set(batteries.flatMap((battery) => said(battery)?.choice("chemistry") ?? []));
	const names = listNames(batteries.map(({ name }) => name));
	if (chemistries.size > 1)
		return tell(
			batteries,
			"error",
			`${names} are joined in ${joined} and are ${listNames([...chemistries])}`,
			[],
			"unlike",
		);
	const capacities = batteries.flatMap((battery) => said(battery)?.quantity("capacity")?.value ?? []);
	const [least, most] = [Math.min(...capacities), Math.max(...capacities)];
	if (capacities.length < 2 || most <= least * mostCapacity) return undefined;
	return tell(
		batteries,
		joined === "series" ? "error" : "warning",
		`${names} are joined in ${joined} and hold between ${formatNumber(least, 0)} and ${formatNumber(most, 0)} Ah`,
		[
			{
				name: "capacity",
				found: most,
				limit: Number((least * mostCapacity).toFixed(1)),
				unit: "Ah",
				source: batteriesUnequal.basis,
			},
		],
		"unlike",
	);
}

function judgeLeads(circuit: Circuit, direct: DirectState, { batteries }: BatteryBank): Finding[] {
	const leads = measureLeads(circuit, direct, batteries);
	if (leads.length < 2) return [];
	const names = listNames(batteries.map(({ name }) => name));
	const known = leads.flatMap(({ resistance }) => resistance ?? []);
	if (known.length < leads.length)
		return [
			{
				...tell(
					batteries,
					"note",
					`Whether ${names} share the current is not checked: the length of a lead between them is missing`,
					[],
					"leads",
				),
				help: "Write how long each lead is, from post to bus.",
				unchecked: true,
			},
		];
	const [least, most] = [Math.min(...known), Math.max(...known)];
	if (most <= least * mostResistance) return [];
	const [shortest, longest] = [least, most].map((value) =>
		certain(
			leads.find(({ resistance }) => resistance === value),
			"a lead",
		),
	);
	const ratio = least === 0 ? undefined : most / least;
	return [
		{
			...tell(
				batteries,
				"warning",
				`The leads of ${longest?.battery.name ?? ""} resist ${ratio === undefined ? "more than" : `${formatNumber(ratio, 1)} times as much as`} those of ${shortest?.battery.name ?? ""}, which is in parallel`,
				ratio === undefined
					? []
					: [
							{
								name: "resistance of the leads, as a ratio",
								found: Number(ratio.toFixed(2)),
								limit: mostResistance,
								unit: "",
								source: batteriesUnequal.basis,
							},
						],
				"leads",
			),
			help: "Use leads of one size and one length from each battery to the buses; where batteries are chained post to post, take the plus off the first and the minus off the last.",
		},
	];
}

function tell(
	batteries: readonly Source[],
	level: Finding["level"],
	title: string,
	figures: Finding["figures"],
	what: string,
): Finding {
	const [first, ...others] = batteries;
	return finding({
		code: batteriesUnequal.code,
		level,
		title,
		span: certain(first, "a battery").span,
		label: "not alike",
		also: others.map(({ span, name }) => ({ span, label: name })),
		marks: batteries.map(({ part }) => part),
		figures,
		why: batteriesUnequal.why,
		help: batteriesUnequal.help,
		basis: batteriesUnequal.basis,
		key: `${batteriesUnequal.code}@${first?.part ?? ""}/${what}`,
	});
}
