// The page of the rules is what they say today; refresh it with `npx vitest run tests/grammar -u` and read what changed.
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import schema from "../../grammar/pages.schema.json" with { type: "json" };
import { checkPlan } from "../../src/pipeline.ts";
import { rules } from "../../src/rules/index.ts";
import { writePageJson, writePageListJson } from "../../src/surfaces/reference/page-json.ts";
import { writeRulesPage } from "../../src/surfaces/reference/rules-page.ts";
import { quietWorld } from "../surfaces/quiet-world.ts";

const fits = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(schema);
const world = quietWorld();
const pages = world.pages();

describe("grammar/rules.md", () => {
	const written = writeRulesPage(pages, world.checkPlan);

	test("is fresh", async () => {
		await expect(written).toMatchFileSnapshot("../../grammar/rules.md");
	});

	test("has every rule, its plans, and something found in each wrong one", () => {
		for (const { code, wrong, right } of rules) {
			const part = written.slice(written.indexOf(`### ${code}\n`)).split("\n### ")[0] ?? "";
			expect([...part.matchAll(/^```ferrule$/gm)]).toHaveLength(wrong.length + right.length);
			for (const text of [...wrong, ...right]) expect(part).toContain(text.trimEnd());
			expect([...part.matchAll(/^- finds at line/gm)].length).toBeGreaterThanOrEqual(wrong.length);
		}
	});

	test("says where each applies as the check does", () => {
		const row = /^\| \[box-overfilled\].*$/m.exec(written)?.[0];
		expect(row).toBe("| [box-overfilled](#box-overfilled) | error | yes | yes | yes | no | no | no |");
	});
});

describe("pages as JSON", () => {
	test.each(pages.map((page) => [page.name, page] as const))("%s fits the published schema", (_, page) => {
		const json: unknown = JSON.parse(writePageJson(page, world.checkPlan));
		expect(fits(json), JSON.stringify(fits.errors)).toBe(true);
	});

	test("a rule's page holds what a check of its wrong plan finds", () => {
		const rule = rules.find(({ code }) => code === "protection-too-large");
		const page = pages.find(({ name }) => name === rule?.code);
		const [text = ""] = rule?.wrong ?? [];
		if (page === undefined) throw new Error("there is no such page");
		const [first] = JSON.parse(writePageJson(page, world.checkPlan)).pages[0].plans;
		const found = checkPlan(text, "plan").findings.filter(({ code }) => code === page.name);
		expect(first).toMatchObject({ sort: "wrong", text, findings: found.map(({ title, level }) => ({ title, level })) });
		expect(first.findings[0].figures[0]).toMatchObject({ unit: "A" });
	});

	test("the list names every page once, and none whole", () => {
		const json = JSON.parse(writePageListJson(pages));
		expect(fits(json), JSON.stringify(fits.errors)).toBe(true);
		expect(json.pages.map(({ name }: { name: string }) => name)).toEqual(pages.map(({ name }) => name));
		expect(json.pages.some((page: object) => "plans" in page)).toBe(false);
	});

	test("something else does not fit", () => {
		expect(fits({ schema: 1, pages: [{ name: "x" }] })).toBe(false);
		expect(fits({ schema: 2, pages: [] })).toBe(false);
	});
});
