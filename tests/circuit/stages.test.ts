// Runs that are roughed in: cables are there and tagged, devices are not; nothing is asked of what is still to come.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";
import { endsIn, jointsIn, supply, wirePlan, wireRight } from "./wire-plan.ts";

const attic = `circuit attic roughed in from LC breaker 15 A by 14-2
  20 ft as attic-feed to a1: receptacle
`;

/** All that is found, notes included, by code. */
function codesOf(text: string): string[] {
	return checkPlan(text, "plan").findings.map(({ code }) => code);
}

describe("what is still to come", () => {
	test("has no terminals: hot and neutral wait, capped, grounds are made up", () => {
		const circuit = wireRight(`${supply}${attic}  9 ft as attic-on to a2: box metal
    r1: receptacle
    s1: switch
`);
		expect(endsIn(circuit, "a1")).toEqual([
			"attic-feed.black capped",
			"attic-feed.white capped",
			"attic-feed.bare on a1/ground",
			"attic-on.black capped",
			"attic-on.white capped",
			"attic-on.bare on a1/ground",
		]);
		expect(jointsIn(circuit, "a1")).toEqual(["a1/ground: attic-feed.bare attic-on.bare"]);
		expect(endsIn(circuit, "a2")).toContain("attic-on.bare on a2.case");
		const coming = circuit.parts.filter((part) => part.coming).map(({ name }) => name);
		expect(coming).toEqual(["a1", "r1", "s1"]);
	});

	test("a box without devices is made up; a panel is there", () => {
		const circuit = wireRight(`${supply}${attic}  9 ft as attic-on to j1: box
  from j1
    4 ft as left to a2: light 9 W
  from j1
    4 ft as right to a3: light 9 W
feed annex roughed in from LC breaker 20 A by 12-2
  9 ft as annex-feed to SP: panel lugs only
`);
		expect(jointsIn(circuit, "j1")[0]).toBe("j1/hot: attic-on.black left.black right.black");
		expect(endsIn(circuit, "SP")).toContain("annex-feed.black on SP.bus.A");
	});

	test("what is landed by hand is on, and its neighbours are not", () => {
		const circuit = wireRight(`${supply}${attic}  9 ft as attic-on to a2: receptacle
at a1
  attic-feed.black on a1.hot
  attic-feed.white on a1.neutral
  join attic-feed.bare, attic-on.bare, a1.ground
`);
		expect(circuit.parts.filter((part) => part.coming).map(({ name }) => name)).toEqual(["a2"]);
		expect(endsIn(circuit, "a1")).toContain("attic-feed.black on a1.hot");
	});

	test("a device on a finished run may be said to be roughed in", () => {
		const circuit = wireRight(`${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to b1: receptacle
  9 ft to b2: receptacle roughed in
`);
		expect(circuit.parts.filter((part) => part.coming).map(({ name }) => name)).toEqual(["b2"]);
		expect(endsIn(circuit, "b1")).toContain("one-2.black on b1/hot");
	});

	test("a device declared at the left edge is to come where only a roughed-in run reaches it", () => {
		const circuit = wireRight(`${supply}light l1 9 W\nlight l2 9 W\n${attic}  9 ft as a to l1
  9 ft as b to l2
circuit two from LC breaker 15 A by 14-2
  9 ft to l2
`);
		expect(circuit.parts.filter((part) => part.coming).map(({ name }) => name)).toEqual(["l1", "a1"]);
	});
});

describe("what is found", () => {
	test("only that its capped ends are live with the breaker on, as a note", () => {
		expect(codesOf(`${supply}${attic}  9 ft as attic-on to a2: receptacle in bath\nplace bath wet\n`)).toEqual([
			"capped-end-live",
		]);
		checkRight(`${supply}${attic}`);
	});

	test("once for each box in which something is live", () => {
		const { findings } = checkPlan(
			`${supply}${attic}circuit two roughed in from LC breaker 15 A by 14-2
  9 ft as two to e1: end
`,
			"plan",
		);
		expect(findings.map(({ title }) => title)).toEqual([
			"attic-feed.black ends capped in a1, and is live with LC.1 on",
			"two.black ends capped in e1, and is live with LC.2 on",
		]);
	});

	test("nothing where its hot is left off", () => {
		expect(codesOf(`${supply}${attic}at LC\n  attic-feed.black capped\n`)).toEqual([]);
	});

	test("a running number for a tag is noted", () => {
		const { findings } = checkPlan(
			`${supply}circuit attic roughed in from LC breaker 15 A by 14-2
  20 ft to a1: receptacle
  9 ft as pinned to a2: receptacle
  9 ft to a3: receptacle
`,
			"plan",
		);
		expect(findings.filter(({ code }) => code === "tag-automatic").map(({ title, level }) => [title, level])).toEqual([
			["attic-1 and 1 more of attic have a running number for a tag", "note"],
		]);
	});

	test("what is there already is checked: a cable too thin, an end left loose", () => {
		checkMarked(`${supply}circuit attic roughed in from LC breaker 20 A by 14-2
  20 ft as attic-feed to a1: receptacle
//                       ^^ protection-too-large
`);
		checkMarked(`${supply}${attic}at a1
  attic-feed.black loose
//^^^^^^^^^^^^^^^^^^^^^^ end-loose
`);
	});
});

describe("slack", () => {
	test("is left at each end, beside the length", () => {
		const circuit = wireRight(`${supply}circuit one from LC breaker 15 A by 14-2
  10 m slack 20 cm to b1: receptacle
`);
		expect(circuit.cableByTag.get("one-1")).toMatchObject({ length: 10, slack: { written: 20, unit: "cm" } });
		expect(circuit.conductors.find(({ name }) => name === "one-1.black")?.length).toBeCloseTo(10.4);
	});

	test.each([
		["slack", "4:slack quantity-missing"],
		["slack 6", "4:6 unit-wrong"],
		["slack 6 A", "4:6 A unit-wrong"],
		["slack 0 in", "4:0 in quantity-out-of-range"],
		["slack 40 ft", "4:40 ft quantity-out-of-range"],
	])("%s", (words, told) => {
		const text = `${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft, ${words} to b1: receptacle\n`;
		expect(wirePlan(text).told).toEqual([told]);
	});
});
