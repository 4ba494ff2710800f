// An equipment ground is as thick as the device ahead of it asks for, and never has to be thicker than the hots.
import { describe, test } from "vitest";
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
