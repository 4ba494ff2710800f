import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { cabinOf } from "./cabin.ts";
import { medianOf, shareOf } from "./figures.ts";
import { planOf, planOfDirect, planOfSources } from "./plans.ts";

describe("a plan to measure by", () => {
	test.each([1, 50, 100, 1000])("has %d devices and nothing wrong in it", (devices) => {
		const text = planOf(devices);
		expect(text.match(/ to d\d+: /g)).toHaveLength(devices);
		expect(planOf(devices)).toBe(text);
		const { findings, understood } = checkPlan(text, "p");
		expect(findings.map(({ code, span }) => `${span.line} ${code}`)).toEqual([]);
		expect(understood).toBe(true);
	});
});

test("a cabin with both sides has its devices and nothing wrong in it", () => {
	const text = cabinOf(120);
	expect(text.match(/ to [de]\d+: /g)).toHaveLength(120);
	expect(cabinOf(120)).toBe(text);
	expect(checkPlan(text, "p").findings.map(({ code, span }) => `${span.line} ${code}`)).toEqual([]);
});

test.each([1, 16])("a plan of %d sources has nothing wrong in it, and each is judged", (sources) => {
	const text = planOfSources(sources);
	const { findings, understood, analysis } = checkPlan(text, "p");
	expect(findings.map(({ code, span }) => `${span.line} ${code}`)).toEqual([]);
	expect(understood).toBe(true);
	expect(analysis.states).toHaveLength(sources);
});

test.each([1, 10])("a plan of %d direct-current circuits has no fault in it", (circuits) => {
	const { findings, understood } = checkPlan(planOfDirect(circuits), "p");
	expect(findings.filter(({ level }) => level !== "note").map(({ code, span }) => `${span.line} ${code}`)).toEqual([]);
	expect(understood).toBe(true);
});

test("figures are the ones they are called", () => {
	expect(medianOf([5, 1, 9])).toBe(5);
	const hundred = Array.from({ length: 100 }, (_, index) => 100 - index);
	expect(shareOf(hundred, 0.95)).toBe(95);
	expect(medianOf(hundred)).toBe(50);
	expect(shareOf([7], 0.95)).toBe(7);
});
