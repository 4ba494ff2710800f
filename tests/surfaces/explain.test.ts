import { describe, expect, test } from "vitest";
import { kinds } from "../../src/kinds/index.ts";
import { planCodes } from "../../src/plan/codes.ts";
import type { Rule } from "../../src/rules/rule.ts";
import { makePages } from "../../src/surfaces/reference/pages.ts";
import { syntaxProblems } from "../../src/syntax/codes.ts";
import { makeFolder, run } from "./stand-in.ts";

const rule: Rule = {
	code: "ground-broken",
	level: "danger",
	what: "A ground does not lead back to where its supply is bonded.",
	why: "A fault leaves a case live.",
	help: "Join the ground in every box.",
	basis: "common practice",
	meter: "Dead: no more than a few tenths of an ohm from case to ground bar.",
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: ['plan "Wrong"\n'],
	right: ['plan "Right"\n', 'plan "Also right"\n'],
	check: () => [],
};
const pages = makePages({ rules: [rule], problems: [...syntaxProblems, ...planCodes], kinds });
const explain = (...words: readonly string[]) => run(makeFolder(), ["explain", ...words], { pages: () => pages });

test("a rule's page tells all that the rule says of itself", async () => {
	const { output } = await explain("ground-broken");
	expect(output).toBe(`ground-broken (rule, danger)

A ground does not lead back to where its supply is bonded.

   if left  A fault leaves a case live.
     to do  Join the ground in every box.
     meter  Dead: no more than a few tenths of an ohm from case to ground bar.
        by  common practice
   applies  regions us, iec; rules camper, boat, building

Wrong:

    plan "Wrong"

Right 1:

    plan "Right"

Right 2:

    plan "Also right"
`);
});

test("every code and kind has a page, and the list names each once", async () => {
	const { output } = await explain();
	const names = output.split("\n").flatMap((line) => /^ {2}([a-z0-9-]+)(?: \(\w+\))?$/.exec(line)?.[1] ?? []);
	expect(new Set(names).size).toBe(names.length);
	for (const name of ["ground-broken", ...syntaxProblems.map(({ code }) => code), ...kinds.map((kind) => kind.name)]) {
		expect(names).toContain(name);
		const page = await explain(name);
		expect(page.status).toBe(0);
		expect(page.output.startsWith(`${name} (`)).toBe(true);
		for (const line of page.output.split("\n"))
			if (!line.startsWith("    ")) expect(line.length).toBeLessThanOrEqual(80);
	}
});

test("a kind is found under its other words", async () => {
	expect((await explain("outlet")).output).toMatch(/^receptacle \(kind of thing\)/);
});

describe("an unknown code", () => {
	test("offers the nearest", async () => {
		expect((await explain("groundbroken")).messages).toContain("Did you mean `ground-broken`?");
	});

	test("points at the list where nothing is near", async () => {
		expect((await explain("xyzzy-plugh")).messages).toContain("`ferrule explain` lists all codes and kinds.");
	});
});
