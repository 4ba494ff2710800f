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
