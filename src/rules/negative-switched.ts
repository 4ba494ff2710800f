// A switch that opens the negative alone.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { findSwitches, terminalsOf } from "../analysis/switching.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const block = `battery house lithium 12.8 V 100 Ah
fuse-block FB
  slot 1: fuse 10 A
feed small from house.+, house.- by pair 8 AWG
  bolted to F1: fuse 60 A
  3 ft to FB
circuit bilge from FB.1 by pair 14 AWG
  6 ft to s1: float-switch 10 A
  4 ft to p1: pump 60 W
`;

export const negativeSwitched: Rule = {
	code: "negative-switched",
	level: "warning",
	what: "A switch, float switch, thermostat or relay opens the negative and leaves the positive on.",
	why: "What is switched off stays live: in bilge water or against the frame it goes on leaking current, eats metal away, or starts by itself.",
	help: "Put the switch into the positive.",
	basis: "common practice",
	meter: "Live, with the switch off: plus of the load to the negative bus still reads the full voltage.",
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`${block}at s1
  bilge-1.black on s1.line
  bilge-2.black on s1.load
  join bilge-1.red, bilge-2.red
`,
	],
	right: [block],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode({ circuit }: Analysis, { direct }: ModeState): Finding[] {
	if (direct === undefined) return [];
	return findSwitches(circuit).flatMap((device) => {
		const { face, span, name } = certain(circuit.partByName.get(device.part), device.part);
		// Dimmers are made for the negative, and batteries are parted from either post.
		if (face.traits.includes("dimmer") || face.traits.includes("disconnect")) return [];
		const points = terminalsOf(device);
		const sorts = points.map((point) => direct.poles.sortsAt(point));
		const isNegative = sorts.some((at) => at.has("neutral")) && !sorts.some((at) => at.has("hot"));
		if (!isNegative || !sorts.every((at) => at.has("neutral"))) return [];
		return [
			finding({
				code: negativeSwitched.code,
				level: "warning",
				title: `${name} opens the negative and leaves the positive on`,
				span,
				label: "in the negative",
				marks: [name],
				why: negativeSwitched.why,
				help: `Put ${name} into the positive.`,
				basis: negativeSwitched.basis,
				key: `${negativeSwitched.code}@${name}`,
			}),
		];
	});
}
