// Neutral and ground tied together by a wire.
import { describe, test } from "vitest";
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
