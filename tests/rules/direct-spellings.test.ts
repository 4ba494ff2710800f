// The same fault of the direct-current side is the same finding however its wiring is said: by convention, landing by landing, by parts of one's own.
import { describe, expect, test } from "vitest";
import { checkPlan, writeOutPlan } from "../../src/pipeline.ts";
import { rules } from "../../src/rules/index.ts";

/** What is found above a note, without where. */
function foundIn(text: string): readonly string[] {
	return checkPlan(text, "plan")
		.findings.filter(({ level }) => level !== "note")
		.map(({ code, title }) => `${code}: ${title}`)
		.toSorted();
}

const plans = rules.flatMap(({ code, wrong }) =>
	wrong.flatMap((text, index) => (/^(battery|solar) /m.test(text) ? [[`${code} ${index + 1}`, text] as const] : [])),
);

describe("a wrong plan with every landing said", () => {
	test.each(plans)("%s", async (_, text) => {
		const written = await writeOutPlan(checkPlan(text, "plan"), text);
		expect(written).not.toBe(text);
		expect(foundIn(written)).toEqual(foundIn(text));
	});
});

const bank = `battery house agm 12 V 100 Ah
`;
const lamp = `part glow "Lamp of our own" 12 V
  plus positive
  minus negative
  draws 60 W from plus to minus
`;

/** Plans that say the same wiring, and the codes they have in common. */
const alike: readonly (readonly [string, readonly string[]])[] = [
	[
		"circuit-overloaded",
		[
			`${bank}feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 4 A
  6 ft to l1: light 60 W
`,
			`${bank}light l1 60 W
feed up from house.+ by single 12 AWG red
  within 6 in to F1: fuse 4 A
  6 ft to l1.+
feed down from house.- by single 12 AWG black
  6 ft to l1.-
`,
			`${bank}fuse-block FB 30 A
  slot 1: fuse 4 A
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 20 A
  2 ft to FB
circuit one from FB.1 by pair 12 AWG
  6 ft to l1: light 60 W
`,
			`${lamp}${bank}feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 4 A
  6 ft to l1: glow
`,
		],
	],
	[
		"protection-too-large",
		[
			`${bank}feed small from house.+, house.- by pair 16 AWG
  within 6 in to F1: fuse 60 A
  6 ft to l1: light 60 W
`,
			`${bank}light l1 60 W
feed up from house.+ by single 16 AWG red
  bolted to F1: fuse 60 A
  6 ft to l1.+
feed down from house.- by single 16 AWG black
  6 ft to l1.-
`,
			`${lamp}${bank}feed small from house.+, house.- by pair 16 AWG
  within 6 in to F1: fuse 60 A
  6 ft to l1: glow
`,
		],
	],
	[
		"load-voltage-wrong",
		[
			`${bank}feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 15 A
  6 ft to l1: light 60 W
at l1
  small-2.black capped
`,
			`${bank}light l1 60 W
feed up from house.+ by single 12 AWG red
  within 6 in to F1: fuse 15 A
  6 ft to l1.+
`,
			`${lamp}${bank}feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 15 A
  6 ft to l1: glow
at l1
  small-2.black capped
`,
			`${bank}feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 15 A
  6 ft to l1: light 60 W
  6 ft to l2: light 60 W
at l1
  join small-2.black, small-3.black
`,
		],
	],
	[
		"polarity-dc-reversed",
		[
			`${bank}feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 15 A
  6 ft to l1: light 60 W
at l1
  small-2.red on l1.-
  small-2.black on l1.+
`,
			`${bank}light l1 60 W
feed up from house.+ by single 12 AWG red
  within 6 in to F1: fuse 15 A
  6 ft to l1.-
feed down from house.- by single 12 AWG black
  6 ft to l1.+
`,
			`${lamp}${bank}feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 15 A
  6 ft to l1: glow
at l1
  small-2.red on l1.minus
  small-2.black on l1.plus
`,
		],
	],
];

describe.each(alike)("%s", (code, texts) => {
	test.each(texts.map((text, index) => [index + 1, text] as const))("spelling %i", (_, text) => {
		const { findings } = checkPlan(text, "plan");
		const found = findings.filter(({ level }) => level !== "note");
		const roots = found.filter(({ consequenceOf }) => !found.some(({ key }) => key === consequenceOf));
		expect(roots.map((finding) => finding.code)).toEqual([code]);
	});
});
