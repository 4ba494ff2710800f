// Panels that are fed through one of their branch breakers.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const circuits = `circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;

describe("back-feed-unfastened is told", () => {
	test("of a panel of lugs", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC lugs only
  slot 1: breaker 30 A
//     ^ back-feed-unfastened "LC is fed through LC.1, which is not held down"
feed supply from shore by 10-2
  12 ft to LC.1
${circuits}`);
	});
	test("once for both poles", () => {
		checkMarked(`inlet pole 50 A 120/240 V
panel LC lugs only, legs 2
  slot 1: breaker two-pole 50 A
//     ^ back-feed-unfastened
feed supply from pole by 6-3
  12 ft to LC.1
${circuits}`);
	});
	test("of a subpanel", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  slot 1: breaker 30 A
panel SP lugs only
  slot 1: breaker 30 A
//     ^ back-feed-unfastened
feed annex from LC.1 by 10-2
  12 ft to SP.1
circuit bunks from SP breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
});

describe("back-feed-unfastened is not told of", () => {
	test("a breaker that is held down", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC lugs only
  slot 1: breaker 30 A held down
feed supply from shore by 10-2
  12 ft to LC.1
${circuits}`);
	});
	test("a main", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
${circuits}`);
	});
	test("a feed that passes the main by, which is told as that", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  slot 2: breaker 30 A
${circuits}at LC
  LC-1.black on LC.2.load
//^^^^^^^^^^^^^^^^^^^^^^^ main-bypassed
`);
	});
	test("lugs", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC lugs only from shore by 10-2, 12 ft
${circuits}`);
	});
});
