// Single mistakes in correct plans: ends exchanged, off, on a wrong terminal, a jumper too many. Each is found, or harmless.
import { describe, expect, test } from "vitest";
import type { NumberedFinding } from "../../src/base/finding.ts";
import { checkRight } from "../check-plan.ts";
import { singleMistakes, writeOut } from "./single-mistakes.ts";

interface Subject {
	readonly name: string;
	readonly text: string;
	/** Mistakes that no rule has anything to say to, by why that is right. */
	readonly harmless: Readonly<Record<string, readonly string[]>>;
}

const subjects: readonly Subject[] = [
	{
		name: "a ground-fault receptacle, a switched light outside, a metal box",
		text: `place galley sink 3 ft
place porch outdoor
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle, box metal
   9 ft to b2: receptacle
circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci in galley
   5 ft to g2: receptacle in galley
   7 ft to g3: switch in galley
  12 ft to g4: light 9 W in porch
`,
		harmless: {},
	},
	{
		name: "an inverter-charger, a ground-fault breaker, a half-switched receptacle",
		text: `place galley sink 3 ft
inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
  slot 1: ground-fault-breaker 20 A
  slot 2: breaker 20 A
circuit galley from LC.1 by 12-2
  11 ft to g1: receptacle in galley
circuit shelf from LC.2 by 12-2
   5 ft to s1: switch
   6 ft by 12-3 to r1: receptacle split
`,
		harmless: {
			"which half is switched, or both, is the builder's choice": [
				"shelf-1.black and shelf-2.red exchanged in s1",
				"shelf-2.black and shelf-2.red exchanged in s1",
				"shelf-2.black and shelf-2.red exchanged in r1",
			],
		},
	},
	{
		name: "two legs, a 240 V heater, a shared neutral, a disconnect",
		text: `inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit heat from LC breaker 20 A two-pole by 12-2
  15 ft white marked red at both ends to h1: heater 3500 W 240 V, no neutral
circuit desk from LC breaker 20 A two-pole by 12-3
   9 ft to d1: receptacle split
circuit water from LC breaker 15 A by 14-2
   9 ft to wd: disconnect
   3 ft to wh: heater 1200 W
`,
		harmless: {
			"which leg is which does not matter where both go together": [
				"LC-1.black and LC-1.red exchanged in pole",
				"LC-1.black and LC-1.red exchanged in LC",
				"heat-1.black and heat-1.white exchanged in LC",
				"desk-1.black and desk-1.red exchanged in LC",
				"heat-1.black and heat-1.white exchanged in h1",
				"desk-1.black and desk-1.red exchanged in d1",
			],
		},
	},
	{
		name: "three-way and four-way switches, two devices in a metal box",
		text: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit stairs from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch four-way
  9 ft to s3: switch three-way
  5 ft by 14-2 to l1: light 9 W
circuit two from LC breaker 15 A by 14-2
  7 ft to bx: box 34 cuin metal
    r1: receptacle
    sw: switch
  from sw
    9 ft to l2: light 9 W
`,
		harmless: {
			"which traveller is which does not matter": [
				"stairs-2.black and stairs-2.red exchanged in s1",
				"stairs-2.black and stairs-2.red exchanged in s2",
				"stairs-3.black and stairs-3.red exchanged in s2",
				"stairs-3.black and stairs-3.red exchanged in s3",
			],
			"the switch governs the outlet instead of the light, or both": [
				"two-1.black and two-2.black exchanged in bx",
				"two-2.black and r1.hot exchanged in bx",
			],
		},
	},
];

describe.each(subjects)("$name", ({ text, harmless }) => {
	test("is free of findings, also with the wiring of any box written out", () => {
		const { circuit } = checkRight(text).analysis;
		for (const { name } of circuit.enclosures) checkRight(writeOut(text, circuit, name));
	});

	test("every single mistake is found", () => {
		const mistakes = singleMistakes(text).map((mistake) => ({ ...mistake, findings: aboveNote(mistake.findings) }));
		expect(mistakes.length).toBeGreaterThan(300);
		expect(mistakes.filter(({ findings }) => findings.length === 0).map(({ what }) => what)).toEqual(
			Object.values(harmless).flat(),
		);
		// The text of a mistake must say nothing that cannot be wired, or it would be found for that.
		expect(mistakes.filter(({ findings }) => findings.some(({ code }) => plain.includes(code)))).toEqual([]);
		// One cause, one finding: of an exchange or an end that is off seldom more than one stands by itself.
		const roots = mistakes
			.filter(({ sort }) => sort === "exchanged" || sort === "off")
			.map(({ findings }) => findings.filter(({ isRoot }) => isRoot).length);
		expect(Math.max(...roots)).toBeLessThanOrEqual(4);
		expect(roots.filter((count) => count > 1).length / roots.length).toBeLessThan(0.15);
	});
});

const plain = ["core-unknown", "terminal-unknown", "landed-twice", "name-missing", "name-unknown"];

function aboveNote(findings: readonly NumberedFinding[]): { code: string; isRoot: boolean }[] {
	const keys = new Set(findings.map((finding) => finding.key));
	return findings
		.filter((finding) => finding.level !== "note")
		.map(({ code, consequenceOf }) => ({ code, isRoot: consequenceOf === undefined || !keys.has(consequenceOf) }));
}
