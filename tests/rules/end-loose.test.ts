// Ends on nothing, and what they leave without hot or way back.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("end-loose is told", () => {
	test("a live end", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.black loose
//^^^^^^^^^^^^^^^^^^^ end-loose "b1 has no hot: bunks-1.black is on nothing in b1, and live"
`);
	});

	test("a neutral, for all behind it", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
  9 ft to b2: receptacle
at LC
  bunks-1.white loose
//^^^^^^^^^^^^^^^^^^^ end-loose "b1 and b2 have no way back: bunks-1.white is on nothing in LC"
`);
	});

	test("a capped end of which a load is in want", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.white capped
//^^^^^^^^^^^^^^^^^^^^ end-loose "b1 has no way back: bunks-1.white is capped in b1"
`);
	});

	test("a terminal left out of a joint", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
  9 ft to b2: receptacle
at b1
  join bunks-1.black, bunks-2.black
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ end-loose "b1 has no hot: the joint of bunks-1.black and bunks-2.black leaves out b1.hot"
`);
	});

	test("a spare core, loose and dead, is a warning", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-3
  14 ft to b1: receptacle
at b1
  bunks-1.red loose
//^^^^^^^^^^^^^^^^^ end-loose "bunks-1.red is on nothing in b1"
`);
	});

	test("a hot behind a switch is live when it is on", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to s1: switch
  7 ft to l1: light 9 W
at l1
  lights-2.black loose
//^^^^^^^^^^^^^^^^^^^^ end-loose "l1 has no hot: lights-2.black is on nothing in l1, and live"
`);
	});

	test("half of a split receptacle", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-3
//                 ^^ end-loose "b1.hot.upper has no hot: bunks-1.red is capped in LC"
  14 ft to b1: receptacle split
`);
	});

	test("only while shore is passed through", () => {
		checkMarked(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at inv
  supply-1.white loose
//^^^^^^^^^^^^^^^^^^^^ end-loose "b1 has no way back: supply-1.white is on nothing in inv"
`);
	});
});

describe("end-loose is not told of", () => {
	test("a spare core capped", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-3
  14 ft to b1: receptacle
`);
	});

	test("a live end capped in a box", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
  from b1
    9 ft to e1: end
`);
	});

	test("nothing on LOAD of a ground-fault receptacle", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to g1: gfci
`);
	});

	test("a neutral capped behind a switch at the end", () => {
		checkRight(`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
  7 ft by 14-3 to s1: switch
at l1
  join lights-1.black, lights-2.black
  lights-2.red on l1.hot
at s1
  lights-2.red on s1.load
`);
	});
});

test("the neutral of a load for both voltages left off", () => {
	checkMarked(`inlet pole 50 A 120/240 V
panel LC main 50 A 120/240 V from pole by 6-3, 12 ft
circuit range from LC breaker two-pole 40 A by 8-3
  14 ft to k1: load 7200 W 120/240 V
at k1
  range-1.white capped
//^^^^^^^^^^^^^^^^^^^^ end-loose "k1 has no way back"
`);
});

describe("the input of an inverter-charger", () => {
	const machine = `inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;
	test("with its hot capped: shore then feeds nothing", () => {
		checkMarked(`${machine}at inv
  supply-1.black capped
//^^^^^^^^^^^^^^^^^^^^^ end-loose "inv.in.hot has no hot: supply-1.black is capped in inv"
`);
	});
	test("with its hot capped at the inlet", () => {
		checkMarked(`${machine}at shore
  supply-1.black capped
//^^^^^^^^^^^^^^^^^^^^^ end-loose "inv.in.hot has no hot"
`);
	});
	test("that nothing is wired to", () => {
		checkRight(`inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
panel LC main 15 A from inv.out by 12-2, 6 ft
circuit bunks from LC breaker 15 A by 12-2
  14 ft to b1: receptacle
`);
	});
	test("that a transfer switch leaves off while another source feeds", () => {
		checkRight(`inlet shore 30 A 120 V
generator gen 3600 W 120 V, bonds neutral to frame
transfer-switch TS 30 A two-pole
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed one from shore by 10-2
  12 ft to TS.1
feed two from gen by 10-2
  12 ft to TS.2
feed supply from TS by 10-2
  4 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
});

describe("a side of a transfer switch or a source without its hot", () => {
	const two = (at: string): string => `inlet shore 30 A 120 V
generator gen 30 A 3600 W 120 V, bonds neutral to frame
transfer-switch TS 30 A two-pole
feed one from shore by 10-2
  12 ft to TS.1
feed two from gen by 10-2
  12 ft to TS.2
panel LC main 30 A from TS by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
${at}`;
	test("all landed", () => checkRight(two("")));
	test("the hot of an input capped", () => {
		const found = checkPlan(two("at TS\n  two-1.black capped\n"), "plan").findings;
		expect(found.flatMap(({ code, level, title }) => (level === "note" ? [] : [`${code}: ${title}`]))).toEqual([
			"end-loose: Nothing is on TS.2.hot, beside the neutral on TS.2.neutral: nothing comes through TS there",
		]);
	});
	test("the hot of what goes on, landed on an input", () => {
		const found = checkPlan(two("at TS\n  LC-1.black on TS.2.hot\n  two-1.black capped\n"), "plan").findings;
		expect(found.map(({ title }) => title)).toContain(
			"Nothing is on TS.out.hot, beside the neutral on TS.out.neutral: nothing comes through TS there",
		);
	});
	test("an input that nothing is wired to yet", () => {
		checkRight(
			two("")
				.replace("feed two from gen by 10-2\n  12 ft to TS.2\n", "")
				.replace(/generator.*\n/, ""),
		);
	});
});

describe("a device of which hot and neutral are capped in its box", () => {
	const chain = (at: string): string => `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit one from LC breaker 15 A by 14-2
  7 ft to b1: receptacle
  9 ft to b2: receptacle
${at}`;
	test("at the end of a chain", () => {
		const [found, ...others] = checkPlan(chain("at b2\n  one-2.black, one-2.white capped\n"), "plan").findings.filter(
			({ level }) => level !== "note",
		);
		expect(others).toEqual([]);
		expect(found).toMatchObject({ code: "end-loose", level: "warning", marks: ["b2", "one-2.black"] });
	});
	test("in the middle: what hangs behind it follows", () => {
		const found = checkPlan(chain("at b1\n  one-1.black, one-1.white capped\n"), "plan").findings;
		expect(found.filter(({ level }) => level !== "note").map(({ marks }) => marks)).toEqual([["b1", "one-1.black"]]);
	});
	test("not where its circuit is roughed in", () => {
		checkRight(chain("at b2\n  one-2.black, one-2.white capped\n").replace("circuit one", "circuit one roughed in"));
	});
});
