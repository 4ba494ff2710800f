// What a breaker of two poles opens is hot and neutral of one circuit; a disconnect opens no neutral alone.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const van = `plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3 m
  slot 1: breaker 10 A two-pole
  slot 2: breaker 10 A two-pole
circuit a from DB.1 by 3G1.5
  3 m to r1: socket
circuit b from DB.2 by 3G1.5
  3 m to r2: socket
`;

describe("one-pole-opened is told", () => {
	test("a neutral past its breaker", () => {
		checkMarked(`${van}at DB
  a-1.blue on DB.neutral.5
//^^^^^^^^^^^^^^^^^^^^^^^^ one-pole-opened "DB.1 opens the hot of r1 and not the neutral: a-1.blue is on DB.neutral.5"
`);
	});
	test("two neutrals exchanged are one mistake", () => {
		checkMarked(`${van}at DB
  a-1.blue on DB.2.load.neutral
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ one-pole-opened "DB.1 opens the hot of r1, and DB.2 its neutral"
  b-1.blue on DB.1.load.neutral
// also one-pole-opened
`);
	});
	test("a jumper past the neutral's contact", () => {
		const { findings } = checkPlan(`${van}at DB\n  link DB.1.load.neutral, DB.neutral.5 by 1.5 mm2 blue\n`, "plan");
		expect(findings.map(({ title }) => title)).toContain(
			"DB.1 opens the hot of r1 and not the neutral: a-1.blue is on DB.1.load.neutral",
		);
	});
	test("in a building as well, where a breaker has two poles", () => {
		checkMarked(`${van.replace("  region iec\n", "  region iec\n  rules building\n")}at DB
  a-1.blue on DB.neutral.5
//^^^^^^^^^^^^^^^^^^^^^^^^ one-pole-opened
`);
	});
});

describe("one-pole-opened is not told", () => {
	test("where each neutral is on its own breaker", () => {
		checkRight(van);
	});
	test("of another port of the same breaker's side", () => {
		checkRight(`${van}at DB
  a-1.blue on DB.1.load.neutral
`);
	});
	test("of two-pole breakers on two legs: their neutral goes to the bar", () => {
		checkRight(`inlet pole 50 A 120/240 V
panel LC main 50 A 120/240 V from pole by 6-3, 20 ft
circuit range from LC breaker two-pole 40 A by 8-3
  14 ft to k1: load 7200 W 120/240 V
`);
	});
});

test("a disconnect of two poles with the neutral on its contact for the hot, and the hot past it, opens the neutral alone", () => {
	checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit water from LC breaker 15 A by 14-2
  8 ft to wd: disconnect 20 A
  3 ft to wh: heater 1400 W continuous
at wd
  water-1.white on wd.line.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^ switch-in-neutral "wd opens the neutral of wh and not the hot"
  water-2.white on wd.load.hot
  join water-1.black, water-2.black
`);
});

describe("devices further ahead", () => {
	const board = (main: string, at: string): string => `plan
  region iec
inlet shore 32 A 230 V
feed entry from shore by 3G6
  1 m to R1: rcd 40 A 30 mA
  2 m to DB
panel DB main ${main}
  slot 1: breaker 32 A two-pole
circuit sockets from DB breaker 10 A two-pole by 3G1.5
  2 m to a1: socket
feed annex from DB.1 by 3G6
  5 m to SP
panel SP lugs only
circuit hut from SP breaker 10 A two-pole by 3G1.5
  2 m to a2: socket
${at}`;
	const parted = (text: string): readonly string[] =>
		checkPlan(text, "plan").findings.flatMap(({ code, title }) => (code === "one-pole-opened" ? [title] : []));
	test("all neutrals through their own", () => {
		expect(parted(board("32 A two-pole", ""))).toEqual([]);
		expect(parted(board("40 A switch", ""))).toEqual([]);
	});
	test("a subpanel's neutral past the breaker of its feed", () => {
		expect(parted(board("32 A two-pole", "at DB\n  annex-1.blue on DB.neutral.5\n"))).toEqual([
			"DB.1 opens the hot of SP.1, and DB.main its neutral: annex-1.blue is on DB.neutral.5",
		]);
	});
	test("the feed's neutral past a main switch", () => {
		const found = parted(board("40 A switch", "at DB\n  entry-2.blue on DB.neutral.5\n"));
		expect(found).toHaveLength(1);
		expect(found[0]).toContain("DB.main opens the hot of");
	});
	test("two neutrals joined behind their breakers", () => {
		const found = parted(
			board("32 A two-pole", "at DB\n  join annex-1.blue, sockets-1.blue, DB.1.load.neutral, DB.2.load.neutral\n"),
		);
		expect(found.length).toBeGreaterThan(0);
	});
});
