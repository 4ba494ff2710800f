// An equipment ground is as thick as the device ahead of it asks for, and never has to be thicker than the hots.
import { describe, expect, test } from "vitest";
import { protectiveEarthFor } from "../../src/handbook/equipment-ground.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const legs = `inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
`;
const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;

describe("jumpers and pigtails", () => {
	test("a thin jumper behind 20 A", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: box metal
    r1: receptacle
    r2: receptacle
at b1
  bunks-1.bare on b1.case
  link b1.case, r1.ground by single 12 AWG green
  link b1.case, r2.ground by single 14 AWG green
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ ground-undersized "is 14 AWG, and 20 A ahead asks for 12 AWG"
`);
	});
	test("the same behind 15 A", () => {
		checkRight(`${supply}circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: box metal
    r1: receptacle
    r2: receptacle
at b1
  bunks-1.bare on b1.case
  link b1.case, r1.ground by single 14 AWG green
  link b1.case, r2.ground by single 14 AWG green
`);
	});
	test("the circuit's own pigtails", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   6 ft to b2: receptacle
`);
	});
});

describe("grounds run by themselves", () => {
	test("14 AWG behind 20 A", () => {
		checkMarked(`${supply}circuit pump from LC breaker 20 A by single 12 AWG black
  8 ft to p1: pump 60 W
feed back from LC.neutral by single 12 AWG white
  8 ft to p1
bond shell from LC.ground by single 14 AWG green
  8 ft to p1
//        ^^ ground-undersized "asks for 12 AWG"
`);
	});
	test("12 AWG behind 20 A", () => {
		checkRight(`${supply}circuit pump from LC breaker 20 A by single 12 AWG black
  8 ft to p1: pump 60 W
feed back from LC.neutral by single 12 AWG white
  8 ft to p1
bond shell from LC.ground by single 12 AWG green
  8 ft to p1
`);
	});
	test("10 AWG behind 50 A, with hots of 6 AWG", () => {
		checkRight(`${legs}circuit pump from LC breaker 50 A by single 6 AWG black
  8 ft to p1: pump 5000 W
feed back from LC.neutral by single 6 AWG white
  8 ft to p1
bond shell from LC.ground by single 10 AWG green
  8 ft to p1
`);
	});
	test("12 AWG behind 50 A, with hots of 6 AWG", () => {
		checkMarked(`${legs}circuit pump from LC breaker 50 A by single 6 AWG black
  8 ft to p1: pump 5000 W
feed back from LC.neutral by single 6 AWG white
  8 ft to p1
bond shell from LC.ground by single 12 AWG green
  8 ft to p1
//        ^^ ground-undersized "asks for 10 AWG"
`);
	});
	test("hots that are too thin themselves are the cause, and the ground beside them need not be thicker", () => {
		checkMarked(`${supply}circuit pump from LC breaker 30 A by 12-2
  8 ft to p1: pump 60 W
//        ^^ protection-too-large
`);
	});
});

describe("protective earths in IEC countries", () => {
	const boxed = (circuit: string, breaker: string, earth: string): string => `plan
  region iec
  rules building
inlet supply 32 A 230 V
panel DB main 32 A rcbo 30 mA from supply by 3G6, 3.5 m
circuit sockets from DB breaker ${breaker} by ${circuit}
  2 m to b1: box metal
    a1: socket
at b1
  sockets-1.green-yellow on b1.case
  link b1.case, a1.ground by single ${earth} green-yellow
`;
	const under = "//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^";
	test("one size below the line", () => {
		checkMarked(`${boxed("3G2.5", "16 A", "1.5 mm2")}${under} ground-undersized "1.5 mm2 beside 2.5 mm2: 2.5 mm2 at least"
`);
	});
	test("two sizes below the line", () => {
		checkMarked(`${boxed("3G1.5", "10 A", "0.8 mm2")}${under} ground-undersized
`);
	});
	test("as thick as the line", () => checkRight(boxed("3G2.5", "16 A", "2.5 mm2")));
	test("thicker than the line", () => checkRight(boxed("3G1.5", "10 A", "2.5 mm2")));
	test("by the table: as the line to 16 mm2, 16 mm2 to 35 mm2, then half", () => {
		expect([16, 25, 35, 50].map((line) => protectiveEarthFor(line).least)).toEqual([16, 16, 16, 25]);
	});
});
