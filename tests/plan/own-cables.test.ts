// Cables that the builder describes, in runs and jumpers, and what is told of one that cannot be.
import { describe, expect, test } from "vitest";
import { formatGauge } from "../../src/base/gauge.ts";
import { checkMarked, checkRight } from "../check-plan.ts";
import { readPlan, runOf, supply } from "./read-plan.ts";

function makeOf(definition: string) {
	const { plan, told } = readPlan(
		`${supply}${definition}circuit one from LC breaker 15 A by own\n  4 ft to r1: receptacle\n`,
	);
	return { make: runOf(plan, "one")?.hops[0]?.cable, told };
}

function coresOf(definition: string): string[] {
	const { make, told } = makeOf(definition);
	expect(told).toEqual([]);
	return (make?.cores ?? []).map(
		({ colour, role, gauge, stranded }) => `${colour} ${role} ${formatGauge(gauge)}${stranded ? "*" : ""}`,
	);
}

describe("a cable with a line for each conductor, or one line for all", () => {
	test.each([
		[
			"cable own stranded\n  black hot 14 AWG\n  white neutral 14 AWG\n  green-yellow ground 12 AWG\n",
			["black hot 14 AWG*", "white neutral 14 AWG*", "green-yellow ground 12 AWG*"],
		],
		[
			"cable own black hot, white neutral, bare ground, 14 AWG\n",
			["black hot 14 AWG", "white neutral 14 AWG", "bare ground 14 AWG"],
		],
		[
			"cable own 2.5 mm2\n  brown live\n  grey live\n  blue neutral\n  green-yellow earth solid\n",
			["brown hot 2.5 mm2", "grey hot2 2.5 mm2", "blue neutral 2.5 mm2", "green-yellow ground 2.5 mm2"],
		],
		["cable own 12-2 stranded\n", ["black hot 12 AWG*", "white neutral 12 AWG*", "green ground 12 AWG*"]],
	])("%j", (definition, cores) => {
		expect(coresOf(definition)).toEqual(cores);
	});

	test("says its insulation, its metal and that it bends", () => {
		const { make } = makeOf("cable own aluminium flexible 90 C\n  black hot 6 AWG\n  white neutral 6 AWG\n");
		expect(make).toMatchObject({ text: "own", insulation: 90, material: "aluminium", flexible: true, system: "ac" });
	});

	test("is for direct current where its conductors are", () => {
		const { make } = makeOf("cable own red positive 10 AWG, black negative\n");
		expect(make?.system).toBe("dc");
	});

	test("is found whatever its case, before or behind the run that uses it", () => {
		checkRight(`${supply}circuit one from LC breaker 15 A by VAN
  4 ft to r1: receptacle
cable van 14 AWG stranded, black hot, white neutral, green ground
`);
	});

	test("makes a jumper", () => {
		checkRight(`${supply}cable tail 14 AWG
  black hot
circuit one from LC breaker 15 A by 14-2
  4 ft to j1: box
    r1: receptacle
    r2: receptacle
at j1
  one-1.black on r1.hot
  link r1.hot, r2.hot by tail
`);
	});

	test("is judged as any other: too thin for its breaker", () => {
		checkMarked(`${supply}cable thin black hot, white neutral, bare ground, 14 AWG
circuit one from LC breaker 20 A by thin
  4 ft to r1: receptacle
//        ^^ protection-too-large
`);
	});
});

describe("what cannot be is told at its place, and the rest goes on", () => {
	test.each([
		["cable own\n", ["3:own cable-unknown"]],
		["cable own 14 AWG\n  blakc hot\n", ["4:blakc attribute-unknown", "4:hot attribute-unknown"]],
		["cable own 14 AWG\n  black\n", ["4:black role-missing"]],
		["cable own 14 AWG\n  black hto\n", ["4:hto role-missing", "4:hto attribute-unknown"]],
		["cable own\n  black hot\n", ["4:black quantity-missing"]],
		["cable own\n  black hot 12\n", ["4:12 unit-wrong"]],
		["cable own\n  black hot 12 ft\n", ["4:12 ft unit-wrong"]],
		["cable own\n  black hot 12 AWG 10 AWG\n", ["4:10 AWG attribute-twice"]],
		["cable own\n  black hot 5000 mm2\n", ["4:5000 mm2 quantity-out-of-range"]],
		["cable own 900 C\n  black hot 12 AWG\n", ["3:900 C quantity-out-of-range"]],
		["cable own 12 AWG furry\n  black hot\n", ["3:furry attribute-unknown"]],
	])("%j", (definition, findings) => {
		const { make, told } = makeOf(definition);
		expect(told).toEqual(findings);
		expect(make).toBeUndefined();
	});

	test.each(["pair", "red", "12-2"])("%s is no name for a cable", (name) => {
		const { told } = readPlan(`${supply}cable ${name} 14 AWG black hot\n`);
		expect(told).toEqual([`3:${name} name-twice`]);
	});

	test("two cables of one name", () => {
		checkMarked(`${supply}cable a 14 AWG black hot
cable A 12 AWG black hot
//    ^ name-twice
`);
	});

	test("words behind an own cable", () => {
		checkMarked(`${supply}cable own 14 AWG black hot, white neutral, bare ground
circuit one from LC breaker 15 A by own stranded
//                                      ^^^^^^^^ cable-unknown
  4 ft to r1: receptacle
`);
	});

	test("a misspelt name offers the nearest", () => {
		const { findings } = readPlan(`${supply}cable vancable 14 AWG black hot
circuit one from LC breaker 15 A by vancabel
  4 ft to r1: receptacle
`);
		expect(findings[0]?.help).toContain("Did you mean `vancable`?");
	});
});
