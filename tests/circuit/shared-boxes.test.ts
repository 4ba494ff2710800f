// Boxes in which more than one thing meets: two circuits, one device in a box of its own name, two hots on one handle.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { endsIn, jointsIn, supply, wireRight } from "./wire-plan.ts";

function codesOf(text: string): string[] {
	return checkPlan(text, "van.ferrule").findings.map((finding) => finding.code);
}

describe("two circuits in one box", () => {
	const wired = wireRight(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to j1: box
  6 ft to b1: receptacle
circuit c from LC breaker 15 A by 14-2
  9 ft to j1
  6 ft to c1: receptacle
`);

	test("share their grounds and nothing else", () => {
		expect(jointsIn(wired, "j1")).toEqual([
			"j1/hot: a-1.black a-2.black",
			"j1/neutral: a-1.white a-2.white",
			"j1/ground: a-1.bare a-2.bare c-1.bare c-2.bare",
			"j1/hot@LC.2: c-1.black c-2.black",
			"j1/neutral@LC.2: c-1.white c-2.white",
		]);
	});

	test("single conductors of one circuit, run by themselves, do meet", () => {
		const alone = wireRight(`${supply}circuit hot from LC breaker 20 A by single 12 AWG black
  9 ft to b1: receptacle
feed white from LC.neutral by single 12 AWG white
  9 ft to b1
bond green from LC.ground by single 12 AWG green
  9 ft to b1
`);
		expect(endsIn(alone, "b1")).toEqual([
			"hot-1.black on b1.hot",
			"white-1.white on b1.neutral",
			"green-1.green on b1.ground",
		]);
	});
});

test("a box with one device in it is wired as that device alone", () => {
	const boxed = wireRight(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to x1: box
    s1: switch
  6 ft to l1: light 9 W
`);
	expect(endsIn(boxed, "x1")).toEqual(expect.arrayContaining(["a-1.black on s1.line", "a-2.black on s1.load"]));
});

test.each(["disconnect 30 A", "disconnect 30 A 240 V", "switch two-pole"])(
	"a two-pole %s opens both hots of 240 V",
	(device) => {
		const wired = wireRight(`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit h from LC breaker 15 A two-pole by 14-2
  8 ft white marked red at both ends to hd: ${device}
  3 ft white marked red at both ends to wh: heater 2000 W 240 V, no neutral
`);
		expect(endsIn(wired, "hd")).toEqual(
			expect.arrayContaining(["h-1.white on hd.line.hot2", "h-2.white on hd.load.hot2"]),
		);
	},
);

test("a bonding screw below a panel bonds its neutral bar", () => {
	const bonded = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n  bonding screw\n";
	const run = "circuit a from LC breaker 15 A by 14-2\n  9 ft to b1: receptacle, box 18 cuin\n";
	expect(codesOf(bonded + run)).toEqual(["bond-doubled"]);
	expect(codesOf(bonded.replace("bonding screw", "no bonding screw") + run)).toEqual([]);
});

test("a cable from a thing to itself is no cable", () => {
	expect(
		codesOf(`${supply}circuit a from LC breaker 15 A by 14-2\n  9 ft to b1: receptacle\n  3 ft to b1\n`),
	).toContain("cable-to-itself");
});

test("two circuits on one breaker are told", () => {
	const twice = `${supply}circuit a from LC breaker 15 A by 14-2\n  9 ft to b1: receptacle\ncircuit c from LC.1 by 14-2\n  9 ft to c1: receptacle\n`;
	expect(codesOf(twice)).toContain("slot-shared");
});
