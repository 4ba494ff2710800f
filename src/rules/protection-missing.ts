// A hot conductor with no device that would open for it: none at all, or only that of the supply or of the whole board.
import type { Analysis } from "../analysis/analysis.ts";
import { sizeFor } from "../analysis/conductor-limit.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { startSentence } from "../base/wording.ts";
import { marineDeviceAllowance } from "../handbook/marine-ampacity.ts";
import { citation } from "../handbook/provenance.ts";
import { findUnprotected } from "./direct-protection.ts";
import { type ExposedGroup, exposedGroups } from "./exposed-conductors.ts";
import { otherPlaces, placeOf, tellConductors, tellDevice } from "./exposed-wording.ts";
import { dead } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const protectionMissing: Rule = {
	code: "protection-missing",
	level: "danger",
	what: "No breaker or fuse stands before a hot conductor, or only one that is meant for the whole board.",
	why: "In a short circuit or overload nothing opens before the conductor burns.",
	help: "Feed it through a breaker of its own.",
	basis: `NFPA 70 240.4 and 240.21, recalled; ${citation(marineDeviceAllowance.provenance)} on boats; IEC 60364-4-43 in IEC countries, recalled`,
	meter: [
		dead(
			"from the conductor to the hot bus of the board or the post of the source, the main on and every branch breaker or fuse out",
			"continuity",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`generator gen 3000 W 120 V, bonds neutral to frame, no breaker
panel LC main 25 A from gen by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  bunks-1.black on LC.bus.A
`,
		`battery house lithium 12.8 V 100 Ah
light l1 6 W
feed plus from house.+ by single 10 AWG red
  3 ft to l1.+
feed minus from house.- by single 10 AWG black
  3 ft to l1.-
`,
	],
	right: [
		`generator gen 3000 W 120 V, bonds neutral to frame
panel LC main 25 A from gen by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
	],
	check: (analysis) => [
		...exposedGroups(analysis).flatMap((group) =>
			group.sort === "no-device" || group.sort === "no-own-device" ? [tellMissing(analysis, group)] : [],
		),
		...findUnprotected(analysis, protectionMissing.code),
	],
};

function tellMissing(analysis: Analysis, group: ExposedGroup): Finding {
	const { first } = group;
	const { limit, exposure, device } = first;
	const whole = device === undefined ? "" : `: only ${tellDevice(analysis, device)} stands before it`;
	const size = sizeFor(analysis.circuit, exposure.amperes, first.conductor);
	return finding({
		level: "danger",
		title: `No breaker of its own protects ${tellConductors(group)}${whole}`,
		...placeOf(analysis, protectionMissing.code, group),
		label: device === undefined ? "nothing opens before it" : "no breaker of its own",
		also: otherPlaces(group, device),
		figures:
			limit === undefined || device === undefined
				? []
				: [
						{
							name: "protection",
							found: Number(exposure.amperes.toFixed(3)),
							limit: limit.largest,
							unit: "A",
							source: limit.source,
						},
					],
		why:
			limit === undefined ? protectionMissing.why : `${startSentence(limit.because)}; nothing opens before it burns.`,
		help: [
			`Feed it through a breaker${limit === undefined ? "" : ` of ${formatNumber(limit.largest, 1)} A or less`}`,
			device === undefined ? ` at ${exposure.source}.` : " of the panel.",
			device === undefined || size === undefined ? "" : ` Or use ${size}, which the device ahead protects.`,
		].join(""),
		basis: protectionMissing.basis,
	});
}
