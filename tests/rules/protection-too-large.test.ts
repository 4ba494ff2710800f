// A device is no larger than the thinnest conductor behind it may have: by size, insulation, cord and region.
import { describe, expect, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const iec = `plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A two-pole from shore by 3G2.5, 3 m
`;
const legs = `inlet pole 50 A, 120 V / 240 V
panel LC main 50 A two-pole, legs 2 from pole by 6-3, 20 ft
`;
const supply = `inlet shore 30 A 120 V
panel LC main 30 A two-pole from shore by 10-2, 12 ft
`;

describe("small conductors have their own limit", () => {
	test("14 AWG behind 20 A", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 14-2
  14 ft to b1: receptacle
//         ^^ protection-too-large "15 A at most"
`);
	});
	test("14 AWG behind 15 A", () => {
		checkRight(`${supply}circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`);
	});
	test("12 AWG behind 25 A", () => {
		checkMarked(`${supply}circuit pump from LC breaker 25 A by 12-2
  14 ft to p1: pump 900 W
//         ^^ protection-too-large "20 A at most"
`);
	});
	test("12 AWG behind 20 A", () => {
		checkRight(`${supply}circuit pump from LC breaker 20 A by 12-2
  14 ft to p1: pump 900 W
`);
	});
	test("10 AWG behind 35 A", () => {
		checkMarked(`${legs}circuit pump from LC breaker 35 A by 10-2
  14 ft to p1: pump 900 W
//         ^^ protection-too-large "30 A at most"
`);
	});
	test("10 AWG behind 30 A", () => {
		checkRight(`${legs}circuit pump from LC breaker 30 A by 10-2
  14 ft to p1: pump 900 W
`);
	});
	test("75 °C insulation does not lift the limit of 12 AWG", () => {
		checkMarked(`${supply}circuit pump from LC breaker 25 A by 12-2 75 C
  14 ft to p1: pump 900 W
//         ^^ protection-too-large "20 A at most"
`);
	});
});

describe("thicker conductors go by their ampacity and the next standard rating", () => {
	test("8 AWG house cable carries 40 A, not 50 A", () => {
		checkMarked(`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 8-3, 20 ft
//                         ^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "40 A at most"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
	test("6 AWG house cable carries 55 A, and 60 A is the next standard rating", () => {
		checkRight(`inlet pole 60 A, 120 V / 240 V
panel LC main 60 A, legs 2 from pole by 6-3, 20 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
	test("beyond the next standard rating 6 AWG is too thin", () => {
		checkMarked(`inlet pole 70 A, 120 V / 240 V
panel LC main 70 A, legs 2 from pole by 6-3, 20 ft
//                         ^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "60 A at most"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
});

describe("the whole way counts", () => {
	test("one thin hop in a thick circuit", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   6 ft by 14-2 to b2: receptacle
//                 ^^ protection-too-large "14 AWG in bunks-2"
`);
	});
	test("every hop of a thin circuit is one finding", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 14-2
  14 ft to b1: receptacle
//         ^^ protection-too-large "14 AWG in bunks-1, bunks-2 and bunks-3"
   6 ft to b2: receptacle
   6 ft to b3: receptacle
`);
	});
	test("two thin branches of a thick circuit are two mistakes", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to j1: box
  from j1 by 14-2
    6 ft to b1: receptacle
//          ^^ protection-too-large
  from j1
    6 ft to b2: receptacle
    6 ft by 14-2 to b3: receptacle
//                  ^^ protection-too-large
`);
	});
	test("the feed of a panel behind the supply's breaker", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 20 A from shore by 12-2, 12 ft
//                 ^^^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "breaker of the supply behind shore"
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`);
	});
	test("behind a switch the breaker is the same", () => {
		checkMarked(`${supply}circuit lights from LC breaker 20 A by 12-2
   7 ft to s1: switch
   9 ft by 14-2 to l1: light 9 W
//                 ^^ protection-too-large "14 AWG in lights-2"
`);
	});
	test("a thin jumper inside a box", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: box
    r1: receptacle single 20 A
    r2: receptacle
at b1
  bunks-1.black on r2.hot
  link r2.hot, r1.hot by single 14 AWG black
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "14 AWG conductor r2.hot~r1.hot"
`);
	});
	test("a jumper of the circuit's own size", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: box
    r1: receptacle
    r2: receptacle
at b1
  bunks-1.black on r2.hot
  link r2.hot, r1.hot by single 12 AWG black
`);
	});
	test("a neutral jumper carries what the hot carries", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: box
    r1: receptacle
    r2: receptacle
at b1
  bunks-1.white on r2.neutral
  link r2.neutral, r1.neutral by single 14 AWG white
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "14 AWG conductor r2.neutral~r1.neutral"
`);
	});
	test("a cable swapped on to another breaker", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  14 ft to l1: light 9 W
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  lights-1.black on LC.2.load
//^^^^^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "14 AWG in lights-1"
//^^^^^^^^^^^^^^^^^^^^^^^^^^^ circuit-mislabelled
  bunks-1.black on LC.1.load
`);
	});
});

describe("sources differ", () => {
	test("in the mode in which most can come", () => {
		checkMarked(`inlet shore 20 A 120 V
inverter-charger inv 1800 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 12-2
  12 ft to inv.in
panel LC lugs only from inv.out by 14-2, 6 ft
//                 ^^^^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "15 A at most"
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`);
	});
	test("an inverter gives no more than it can", () => {
		checkRight(`inverter inv 1800 W 12 V / 120 V, bonds neutral when inverting
panel LC main 15 A from inv by 14-2, 6 ft
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`);
	});
	test("an inverter that gives more than its cable may have", () => {
		checkMarked(`inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
panel LC main 15 A from inv by 14-2, 6 ft
//                 ^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "16.7 A inverter inv"
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`);
	});
});

describe("cord", () => {
	test("10 AWG cord carries the 30 A of a shore supply", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by cord 10-3, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
	test("12 AWG cord does not", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A from shore by cord 12-3, 12 ft
//                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "25 A at most"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
});

describe("IEC", () => {
	test("2.5 mm2 behind 16 A", () => {
		checkRight(`${iec}circuit sockets from DB ground-fault-breaker 16 A trip 30 mA by 3G2.5
  5 m to s1: socket
`);
	});
	test("1.5 mm2 behind 20 A", () => {
		checkMarked(`plan "Van"
  region iec
inlet shore 20 A 230 V
panel DB main 20 A two-pole from shore by 3G4, 3 m
circuit pump from DB ground-fault-breaker 20 A trip 30 mA by 3G1.5
  5 m to p1: pump 900 W
//       ^^ protection-too-large "19.5 A at most"
`);
	});
	test("2.5 mm2 behind 32 A, without rounding up", () => {
		checkMarked(`plan "Van"
  region iec
inlet shore 32 A 230 V
panel DB main 32 A two-pole from shore by 3G2.5, 3 m
//                          ^^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "27 A at most"
circuit sockets from DB ground-fault-breaker 16 A trip 30 mA by 3G2.5
  5 m to s1: socket
`);
	});
	test("2.5 mm2 behind 25 A only in free air", () => {
		checkMarked(`plan "Van"
  region iec
inlet shore 25 A 230 V
panel DB main 25 A two-pole from shore by 3G2.5, 3 m
//                          ^^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "only where it lies open"
circuit sockets from DB ground-fault-breaker 16 A trip 30 mA by 3G2.5
  5 m to s1: socket
`);
	});
});

describe("what is not known is said so", () => {
	test("a breaker of unknown rating", () => {
		checkMarked(`${supply}circuit bunks from LC breaker ? by 12-2
  14 ft to b1: receptacle
//         ^^ protection-too-large "the rating of LC.1 is missing"
`);
	});
	test("an unknown breaker behind which even the main protects", () => {
		checkRight(`${supply}circuit bunks from LC breaker ? by 10-2
  14 ft to b1: receptacle 30 A single
`);
	});
	test("a wire thinner than any table", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: box
    r1: receptacle
    r2: receptacle
at b1
  bunks-1.black on r2.hot
  link r2.hot, r1.hot by single 22 AWG black
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "the 22 AWG conductor"
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ conductor-undersized
`);
	});
	test("aluminium has no table on boats", () => {
		checkMarked(`plan
  rules boat
inlet shore 30 A 120 V
panel LC main 30 A two-pole 30 mA from shore by triplex 10 AWG, 10 ft
circuit pump from LC breaker 20 A by 10-2 aluminium
  14 ft to p1: pump 900 W, copper and aluminium
//         ^^ protection-too-large "aluminium is missing"
`);
	});
});

describe("what follows from another mistake is told as following", () => {
	test("hot and neutral exchanged at the inlet", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit lights from LC breaker 15 A by 14-2
  14 ft to l1: light 9 W
at shore
  LC-1.black on shore.neutral
//^^^^^^^^^^^^^^^^^^^^^^^^^^^ polarity-reversed "LC-1.white"
  LC-1.white on shore.hot
// also protection-missing switch-in-neutral receptacle-rating-wrong colour-misleading
`);
	});
	test("hot and neutral exchanged at an outlet only", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
at b1
  bunks-1.black on b1.neutral
  bunks-1.white on b1.hot
//^^^^^^^^^^^^^^^^^^^^^^^ polarity-reversed
// also colour-misleading
`);
	});
});

describe("the same fault in another spelling", () => {
	test("a jumper brings the hot of another circuit", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to j1: box
    r1: receptacle
circuit lights from LC breaker 15 A by 14-2
  14 ft to j1
at LC
  lights-1.black capped
at j1
  join bunks-1.black, lights-1.black, r1.hot
//                    ^^^^^^^^^^^^^^ protection-too-large "14 AWG in lights-1"
`);
	});
});

describe("the device to blame", () => {
	test("a breaker too large for its wires behind a smaller main", () => {
		checkMarked(`${supply}circuit pump from LC breaker 40 A by 12-2
  14 ft to p1: pump 500 W
//         ^^ protection-too-large "The 40 A breaker LC.1"
// also protection-out-of-order
`);
	});
	test("black and white of a feed are one finding", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 25 A from shore by 12-2, 12 ft
//                 ^^^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "breaker of the supply behind shore"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
	test("a panel without a main", () => {
		checkMarked(`inlet shore 50 A 120 V
panel LC lugs only from shore by 6-2, 12 ft
circuit pump from LC breaker 35 A by 10-2
  14 ft to p1: pump 500 W
//         ^^ protection-too-large "LC.1"
`);
	});
});

describe("IEC cable in an insulated wall", () => {
	test("16 A on 1.5 mm2 is right only on a wall, and the figure is recalled", () => {
		const van = `${iec}circuit heat from DB ground-fault-breaker 16 A trip 30 mA by 3G1.5
  5 m to h1: heater 3600 W continuous
//       ^^ protection-too-large "only where it lies open"
`;
		const [found] = checkMarked(van).findings.filter(({ code }) => code === "protection-too-large");
		expect(found?.why).toContain("in a conduit inside an insulated wall only 14.5 A");
		expect(found?.why).toContain("recalled, not read");
	});
	test("13 A on 1.5 mm2 is right in any wall", () => {
		const { findings } = checkRight(`${iec}circuit heat from DB ground-fault-breaker 13 A trip 30 mA by 3G1.5
  5 m to h1: heater 2900 W continuous
`);
		expect(findings.map(({ code }) => code)).not.toContain("protection-too-large");
	});
});
