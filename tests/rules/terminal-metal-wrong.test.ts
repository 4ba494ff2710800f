// Aluminium on what is made for copper.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("terminal-metal-wrong is told", () => {
	test("once of each device and of the joints in each box", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 15 A by 12-2 aluminium
  9 ft to b1: receptacle
//        ^^ terminal-metal-wrong "bunks-1.black, bunks-1.white, bunks-1.bare and 3 more are aluminium, and the joints in b1 are made for copper"
  6 ft to b2: receptacle
//        ^^ terminal-metal-wrong "bunks-2.black, bunks-2.white and bunks-2.bare are aluminium, and b2 is made for copper"
`);
	});
	test("of a switch", () => {
		checkMarked(`${supply}circuit one from LC breaker 15 A by 12-2 aluminium
  9 ft to s1: switch
//        ^^ terminal-metal-wrong
  6 ft by 14-2 to l1: light 9 W
at s1
  join one-1.white, one-2.white by crimp 2
  join one-1.bare, one-2.bare, s1.ground by crimp 3
`);
	});
	test("of lugs that are marked for copper only", () => {
		checkMarked(`inlet pole 40 A 120/240 V
panel LC lugs only, legs 2, copper only from pole by 6-3 aluminium, 12 ft
//                                      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-metal-wrong "LC-1.black and LC-1.red are aluminium, and LC is made for copper"
`);
	});
	test("of a bar", () => {
		checkMarked(`inlet pole 40 A 120/240 V
panel LC main 40 A, legs 2 from pole by 6-3 aluminium, 12 ft
//                         ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-metal-wrong "LC-1.white is aluminium, and NB is made for copper"
  NB: neutral-bar 8 copper only
`);
	});
});

describe("terminal-metal-wrong is not told of", () => {
	test("lugs, breakers and bars, which are marked for both", () => {
		checkRight(`inlet pole 40 A 120/240 V
panel LC main 40 A, legs 2 from pole by 6-3 aluminium, 12 ft
  slot 1: breaker two-pole 40 A
feed annex from LC.1 by 6-3 aluminium
  20 ft to SP: panel lugs only, legs 2
circuit one from SP breaker 15 A by 14-2
  9 ft to l1: light 9 W
`);
	});
	test("a receptacle that is marked for both", () => {
		checkRight(`${supply}circuit bunks from LC breaker 15 A by 12-2 aluminium
  9 ft to b1: receptacle copper and aluminium
`);
	});
	test("crimps, which are made up with the tool that is named on them", () => {
		checkRight(`plan
  joints crimp
${supply}circuit bunks from LC breaker 15 A by 12-2 aluminium
  9 ft to j1: box
  9 ft by 14-2 to b1: receptacle
`);
	});
});
