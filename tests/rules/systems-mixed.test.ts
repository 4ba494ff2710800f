// Poles of direct current on the ground of a machine past the bond.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";

function van(more: string): string {
	return `battery house agm 12 V 200 Ah
inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
chassis body
feed big from house.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 125 A
  2 ft to inv.+
feed big-minus from house.- by single 2 AWG black
  2 ft to minus: bus 150 A
  1 ft to inv.-
circuit desk from inv.out by 14-2
  3 ft to d1: receptacle
bond case from inv.case by single 4 AWG green
  2 ft to body
bond earth from minus by single 2 AWG black
  2 ft to body
${more}`;
}

function told(text: string): readonly string[] {
	return checkPlan(text, "plan")
		.findings.filter(({ code }) => code === "systems-mixed")
		.map(({ level, title }) => `${level}: ${title}`);
}

describe("a pole on the ground of a machine is told", () => {
	test("the minus", () => {
		expect(told(van("feed over from minus by single 6 AWG black\n  2 ft to inv.case\n"))).toEqual([
			"error: over-1.black joins minus.4 and the ground inv.lug past the bond",
		]);
	});
	test("the minus beside the case", () => {
		expect(told(van("feed over from inv.- by single 6 AWG black\n  1 ft to inv.lug\n"))).toEqual([
			expect.stringMatching(/^error: over-1.black joins inv.- and the ground inv.lug past the bond$/),
		]);
	});
	test("the plus, which shorts the battery where its minus is bonded", () => {
		const { findings } = checkPlan(van("feed over from inv.+ by single 6 AWG red\n  1 ft to inv.lug\n"), "plan");
		expect(findings.find(({ code }) => code === "systems-mixed")).toMatchObject({ level: "danger" });
		expect(findings.find(({ code }) => code === "poles-joined")).toMatchObject({ level: "danger" });
	});
});

describe("a pole on a ground is not told", () => {
	test.each([
		["where each has its bond", ""],
		[
			"where a load returns through the body",
			"feed lamp from house.+ by single 12 AWG red\n  within 7 in to F2: fuse 15 A\n  3 ft to l1: light 6 W\nfeed back from l1.- by single 12 AWG black\n  1 ft to body\n",
		],
		["where a bond says what it is", "bond second from minus by single 2 AWG black\n  2 ft to body\n"],
	])("%s", (_, more) => {
		expect(told(van(more))).toEqual([]);
	});
});
