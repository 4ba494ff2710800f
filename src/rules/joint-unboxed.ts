// Joints of the mains outside of any box: sparks and heat of a bad joint reach what lies around it.
import type { Analysis } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Enclosure } from "../circuit/circuit.ts";
import { byEye } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const jointUnboxed: Rule = {
	code: "joint-unboxed",
	level: "error",
	what: "Mains conductors are joined where there is no box.",
	why: "A joint that works loose gets hot and sparks, and without a box that reaches the wall around it.",
	help: "Make the joint in a box with a cover that stays within reach.",
	basis: "NFPA 70 300.15, recalled; IEC 60364-5-52 526.5, recalled",
	meter: [byEye("look for joints behind panelling and above ceilings")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 15 A by 14-2
  9 ft to s1: splice lever, ports 2
  9 ft to b1: receptacle
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 15 A by 14-2
  9 ft to s1: box
  9 ft to b1: receptacle
`,
	],
	check: ({ circuit }: Analysis) => {
		if (!circuit.enclosures.some(({ sort }) => sort === "open")) return [];
		const mains = new Set(
			circuit.cables
				.filter(({ system, runSort }) => system === "ac" && runSort !== "bond")
				.flatMap(({ from, to }) => [from, to]),
		);
		const open = circuit.points.flatMap((point) =>
			point.kind === "splice" && point.enclosure.sort === "open" && mains.has(point.enclosure) ? [point.enclosure] : [],
		);
		return [...new Set(open)].map((enclosure) =>
			tell(
				enclosure,
				circuit.cables.filter(({ from, to }) => from === enclosure || to === enclosure).map(({ tag }) => tag),
			),
		);
	},
};

function tell({ name, span }: Enclosure, tags: readonly string[]): Finding {
	return finding({
		code: jointUnboxed.code,
		level: jointUnboxed.level,
		title: `${listNames(tags)} are joined at ${name}, where there is no box`,
		span,
		label: "no box",
		marks: [name, ...tags],
		why: jointUnboxed.why,
		help: `Put a box there: \`${name}: box\`.`,
		basis: jointUnboxed.basis,
		key: `${jointUnboxed.code}@${name}`,
	});
}
