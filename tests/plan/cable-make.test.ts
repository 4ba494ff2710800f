// The trade's words for a cable, read into its conductors: how many, how thick, which colours, what each is for.
import { describe, expect, test } from "vitest";
import { formatGauge } from "../../src/base/gauge.ts";
import { readPlan, runOf, supply } from "./read-plan.ts";

function makeOf(words: string) {
	const { plan, told } = readPlan(`${supply}circuit one from LC breaker 20 A by ${words}\n  4 ft to j1: box\n`);
	return { make: runOf(plan, "one")?.hops[0]?.cable, told };
}

/** Cores as `black hot 12 AWG`, stranded ones with a star. */
function coresOf(words: string): string[] {
	return (makeOf(words).make?.cores ?? []).map(
		({ colour, role, gauge, stranded }) => `${colour} ${role} ${formatGauge(gauge)}${stranded ? "*" : ""}`,
	);
}

describe("house cable counts its insulated conductors; a ground comes on top", () => {
	test.each([
		["14-2", ["black hot 14 AWG", "white neutral 14 AWG", "bare ground 14 AWG"]],
		["12-3", ["black hot 12 AWG", "red hot2 12 AWG", "white neutral 12 AWG", "bare ground 12 AWG"]],
		["14-4", ["black hot 14 AWG", "red hot2 14 AWG", "blue hot3 14 AWG", "white neutral 14 AWG", "bare ground 14 AWG"]],
		["12-2 stranded", ["black hot 12 AWG*", "white neutral 12 AWG*", "green ground 12 AWG*"]],
		["8-2", ["black hot 8 AWG*", "white neutral 8 AWG*", "bare ground 8 AWG*"]],
		["8-2 solid", ["black hot 8 AWG", "white neutral 8 AWG", "bare ground 8 AWG"]],
	])("%s", (words, cores) => {
		expect(coresOf(words)).toEqual(cores);
	});
});

describe("flexible cord counts its ground", () => {
	test.each([
		["cord 10-3", ["black hot 10 AWG*", "white neutral 10 AWG*", "green ground 10 AWG*"]],
		["cord 14-2", ["black hot 14 AWG*", "white neutral 14 AWG*"]],
	])("%s", (words, cores) => {
		expect(coresOf(words)).toEqual(cores);
		expect(makeOf(words).make?.flexible).toBe(true);
	});
});

describe("metric cable counts all its conductors", () => {
	test.each([
		["3G2.5", ["brown hot 2.5 mm2", "blue neutral 2.5 mm2", "green-yellow ground 2.5 mm2"]],
		["3G1.5 stranded", ["brown hot 1.5 mm2*", "blue neutral 1.5 mm2*", "green-yellow ground 1.5 mm2*"]],
		["4G2.5", ["brown hot 2.5 mm2", "black hot2 2.5 mm2", "blue neutral 2.5 mm2", "green-yellow ground 2.5 mm2"]],
		[
			"5G1.5",
			[
				"brown hot 1.5 mm2",
				"black hot2 1.5 mm2",
				"grey hot3 1.5 mm2",
				"blue neutral 1.5 mm2",
				"green-yellow ground 1.5 mm2",
			],
		],
		["2x1.5", ["brown hot 1.5 mm2", "blue neutral 1.5 mm2"]],
	])("%s", (words, cores) => {
		expect(coresOf(words)).toEqual(cores);
	});
});

describe("boat cable and single conductors", () => {
	test.each([
		["triplex 14 AWG", ["black hot 14 AWG*", "white neutral 14 AWG*", "green ground 14 AWG*"]],
		["single 12 AWG black", ["black hot 12 AWG*"]],
		["single #12 white solid", ["white neutral 12 AWG"]],
		["single 8 AWG green", ["green ground 8 AWG*"]],
		["single 4/0 black", ["black hot 4/0 AWG*"]],
	])("%s", (words, cores) => {
		expect(coresOf(words)).toEqual(cores);
	});
});

describe("what else is said of it", () => {
	test("insulation by the sort of cable, or as said", () => {
		expect(
			["12-2", "12-2 90 C", "triplex 12 AWG", "3G2.5", "cord 12-3", "single 12 AWG black"].map(
				(words) => makeOf(words).make?.insulation,
			),
		).toEqual([60, 90, 105, 70, 60, 75]);
	});

	test("copper, unless it is said to be aluminium", () => {
		expect(makeOf("12-2").make?.material).toBe("copper");
		expect(makeOf("10-2 aluminium").make?.material).toBe("aluminium");
	});
});

describe("what is no cable", () => {
	test.each([
		["12-9", "12-9"],
		["13-2", "13-2"],
		["9G2.5", "9G2.5"],
		["0-2", "0-2"],
		["single black", "single black"],
		["12-2 strandedd", "strandedd"],
		["12-2 20 A", "20 A"],
		["single 2 AWG red single 4 AWG black", "4 AWG"],
		["14-2 12-2", "12-2"],
		["3G2.5 1.5 mm2", "1.5 mm2"],
	])("%s is one finding", (words, under) => {
		expect(makeOf(words).told.map((line) => line.replace(/^3:/, ""))).toEqual([`${under} cable-unknown`]);
	});

	test("a misspelt word offers the nearest", () => {
		const { findings } = readPlan(`${supply}circuit one from LC breaker 20 A by 12-2 strandedd\n  4 ft to j1: box\n`);
		expect(findings[0]?.help).toContain("Did you mean `stranded`?");
	});

	test("what hangs behind it is not called wrong too", () => {
		const { told } = readPlan(`${supply}circuit one from LC breaker 20 A by 13-2
  4 ft to j1: box
  from j1
    3 ft to b1: receptacle
`);
		expect(told).toEqual(["3:13-2 cable-unknown"]);
	});
});
