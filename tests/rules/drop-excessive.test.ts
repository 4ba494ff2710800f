// Volts lost on the way to fixed loads are held against the guide of the region, on both sides of it.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 1 ft
`;

describe("drop-excessive is told", () => {
	test("3 % of a branch: 10 A through 12 AWG lose 3.6 V on 92 ft there and back", () => {
		checkMarked(`${supply}circuit shed from LC breaker 20 A by 12-2
  92 ft to h1: heater 1200 W
//         ^^ drop-excessive "3.6 V of 120 V behind LC.1, 3 %"
`);
	});
	test("what a load further on draws counts on the way it shares", () => {
		checkMarked(`${supply}circuit shed from LC breaker 20 A by 12-2
  50 ft to p1: pump 900 W
  50 ft to p2: pump 900 W
//         ^^ drop-excessive
`);
	});
	test("5 % of feed and branch together", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 150 ft
circuit shed from LC breaker 20 A by 12-2
  60 ft to h1: heater 1200 W
//         ^^ drop-excessive "on the whole way"
`);
	});
	test("IEC: lights 3 %, other uses 5 %", () => {
		checkMarked(`plan "Hut"
  region iec
  rules building
inlet supply 16 A 230 V
panel DB main 16 A rcbo 30 mA from supply by 3G2.5, 1 m
circuit a from DB breaker 10 A by 3G1.5
  60 m to l1: light 1000 W
//        ^^ drop-excessive "3 % is the guide"
`);
	});
});

describe("drop-excessive is not told", () => {
	test("90 ft of the same", () => {
		checkRight(`${supply}circuit shed from LC breaker 20 A by 12-2
  90 ft to h1: heater 1200 W
`);
	});
	test("a heater where a light would be told", () => {
		checkRight(`plan "Hut"
  region iec
  rules building
inlet supply 16 A 230 V
panel DB main 16 A rcbo 30 mA from supply by 3G2.5, 1 m
circuit a from DB breaker 10 A by 3G1.5
  60 m to h1: heater 1000 W
`);
	});
	test("an outlet, of which nobody knows what is plugged in", () => {
		checkRight(`${supply}circuit shed from LC breaker 20 A by 12-2
  300 ft to r1: receptacle
`);
	});
	test("between two hots, at twice the voltage", () => {
		checkRight(`inlet pole 50 A 120/240 V
panel LC main 50 A 120/240 V from pole by 6-3, 1 ft
circuit shed from LC breaker two-pole 20 A by 12-2
  180 ft, white marked red at both ends to h1: heater 2400 W 240 V
`);
	});
	test("a length that is missing is told once", () => {
		const { findings } = checkPlan(
			`${supply}circuit shed from LC breaker 20 A by 12-2
  ? to h1: heater 600 W
  9 ft to h2: heater 600 W
`,
			"plan",
		);
		expect(findings.filter(({ code }) => code === "drop-excessive").map(({ level, title }) => [level, title])).toEqual([
			["note", "Voltage drop in shed-1 not checked: its length is missing"],
		]);
	});
});
