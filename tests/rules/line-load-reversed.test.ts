// Ground-fault devices that are fed on their LOAD side.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("line-load-reversed is told", () => {
	test("both cables exchanged", () => {
		checkMarked(`${supply}circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
  5 ft to g2: receptacle
at g1
  galley-1.black on g1.load.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ line-load-reversed "g1 is fed on its LOAD side: galley-1.black is on g1.load.hot and galley-1.white on g1.load.neutral"
  galley-1.white on g1.load.neutral
  galley-2.black on g1.line.hot
  galley-2.white on g1.line.neutral
`);
	});

	test("the only cable on LOAD", () => {
		checkMarked(`${supply}circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
at g1
  galley-1.black on g1.load.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ line-load-reversed "g1 is fed on its LOAD side: galley-1.black is on g1.load.hot and galley-1.white on g1.load.neutral"
  galley-1.white on g1.load.neutral
`);
	});

	test("the whites alone exchanged", () => {
		checkMarked(`${supply}circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
  5 ft to g2: receptacle
at g1
  galley-1.white on g1.load.neutral
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ line-load-reversed "The neutral of g1 is fed on its LOAD side: galley-1.white is on g1.load.neutral"
  galley-2.white on g1.line.neutral
// also neutral-borrowed
`);
	});

	test("the second of two devices in a row", () => {
		checkMarked(`${supply}circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
  5 ft to g2: gfci
at g2
  galley-2.black on g2.load.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ line-load-reversed "g2 is fed on its LOAD side: galley-2.black is on g2.load.hot and galley-2.white on g2.load.neutral"
  galley-2.white on g2.load.neutral
`);
	});
});

describe("line-load-reversed is not told of", () => {
	test("cables landed the right way round, in any order", () => {
		checkRight(`${supply}circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
  5 ft to g2: receptacle
at g1
  galley-2.white on g1.load.neutral
  galley-2.black on g1.load.hot
  galley-1.white on g1.line.neutral
  galley-1.black on g1.line.hot
`);
	});

	test("nothing on LOAD", () => {
		checkRight(`${supply}circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
`);
	});

	test("two devices in a row", () => {
		checkRight(`${supply}circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
  5 ft to g2: gfci
`);
	});

	test("a ground-fault breaker", () => {
		checkRight(`${supply}circuit galley from LC ground-fault-breaker 20 A by 12-2
  5 ft to g2: receptacle
`);
	});
});
