// Hots of two circuits that meet behind two devices which do not open together.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
const twoLegs = `inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
`;
const inOneBox = `circuit a from LC breaker 15 A by 14-2
  9 ft to j1: box
  6 ft to b1: receptacle
circuit c from LC breaker 15 A by 14-2
  9 ft to j1
  from j1
    6 ft to c1: receptacle
`;

describe("joined in a box", () => {
	test("all blacks and all whites together are one cause", () => {
		checkMarked(`${supply}${inOneBox}at j1
  join a-1.black, a-2.black, c-1.black, c-2.black
//                           ^^^^^^^^^ circuits-joined "LC.1 and LC.2 are joined in j1"
  join a-1.white, a-2.white, c-1.white, c-2.white
// also circuit-mislabelled
`);
	});
	test("both under the screws of one receptacle", () => {
		checkMarked(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to b1: receptacle
circuit c from LC breaker 15 A by 14-2
  9 ft to b1
at b1
  a-1.black, c-1.black on b1.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ circuits-joined "a-1.black and c-1.black"
  c-1.white capped
`);
	});
	test("a duplex with its tab in place, fed by two breakers of one leg", () => {
		const { findings } = checkPlan(
			`${supply}  slot 1: breaker 20 A
  slot 2: breaker 20 A
circuit a from LC.1 by 12-3
  9 ft to j1: box
  9 ft to k1: receptacle
at LC
  a-1.red on LC.2.load
at j1
  join a-1.black, a-1.red, a-2.black, a-2.red
`,
			"plan",
		);
		expect(findings.map(({ code }) => code)).toContain("circuits-joined");
	});
	test("the figures add up what both let through", () => {
		const { findings } = checkPlan(
			`${supply}${inOneBox}at j1
  join a-1.black, a-2.black, c-1.black, c-2.black
`,
			"plan",
		);
		const [found] = findings.filter(({ code }) => code === "circuits-joined");
		expect(found?.figures).toMatchObject([{ found: 30, limit: 15, unit: "A" }]);
	});
});

describe("what is to be done, done", () => {
	test("a joint for each breaker's hots is right", () => {
		checkRight(`${supply}${inOneBox}at j1
  join a-1.black, a-2.black
  join c-1.black, c-2.black
  join a-1.white, a-2.white
  join c-1.white, c-2.white
`);
	});
	test("the help says these two joints", () => {
		const { findings } = checkPlan(
			`${supply}${inOneBox}at j1
  join a-1.black, a-2.black, c-1.black, c-2.black
`,
			"plan",
		);
		const help = findings.find(({ code }) => code === "circuits-joined")?.help ?? "";
		expect(help).toContain("`join a-1.black, a-2.black` and `join c-1.black, c-2.black`");
	});
});

describe("not joined", () => {
	test("two circuits in one box, each by itself", () => {
		checkRight(`${supply}${inOneBox}`);
	});
	test("two circuits from one breaker", () => {
		checkRight(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to a1: receptacle
  9 ft to c1: receptacle
`);
	});
	test("a panel behind a panel", () => {
		checkRight(`${supply}feed cabin from LC breaker 20 A by 12-2
  12 ft to SP: panel main 20 A
circuit a from SP breaker 15 A by 14-2
  9 ft to a1: receptacle
circuit c from LC breaker 15 A by 14-2
  9 ft to c1: receptacle
`);
	});
	test("both legs of one two-pole breaker", () => {
		checkRight(`${twoLegs}circuit a from LC breaker 20 A two-pole by 12-3
  9 ft to k1: receptacle split
`);
	});
});
