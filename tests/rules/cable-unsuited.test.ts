// Cables for direct current on alternating-current circuits.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;

describe("a pair of red and something", () => {
	test("to a second receptacle", () => {
		checkMarked(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  9 ft by pair 12 AWG to b2: receptacle
//                       ^^ cable-unsuited "a-2 (pair 12 AWG) is for direct current"
`);
	});
	test("for a whole circuit", () => {
		checkMarked(`${supply}circuit a from LC breaker 15 A by duplex 12 AWG
  9 ft to l1: light 5 W
//        ^^ cable-unsuited
`);
	});
	test("into the panel", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A from shore by pair 10 AWG, 12 ft
//                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ cable-unsuited
circuit a from LC breaker 15 A by 14-2
  9 ft to l1: light 5 W
`);
	});
	test("landed by hand all the same", () => {
		checkMarked(`${supply}circuit a from LC breaker 20 A by pair 12 AWG
  9 ft to b1: receptacle
//        ^^ cable-unsuited
// also conductors-too-few ground-broken colour-misleading
at LC
  a-1.red on LC.1.load
  a-1.black on LC.neutral.3
at b1
  a-1.red on b1.hot
  a-1.black on b1.neutral
`);
	});
	test("what is to be done, done", () => {
		checkRight(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  9 ft to b2: receptacle
`);
	});
});
