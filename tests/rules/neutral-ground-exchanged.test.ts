// Neutrals that return over the ground, and grounds that hang on the neutral.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("neutral-ground-exchanged is told", () => {
	test("at the last device", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.white on b1.ground
  bunks-1.bare on b1.neutral
//^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-ground-exchanged "Neutral and ground are exchanged at b1: bunks-1.bare is on b1.neutral and bunks-1.white on b1.ground"
// also ground-broken
`);
	});

	test("at the panel, for all that follows", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
at LC
  bunks-1.white on LC.ground.5
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-ground-exchanged "Neutral and ground are exchanged at b1 and b2: bunks-1.white is on LC.ground.5 and bunks-1.bare on LC.neutral.5"
  bunks-1.bare on LC.neutral.5
// also colour-misleading ground-broken
`);
	});

	test("a white on the ground bar", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  bunks-1.white on LC.ground.5
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-ground-exchanged "The ground is on the neutral of b1: bunks-1.white is on LC.ground.5"
// also colour-misleading
`);
	});

	test("a bare on the neutral bar", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  bunks-1.bare on LC.neutral.5
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-ground-exchanged "The neutral is on the ground of b1: bunks-1.bare is on LC.neutral.5"
// also colour-misleading ground-broken
`);
	});

	test("one wire of each of two cables exchanged in a box is one mistake", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
  from b1
     9 ft to b2: receptacle
  from b1
     9 ft to b3: receptacle
at b1
  join bunks-1.white, bunks-2.bare, bunks-3.white, b1.neutral
  join bunks-1.bare, bunks-2.white, bunks-3.bare, b1.ground
//                   ^^^^^^^^^^^^^ neutral-ground-exchanged "Neutral and ground are exchanged at b2: bunks-2.white is with the grounds of b1 and bunks-2.bare with the neutrals of b1"
// also ground-broken colour-misleading
`);
	});
});

describe("neutral-ground-exchanged is not told of", () => {
	test("ports of a bar in any order", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  bunks-1.white on LC.neutral.9
  bunks-1.bare on LC.ground.9
`);
	});

	test("two grounds under one screw that takes two", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit desk from LC breaker 20 A by 12-2
  14 ft to d1: receptacle
at LC
  bunks-1.bare, desk-1.bare on LC.ground.9
`);
	});

	test("neutral and ground in joints of their own", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
at b1
  join bunks-2.white, b1.neutral, bunks-1.white
  join bunks-2.bare, b1.ground, bunks-1.bare
`);
	});
});
