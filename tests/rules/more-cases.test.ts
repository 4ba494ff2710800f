// Every rule has at least three plans that fire it and three near misses: its own and those of the tables.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { rules } from "../../src/rules/index.ts";
import { casesByRule, casesOf } from "./cases/index.ts";

function codesIn(text: string): string[] {
	return checkPlan(text, "plan").findings.map(({ code }) => code);
}

/** What says that a plan cannot be read as it is meant. */
const misread = /^(?:.*-unknown|word-missing|name-missing|line-misread|landed-twice)$/;

describe.each(casesByRule)("$code", ({ code, fires, silent }) => {
	test.each(fires.map((text, index) => [index + 1, text] as const))("fires on %i", (_, text) => {
		const codes = codesIn(text);
		expect(codes).toContain(code);
		expect(codes.filter((found) => misread.test(found))).toEqual([]);
	});

	test.each(silent.map((text, index) => [index + 1, text] as const))("is silent on near miss %i", (_, text) => {
		const codes = codesIn(text);
		expect(codes).not.toContain(code);
		expect(codes.filter((found) => misread.test(found))).toEqual([]);
	});
});

describe("each rule has enough plans in the tables", () => {
	test.each(rules.map((rule) => [rule.code, rule] as const))("%s", (code, { wrong, right }) => {
		const { fires, silent } = casesOf(code);
		expect(new Set([...wrong, ...fires]).size).toBeGreaterThanOrEqual(3);
		expect(new Set([...right, ...silent]).size).toBeGreaterThanOrEqual(3);
	});

	test("and the tables name rules only", () => {
		const codes = new Set(rules.map(({ code }) => code));
		expect(casesByRule.map(({ code }) => code).filter((code) => !codes.has(code))).toEqual([]);
	});
});
