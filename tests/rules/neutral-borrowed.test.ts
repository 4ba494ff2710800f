// Loads that do not return with their own hot.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("neutral-borrowed is told", () => {
	test("the white of another circuit", () => {
		checkMarked(`${supply}circuit one from LC breaker 15 A by 14-2
  6 ft to j1: box
  9 ft to b1: receptacle
circuit two from LC breaker 15 A by 14-2
  6 ft to j1
  from j1
    9 ft to b2: receptacle
at j1
  join one-1.black, one-2.black
  join two-1.black, two-2.black
  join one-1.white, one-2.white, two-2.white
//                               ^^^^^^^^^^^ neutral-borrowed "b2 is fed by LC.2 and returns with LC.1: two-2.white is with the neutrals of j1"
  two-1.white capped
`);
	});

	test("the whites of two circuits crossed in a box", () => {
		checkMarked(`${supply}circuit one from LC breaker 15 A by 14-2
  6 ft to j1: box
  9 ft to b1: receptacle
circuit two from LC breaker 15 A by 14-2
  6 ft to j1
  from j1
    9 ft to b2: receptacle
at j1
  join one-1.black, one-2.black
  join two-1.black, two-2.black
  join one-1.white, two-2.white
  join two-1.white, one-2.white
//                  ^^^^^^^^^^^ neutral-borrowed "b1 is fed by LC.1 and returns with LC.2, and b2 the other way round: one-2.white is with the neutrals of j1"
`);
	});

	test("a white past the ground-fault receptacle of its black", () => {
		checkMarked(`${supply}circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
   5 ft to g2: receptacle
at g1
  galley-2.white on g1.line.neutral
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-borrowed "The hot of g2 goes through g1, the neutral does not: galley-2.white is on g1.line.neutral"
`);
	});

	test("a white on the bar instead of on its ground-fault breaker", () => {
		checkMarked(`${supply}circuit bath from LC ground-fault-breaker 20 A by 12-2
  11 ft to b1: receptacle
at LC
  bath-1.white on LC.neutral
//^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-borrowed "The hot of b1 goes through LC.1, the neutral does not: bath-1.white is on LC.neutral.1"
`);
	});

	test("whites of two ground-fault breakers exchanged", () => {
		checkMarked(`${supply}circuit one from LC ground-fault-breaker 20 A by 12-2
  11 ft to b1: receptacle
circuit two from LC ground-fault-breaker 20 A by 12-2
  11 ft to b2: receptacle
at LC
  one-1.white on LC.2.load.neutral
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-borrowed "b1 goes out through LC.1 and back through LC.2, and b2 the other way round: one-1.white is on LC.2.load.neutral"
  two-1.white on LC.1.load.neutral
`);
	});

	test("one white for both poles of a breaker on one leg", () => {
		checkMarked(`${supply}circuit desk from LC breaker 20 A two-pole by 12-3
  9 ft to d1: receptacle split
//        ^^ neutral-shared-unsafely "The neutral of d1 carries both poles of LC.1, which are on one leg"
`);
	});

	test("one white for two breakers that are not tied", () => {
		checkMarked(`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
  slot 3: breaker 20 A
circuit desk from LC.1 breaker 20 A by 12-3
  9 ft to d1: receptacle split
//        ^^ neutral-shared-unsafely "The neutral of d1 serves LC.1 and LC.3, which do not open together"
at LC
  desk-1.red on LC.3.load
`);
	});
});

describe("neutral-borrowed is not told of", () => {
	test("one white for two poles on two legs", () => {
		checkRight(`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit desk from LC breaker 20 A two-pole by 12-3
  9 ft to d1: receptacle split
`);
	});

	test("two whites under one screw of the bar are two ways back", () => {
		checkRight(`${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to b1: receptacle
circuit two from LC breaker 15 A by 14-2
  9 ft to b2: receptacle
at LC
  one-1.white on LC.neutral.5
  two-1.white on LC.neutral.6
`);
	});

	test("two circuits in one box, each with its own joint", () => {
		checkRight(`${supply}circuit one from LC breaker 15 A by 14-2
  6 ft to j1: box
  9 ft to b1: receptacle
circuit two from LC breaker 15 A by 14-2
  6 ft to j1
  from j1
    9 ft to b2: receptacle
at j1
  join one-1.black, one-2.black
  join two-1.black, two-2.black
  join one-1.white, one-2.white
  join two-1.white, two-2.white
`);
	});

	test("a receptacle that branches off ahead of the ground-fault device", () => {
		checkRight(`${supply}circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
  from g1.line
    5 ft to g2: receptacle
  from g1.load
    5 ft to g3: receptacle
`);
	});

	test("a panel behind a panel", () => {
		checkRight(`${supply}circuit shed from LC breaker 20 A by 12-2
  20 ft to LD: panel lugs only
circuit one from LD breaker 15 A by 14-2
  9 ft to b1: receptacle
circuit two from LD breaker 15 A by 14-2
  9 ft to b2: receptacle
`);
	});
});
