// Boxes that are open, or closed by a cover that does not go with what is in them.
import type { Analysis } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import type { Circuit, Enclosure, Part } from "../circuit/circuit.ts";
import { byEye, dead } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const coverWrong: Rule = {
	code: "cover-wrong",
	level: "error",
	what: "A box has no cover, a blank cover over a device, or a cover of metal that nothing grounds.",
	why: "What is live in an open box can be touched, and a metal cover that a loose wire touches is live itself.",
	help: "Close the box with a cover that goes with what is in it.",
	basis: "NFPA 70 314.25 and 314.28(C), recalled: every box has a cover, and metal covers are grounded",
	meter: [
		byEye("look at every box whether it is closed and nothing can be reached"),
		dead("from the bare metal of a cover to the ground bar", "more than about 1 ohm, or no continuity"),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit den from LC breaker 15 A by 14-2
  9 ft to j1: box no cover
  6 ft to l1: light 9 W
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit den from LC breaker 15 A by 14-2
  9 ft to j1: box cover metal
  6 ft to l1: light 9 W
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit den from LC breaker 15 A by 14-2
  9 ft to j1: box cover blank
  6 ft to j2: box metal, cover metal
  6 ft to r1: receptacle, box cover metal
  6 ft to l1: light 9 W
`,
	],
	check: ({ circuit }: Analysis) => {
		const covered = circuit.enclosures.filter(({ fittings }) => fittings?.cover !== undefined);
		if (covered.length === 0) return [];
		const parts = groupBy(circuit.parts, ({ enclosure }) => enclosure);
		return covered.flatMap((enclosure) => {
			const told = judge(circuit, enclosure, parts.get(enclosure) ?? []);
			return told === undefined ? [] : [tell(enclosure, told)];
		});
	},
};

interface Verdict {
	readonly title: string;
	readonly help: string;
}

function judge(circuit: Circuit, { name, fittings, metal }: Enclosure, parts: readonly Part[]): Verdict | undefined {
	const device = parts.find((part) => part.points.length > 0);
	const isComing = parts.some((part) => part.coming);
	switch (fittings?.cover) {
		case "none":
			// A box whose devices are still to come is closed when they are on.
			return isComing
				? undefined
				: { title: `${name} has no cover`, help: "Close it: `cover blank`, or the plate of its device." };
		case "blank":
			return device === undefined
				? undefined
				: {
						title: `${name} has a blank cover, and ${device.name} in it is to be reached`,
						help: `Use a plate that ${device.name} fits through.`,
					};
		case "metal": {
			// The screws of a grounded device ground the plate, and a metal box does.
			const isGrounded = metal || parts.some((part) => hasGround(circuit, part));
			return isGrounded || isComing
				? undefined
				: {
						title: `The cover of ${name} is of metal, and nothing grounds it`,
						help: "Use a cover of plastic, or a metal box that is grounded.",
					};
		}
		default:
			return undefined;
	}
}

function hasGround({ points }: Circuit, part: Part): boolean {
	return part.points.some((index) => {
		const point = points[index];
		return point?.kind === "terminal" && point.role === "ground";
	});
}

function tell({ name, span }: Enclosure, { title, help }: Verdict): Finding {
	return finding({
		code: coverWrong.code,
		level: coverWrong.level,
		title,
		span,
		label: "look at its cover",
		marks: [name],
		why: coverWrong.why,
		help,
		basis: coverWrong.basis,
		key: `${coverWrong.code}@${name}`,
	});
}
