// Boxes with less room than what is in them takes: conductors, clamps, devices and grounds, each by its published volume.
import type { Analysis } from "../analysis/analysis.ts";
import { type BoxFill, fillBoxes } from "../analysis/box-contents.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import { boxAllowance } from "../handbook/box-fill.ts";
import { citation } from "../handbook/provenance.ts";
import { smallestBox } from "../handbook/standard-boxes.ts";
import { byEye } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

const counted = [
	"conductor that ends or is spliced",
	"internal clamps",
	"device yoke",
	"equipment grounds, up to four",
] as const;

export const boxOverfilled: Rule = {
	code: "box-overfilled",
	level: "error",
	what: "A box has less room than its wires, clamps and devices take.",
	why: "Wires that are pressed in behind a device are pinched or scraped bare, and they cannot give off their heat.",
	help: "Use a deeper box, or part the wires between two.",
	basis: [
		...new Set(counted.map((content) => citation(boxAllowance(content).provenance))),
		"NFPA 70 314.16 itself, recalled",
	].join("; "),
	meter: [byEye("count what is in the box, and read the volume stamped in it")],
	applies: { regions: ["us"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit den from LC breaker 20 A by 12-2
  9 ft to r1: receptacle, box 15.5 cuin
  6 ft to r2: receptacle, box 18 cuin
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit den from LC breaker 20 A by 12-2
  9 ft to r1: receptacle, box 18 cuin metal, clamps inside
  6 ft to r2: receptacle, box 18 cuin
  from r1
    6 ft to r3: receptacle, box 18 cuin
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit den from LC breaker 20 A by 12-2
  9 ft to r1: receptacle, box 18 cuin metal, clamps inside
  6 ft to r2: receptacle, box 14 cuin
`,
	],
	check: ({ circuit }: Analysis) => {
		const fills = fillBoxes(circuit);
		const unsaid = fills.filter(({ enclosure, isComing }) => enclosure.volume === undefined && !isComing);
		return [...fills.flatMap((fill) => tellFill(fill)), ...(unsaid.length === 0 ? [] : [tellUnsaid(unsaid)])];
	},
};

/** Volumes are sums of hundredths: less than that is rounding. */
const rounding = 0.005;
const cubicCentimetres = 16.387064;

function tellFill(fill: BoxFill): Finding[] {
	const { enclosure, needed, ifClamped } = fill;
	if (enclosure.volume === undefined) return [];
	const room = enclosure.volume.value / cubicCentimetres;
	if (needed === undefined) return [tellTooThick(fill)];
	if (needed > room + rounding) return [tellOverfilled(fill, room, needed)];
	return ifClamped > room + rounding ? [tellClamps(fill, room)] : [];
}

function tellOverfilled({ enclosure, sum, parts }: BoxFill, room: number, needed: number): Finding {
	const standard = smallestBox(needed, parts.length > 0 ? "device" : "square") ?? smallestBox(needed, "square");
	return finding({
		...slotsOf(enclosure.name, parts),
		level: boxOverfilled.level,
		title: `What is in ${enclosure.name} takes ${inches(needed)}, and it has ${inches(room)}`,
		span: enclosure.span,
		label: `${inches(needed)} needed`,
		figures: [
			{
				name: "volume",
				found: Number(needed.toFixed(2)),
				limit: Number(room.toFixed(2)),
				unit: "cuin",
				source: citation(boxAllowance("conductor that ends or is spliced").provenance),
			},
		],
		why: `${sum}. ${boxOverfilled.why}`,
		help: `Use a box of ${inches(needed)} or more${standard === undefined ? "" : `, such as one of ${standard.name} with ${inches(standard.cubicInches)}`}, or lead a cable through another box.`,
	});
}

function tellClamps({ enclosure, ifClamped, parts }: BoxFill, room: number): Finding {
	return finding({
		...slotsOf(enclosure.name, parts),
		level: "note",
		title: `${enclosure.name} is full if its clamps are inside: it would need ${inches(ifClamped)} and has ${inches(room)}`,
		span: enclosure.span,
		why: "Clamps in a box take as much room as one wire; whether it has them was not said.",
		help: "Look, and write `clamps inside` or `clamps outside` behind the box.",
	});
}

function tellTooThick({ enclosure, parts }: BoxFill): Finding {
	return finding({
		...slotsOf(enclosure.name, parts),
		level: "note",
		unchecked: true,
		title: `Room in ${enclosure.name} not checked: a published volume for its thickest wires is missing`,
		span: enclosure.span,
		why: "The table of volumes ends at 6 AWG; thicker wires go by the dimensions of the box (314.28, recalled).",
		help: "Look up the least length and depth of a pull box for these wires.",
	});
}

/** Once for all boxes: which have no volume, and what each of the fullest needs at least. */
function tellUnsaid(unsaid: readonly BoxFill[]): Finding {
	const known = unsaid.toSorted((one, other) => (other.needed ?? 0) - (one.needed ?? 0));
	const names = known.map(({ enclosure }) => enclosure.name);
	const needs = known
		.slice(0, 4)
		.flatMap(({ enclosure, needed }) => (needed === undefined ? [] : [`${enclosure.name} ${inches(needed)}`]));
	const first = certain(unsaid[0], "a box");
	return finding({
		code: boxOverfilled.code,
		level: "note",
		unchecked: true,
		title: `Room in ${listNames(names)} not checked: ${unsaid.length === 1 ? "its" : "their"} volume is missing`,
		span: first.enclosure.span,
		marks: [first.enclosure.name],
		why: "Whether the wires have room cannot be told.",
		help: `Write the volume stamped in each: \`box 18 cuin\`. At least are needed: ${listNames(needs, 5)}.`,
		basis: boxOverfilled.basis,
		key: `${boxOverfilled.code}@unsaid`,
	});
}

function slotsOf(name: string, parts: readonly string[]) {
	return {
		code: boxOverfilled.code,
		marks: [name, ...parts.filter((part) => part !== name)],
		basis: boxOverfilled.basis,
		key: `${boxOverfilled.code}@${name}`,
	};
}

function inches(cubicInches: number): string {
	return `${formatNumber(cubicInches, 2)} cuin`;
}
