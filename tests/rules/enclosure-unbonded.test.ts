// Metal that nothing grounds.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("enclosure-unbonded is told", () => {
	test("a metal box left out of the joint", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle, box metal
  9 ft to b2: receptacle
at b1
  join bunks-1.bare, bunks-2.bare, b1.ground
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ enclosure-unbonded "The metal of b1 is not grounded: the joint of bunks-1.bare, bunks-2.bare and b1.ground leaves out b1.case"
`);
	});

	test("a junction box without devices", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  6 ft to j1: box 18 cuin metal
  9 ft to b2: receptacle
at j1
  join bunks-1.bare, bunks-2.bare
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ enclosure-unbonded "The metal of j1 is not grounded: the joint of bunks-1.bare and bunks-2.bare leaves out j1.case"
`);
	});

	test("the case of a panel, with all that hangs on it", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at shore
  LC-1.bare loose
//^^^^^^^^^^^^^^^ ground-broken
// also enclosure-unbonded
`);
	});

	test("a metal box at the end of a cable without a ground", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by cord 12-2
  14 ft to b1: receptacle, box metal
//         ^^ conductors-too-few
//         ^^ cord-as-wiring
// also enclosure-unbonded ground-broken
`);
	});
});

describe("enclosure-unbonded is not told of", () => {
	test("a metal box in the joint", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle, box metal
  9 ft to b2: receptacle
`);
	});

	test("a plastic box", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
  9 ft to b2: receptacle
at b1
  join bunks-1.bare, bunks-2.bare, b1.ground
`);
	});

	test("a plastic panel", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A, plastic from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("the case of an inverter-charger in both modes", () => {
		checkRight(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
});
