// Fixed loads stay within the rating of the device ahead, those that run for hours at 125 %.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const iec = `plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A two-pole from shore by 3G2.5, 3 m
`;
const legs = `inlet pole 50 A, 120 V / 240 V
panel LC main 50 A two-pole, legs 2 from pole by 6-3, 20 ft
`;
const supply = `inlet shore 30 A 120 V
panel LC main 30 A two-pole from shore by 10-2, 12 ft
`;

describe("one load", () => {
	test("12 A for hours on 15 A is exactly the limit", () => {
		checkRight(`${supply}circuit heat from LC breaker 15 A by 14-2
  8 ft to h1: heater 1440 W continuous
`);
	});
	test("a little more is too much", () => {
		checkMarked(`${supply}circuit heat from LC breaker 15 A by 14-2
//                ^^ circuit-overloaded "count 15.1 A"
  8 ft to h1: heater 1450 W continuous
`);
	});
	test("not for hours it may be the whole rating", () => {
		checkRight(`${supply}circuit heat from LC breaker 15 A by 14-2
  8 ft to h1: heater 1800 W
`);
	});
	test("and no more than the rating", () => {
		checkMarked(`${supply}circuit heat from LC breaker 15 A by 14-2
//                ^^ circuit-overloaded "count 15.1 A"
  8 ft to h1: heater 1810 W
`);
	});
	test("16 A for hours on 20 A, as published", () => {
		checkRight(`${supply}circuit heat from LC breaker 20 A by 12-2
  8 ft to h1: heater 16 A continuous
`);
	});
	test("amperes count as they are written", () => {
		checkMarked(`${supply}circuit heat from LC breaker 20 A by 12-2
//                ^^ circuit-overloaded "count 20.1 A"
  8 ft to h1: heater 16.1 A continuous
`);
	});
});

describe("what runs in a mode", () => {
	const two = `${supply}circuit warm from LC breaker 15 A by 14-2
  8 ft to h1: heater 1200 W
  8 ft to h2: heater 1200 W
`;
	test("two that never run together count one by one", () => {
		checkRight(`${two}mode winter: shore with h1\nmode supper: shore with h2\n`);
	});
	test("two that run together count together", () => {
		const { findings } = checkPlan(`${two}mode winter: shore with h1\nmode both: shore with h1 h2\n`, "plan");
		expect(findings.filter(({ level }) => level !== "note").map(({ code, modes }) => [code, modes])).toEqual([
			["circuit-overloaded", ["both"]],
		]);
	});
});

describe("several loads", () => {
	test("the sum counts", () => {
		checkMarked(`${supply}circuit work from LC breaker 15 A by 14-2
//                ^^ circuit-overloaded "count 15.8 A"
  8 ft to p1: pump 1000 W
  4 ft to p2: pump 900 W
`);
	});
	test("loads for hours and others together", () => {
		checkMarked(`${supply}circuit work from LC breaker 20 A by 12-2
//                ^^ circuit-overloaded "count 20.8 A"
  8 ft to h1: heater 1200 W continuous
  4 ft to p1: pump 1000 W
`);
	});
	test("outlets are no load of their own", () => {
		checkRight(`${supply}circuit work from LC breaker 15 A by 14-2
  8 ft to h1: heater 1400 W continuous
  4 ft to b1: receptacle
`);
	});
	test("a row of loads counts each", () => {
		checkMarked(`${supply}circuit work from LC breaker 15 A by 14-2
//                ^^ circuit-overloaded "count 16.7 A"
  8 ft to p1..p4: pump 500 W each
`);
	});
});

describe("two hots", () => {
	test("240 V halves the current", () => {
		checkRight(`${legs}circuit heat from LC breaker 20 A two-pole by 12-2
  15 ft white marked red at both ends to h1: heater 3800 W 240 V continuous, no neutral
`);
	});
	test("240 V at the limit", () => {
		checkMarked(`${legs}circuit heat from LC breaker 20 A two-pole by 12-2
//                ^^ circuit-overloaded "count 20.3 A"
  15 ft white marked red at both ends to h1: heater 3900 W 240 V continuous, no neutral
`);
	});
});

describe("boards and sources", () => {
	test("all fixed loads together are only told", () => {
		checkMarked(`${supply}//    ^^ circuit-overloaded "All fixed loads together count 37.5 A"
circuit one from LC breaker 20 A by 12-2
  8 ft to h1: heater 1800 W continuous
circuit two from LC breaker 20 A by 12-2
  8 ft to h2: heater 1800 W continuous
`);
	});
	test("behind an inverter too", () => {
		checkRight(`inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
panel LC main 20 A from inv by 12-2, 6 ft
circuit heat from LC breaker 15 A by 14-2
  14 ft to h1: heater 1400 W
`);
	});
});

describe("IEC", () => {
	test("the sum alone counts", () => {
		checkRight(`${iec}circuit heat from DB ground-fault-breaker 16 A trip 30 mA by 3G2.5
  5 m to h1: heater 3600 W continuous
`);
	});
	test("beyond the rating", () => {
		checkMarked(`${iec}circuit heat from DB ground-fault-breaker 16 A trip 30 mA by 3G2.5
//                ^^ circuit-overloaded "count 16.1 A"
  5 m to h1: heater 3700 W continuous
`);
	});
});

describe("what is not known is said so", () => {
	test("a load without its power", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
//                  ^^ circuit-overloaded "the power of l1 and l2 is missing"
  8 ft to l1: light
  4 ft to l2: light
`);
	});
});

/** The first finding that a circuit is overloaded. */
function overload(text: string) {
	return checkPlan(text, "plan").findings.find(({ code }) => code === "circuit-overloaded");
}

describe("what is to be done", () => {
	const heater = `${supply}circuit heat from LC breaker 15 A by 14-2
  8 ft to h1: heater 1500 W continuous
`;
	test("a load alone is not sent to a circuit of its own: breaker and cable, or a smaller load", () => {
		expect(overload(heater)?.help).toBe(
			"Use a 20 A breaker together with 12 AWG all the way, or take one in place of h1 that draws 1440 W at most.",
		);
		checkRight(heater.replace("15 A by 14-2", "20 A by 12-2"));
		checkRight(heater.replace("1500 W", "1440 W"));
	});
	test("thick wires bear the larger breaker", () => {
		const thick = heater.replace("14-2", "12-2");
		expect(overload(thick)?.help).toContain("Use a 20 A breaker, which its wires bear");
		checkRight(thick.replace("15 A by", "20 A by"));
	});
	test("two loads: one moves, or breaker and cable grow", () => {
		const pumps = `${supply}circuit work from LC breaker 15 A by 14-2
  8 ft to p1: pump 1000 W
  4 ft to p2: pump 1000 W
`;
		expect(overload(pumps)?.help).toBe(
			"Move p1 to a circuit of its own, or use a 20 A breaker together with 12 AWG all the way.",
		);
		checkRight(pumps.replace("15 A by 14-2", "20 A by 12-2"));
	});
	test("no larger breaker where an outlet hangs on the circuit, or the main is smaller", () => {
		expect(overload(`${heater}  4 ft to b1: receptacle\n`)?.help).toBe(
			"Take one in place of h1 that draws 1440 W at most.",
		);
		expect(overload(heater.replace("15 A by 14-2", "30 A by 10-2").replace("1500", "3100"))?.help).toBe(
			"Take one in place of h1 that draws 2880 W at most.",
		);
	});
	test("an inverter of its own takes a smaller load", () => {
		expect(
			overload(`inverter inv 300 W 12 V / 120 V, bonds neutral never
circuit desk from inv by 14-2
  3 ft to h1: heater 400 W
`)?.help,
		).toBe("Take one in place of h1 that draws 300 W at most.");
	});
});

describe("why it is told, and by what", () => {
	test("only the 125 % are too many: nothing opens at once", () => {
		const why = overload(`${supply}circuit heat from LC breaker 15 A by 14-2
  8 ft to h1: heater 1500 W continuous
`)?.why;
		expect(why).toContain("for hours the breaker carries more than 80 % of its rating");
		expect(why).not.toContain("opens just when");
	});
	test("the load itself is too large: it opens", () => {
		expect(
			overload(`${supply}circuit heat from LC breaker 15 A by 14-2
  8 ft to h1: heater 1900 W continuous
`)?.why,
		).toContain("opens just when everything runs");
	});
	test("the source is that of the region", () => {
		const us = overload(`${supply}circuit heat from LC breaker 15 A by 14-2
  8 ft to h1: heater 1900 W
`);
		expect([us?.basis, us?.figures[0]?.source].join()).not.toContain("IEC");
		expect(us?.basis).toContain("NFPA 70");
		const van = overload(`${iec}circuit heat from DB ground-fault-breaker 16 A trip 30 mA by 3G2.5
  5 m to h1: heater 3700 W continuous
`);
		expect([van?.basis, van?.figures[0]?.source].join()).not.toContain("NFPA");
		expect(van?.basis).toContain("IEC 60364-4-43");
		expect(van?.basis).toContain("recalled");
	});
});
