// Ratings fall from the supply to the outlet.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
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
  12 ft to P2: panel main 30 A
//         ^^ main-too-large
// also protection-out-of-order
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

describe("what is to be done", () => {
	const help = (text: string): string | undefined =>
		checkPlan(text, "plan").findings.find(({ code }) => code === "protection-out-of-order")?.help;
	const small = `inlet shore 30 A 120 V
panel LC main 15 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;
	test("a larger main where the supply gives as much and the wires bear it", () => {
		expect(help(small)).toBe("Use 20 A for LC.main, which its wires bear, or 15 A or less for LC.1.");
		checkRight(small.replace("main 15 A", "main 20 A"));
		checkRight(small.replace("breaker 20 A", "breaker 15 A"));
	});
	test("no larger main than the supply is", () => {
		const van = `plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A two-pole from shore by 3G2.5, 3 m
circuit one from DB ground-fault-breaker 20 A trip 30 mA by 3G4
  5 m to h1: heater 1000 W
`;
		expect(help(van)).toBe("Use 16 A or less for DB.1.");
		checkRight(van.replace("20 A trip", "16 A trip"));
	});
	test("no larger breaker on wires that may not have it", () => {
		const second = `${supply}feed second from LC breaker 20 A by 12-2
  12 ft to P2: panel main 30 A
circuit bunks from P2 breaker 15 A by 14-2
  14 ft to b1: receptacle
`;
		expect(help(second)).toBe("Use 30 A for LC.1 with 10 AWG behind it, or 20 A or less for P2.main.");
		checkRight(second.replace("20 A by 12-2", "30 A by 10-2"));
		checkRight(second.replace("main 30 A\ncircuit", "main 20 A\ncircuit"));
	});
});
