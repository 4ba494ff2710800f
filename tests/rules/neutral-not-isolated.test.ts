// Neutral and ground tied together by a wire.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("neutral-not-isolated is told", () => {
	test("a jumper at a receptacle that has its ground", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  link b1.neutral, b1.ground by 12 AWG bare
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-not-isolated "Neutral and ground are joined in b1: the jumper b1.neutral~b1.ground"
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled
`);
	});

	test("a jumper in place of the ground", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by cord 12-2
  14 ft to b1: receptacle
//         ^^ conductors-too-few
//         ^^ cord-as-wiring
at b1
  link b1.neutral, b1.ground by 12 AWG bare
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-not-isolated "Neutral and ground are joined in b1: the jumper b1.neutral~b1.ground"
// also ground-broken colour-misleading
`);
	});

	test("a bare wire among the whites", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
at b1
  join bunks-1.white, bunks-2.white, bunks-1.bare, b1.neutral
//                                   ^^^^^^^^^^^^ neutral-not-isolated "Neutral and ground are joined in b1: bunks-1.bare is with the neutrals of b1"
  bunks-2.bare on b1.ground
// also ground-broken
`);
	});

	test("two ties in two boxes are two findings", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
at b1
  link b1.neutral, b1.ground by 12 AWG bare
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-not-isolated "Neutral and ground are joined in b1: the jumper b1.neutral~b1.ground"
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled
at b2
  link b2.neutral, b2.ground by 12 AWG bare
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-not-isolated "Neutral and ground are joined in b2: the jumper b2.neutral~b2.ground"
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled
`);
	});

	test("a wire between the bars of a panel", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  link LC.neutral.7, LC.ground.7 by 10 AWG green
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-not-isolated "Neutral and ground are joined in LC: the jumper LC.neutral.7~LC.ground.7"
`);
	});
});

describe("neutral-not-isolated is not told of", () => {
	test("a bonded panel behind a source that floats", () => {
		checkRight(`generator gen 3000 W 120 V
panel LC main 25 A bonded from gen by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("the bond of the pedestal", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("a jumper between two ports of one bar", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  link LC.ground.7, LC.ground.8 by 10 AWG green solid
`);
	});
});

describe("a joint where a machine bonds its neutral itself", () => {
	const machine = (what: string, more = "") => `${what}
panel LC main 20 A from m by 12-2, 6 ft
circuit one from LC breaker 15 A by 14-2
  6 ft to b1: receptacle
${more}`;
	const joint = "at m\n  link m.neutral, m.ground by 12 AWG bare\n";
	const levelsOf = (text: string) =>
		checkPlan(text, "plan")
			.findings.filter(({ code }) => code === "neutral-not-isolated")
			.map(({ level, why }) => [level, why.includes("nothing changes today")]);

	test.each([
		["a generator", "generator m 20 A 120 V, bonds neutral to frame"],
		["an inverter that always bonds", "inverter m 2000 W 12 V / 120 V, bonds neutral to frame"],
		[
			"an inverter that bonds when inverting, its only mode",
			"inverter m 2000 W 12 V / 120 V, bonds neutral when inverting",
		],
	])("%s: wrong, but nothing gets live by it", (_, what) => {
		expect(levelsOf(machine(what, joint))).toEqual([["error", true]]);
	});

	test("a shore supply bonds at the far end of its cord, so that the ground of the cord would carry current", () => {
		expect(levelsOf(machine("inlet m 20 A 120 V", joint))).toEqual([["danger", false]]);
	});

	test("elsewhere on board than at the machine", () => {
		const elsewhere = "at b1\n  link b1.neutral, b1.ground by 14 AWG bare\n";
		expect(levelsOf(machine("generator m 20 A 120 V, bonds neutral to frame", elsewhere))).toEqual([["danger", false]]);
	});

	test("a machine that does not bond", () => {
		const levels = levelsOf(machine("generator m 20 A 120 V, floating", joint));
		expect(levels.filter(([level]) => level === "error")).toEqual([]);
	});

	test("a machine that bonds in one of two modes", () => {
		const text = `inlet shore 30 A 120 V
inverter-charger m 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to m.in
panel LC main 20 A from m.out by 10-2, 6 ft
circuit one from LC breaker 15 A by 14-2
  6 ft to b1: receptacle
at m
  link m.out.neutral, m.out.ground by 12 AWG bare
`;
		expect(levelsOf(text)).toEqual([["danger", false]]);
	});
});
