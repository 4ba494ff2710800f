// Ground terminals that are not grounded for good.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("ground-broken is told", () => {
	test("a loose ground, told where it is loose, once for all behind it", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
at b1
  bunks-1.bare loose
//^^^^^^^^^^^^^^^^^^ ground-broken "b1 and b2 have no ground: bunks-1.bare is on nothing in b1"
`);
	});

	test("one device left out of the joint", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
at b1
  join bunks-1.bare, bunks-2.bare
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ ground-broken "b1 has no ground: the joint of bunks-1.bare and bunks-2.bare leaves out b1.ground"
`);
	});

	test("the next cable left out of the joint", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
   9 ft to b3: receptacle
at b1
  bunks-1.bare on b1.ground
  bunks-2.bare capped
//^^^^^^^^^^^^^^^^^^^ ground-broken "b2 and b3 have no ground: bunks-2.bare is capped in b1"
`);
	});

	test("the ground of the whole panel", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.bare loose
//^^^^^^^^^^^^^^^ ground-broken "b1 has no ground: LC-1.bare is on nothing in LC"
// also enclosure-unbonded
`);
	});

	test("a ground by way of the neutral", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.bare loose
//^^^^^^^^^^^^^^^^^^ ground-broken "b1 gets its ground through the neutral: bunks-1.bare is on nothing in b1"
  link b1.neutral, b1.ground by 12 AWG white
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-not-isolated
`);
	});

	test("the input of an inverter-charger, only while shore is passed through", () => {
		checkMarked(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at inv
  supply-1.bare loose
//^^^^^^^^^^^^^^^^^^^ ground-broken "b1 has no ground: supply-1.bare is on nothing in inv"
// also enclosure-unbonded
`);
	});

	test("a ground by way of a switch", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  7 ft to s1: switch
  9 ft to l1: light 9 W
at s1
  lights-1.bare on s1.line
//^^^^^^^^^^^^^^^^^^^^^^^^ polarity-reversed
  lights-2.bare on s1.load
  join lights-1.black, lights-2.black
// also ground-broken
`);
	});
});

describe("ground-broken is not told of", () => {
	test("grounds joined in any order, the box with them", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle, box metal
   9 ft to b2: receptacle
at b1
  join b1.case, bunks-2.bare, b1.ground, bunks-1.bare
`);
	});

	test("a ground by a bonding run of its own", () => {
		checkRight(`${supply}circuit fan from LC breaker 15 A by 14-2
  8 ft to f1: fan 60 W
bond extra from LC.ground by single 12 AWG green
  8 ft to f1
at f1
  fan-1.bare capped
  extra-1.green on f1.ground
`);
	});

	test("a cable end that waits", () => {
		checkRight(`${supply}circuit later from LC breaker 20 A by 12-2
  14 ft to e1: end
`);
	});
});
