import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { readText } from "../../src/syntax/read.ts";
import { compact } from "../syntax/compact.ts";
import { examples } from "./page.ts";

describe("the reference page", () => {
	const all = examples();

	it("has an example for every statement, and says what some of them are read as", () => {
		const kinds = new Set(all.flatMap(({ plan }) => readText(plan, "page").tree.statements.map(({ kind }) => kind)));
		expect([...kinds].sort()).toEqual(
			["accept", "at", "definition", "mode", "place", "plan", "reading", "run", "thing", "use"].sort(),
		);
		expect(all.filter(({ readAs }) => readAs !== undefined).length).toBeGreaterThan(8);
	});

	it.each(all)("line $line: is read with the findings it names", ({ plan, finds }) => {
		const codes = readText(plan, "page").findings.map(({ code }) => code);
		expect([...new Set(codes)].sort()).toEqual([...finds].sort());
	});

	it.each(all.filter(({ readAs }) => readAs !== undefined))("line $line: is read as the page says", (example) => {
		expect(compact(readText(example.plan, "page").tree)).toBe(example.readAs);
	});

	it.each(all.filter(({ isWhole }) => isWhole))("line $line: is a whole plan that checks clean", ({ plan }) => {
		const found = checkPlan(plan, "page").findings.filter(({ level }) => level !== "note");
		expect(found.map(({ code, title }) => `${code}: ${title}`)).toEqual([]);
	});
});
