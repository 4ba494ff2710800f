// Switches that do not switch.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("switch-without-effect is told", () => {
	test("a disconnect joined past", () => {
		checkMarked(`${supply}circuit heat from LC breaker 20 A by 12-2
  7 ft to hd: disconnect
  9 ft to wh: heater 1200 W
at hd
  join heat-1.black, heat-2.black, hd.line.hot, hd.load.hot
//                                 ^^^^^^^^^^^ switch-without-effect "hd isolates nothing: hd.line.hot and hd.load.hot are joined past it"
// also switch-in-neutral
`);
	});

	test("a switch with a jumper across it", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to s1: switch
  7 ft to l1: light 9 W
at s1
  link s1.line, s1.load by 14 AWG black
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ switch-without-effect "s1 switches nothing: s1.line and s1.load are joined past it"
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled
`);
	});

	test("a switch with nothing behind it", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to s1: switch
//        ^^ switch-without-effect "s1 switches nothing: nothing is on s1.load"
  from s1.line
    7 ft to l1: light 9 W
`);
	});

	test("a pair with one hot between its switches", () => {
		checkMarked(`${supply}circuit stairs from LC breaker 15 A by 14-2
  9 ft to s1: switch three-way
//        ^^ switch-without-effect "s1 switches nothing: nothing is on s1.traveller.1 and s1.traveller.2"
  7 ft to s2: switch three-way
//        ^^ switch-without-effect "s2 switches nothing: nothing is on s2.traveller.1 and s2.traveller.2"
  7 ft to l1: light 9 W
`);
	});

	test("a lone three-way switch on its common", () => {
		checkMarked(`plan "Hut"
  region iec
inlet shore 16 A 230 V TN-S
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3.5 m
circuit stairs from DB breaker 10 A two-pole by 3G1.5
  3 m to s1: switch two-way
//       ^^ switch-without-effect "s1 switches nothing: nothing is on s1.traveller.1 and s1.traveller.2"
  3 m to l1: light 9 W
`);
	});

	test("the feed of a pair on a traveller", () => {
		checkMarked(`${supply}circuit stairs from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
//        ^^ switch-without-effect "s1 and s2 do not all switch l1: throwing s1 changes nothing in 1 of 2 positions of the others"
  9 ft by 14-3 to s2: switch three-way
  5 ft by 14-2 to l1: light 9 W
at s1
  stairs-1.black on s1.traveller.1
  stairs-2.black on s1.common
`);
	});

	test("a four-way switch with its pairs mixed", () => {
		checkMarked(`${supply}circuit stairs from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
//        ^^ switch-without-effect "s1, s2 and s3 do not all switch l1: throwing s1 changes nothing in 2 of 4 positions of the others"
  9 ft by 14-3 to s2: switch four-way
  9 ft to s3: switch three-way
  5 ft by 14-2 to l1: light 9 W
at s2
  stairs-2.black on s2.load.1
  stairs-3.black on s2.line.1
`);
	});
});

describe("switch-without-effect is told where a load is never off", () => {
	test("both travellers joined at the light's end", () => {
		checkMarked(`${supply}circuit stairs from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
//        ^^ switch-without-effect "l1 stays on in every position of s1"
  9 ft by 14-3 to j1: box
  5 ft by 14-2 to l1: light 9 W
at j1
  join stairs-2.black, stairs-2.red, stairs-3.black
`);
	});
	test("both travellers joined in the box of the second switch", () => {
		checkMarked(`${supply}circuit stairs from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
//        ^^ switch-without-effect "l1 stays on in every position of s1"
  9 ft by 14-3 to s2: switch three-way
  5 ft by 14-2 to l1: light 9 W
at s2
  join stairs-2.black, stairs-2.red, stairs-3.black
`);
	});
	test("behind a plain switch that still works", () => {
		checkMarked(`${supply}circuit stairs from LC breaker 15 A by 14-2
  7 ft to s0: switch
  7 ft to s1: switch three-way
//        ^^ switch-without-effect "l1 stays on in every position of s1"
  5 ft by 14-2 to l1: light 9 W
at s1
  join s1.traveller.1, s1.traveller.2, stairs-3.black
`);
	});
});

describe("switch-without-effect is not told of", () => {
	test("travellers in any order", () => {
		checkRight(`${supply}circuit stairs from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch four-way
  9 ft to s3: switch three-way
  5 ft by 14-2 to l1: light 9 W
at s2
  stairs-2.black on s2.line.2
  stairs-2.red on s2.line.1
`);
	});

	test("a three-way switch used as a plain one", () => {
		checkRight(`${supply}circuit lights from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft to l1: light 9 W
at s1
  lights-2.black on s1.traveller.1
`);
	});

	test("one switch behind another", () => {
		checkRight(`${supply}circuit lights from LC breaker 15 A by 14-2
  7 ft to s1: switch
  7 ft to s2: switch
  9 ft to l1: light 9 W
`);
	});
});

describe("more positions than are tried out", () => {
	/** A light between two three-way switches with so many four-way ones between them. */
	const row = (fourWays: number): string => `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit hall from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft by 14-3 to f1..f${fourWays}: switch four-way
  9 ft by 14-3 to s2: switch three-way
  5 ft by 14-2 to l1: light 9 W
`;
	const notes = (text: string) =>
		checkRight(text).findings.filter(({ code, level }) => code === "switch-without-effect" && level === "note");

	test("12 switches that work together are tried out", () => {
		expect(notes(row(10))).toEqual([]);
	});
	test("13 are not, and one note says so", () => {
		expect(notes(row(11)).map(({ title }) => title)).toEqual([
			expect.stringMatching(/^Positions of .*s1.* not checked one by one: there are too many$/),
		]);
	});
});

describe("three-way switches that no travellers join", () => {
	const stair = (cable: string): string => `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit stair from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft by ${cable} to s2: switch three-way
  5 ft by 14-2 to l1: light 9 W
`;
	test("by a cable with a core too few", () => {
		const found = checkPlan(stair("14-2"), "plan").findings.filter(({ level }) => level !== "note");
		expect(found.map(({ code, title }) => `${code}: ${title}`)).toEqual([
			"switch-without-effect: s1 switches nothing: nothing is on s1.traveller.1 and s1.traveller.2",
			"switch-without-effect: s2 switches nothing: nothing is on s2.traveller.1 and s2.traveller.2",
		]);
	});
	test("by one with three", () => checkRight(stair("14-3")));
});
