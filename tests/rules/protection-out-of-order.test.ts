// Ratings fall from the supply to the outlet.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;

describe("a larger device behind a smaller", () => {
	test("a breaker larger than the main", () => {
		checkMarked(`${supply}//    ^^ protection-out-of-order "before LC.1 (40 A)"
circuit later from LC breaker 40 A by 8-2
  14 ft to e1: end
`);
	});
	test("a breaker as large as the main", () => {
		checkRight(`${supply}circuit pump from LC breaker 30 A by 10-2
  14 ft to p1: pump 900 W
`);
	});
	test("a small main is one mistake, however many stand behind it", () => {
		checkMarked(`inlet shore 15 A 120 V
panel LC main 15 A from shore by 14-2, 12 ft
//    ^^ protection-out-of-order "LC.1 (20 A) and LC.2 (20 A)"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit galley from LC breaker 20 A by 12-2
  14 ft to g1: receptacle
circuit lights from LC breaker 15 A by 14-2
  14 ft to l1: light 9 W
`);
	});
	test("a panel's main larger than the breaker that feeds it", () => {
		checkMarked(`${supply}feed second from LC breaker 20 A by 12-2
//               ^^ protection-out-of-order "P2.main (30 A)"
  12 ft to P2: panel main 30 A
circuit bunks from P2 breaker 15 A by 14-2
  14 ft to b1: receptacle
`);
	});
});

describe("outside supplies are only told", () => {
	test("a main larger than its inlet's supply", () => {
		checkMarked(`inlet shore 20 A 120 V
panel LC main 30 A from shore by 12-2, 12 ft
//    ^^ protection-out-of-order "The supply behind shore opens at 20 A"
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`);
	});
	test("a main as large as its inlet's supply", () => {
		checkRight(`${supply}circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`);
	});
	test("an inverter smaller than the main", () => {
		checkRight(`inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
panel LC main 20 A from inv by 12-2, 6 ft
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`);
	});
});
