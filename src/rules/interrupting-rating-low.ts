// The first fuse after a battery that cannot open what the battery pushes into a short circuit.
import type { Analysis } from "../analysis/analysis.ts";
import type { DirectState } from "../analysis/direct.ts";
import { voltsAboveLowest } from "../analysis/direct-volts.ts";
import { joinAll } from "../analysis/joined-sets.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Protection, Source } from "../circuit/circuit.ts";
import { fuseFamily, interruptingAt } from "../handbook/dc-fuses.ts";
import { citation } from "../handbook/provenance.ts";
import { foldName } from "../plan/names.ts";
import { familyOf } from "./fuse-families.ts";
import { byEye } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const interruptingRatingLow: Rule = {
	code: "interrupting-rating-low",
	level: "danger",
	what: "A battery can push more into a short circuit than the first fuse or breaker after it can open.",
	why: "It bursts or keeps an arc instead of opening, and the fire starts at the battery.",
	help: "Use a fuse with a higher interrupting rating, such as one of class T.",
	basis: `${citation(fuseFamily("class T").provenance)}; what is marked on the fuse decides, common practice`,
	meter: [byEye("read the interrupting rating on the fuse, and the short-circuit current in the battery's paper")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`battery house lithium 12.8 V 280 Ah, fault 12 kA
feed plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse 60 A interrupting 5 kA
  2 ft to plus: bus 250 A
`,
		`battery house lithium 12.8 V 280 Ah, fault 12 kA
feed plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse blade 30 A
  2 ft to plus: bus 250 A
`,
		`battery house lithium 25.6 V 280 Ah, fault 8 kA
feed plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse cube 60 A interrupting 10 kA
  2 ft to plus: bus 250 A
`,
	],
	right: [
		`battery house lithium 12.8 V 280 Ah, fault 12 kA
feed plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse class-T 60 A interrupting 20 kA
  2 ft to plus: bus 250 A
`,
		`battery house lithium 12.8 V 280 Ah, fault 8 kA
feed plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse cube 60 A interrupting 10 kA
  2 ft to plus: bus 250 A
`,
	],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	const { exposure } = direct;
	const joined = joinAll(direct.network);
	const voltsAt = voltsAboveLowest(direct);
	const judged = circuit.protections.flatMap((device): Judged[] => {
		const link = circuit.links[device.links[0] ?? -1];
		if (link === undefined || circuit.points[link.between[0]]?.role !== "positive") return [];
		const line = link.between.find((point) => exposure.get(point)?.device === undefined && exposure.has(point));
		if (line === undefined) return [];
		const batteries = circuit.sources.filter(
			({ sort, hot: [plus] }) => sort === "battery" && plus !== undefined && joined.isJoined(plus, line),
		);
		return [judge(circuit, device, batteries, voltsAt(line))];
	});
	return [...judged.flatMap(tellTooLow), ...tellUnchecked(judged)];
}

/** A device with what can come to it, and what it opens. */
interface Judged {
	readonly device: Protection;
	readonly batteries: readonly Source[];
	readonly volts: number;
	/** What the batteries push into a short circuit, as far as that is said: in parallel it adds up. */
	readonly fault: number;
	readonly unsaid: readonly Source[];
	/** What is printed on the device, and what is typical of its class at those volts. */
	readonly marked: number | undefined;
	readonly typical: number | undefined;
	/** The volts at which its class opens what is printed, where these are fewer. */
	readonly markedAt: number | undefined;
}

function judge({ plan }: Circuit, device: Protection, batteries: readonly Source[], volts: number): Judged {
	const said = (name: string, word: string): number | undefined =>
		plan.thingByName.get(foldName(name))?.said.quantity(word)?.value;
	const faultOf = ({ part, volts: own }: Source): number | undefined => {
		const resistance = said(part, "resistance");
		return said(part, "fault") ?? (resistance === undefined ? undefined : own / resistance);
	};
	const thing = plan.thingByName.get(foldName(device.part));
	const family = thing === undefined || thing.kind.name !== "fuse" ? undefined : familyOf(thing.said);
	// A battery a little above the nominal voltage of a figure is what that figure is for.
	const nominal = volts / sameNominal;
	return {
		device,
		batteries,
		volts,
		fault: batteries.reduce((total, battery) => total + (faultOf(battery) ?? 0), 0),
		unsaid: batteries.filter((battery) => faultOf(battery) === undefined),
		marked: said(device.part, "interrupting"),
		typical: family === undefined ? undefined : interruptingAt(family, nominal),
		markedAt: family !== undefined && nominal > family.interruptingAt ? family.interruptingAt : undefined,
	};
}

const sameNominal = 1.1;

function tellTooLow({ device, batteries, volts, fault, marked, typical, markedAt }: Judged): Finding[] {
	const names = listNames(batteries.map(({ name }) => name));
	const pushed = `${names} can push ${formatNumber(fault, 0)} A into a short circuit`;
	const slots = slotsOf(device);
	const bears = marked ?? typical;
	if (bears !== undefined && fault > bears)
		return [
			finding({
				...slots,
				level: marked === undefined ? "warning" : "danger",
				title: `${pushed}, and ${device.part} opens ${formatNumber(bears, 0)} A${marked === undefined ? " at most, as is typical of its class" : ""}`,
				label: `opens ${formatNumber(bears, 0)} A`,
				figures: [
					{ name: "fault current", found: fault, limit: bears, unit: "A", source: interruptingRatingLow.basis },
				],
				help: "Use a fuse marked with a higher interrupting rating, such as one of class T.",
			}),
		];
	if (marked === undefined || markedAt === undefined || typical === undefined || fault <= typical) return [];
	return [
		finding({
			...slots,
			level: "warning",
			title: `${pushed} at ${formatNumber(volts, 1)} V, and a fuse like ${device.part} opens its ${formatNumber(marked, 0)} A at ${formatNumber(markedAt, 0)} V, here ${formatNumber(typical, 0)} A`,
			label: "at fewer volts",
			figures: [
				{ name: "fault current", found: fault, limit: typical, unit: "A", source: interruptingRatingLow.basis },
			],
			help: `Look in the maker's paper for what ${device.part} opens at ${formatNumber(volts, 1)} V, or use one of class T. What is typical of the class is recalled, not read.`,
		}),
	];
}

function slotsOf(device: Protection) {
	return {
		code: interruptingRatingLow.code,
		span: device.span,
		marks: [device.part],
		why: interruptingRatingLow.why,
		basis: interruptingRatingLow.basis,
	};
}

/** What nothing is said of, once for all devices behind the same batteries. */
function tellUnchecked(judged: readonly Judged[]): Finding[] {
	const open = judged.filter(
		({ unsaid, marked, typical, fault }) =>
			(unsaid.length > 0 || marked === undefined) && fault <= (marked ?? typical ?? fault),
	);
	return [...groupBy(open, ({ batteries }) => batteries.map(({ name }) => name).join(" ")).values()].flatMap(
		(group) => {
			const [first] = group;
			if (first === undefined) return [];
			const unmarked = group.filter(({ marked }) => marked === undefined).map(({ device }) => device.part);
			const lacking = [
				...(first.unsaid.length === 0
					? []
					: [`the fault current of ${listNames(first.unsaid.map(({ name }) => name))}`]),
				...(unmarked.length === 0 ? [] : [`the interrupting rating of ${listNames(unmarked)}`]),
			];
			const names = group.map(({ device }) => device.part);
			return [
				finding({
					...slotsOf(first.device),
					level: "note",
					unchecked: true,
					title: `Whether ${listNames(names)} can open a short circuit is not checked: ${lacking.join(" and ")} ${lacking.length === 1 ? "is" : "are"} not said`,
					also: group.slice(1, 9).map(({ device }) => ({ span: device.span, label: device.part })),
					marks: names,
					help: "Write `fault` and `interrupting` with what the makers' papers say.",
					key: `${interruptingRatingLow.code}@unsaid/${first.device.part}`,
				}),
			];
		},
	);
}
