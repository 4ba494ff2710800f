// A receptacle that is said to be dedicated is alone behind its breaker.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;

describe("alone or not", () => {
	test("alone", () => {
		checkRight(`${supply}circuit cold from LC breaker 20 A by 12-2
  8 ft to c1: receptacle 20 A single dedicated
`);
	});
	test("with another receptacle", () => {
		checkMarked(`${supply}circuit cold from LC breaker 20 A by 12-2
  8 ft to c1: receptacle 20 A dedicated
//        ^^ dedicated-circuit-shared "but c2 hangs on LC.1 too"
  4 ft to c2: receptacle
`);
	});
	test("with a light ahead of it", () => {
		checkMarked(`${supply}circuit cold from LC breaker 20 A by 12-2
  4 ft to l1: light 9 W
  8 ft to c1: receptacle 20 A dedicated
//        ^^ dedicated-circuit-shared "but l1 hangs on LC.1 too"
`);
	});
	test("with another circuit on the same breaker", () => {
		checkMarked(`${supply}circuit cold from LC breaker 20 A by 12-2
  8 ft to c1: receptacle 20 A dedicated
//        ^^ dedicated-circuit-shared "but w1 hangs on LC.1 too"
circuit work from LC.1 by 12-2
//                ^^^^ slot-shared
  4 ft to w1: receptacle
`);
	});
	test("a switch is no load", () => {
		checkRight(`${supply}circuit cold from LC breaker 20 A by 12-2
  4 ft to s1: switch 20 A
  8 ft to c1: receptacle 20 A single dedicated
`);
	});
	test("not said to be dedicated", () => {
		checkRight(`${supply}circuit cold from LC breaker 20 A by 12-2
  8 ft to c1: receptacle 20 A
  4 ft to c2: receptacle
`);
	});
});
