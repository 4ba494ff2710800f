// Every rule has at least three plans that fire it and three near misses: its own, those here, and the marked ones of its tests.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
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

describe("each rule has enough plans", () => {
	const folder = import.meta.dirname;
	const texts = readdirSync(folder)
		.filter((name) => name.endsWith(".test.ts"))
		.map((name) => readFileSync(join(folder, name), "utf8"))
		.join("\n");
	const count = (text: string, pattern: RegExp): number => [...text.matchAll(pattern)].length;

	test.each(rules.map((rule) => [rule.code, rule] as const))("%s", (code, { wrong, right }) => {
		const own = join(folder, `${code}.test.ts`);
		const cases = casesOf(code);
		const marked = count(texts, new RegExp(`\\^ ${code}(?![a-z-])`, "g"));
		const checkedRight = existsSync(own) ? count(readFileSync(own, "utf8"), /checkRight\(/g) : 0;
		expect(wrong.length + marked + cases.fires.length).toBeGreaterThanOrEqual(3);
		expect(right.length + checkedRight + cases.silent.length).toBeGreaterThanOrEqual(3);
	});
});
