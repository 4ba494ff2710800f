// What every rule says, in full: a text a rule. Refresh with `npx vitest run tests/rules/told-findings.test.ts -u` and read what changed.
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { rules } from "../../src/rules/index.ts";
import { tellRule } from "./told-findings.ts";

describe("what a rule says", () => {
	test.each(rules.map(({ code }) => code))("%s", async (code) => {
		await expect(tellRule(code)).toMatchFileSnapshot(`told/${code}.txt`);
	});

	test("there is no text of a rule that is gone", () => {
		const codes = new Set(rules.map(({ code }) => `${code}.txt`));
		expect(readdirSync(join(import.meta.dirname, "told")).filter((name) => !codes.has(name))).toEqual([]);
	});
});
