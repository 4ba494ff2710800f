// Things that nothing feeds.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("supply-missing is told", () => {
	test("a panel without a feed", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A
//    ^^ supply-missing "Nothing feeds LC and b1 in any mode, so nothing about them is checked"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("two panels, each by itself", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A
//    ^^ supply-missing "Nothing feeds LC and b1 in any mode, so nothing about them is checked"
panel LD main 30 A
//    ^^ supply-missing "Nothing feeds LD in any mode, so nothing about it is checked"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("a source that is live in no mode", () => {
		checkMarked(`inlet shore 30 A 120 V
inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
panel LC main 30 A from shore by 10-2, 12 ft
panel LI lugs only from inv by 12-2, 5 ft
//    ^^ supply-missing "Nothing feeds LI and d1 in any mode, so nothing about them is checked"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit desk from LI breaker 15 A by 14-2
  5 ft to d1: receptacle
mode camp: shore
`);
	});
});

describe("supply-missing is not told of", () => {
	test("a fed panel", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("a run that is only roughed in", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit later from b1 roughed in by 12-2
  5 ft to e1: end
`);
	});

	test("a plan without any source is told as that", () => {
		checkRight(`panel LC main 30 A
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
});
