// Switches that open the way back and leave the hot on.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("switch-in-neutral is told", () => {
	test("a switch with the whites on it", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  7 ft to s1: switch
  9 ft to l1: light 9 W
at s1
  lights-1.white on s1.line
//^^^^^^^^^^^^^^^^^^^^^^^^^ switch-in-neutral "s1 opens the neutral of l1 and not the hot: lights-1.white is on s1.line"
  lights-2.white on s1.load
  join lights-1.black, lights-2.black
`);
	});

	test("a dimmer", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  7 ft to d1: dimmer
  9 ft to l1: light 9 W
  5 ft to l2: light 9 W
at d1
  lights-1.white on d1.load
//^^^^^^^^^^^^^^^^^^^^^^^^^ switch-in-neutral "d1 opens the neutral of l1 and l2 and not the hot: lights-1.white is on d1.load"
  lights-2.white on d1.line
  join lights-1.black, lights-2.black
`);
	});

	test("a disconnect past which the hot goes", () => {
		checkMarked(`${supply}circuit heat from LC breaker 20 A by 12-2
  7 ft to hd: disconnect
//        ^^ switch-in-neutral "hd opens the neutral of wh and not the hot"
  9 ft to wh: heater 1200 W
at hd
  join heat-1.black, heat-2.black, hd.line.hot
`);
	});

	test("a pair of three-way switches", () => {
		checkMarked(`${supply}circuit stairs from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch three-way
  5 ft by 14-2 to l1: light 9 W
at s1
  stairs-1.white on s1.common
//^^^^^^^^^^^^^^^^^^^^^^^^^^^ switch-in-neutral "s1 and s2 open the neutral of l1 and not the hot: stairs-1.white is on s1.common and stairs-1.black with the neutrals of s1"
  join stairs-1.black, stairs-2.white
at s2
  stairs-3.white on s2.common
  join stairs-2.white, stairs-3.black
// also colour-misleading
`);
	});

	test("what is reversed ahead of the switch is the cause", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  7 ft to s1: switch
  9 ft to l1: light 9 W
at LC
  lights-1.black on LC.neutral
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^ polarity-reversed
  lights-1.white on LC.1.load
// also switch-in-neutral colour-misleading
`);
	});
});

describe("switch-in-neutral is not told of", () => {
	test("a switch in the hot", () => {
		checkRight(`${supply}circuit lights from LC breaker 15 A by 14-2
  7 ft to s1: switch
  9 ft to l1: light 9 W
`);
	});

	test("a disconnect that opens both", () => {
		checkRight(`${supply}circuit heat from LC breaker 20 A by 12-2
  7 ft to hd: disconnect
  9 ft to wh: heater 1200 W
`);
	});

	test("a ground-fault breaker opens both", () => {
		checkRight(`${supply}circuit heat from LC ground-fault-breaker 20 A by 12-2
  9 ft to wh: heater 1200 W
`);
	});

	test("a two-pole switch with another switch behind it", () => {
		checkRight(`${supply}circuit heat from LC breaker 20 A by 12-2
  7 ft to hd: disconnect
  3 ft to s1: switch
  9 ft to wh: heater 1200 W
`);
	});
});
