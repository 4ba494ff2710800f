// A conductor behind a device that lets through more than it may carry for long.
import type { Analysis } from "../analysis/analysis.ts";
import { type ConductorLimit, sizeFor } from "../analysis/conductor-limit.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { startSentence } from "../base/wording.ts";
import { marineDeviceAllowance } from "../handbook/marine-ampacity.ts";
import { citation } from "../handbook/provenance.ts";
import { standardRatings } from "../handbook/standard-ratings.ts";
import { findTooLarge, findUnjudged } from "./direct-protection.ts";
import { findThinReturns } from "./direct-returns.ts";
import { type ExposedGroup, exposedGroups } from "./exposed-conductors.ts";
import { otherPlaces, placeOf, tellConductors, tellDevice } from "./exposed-wording.ts";
import { byEye } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const protectionTooLarge: Rule = {
	code: "protection-too-large",
	level: "danger",
	what: "A breaker or fuse is larger than the thinnest conductor behind it may have.",
	why: "The conductor can glow in the wall before the device opens.",
	help: "Use a smaller breaker, or a thicker cable all the way.",
	basis: `NFPA 70 240.4 and Table 310.16, recalled in part; ${citation(marineDeviceAllowance.provenance)} on boats; IEC 60364-5-52 in IEC countries, recalled`,
	meter: [byEye("read the rating on the breaker or fuse, and the size printed on the jacket of every cable behind it")],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat", "building"],
		differs:
			"Campers and buildings follow the ampacities and small-conductor limits of NFPA 70 in the United States and the installation methods of IEC 60364-5-52 in IEC countries; boats and everything for direct current follow 33 CFR 183.",
	},
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 14-2
  14 ft to b1: receptacle
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 12-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
		`battery house lithium 12.8 V 100 Ah
light l1 6 W
feed small from house.+, house.- by pair 16 AWG
  within 6 in to F1: fuse 60 A
  9 ft to l1
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit lights from LC breaker 15 A by 14-2
  14 ft to l1: light 9 W
`,
	],
	check: (analysis) => [
		...exposedGroups(analysis).flatMap((group) => {
			if (group.sort === "device-too-large") return [tellTooLarge(analysis, group)];
			if (group.sort === "enclosed") return [tellEnclosed(analysis, group)];
			return group.sort === "not-known" ? [tellNotKnown(analysis, group)] : [];
		}),
		...findTooLarge(analysis, protectionTooLarge.code),
		...findThinReturns(analysis, protectionTooLarge.code),
		...findUnjudged(analysis, protectionTooLarge.code),
	],
};

function tellTooLarge(analysis: Analysis, group: ExposedGroup): Finding {
	const { first } = group;
	const limit = certain(first.limit, "the limit of an exposed conductor");
	const device = certain(first.device, "the device ahead of an exposed conductor");
	const amperes = device.rating ?? first.exposure.amperes;
	const size = sizeFor(analysis.circuit, amperes, first.conductor);
	const smaller = largestRatingBelow(limit.largest, analysis.circuit.plan.settings.region);
	return finding({
		basis: first.limit?.source ?? protectionTooLarge.basis,
		...placeOf(analysis, protectionTooLarge.code, group),
		level: "danger",
		title: `${startSentence(tellDevice(analysis, device))} is too large for ${tellConductors(group)}: ${most(limit)}`,
		label: most(limit),
		also: otherPlaces(group, device),
		figures: [
			{
				name: "protection",
				found: Number(amperes.toFixed(3)),
				limit: limit.largest,
				unit: "A",
				source: limit.source,
			},
		],
		why: `${startSentence(limit.because)}; with more it can glow in the wall before the device opens.${caveat(limit)}`,
		help: [
			smaller === undefined ? "Protect it" : `Protect it with ${smaller} A or less`,
			size === undefined ? "." : `, or use ${size} for ${first.cable?.tag ?? first.conductor.name}.`,
			first.cable?.flexible === true ? " The cord that comes with a listed appliance is its maker's to size." : "",
		].join(""),
	});
}

function tellEnclosed(analysis: Analysis, group: ExposedGroup): Finding {
	const { first } = group;
	const limit = certain(first.limit, "the limit of an exposed conductor");
	const enclosed = certain(limit.enclosed, "the limit where heat stays in");
	const amperes = first.device?.rating ?? first.exposure.amperes;
	return finding({
		basis: first.limit?.source ?? protectionTooLarge.basis,
		...placeOf(analysis, protectionTooLarge.code, group),
		level: "note",
		title: `${startSentence(tellConductors(group))} may have ${formatNumber(amperes, 1)} A only where it lies open on a wall`,
		figures: [
			{
				name: "protection",
				found: Number(amperes.toFixed(3)),
				limit: enclosed.largest,
				unit: "A",
				source: limit.source,
			},
		],
		why: `${startSentence(limit.because)}; ${enclosed.where} only ${enclosed.largest} A.${caveat(limit)}`,
		help: "Look how the cable runs; where heat cannot get away, use a smaller breaker or a thicker cable.",
	});
}

function tellNotKnown(analysis: Analysis, group: ExposedGroup): Finding {
	const { first } = group;
	const { limit, exposure, conductor } = first;
	const missing =
		exposure.unrated !== undefined
			? `the rating of ${exposure.unrated.part}`
			: `a published limit for ${conductor.material === "copper" ? "so thin a conductor" : conductor.material}`;
	return finding({
		basis: first.limit?.source ?? protectionTooLarge.basis,
		...placeOf(analysis, protectionTooLarge.code, group),
		level: "note",
		unchecked: true,
		title: `Protection of ${tellConductors(group)} not checked: ${missing} is missing`,
		why: limit === undefined ? "Whether the device opens in time cannot be told." : `${startSentence(limit.because)}.`,
		help:
			exposure.unrated === undefined
				? "Look it up in the maker's paper, and have a licensed person judge it."
				: `Write what is printed on ${exposure.unrated.part}.`,
	});
}

function most(limit: ConductorLimit): string {
	return `${formatNumber(limit.largest, 1)} A at most`;
}

function caveat(limit: ConductorLimit): string {
	return limit.recalled ? " This limit is recalled, not read: look it up before you rely on it." : "";
}

function largestRatingBelow(amperes: number, region: "us" | "iec"): number | undefined {
	return standardRatings.rows.findLast((row) => row.region === region && row.ampere <= amperes)?.ampere;
}
