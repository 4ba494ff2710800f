// Poles that must never meet.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("poles-joined is told", () => {
	test("hot and neutral by a jumper", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  link b1.hot, b1.neutral by 12 AWG black
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ poles-joined "Hot and neutral are joined in b1: the jumper b1.hot~b1.neutral"
`);
	});

	test("hot and neutral in one joint", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
at b1
  join bunks-1.black, bunks-1.white, bunks-2.black, b1.hot
//                    ^^^^^^^^^^^^^ poles-joined "Hot and neutral are joined in b1: bunks-1.white is with the hots of b1"
// also end-loose
`);
	});

	test("hot and ground behind a switch that may be off", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to s1: switch
  7 ft to l1: light 9 W
at l1
  lights-2.black on l1.ground
//^^^^^^^^^^^^^^^^^^^^^^^^^^^ poles-joined "Hot and ground are joined in l1: lights-2.black is on l1.ground"
  lights-2.bare on l1.ground
//^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled
// also end-loose
`);
	});

	test("the two legs by a jumper on the bus", () => {
		checkMarked(`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  link LC.bus.A, LC.bus.B by 6 AWG black
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ poles-joined "The two legs of pole are joined in LC: by way of LC.bus.A~LC.bus.B"
`);
	});

	test("two sources on one panel", () => {
		checkMarked(`inlet shore 30 A 120 V
inverter inv 2000 W 12 V / 120 V, bonds neutral never
panel LC main 30 A from shore by 10-2, 12 ft
feed backup from inv by 10-2
  5 ft to LC
//        ^^ sources-paralleled "inv and shore are joined in LC: by way of backup-1.black"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
// also inlet-live
`);
	});

	test("an inverter-charger wired past its transfer", () => {
		checkMarked(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
//               ^^^ sources-paralleled "inv and shore are joined in inv: by way of inv~out.hot"
feed supply from shore by 10-2
  12 ft to inv.out
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
// also inlet-live bond-doubled
`);
	});
});

describe("poles-joined is not told of", () => {
	test("a shared neutral and two hots behind a two-pole breaker", () => {
		checkRight(`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit bunks from LC breaker 20 A two-pole by 12-3
  14 ft to b1: receptacle split
`);
	});

	test("two sources that each have a panel of their own", () => {
		checkRight(`inlet shore 30 A 120 V
inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
panel LC main 30 A from shore by 10-2, 12 ft
panel LI lugs only from inv by 12-2, 5 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit desk from LI breaker 15 A by 14-2
  5 ft to d1: receptacle
`);
	});

	test("a jumper between two hots of one circuit", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to bx: box 34 cuin
    r1: receptacle
    r2: receptacle single
at bx
  bunks-1.black on r1.hot
  link r1.hot, r2.hot by 12 AWG black solid
`);
	});

	test("both contacts of a three-way switch are never on together", () => {
		checkRight(`${supply}circuit stairs from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch three-way
  5 ft by 14-2 to l1: light 9 W
`);
	});
});
