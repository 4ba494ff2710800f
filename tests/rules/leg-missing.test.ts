// Panels of two legs on supplies of one.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const circuits = `circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
circuit b from LC breaker 20 A by 12-2
  9 ft to b2: receptacle
circuit c from LC breaker 20 A by 12-2
  9 ft to b3: receptacle
`;

describe("one leg for two", () => {
	test("from an inlet", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A, legs 2 from shore by 10-2, 12 ft
//    ^^ leg-missing "LC has two legs, and shore gives one"
${circuits}// also end-loose
`);
	});
	test("with nothing on the dead leg yet", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A, legs 2 from shore by 10-2, 12 ft
//    ^^ leg-missing
circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`);
	});
	test("from a generator", () => {
		checkMarked(`generator gen 3600 W 120 V, bonds neutral to frame
panel LC main 30 A, legs 2 from gen by 10-2, 12 ft
//    ^^ leg-missing "gen gives one"
circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`);
	});
});

const pole = `inlet pole 50 A 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
`;
const annex = `feed annex from LC.1, LC.5 by 8-3
  20 ft to SP
`;
const bench = `circuit bench from SP breaker 20 A by 12-2
  9 ft to b1: receptacle
`;

describe("two legs on one", () => {
	test("from two breakers on one leg, with their handles tied", () => {
		checkMarked(`${pole}  slot 1: breaker 40 A
//     ^ leg-missing "Both legs of SP hang on one leg of pole, by way of LC.1"
  slot 5: breaker 40 A tied LC.1
${annex}panel SP lugs only, legs 2
${bench}`);
	});
	test("with what is for two hots behind it", () => {
		checkMarked(`${pole}  slot 1: breaker 40 A
//     ^ leg-missing
  slot 5: breaker 40 A tied LC.1
${annex}panel SP lugs only, legs 2
circuit weld from SP breaker two-pole 20 A by 12-2
  9 ft, white marked red at both ends to w1: receptacle 20 A 240 V
// also load-voltage-wrong
`);
	});
	test("with one hot of the feed led to both legs in the box before", () => {
		checkMarked(`${pole}  slot 1: breaker two-pole 40 A
feed annex from LC.1 by 8-3
  20 ft to j1: box
   4 ft to SP
panel SP lugs only, legs 2
//    ^^ leg-missing
${bench}at j1
  join annex-1.black, annex-2.black, annex-2.red
  annex-1.red capped
`);
	});
});

describe("two legs on two, or one on purpose", () => {
	test("breakers on two legs", () => {
		checkRight(`${pole}  slot 1: breaker 40 A
  slot 3: breaker 40 A tied LC.1
feed annex from LC.1, LC.3 by 8-3
  20 ft to SP
panel SP lugs only, legs 2
${bench}`);
	});
	test("legs that are bridged", () => {
		checkRight(`${pole}  slot 1: breaker 40 A
feed annex from LC.1 by 8-2
  20 ft to SP
panel SP lugs only, legs 2 bridged legs
${bench}`);
	});
	test("a panel of one leg", () => {
		checkRight(`${pole}  slot 1: breaker 40 A
feed annex from LC.1 by 8-2
  20 ft to SP
panel SP lugs only, legs 1
${bench}`);
	});
});

describe("not this", () => {
	test("what is to be done, done: a panel of one leg", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A, legs 1 from shore by 10-2, 12 ft
${circuits}`);
	});
	test("what is to be done, done: a supply of two legs", () => {
		checkRight(`inlet pole 50 A 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
${circuits}`);
	});
	test("a second leg that is lost on the way is told there", () => {
		checkMarked(`inlet pole 50 A 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
${circuits}at pole
  LC-1.red capped
//^^^^^^^^^^^^^^^ end-loose
`);
	});
});
