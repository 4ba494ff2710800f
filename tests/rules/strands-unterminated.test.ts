// Stranded conductors are made up where the terminal does not hold bare strands.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const iec = `plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A two-pole from shore by 3G2.5, 3 m
`;
const supply = `inlet shore 30 A 120 V
panel LC main 30 A two-pole from shore by 10-2, 12 ft
`;

describe("screws", () => {
	test("bare under a screw", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
at b1
  bunks-1.black bare on b1.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^ strands-unterminated "Bare strands lie under b1.hot"
`);
	});
	test("a fork, as inferred", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
`);
	});
	test("a fork or ring as said", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
at b1
  bunks-1.black fork on b1.hot
  bunks-1.white ring on b1.neutral
`);
	});
	test("a solid conductor has no strands", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.black on b1.hot
`);
	});
	test("`ends bare` for a whole plan is one finding a circuit", () => {
		checkMarked(`plan "Bare"
  ends bare
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
//         ^^ strands-unterminated "b1.hot, b1.neutral and b1.ground"
circuit lights from LC breaker 15 A by 14-2
  14 ft to l1: light 9 W
`);
	});
	test("what was said stands first", () => {
		checkMarked(`plan "Bare"
  ends bare
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
   6 ft to b2: receptacle
at b2
  bunks-2.black bare on b2.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^ strands-unterminated "under b2.hot, b2.neutral, b2.ground and 3 more"
`);
	});
});

describe("terminals that hold bare strands", () => {
	test("a clamp plate", () => {
		checkRight(`${supply}circuit galley from LC breaker 20 A by 12-2 stranded
  14 ft to g1: gfci
at g1
  galley-1.black bare on g1.line.hot
`);
	});
	test("a joint", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
   6 ft to b2: receptacle
`);
	});
});

describe("cages", () => {
	test("bare in a breaker is only told", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
at LC
  bunks-1.black bare on LC.1.load
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ strands-unterminated "Bare strands lie under LC.1.load"
`);
	});
	test("a ferrule in a breaker", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
at LC
  bunks-1.black ferrule on LC.1.load
`);
	});
	test("in IEC countries terminals are cages", () => {
		checkMarked(`${iec}circuit sockets from DB ground-fault-breaker 16 A trip 30 mA by 3G2.5 stranded
  5 m to s1: socket
at s1
  sockets-1.brown bare on s1.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ strands-unterminated "Bare strands lie under s1.hot"
`);
	});
});
