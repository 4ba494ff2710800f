// What a finding says is to be done, done to the letter: the plan is then free of findings.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
const chain = `${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  6 ft to b2: receptacle
  6 ft to b3: receptacle
`;

/** The first finding of a plan, and every finding that follows from no other. */
function check(text: string) {
	const { findings } = checkPlan(text, "plan");
	const told = findings.filter(({ level }) => level !== "note");
	const keys = new Set(told.map(({ key }) => key));
	return {
		first: told[0],
		roots: told.filter(({ consequenceOf }) => consequenceOf === undefined || !keys.has(consequenceOf)),
		all: told,
	};
}

describe("a device's own terminals in a joint", () => {
	test("exchanged: they are named, not their pigtails", () => {
		const { roots, first, all } = check(`${chain}at b2
  join a-2.black, a-3.black, b2.neutral
  join a-2.white, a-3.white, b2.hot
`);
		expect(roots).toHaveLength(1);
		expect(first?.help).toBe("In b2, exchange b2.hot and b2.neutral.");
		expect(all.map(({ title, help }) => title + help).join("")).not.toContain("~");
		checkRight(`${chain}at b2
  join a-2.black, a-3.black, b2.hot
  join a-2.white, a-3.white, b2.neutral
`);
	});
	test("the ground with the neutrals", () => {
		const { roots, first, all } = check(`${chain}at b2
  join a-2.white, a-3.white, b2.neutral, b2.ground by lever 5
  join a-2.bare, a-3.bare
`);
		expect(roots).toHaveLength(1);
		expect(first?.help).toBe("In b2, move b2.ground from the neutrals of b2 to the grounds of b2.");
		expect(all.map(({ title, help }) => title + help).join("")).not.toContain("~");
		checkRight(`${chain}at b2
  join a-2.white, a-3.white, b2.neutral
  join a-2.bare, a-3.bare, b2.ground
`);
	});
	test("all hots and neutrals in one joint are one cause", () => {
		const plan = `${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  9 ft to b2: receptacle
at b1
`;
		const { roots, first } = check(`${plan}  join a-1.black, a-2.black, a-1.white, a-2.white, b1.hot, b1.neutral
`);
		expect(roots.map(({ code }) => code)).toEqual(["poles-joined"]);
		expect(first?.help).toContain("`join a-1.white, a-2.white, b1.neutral`");
		checkRight(`${plan}  join a-1.black, a-2.black, b1.hot
  join a-1.white, a-2.white, b1.neutral
`);
	});
});

describe("a switch loop", () => {
	const loop = `${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
  6 ft white marked black at both ends to s1: switch
at s1
  a-2.white on s1.line
  a-2.black on s1.load
`;
	const cure = "`join a-1.black, a-2.white`, `a-2.black on l1.hot` and `a-1.white on l1.neutral`";
	test("in the neutral", () => {
		const { roots, all } = check(`${loop}at l1
  join a-1.white, a-2.white
  a-1.black on l1.hot
  a-2.black on l1.neutral
`);
		expect(roots).toHaveLength(1);
		for (const { help } of all) expect(help).toContain(cure);
	});
	test("joined with itself past the switch", () => {
		const { roots, first } = check(`${loop}at l1
  join a-1.black, a-2.white, a-2.black, l1.hot
`);
		expect(roots.map(({ code }) => code)).toEqual(["switch-without-effect"]);
		expect(first?.help).toContain(cure);
	});
	test("as it is to be", () => {
		checkRight(`${loop}at l1
  join a-1.black, a-2.white
  a-2.black on l1.hot
  a-1.white on l1.neutral
`);
	});
});

describe("neutrals of two circuits in one box", () => {
	const box = `${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to j1: box
  6 ft to b1: receptacle
circuit c from LC breaker 15 A by 14-2
  9 ft to j1
  from j1
    6 ft to c1: receptacle
at j1
  join a-1.black, a-2.black
  join c-1.black, c-2.black
`;
	const cure = "`join a-1.white, a-2.white` and `join c-1.white, c-2.white`";
	test.each([
		["one with the other's", "  join a-1.white, a-2.white, c-2.white\n  c-1.white capped\n"],
		["exchanged", "  join c-1.white, a-2.white\n  join a-1.white, c-2.white\n"],
		["all in one joint", "  join a-1.white, a-2.white, c-1.white, c-2.white\n"],
	])("%s", (_, joints) => {
		const { roots, first } = check(`${box}${joints}`);
		expect(roots.map(({ code }) => code)).toEqual(["neutral-borrowed"]);
		expect(first?.help).toContain(cure);
	});
	test("as they are to be", () => {
		checkRight(`${box}  join a-1.white, a-2.white
  join c-1.white, c-2.white
`);
	});
});

describe("a light over a bath", () => {
	test("is not to become a receptacle", () => {
		const { first } = check(`place br bath
${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to l1: light 5 W in br
`);
		expect(first?.help).toMatch(/^Feed l1 from the LOAD side of a ground-fault receptacle/);
	});
});

describe("receptacles larger than their circuit", () => {
	test("where the editions agree, a warning", () => {
		expect(
			check(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle 30 A
`).first,
		).toMatchObject({ code: "receptacle-rating-wrong", level: "warning" });
	});
	test("where they differ, a note", () => {
		expect(
			check(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to b1: receptacle 20 A
`).all,
		).toEqual([]);
	});
});

describe("what a said joint leaves out", () => {
	test("a receptacle's ground: the line and the terminal are named", () => {
		const { first } = check(`${chain}at b2
  join a-2.bare, a-3.bare
`);
		expect(first?.span.line).toBe(8);
		expect(first?.help).toContain("`join a-2.bare, a-3.bare, b2.ground`");
		checkRight(`${chain}at b2
  join a-2.bare, a-3.bare, b2.ground
`);
	});
	test("the metal of a box: as it is written", () => {
		const box = `${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to j1: box metal
  3 ft to b1: receptacle
at j1
`;
		const { first } = check(`${box}  join a-1.bare, a-2.bare
`);
		expect(first?.help).toContain("`join a-1.bare, a-2.bare, j1.case`");
		checkRight(`${box}  join a-1.bare, a-2.bare, j1.case
`);
	});
});

describe("two neutrals under one screw of a bar", () => {
	const two = `${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
circuit b from LC breaker 20 A by 12-2
  9 ft to b2: receptacle
at LC
`;
	test("a free port is named", () => {
		const { first } = check(`${two}  a-1.white, b-1.white on LC.neutral.3
`);
		expect(first?.help).toBe("Give b-1.white a port of its own: LC.neutral.2 is free.");
		checkRight(`${two}  a-1.white on LC.neutral.3
  b-1.white on LC.neutral.2
`);
	});
});

describe("ends that are off in a box", () => {
	const box = `${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to j1: box
  3 ft to b1: receptacle
at j1
`;
	test.each([
		["both neutrals capped", "  a-1.white capped\n  a-2.white capped\n", "`join a-1.white, a-2.white`"],
		["a neutral loose", "  a-2.white loose\n", "`join a-1.white, a-2.white`"],
		["a ground loose", "  a-2.bare loose\n", "`join a-1.bare, a-2.bare`"],
		["a hot loose", "  a-2.black loose\n", "`join a-1.black, a-2.black`"],
	])("%s", (_, said, cure) => {
		const { first, roots } = check(`${box}${said}`);
		expect(roots).toHaveLength(1);
		expect(first?.span.line).toBe(7);
		expect(first?.help).toContain(cure);
		checkRight(`${box}  ${cure.replaceAll("`", "")}
`);
	});
	test("of two circuits in one box nothing is said that would join them", () => {
		const { first } = check(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to j1: box
  3 ft to b1: receptacle
circuit c from LC breaker 20 A by 12-2
  9 ft to j1
  from j1
    3 ft to c1: receptacle
at j1
  a-2.white loose
`);
		expect(first?.help).not.toContain("c-1.white");
	});
	test("past a ground-fault receptacle nothing is joined", () => {
		const { first } = check(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to g1: gfci
  3 ft to b1: receptacle
at g1
  a-2.white loose
`);
		expect(first?.help).not.toContain("`join");
	});
});

describe("one neutral for two breakers", () => {
	const panel = (slot: number): string => `inlet pole 50 A 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
  slot 1: breaker 20 A
  slot ${slot}: breaker 20 A
circuit a from LC.1 by 12-3
  9 ft to k1: receptacle split
at LC
  a-1.red on LC.${slot}.load
`;
	test("slots that share a leg are said to", () => {
		expect(check(panel(2)).first?.why).toContain("LC.1 and LC.2 are on one leg");
		expect(check(panel(3)).first?.why).not.toContain("on one leg");
	});
	test("what is to be done, done: a two-pole breaker", () => {
		expect(check(panel(3)).first?.help).toContain("one two-pole breaker in place of LC.1 and LC.3");
		checkRight(`inlet pole 50 A 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
  slot 1: breaker 20 A two-pole
circuit a from LC.1 by 12-3
  9 ft to k1: receptacle split
`);
	});
});
