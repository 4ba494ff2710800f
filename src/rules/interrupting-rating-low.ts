// The first fuse after a battery that cannot open what the battery pushes into a short circuit.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { joinAll } from "../analysis/joined-sets.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import type { Protection, Source } from "../circuit/circuit.ts";
import { type FuseFamilyName, fuseFamily } from "../handbook/dc-fuses.ts";
import { citation } from "../handbook/provenance.ts";
import { foldName } from "../plan/names.ts";
import { byEye } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
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
	],
	right: [
		`battery house lithium 12.8 V 280 Ah, fault 12 kA
feed plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse class-T 60 A interrupting 20 kA
  2 ft to plus: bus 250 A
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

/** The family of the handbook that a word of the notation stands for. */
const families: ReadonlyMap<string, FuseFamilyName> = new Map([
	["class-T", "class T"],
	["ANL", "ANL"],
	["strip", "large bolt-in strip"],
	["cube", "terminal cube"],
	["blade", "blade"],
]);

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	const { circuit } = analysis;
	const { direct } = state;
	if (direct === undefined) return [];
	const { exposure } = direct;
	const joined = joinAll(direct.network);
	return circuit.protections.flatMap((device): Finding[] => {
		const link = circuit.links[device.links[0] ?? -1];
		if (link === undefined || circuit.points[link.between[0]]?.role !== "positive") return [];
		const line = link.between.find((point) => exposure.get(point)?.device === undefined && exposure.has(point));
		if (line === undefined) return [];
		const batteries = circuit.sources.filter(
			({ sort, hot: [plus] }) => sort === "battery" && plus !== undefined && joined.isJoined(plus, line),
		);
		return judge(analysis, device, batteries);
	});
}

/** What batteries in parallel push adds up; a figure that is missing is a note. */
function judge({ circuit }: Analysis, device: Protection, batteries: readonly Source[]): Finding[] {
	const said = (name: string, word: string): number | undefined =>
		circuit.plan.thingByName.get(foldName(name))?.said.quantity(word)?.value;
	const faults = batteries.map(({ part, volts }) => {
		const resistance = said(part, "resistance");
		return said(part, "fault") ?? (resistance === undefined ? undefined : volts / resistance);
	});
	const sum = faults.reduce<number>((total, fault) => total + (fault ?? 0), 0);
	const names = listNames(batteries.map(({ name }) => name));
	const marked = said(device.part, "interrupting");
	const made = circuit.plan.thingByName.get(foldName(device.part))?.said.choice("class");
	const family = made === undefined ? undefined : families.get(made);
	const typical = family === undefined ? undefined : fuseFamily(family);
	const bears = marked ?? typical?.interrupting;
	const missing = faults.some((fault) => fault === undefined) ? `the fault current of ${names}` : undefined;
	const slots = {
		code: interruptingRatingLow.code,
		span: device.span,
		marks: [device.part],
		why: interruptingRatingLow.why,
		basis: interruptingRatingLow.basis,
	};
	if (bears !== undefined && sum > bears)
		return [
			finding({
				...slots,
				level: marked === undefined ? "warning" : "danger",
				title: `${names} can push ${formatNumber(sum, 0)} A into a short circuit, and ${device.part} opens ${formatNumber(bears, 0)} A${marked === undefined ? " at most, as is typical of its class" : ""}`,
				label: `opens ${formatNumber(bears, 0)} A`,
				figures: [{ name: "fault current", found: sum, limit: bears, unit: "A", source: interruptingRatingLow.basis }],
				help: "Use a fuse marked with a higher interrupting rating, such as one of class T.",
			}),
		];
	if (missing === undefined && marked !== undefined) return [];
	const lacking = [
		...(missing === undefined ? [] : [missing]),
		...(marked === undefined ? [`the interrupting rating of ${device.part}`] : []),
	];
	return [
		finding({
			...slots,
			level: "note",
			unchecked: true,
			title: `Whether ${device.part} can open a short circuit is not checked: ${lacking.join(" and ")} ${lacking.length === 1 ? "is" : "are"} not said`,
			help: "Write `fault` and `interrupting` with what the makers' papers say.",
		}),
	];
}
