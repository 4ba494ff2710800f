// Both sides of each limit: the last figure that is right leaves the rule silent, the next one makes it report.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { rules } from "../../src/rules/index.ts";
import { limits } from "./cases/limits.ts";

/** What a rule finds above a note. */
function levelsOf(plan: string, code: string): string[] {
	const { findings } = checkPlan(plan, "plan");
	expect(findings.filter((finding) => /unknown|missing-unit|misread/.test(finding.code))).toEqual([]);
	return findings.filter((finding) => finding.code === code && finding.level !== "note").map(({ title }) => title);
}

describe.each(limits)("$code, $what", ({ code, plan, fits, exceeds }) => {
	test(`${fits} is right`, () => {
		expect(levelsOf(plan.replaceAll("{}", fits), code)).toEqual([]);
	});

	test(`${exceeds} is not`, () => {
		expect(levelsOf(plan.replaceAll("{}", exceeds), code)).not.toEqual([]);
	});
});

/** Rules whose findings tell a figure without a limit that a plan could keep to, and why. */
const without: ReadonlyMap<string, string> = new Map([
	[
		"circuits-joined",
		"two circuits that meet are wrong at any amperes; the figure tells what they let through together",
	],
	["protection-missing", "a device that is no circuit's own does not protect it at any amperes"],
	["switch-without-effect", "a switch that changes nothing in one position is wrong"],
]);

test("each rule whose findings tell a limit has both of its sides here", () => {
	const told = rules
		.map(({ code }) => code)
		.filter((code) => readFileSync(join(import.meta.dirname, "told", `${code}.txt`), "utf8").includes("  figures: "));
	const shown = new Set([...limits.map(({ code }) => code), ...without.keys()]);
	expect(told.filter((code) => !shown.has(code))).toEqual([]);
});
