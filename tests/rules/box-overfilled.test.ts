// A box has room for its conductors, grounds, clamps and devices, each by its published volume.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
const through = (box: string): string => `${supply}circuit den from LC breaker 20 A by 12-2
  9 ft to r1: receptacle, box ${box}
  6 ft to r2: receptacle, box 18 cuin
`;

describe("a published example: two 12-2 cables, inside clamps and a duplex receptacle take 18 cuin (NFPA 70 314.16, read)", () => {
	test("a box of 18", () => {
		checkRight(through("18 cuin metal, clamps inside"));
	});
	test("a box of 17.9", () => {
		checkMarked(`${supply}circuit den from LC breaker 20 A by 12-2
  9 ft to r1: receptacle, box 17.9 cuin metal, clamps inside
//        ^^ box-overfilled "takes 18 cuin, and it has 17.9 cuin"
  6 ft to r2: receptacle, box 18 cuin
`);
	});
	test("without clamps inside 15.75 will do", () => {
		checkRight(through("15.75 cuin metal, clamps outside"));
		checkRight(through("15.75 cuin"));
	});
	test("and 15.7 will not", () => {
		checkMarked(`${supply}circuit den from LC breaker 20 A by 12-2
  9 ft to r1: receptacle, box 15.7 cuin
//        ^^ box-overfilled "takes 15.75 cuin"
  6 ft to r2: receptacle, box 18 cuin
`);
	});
	test("whether the clamps of a metal box are inside decides, and was not said", () => {
		const titles = checkPlan(through("16 cuin metal"), "plan").findings.map(({ level, title }) => `${level} ${title}`);
		expect(titles).toEqual(["note r1 is full if its clamps are inside: it would need 18 cuin and has 16 cuin"]);
	});
});

describe("four 14 AWG, grounds and a device take 14 cuin (published example, read)", () => {
	const plan = (box: string): string => `${supply}circuit den from LC breaker 15 A by 14-2
  9 ft to s1: switch, box ${box}
  6 ft to l1: light 9 W, box 18 cuin
`;
	test("in 14", () => {
		checkRight(plan("14 cuin"));
	});
	test("in cubic centimetres", () => {
		checkRight(plan("229.5 cm3"));
	});
	test("in 13", () => {
		expect(checkPlan(plan("13 cuin"), "plan").findings.map(({ code }) => code)).toEqual(["box-overfilled"]);
	});
});

describe("what counts how", () => {
	test("a box without a device: conductors and one ground for all", () => {
		checkMarked(`${supply}circuit den from LC breaker 20 A by 12-2
  9 ft to j1: box 15.5 cuin
//        ^^ box-overfilled "takes 15.75 cuin"
  6 ft to l1: light 9 W, box 18 cuin
  from j1
    6 ft to l2: light 9 W, box 18 cuin
`);
	});
	test("pigtails and jumpers take no room", () => {
		checkRight(`${supply}circuit den from LC breaker 15 A by 14-2
  9 ft to j1: box 14 cuin
    r1: receptacle
    r2: receptacle
at j1
  den-1.black on r1.hot
  link r1.hot, r2.hot by 14 AWG black
`);
	});
	test("a device counts by the thickest conductor on it: published example of 21.5 cuin in a box of 21 (read)", () => {
		const plan = (at: string): string => `${supply}circuit den from LC breaker 15 A by 12-2
  9 ft to r1: receptacle, box 21 cuin metal, clamps inside
  6 ft by 14-2 to l1: light 9 W, box 18 cuin
  from r1 by 14-2
    6 ft to l2: light 9 W, box 18 cuin
${at}`;
		const titles = (at: string): string[] => checkPlan(plan(at), "plan").findings.map(({ title }) => title);
		expect(titles("")).toEqual(["What is in r1 takes 21.5 cuin, and it has 21 cuin"]);
		// With pigtails of 14 AWG on it the same box is exactly full.
		const thin = ["black", "white", "bare"].map((core) => `  join den-2.${core}, den-1.${core}, den-3.${core}, r1.`);
		expect(titles(`at r1\n${thin[0]}hot\n${thin[1]}neutral\n${thin[2]}ground, r1.case\n`)).toEqual([]);
	});
	test("grounds over four count a quarter each", () => {
		const branches = (count: number): string =>
			Array.from(
				{ length: count },
				(_, index) => `  from j1\n    6 ft to l${index + 2}: light 9 W, box 18 cuin\n`,
			).join("");
		const plan = (box: string): string => `${supply}circuit den from LC breaker 15 A by 14-2
  9 ft to j1: box ${box}
  6 ft to l1: light 9 W, box 18 cuin
${branches(3)}`;
		// Ten conductors and five grounds of 14 AWG: 20 + 2 + 0.5.
		checkRight(plan("22.5 cuin"));
		expect(checkPlan(plan("22.4 cuin"), "plan").findings.map(({ title }) => title)).toEqual([
			"What is in j1 takes 22.5 cuin, and it has 22.4 cuin",
		]);
	});
	test("in IEC countries no table is at hand, and nothing is said", () => {
		checkRight(`plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3 m
circuit a from DB breaker 10 A two-pole by 3G1.5
  3 m to r1: socket, box 50 cm3
`);
	});
});

describe("what was not said", () => {
	test("volumes that are missing are told once, with what is needed at least", () => {
		const { findings } = checkPlan(
			`${supply}circuit den from LC breaker 20 A by 12-2
  9 ft to r1: receptacle
  6 ft to r2: receptacle
`,
			"plan",
		);
		expect(findings.map(({ level, title, help }) => [level, title, help])).toEqual([
			[
				"note",
				"Room in r1 and r2 not checked: their volume is missing",
				"Write the volume stamped in each: `box 18 cuin`. At least are needed: r1 15.75 cuin and r2 11.25 cuin.",
			],
		]);
	});
});
