// A receptacle's rating goes with the breaker of its circuit.
import { describe, test } from "vitest";
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

describe("several outlets on a circuit", () => {
	test("a 15 A duplex on 20 A, for a duplex counts as two", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  8 ft to b1: receptacle 15 A duplex
`);
	});
	test("15 A and 20 A together on 20 A", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  8 ft to b1: receptacle 15 A duplex
  8 ft to b2: receptacle 20 A duplex
`);
	});
	test("two single 15 A receptacles on 20 A", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  8 ft to b1: receptacle 15 A single
  8 ft to b2: receptacle 15 A single
`);
	});
	test("15 A on 15 A", () => {
		checkRight(`${supply}circuit bunks from LC breaker 15 A by 14-2
  8 ft to b1: receptacle 15 A duplex
`);
	});
	test("15 A on 30 A, taken for it as nothing else is said", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 30 A by 10-2
  8 ft to b1: receptacle
//        ^^ receptacle-rating-wrong "b1 is rated 15 A behind the 30 A of LC.1"
`);
	});
	test("several of them are one finding", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 30 A by 10-2
  8 ft to b1: receptacle 20 A
//        ^^ receptacle-rating-wrong "b1 and b2 are rated 20 A"
  8 ft to b2: receptacle 20 A
`);
	});
	test("30 A on 30 A", () => {
		checkRight(`${supply}circuit work from LC breaker 30 A by 10-2
  8 ft to w1: receptacle 30 A duplex
`);
	});
	test("50 A on 40 A", () => {
		checkRight(`${legs}circuit work from LC breaker 40 A by 8-2
  8 ft to w1: receptacle 50 A duplex
`);
	});
	test("30 A on 40 A", () => {
		checkMarked(`${legs}circuit work from LC breaker 40 A by 8-2
  8 ft to w1: receptacle 30 A duplex
//        ^^ receptacle-rating-wrong "40 A or 50 A would fit"
`);
	});
	test("25 A is no rating for a circuit with several outlets", () => {
		checkMarked(`${supply}circuit work from LC breaker 25 A by 10-2
  8 ft to w1: receptacle 20 A duplex
//        ^^ receptacle-rating-wrong "several outlets need a circuit of 15, 20, 30, 40 or 50 A"
`);
	});
	test("a larger receptacle on a small circuit is only told", () => {
		checkMarked(`${supply}circuit work from LC breaker 15 A by 14-2
  8 ft to w1: receptacle 20 A duplex
//        ^^ receptacle-rating-wrong "15 A would fit"
`);
	});
	test("a ground-fault receptacle of unsaid rating on 15 A", () => {
		checkRight(`${supply}circuit work from LC breaker 15 A by 14-2
  8 ft to g1: gfci
`);
	});
});

describe("one outlet alone", () => {
	test("a single 15 A on 20 A", () => {
		checkMarked(`${supply}circuit hob from LC breaker 20 A by 12-2
  8 ft to h1: receptacle 15 A single
//        ^^ receptacle-rating-wrong "one alone needs at least 20 A"
`);
	});
	test("a single 20 A on 20 A", () => {
		checkRight(`${supply}circuit hob from LC breaker 20 A by 12-2
  8 ft to h1: receptacle 20 A single
`);
	});
	test("a single 20 A on 15 A", () => {
		checkRight(`${supply}circuit hob from LC breaker 15 A by 14-2
  8 ft to h1: receptacle 20 A single
`);
	});
	test("a duplex beside a light still counts as two", () => {
		checkRight(`${supply}circuit mixed from LC breaker 20 A by 12-2
  8 ft to h1: receptacle 15 A duplex
  4 ft to l1: light 9 W
`);
	});
});

describe("the breaker that counts is the last one before the receptacle", () => {
	test("behind an inverter the panel's breaker is the circuit's", () => {
		checkRight(`inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
panel LC main 20 A from inv by 12-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
	test("straight on an inverter there is no circuit rating to hold it against", () => {
		checkRight(`inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
feed bunks from inv by 12-2
  14 ft to b1: receptacle
`);
	});
	test("a receptacle on the feed of a whole board follows from the missing breaker", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  bunks-1.black on LC.bus.A
//^^^^^^^^^^^^^^^^^^^^^^^^^ protection-missing "only the 30 A breaker LC.main"
// also receptacle-rating-wrong
`);
	});
});

describe("IEC", () => {
	test("a 16 A socket behind 16 A", () => {
		checkRight(`${iec}circuit sockets from DB ground-fault-breaker 16 A trip 30 mA by 3G2.5
  5 m to s1: socket
`);
	});
	test("a 13 A socket behind 16 A, for its plug has a fuse", () => {
		checkRight(`${iec}circuit sockets from DB ground-fault-breaker 16 A trip 30 mA by 3G2.5
  5 m to s1: socket 13 A
`);
	});
	test("a 16 A socket behind 20 A", () => {
		checkMarked(`plan "Van"
  region iec
inlet shore 20 A 230 V
panel DB main 20 A two-pole from shore by 3G4, 3 m
circuit sockets from DB ground-fault-breaker 20 A trip 30 mA by 3G4
  5 m to s1: socket 16 A
//       ^^ receptacle-rating-wrong "at most 16 A may stand before it"
`);
	});
});

describe("a socket that is marked with another rating than the listed ones", () => {
	const board = (size: string, breaker: string): string => `plan
  region iec
  rules building
inlet supply 16 A 230 V
panel DB main 16 A rcbo 30 mA from supply by 3G2.5, 3.5 m
circuit sockets from DB breaker ${breaker} by 3G2.5
  2 m to a1: socket${size}
`;
	test("10 A behind 16 A", () => {
		checkMarked(`${board(" 10 A", "16 A")}//       ^^ receptacle-rating-wrong "at most 10 A may stand before it"
`);
	});
	test("10 A behind 10 A", () => checkRight(board(" 10 A", "10 A")));
	test("13 A, whose plugs have fuses, behind 16 A", () => checkRight(board(" 13 A", "16 A")));
});
