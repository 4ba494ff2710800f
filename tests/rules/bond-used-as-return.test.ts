// What comes back through bonds for want of a minus lead, and what returns through metal on purpose.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkRight } from "../check-plan.ts";

const bonds = `bond earth from house.- by single 4 AWG black
  2 ft to body
bond starter-earth from start.- by single 4 AWG black
  1 ft to body
`;

function banks(up: string, filled: string): string {
	return `battery start flooded 12 V 60 Ah
battery house agm 12 V 100 Ah
dc-dc step 20 A 12 V / 12 V
chassis body
feed up from ${up} 8 AWG${up.includes("pair") ? "" : " red"}
  within 12 in to F1: fuse 40 A
  9 ft to D1: disconnect 60 A
  1 ft to step.in${up.includes("pair") ? "" : ".+"}
feed filled from ${filled} 10 AWG${filled.includes("pair") ? "" : " red"}
  within 12 in to F2: fuse 30 A
  2 ft to step.out${filled.includes("pair") ? "" : ".+"}
feed small from house.+, house.- by pair 12 AWG
  within 12 in to F3: fuse 20 A
  3 ft to D2: disconnect 30 A
  6 ft to l1: light 6 W
${bonds}`;
}
const [upPair, filledPair] = ["start.+, start.- by pair", "house.+, house.- by pair"];

function told(text: string): readonly string[] {
	return checkPlan(text, "plan")
		.findings.filter(({ code }) => code === "bond-used-as-return")
		.map(({ title }) => title);
}

describe("bond-used-as-return is told", () => {
	test("of a charger without the minus of what it fills", () => {
		expect(told(banks(upPair, "house.+ by single"))).toEqual([
			"What step draws or gives comes back through the bonds earth-1.black and starter-earth-1.black",
		]);
	});
	test("of a charger without the minus of what feeds it", () => {
		expect(told(banks("start.+ by single", filledPair))).toEqual([
			expect.stringMatching(/^What start and step draw or give comes back through the bonds /),
		]);
	});
	test("of a load whose minus is on a bus that only a bond leads from", () => {
		const text = `${banks(upPair, filledPair)}feed lamp from house.+ by single 12 AWG red
  within 12 in to F4: fuse 20 A
  6 ft to l2: light 6 W
feed low from l2.- by single 12 AWG black
  1 ft to far: bus 100 A
bond far-earth from far by single 6 AWG black
  1 ft to body
`;
		expect(told(text)).toEqual([expect.stringMatching(/^What l2 draws or gives comes back through the bonds /)]);
	});
});

describe("bond-used-as-return is not told of", () => {
	test("two banks with all their leads, each bonded", () => {
		checkRight(banks(upPair, filledPair));
	});
	test("an alternator whose case is its minus", () => {
		expect(
			told(`${banks(upPair, filledPair)}alternator alt 60 A 14 V
feed charge from start.+ by single 4 AWG red
  within 7 in to F4: fuse ANL 80 A
  4 ft to alt.+
feed case from alt.- by single 4 AWG black
  1 ft to body
`),
		).toEqual([]);
	});
	test("a lamp that is landed on the chassis", () => {
		expect(
			told(`${banks(upPair, filledPair)}feed lamp from house.+ by single 12 AWG red
  within 12 in to F4: fuse 20 A
  6 ft to l2: light 6 W
feed back from l2.- by single 12 AWG black
  1 ft to body
`),
		).toEqual([]);
	});
	test("a load that has no way back at all: that is told as such", () => {
		expect(
			told(`${banks(upPair, filledPair)}feed lamp from house.+ by single 12 AWG red
  within 12 in to F4: fuse 20 A
  6 ft to l2: light 6 W
`),
		).toEqual([]);
	});
});
