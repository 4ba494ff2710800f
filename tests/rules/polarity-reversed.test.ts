// Terminals and cases that the wrong pole reaches.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("polarity-reversed is told", () => {
	test("hot and neutral exchanged at the last device", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
at b2
  bunks-2.black on b2.neutral
  bunks-2.white on b2.hot
//^^^^^^^^^^^^^^^^^^^^^^^ polarity-reversed "Hot and neutral are exchanged at b2: bunks-2.white is on b2.hot and bunks-2.black on b2.neutral"
`);
	});

	test("the same fault said by joints in the box before", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
at b1
  join bunks-1.black, bunks-2.white, b1.hot
  join bunks-1.white, bunks-2.black, b1.neutral
//                    ^^^^^^^^^^^^^ polarity-reversed "Hot and neutral are exchanged at b2: bunks-2.black is with the neutrals of b1 and bunks-2.white with the hots of b1"
// also colour-misleading
`);
	});

	test("exchanged at the panel, everything behind it is reversed and told once", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
   9 ft to s1: switch
   9 ft to l1: light 9 W
at LC
  lights-1.black on LC.neutral
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^ polarity-reversed "Hot and neutral are exchanged at b1, s1 and l1: lights-1.black is on LC.neutral.1 and lights-1.white on LC.1.load"
  lights-1.white on LC.1.load
// also switch-in-neutral colour-misleading
`);
	});

	test("the hot on the ground screw makes a metal box live", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle, box metal
at b1
  bunks-1.black on b1.ground
  bunks-1.bare on b1.hot
//^^^^^^^^^^^^^^^^^^^^^^ polarity-reversed "The hot is on the ground of b1: bunks-1.bare is on b1.hot and bunks-1.black on b1.ground"
// also enclosure-unbonded ground-broken
`);
	});

	test("the hot on the case alone", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle, box metal
   9 ft to b2: receptacle
at b1
  join bunks-1.black, bunks-2.black, b1.hot, b1.case
//                                           ^^^^^^^ polarity-reversed "The hot is on the ground of b1: b1.case is with the hots of b1"
  join bunks-1.bare, bunks-2.bare, b1.ground
// also enclosure-unbonded
`);
	});

	test("the neutral alone on a hot terminal", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.black capped
  bunks-1.white on b1.hot
//^^^^^^^^^^^^^^^^^^^^^^^ polarity-reversed "The neutral is on the hot of b1: bunks-1.white is on b1.hot"
// also end-loose
`);
	});

	test("at the feed, while the inverter makes its own power and while it passes shore through", () => {
		checkMarked(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.black on LC.neutral
  LC-1.white on LC.main.line
//^^^^^^^^^^^^^^^^^^^^^^^^^^ polarity-reversed "Hot and neutral are exchanged at b1: LC-1.white is on LC.main.line and LC-1.black on LC.neutral.1"
// also protection-missing switch-in-neutral receptacle-rating-wrong colour-misleading
`);
	});

	test("at the shore inlet, only while shore feeds", () => {
		checkMarked(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at inv
  supply-1.black on inv.in.neutral
  supply-1.white on inv.in.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^ polarity-reversed "Hot and neutral are exchanged at b1: supply-1.white is on inv.in.hot and supply-1.black on inv.in.neutral"
// also protection-missing switch-in-neutral receptacle-rating-wrong colour-misleading
`);
	});

	test("one of two devices in a box", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to bx: box 34 cuin
    r1: receptacle
    r2: receptacle
at bx
  join bunks-1.black, r1.hot, r2.neutral
  join bunks-1.white, r1.neutral, r2.hot
//                                ^^^^^^ polarity-reversed "Hot and neutral are exchanged at r2: r2.hot is with the neutrals of bx and r2.neutral with the hots of bx"
`);
	});

	test("in an IEC country", () => {
		checkMarked(`plan "p"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A two-pole from shore by 3G2.5, 4 m
circuit a from DB ground-fault-breaker 10 A trip 30 mA by 3G1.5
  3 m to a1: socket
at a1
  a-1.brown on a1.N
  a-1.blue on a1.L
//^^^^^^^^^^^^^^^^ polarity-reversed "Hot and neutral are exchanged at a1: a-1.blue is on a1.hot and a-1.brown on a1.neutral"
`);
	});
});

describe("polarity-reversed is not told of", () => {
	test("a switch loop whose white is re-marked", () => {
		checkRight(`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
  7 ft white marked black at both ends to s1: switch
at l1
  join lights-1.black, lights-2.black
  lights-1.white on l1.neutral
  lights-2.white on l1.hot
at s1
  lights-2.black on s1.line
  lights-2.white on s1.load
`);
	});

	test("which terminal of a switch is fed", () => {
		checkRight(`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to s1: switch
  7 ft to l1: light 9 W
at s1
  lights-1.black on s1.load
  lights-2.black on s1.line
`);
	});

	test("both poles of a disconnect exchanged and exchanged back", () => {
		checkRight(`${supply}circuit heat from LC breaker 20 A by 12-2
  7 ft to hd: disconnect
  9 ft to wh: heater 1200 W
at hd
  heat-1.black on hd.line.neutral
  heat-1.white on hd.line.hot
  heat-2.black on hd.load.neutral
  heat-2.white on hd.load.hot
`);
	});

	test("the legs of a heater for 240 V", () => {
		checkRight(`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit heat from LC breaker 20 A two-pole by 12-2
  15 ft white marked red at both ends to h1: heater 3500 W 240 V, no neutral
at h1
  heat-1.black on h1.hot2
  heat-1.white on h1.hot
`);
	});

	test("a red of a three-core cable as the switched hot", () => {
		checkRight(`${supply}circuit shelf from LC breaker 20 A by 12-2
  5 ft to s1: switch
  6 ft by 12-3 to r1: receptacle split
`);
	});
});
