// Three or more strings of solar modules in parallel, of which one has no fuse of its own.
import type { Analysis } from "../analysis/analysis.ts";
import type { DirectState } from "../analysis/direct.ts";
import { joinWhere } from "../analysis/joined-sets.ts";
import { isUnprotected } from "../analysis/own-fuses.ts";
import { findUnfusedStrings } from "../analysis/parallel-strings.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Source } from "../circuit/circuit.ts";
import { foldName } from "../plan/names.ts";
import { byEye } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const strings = (fuse: string): string =>
	[1, 2, 3]
		.map(
			(number) => `solar m${number} 200 W, open 22 V, short 11 A
feed up${number} from m${number}.+ by single 10 AWG red
${number === 3 ? fuse : `  1 ft to S${number}: fuse 15 A\n`}  6 ft to roof-plus${number === 1 ? ": bus 100 A" : ""}
feed down${number} from m${number}.- by single 10 AWG black
  6 ft to roof-minus${number === 1 ? ": bus 100 A" : ""}
`,
		)
		.join("");
const rest = `solar-controller mppt 50 A 12 V, limit 50 V
feed sun from roof-plus, roof-minus by pair 8 AWG
  12 ft to D1: disconnect 60 A
  2 ft to mppt.in
`;

export const stringsUnfused: Rule = {
	code: "strings-unfused",
	level: "error",
	what: "Of three or more strings of solar modules in parallel one has no fuse of its own, or a larger one than its modules' plates allow.",
	why: "Into a fault in that string the others drive all they give, more than its modules and their leads bear.",
	help: "Put a fuse into each string, of the size that the modules' plates allow at most.",
	basis:
		"NFPA 70 690.9(A), recalled: no device is needed where the other strings give no more than the conductors bear",
	meter: [byEye("count the strings, and the fuses ahead of where they meet")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`${strings("")}${rest}`,
		`${strings("  1 ft to S3: fuse 15 A\n")}${rest}`.replace("solar m1 200 W,", "solar m1 200 W, fuse 10 A,"),
	],
	right: [
		`${strings("  1 ft to S3: fuse 15 A\n")}${rest}`,
		`${strings("  1 ft to S3: fuse 15 A\n")}${rest}`.replace("solar m1 200 W,", "solar m1 200 W, fuse 15 A,"),
	],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	if (!circuit.sources.some(({ sort }) => sort === "solar")) return [];
	const unfused = findUnfusedStrings(circuit, direct).map(({ module, others, amperes }) =>
		finding({
			...slotsOf(module),
			title: `The string of ${module.name} has no fuse of its own, and ${listNames(others.map(({ name }) => name))} can drive ${formatNumber(amperes, 1)} A back through it`,
			label: "no fuse of its own",
			help: `Put a fuse between ${module.name} and where the strings meet.`,
			key: `${stringsUnfused.code}@${module.name}`,
		}),
	);
	return [...unfused, ...findOverfused(circuit, direct)];
}

/** Modules whose own plate allows less than the device that stands at their string. */
function findOverfused(circuit: Circuit, { network }: DirectState): Finding[] {
	const plated = circuit.sources.flatMap((module) => {
		const thing = module.sort === "solar" ? circuit.plan.thingByName.get(foldName(module.part)) : undefined;
		const most = thing?.said.quantity("fuse")?.value;
		return most === undefined ? [] : [{ module, most }];
	});
	if (plated.length === 0) return [];
	const sets = joinWhere(network, isUnprotected);
	return plated.flatMap(({ module, most }): Finding[] => {
		const posts = [...module.hot, ...(module.neutral === undefined ? [] : [module.neutral])].map((post) =>
			sets.find(post),
		);
		const device = circuit.protections.find(
			({ rating, links }) =>
				(rating ?? 0) > most &&
				links.some((link) => circuit.links[link]?.between.some((point) => posts.includes(sets.find(point)))),
		);
		if (device?.rating === undefined) return [];
		return [
			finding({
				...slotsOf(module),
				title: `${device.part} at the string of ${module.name} has ${formatNumber(device.rating, 1)} A, and the module's plate allows ${formatNumber(most, 1)} A`,
				label: `${formatNumber(most, 1)} A at most`,
				also: [{ span: device.span, label: `${formatNumber(device.rating, 1)} A` }],
				marks: [module.name, device.part],
				figures: [
					{
						name: "protection",
						found: device.rating,
						limit: most,
						unit: "A",
						source: "common practice: what the module's plate allows",
					},
				],
				help: `Use a fuse of ${formatNumber(most, 1)} A or less for ${device.part}.`,
				key: `${stringsUnfused.code}@${module.name}/plate`,
			}),
		];
	});
}

function slotsOf(module: Source) {
	return {
		code: stringsUnfused.code,
		level: "error" as const,
		span: module.span,
		marks: [module.name],
		why: stringsUnfused.why,
		basis: stringsUnfused.basis,
	};
}
