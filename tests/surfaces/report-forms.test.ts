// The forms of a report that other tools read: SARIF by what is recalled of its schema, and workflow commands of a code host.
import * as fs from "node:fs";
import { join } from "node:path";
import { Ajv } from "ajv";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type FindingSlots, finding, levels, type NumberedFinding } from "../../src/base/finding.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { rules } from "../../src/rules/index.ts";
import { writeGithub } from "../../src/surfaces/report/github.ts";
import { writeSarif } from "../../src/surfaces/report/sarif.ts";
import { quietWorld } from "./quiet-world.ts";
import schema from "./sarif-2.1.0-recalled.schema.json" with { type: "json" };
import { makeFolder, run } from "./stand-in.ts";

const isReference = (text: string) => /^(?:[A-Za-z0-9\-._~!$&'()*+,;=:@/?#]|%[0-9A-F]{2})*$/.test(text);
const judge = new Ajv({
	allErrors: true,
	strictRequired: false,
	formats: { uri: URL.canParse, "uri-reference": isReference },
});
const fits = judge.compile(schema);
const pages = quietWorld().pages();

function numbered(slots: Partial<FindingSlots>): NumberedFinding {
	const span = { file: "van.ferrule", line: 3, column: 5, endColumn: 9 };
	const base = { code: "ground-broken", level: "danger", title: "t", span, why: "w.", help: "h.", basis: "b" } as const;
	return { ...finding({ ...base, ...slots }), number: 1 };
}
const plan = (findings: readonly NumberedFinding[], file = "van.ferrule") => ({ file, text: "", findings });
const sarif = (findings: readonly NumberedFinding[], file?: string) =>
	JSON.parse(writeSarif([plan(findings, file)], pages, "1.2.3"));

const words = fc.string({ minLength: 1, unit: "binary" });
const place = fc.record({
	file: words,
	line: fc.integer({ min: 1 }),
	column: fc.integer({ min: 1 }),
	endColumn: fc.integer({ min: 1 }),
});
const anything = fc
	.record(
		{
			level: fc.constantFrom(...levels),
			code: fc.constantFrom("ground-broken", "end-loose", "receptacle", "made-up"),
			title: words,
			label: fc.string({ unit: "binary" }),
			span: place,
			also: fc.array(fc.record({ span: place, label: fc.string({ unit: "binary" }) })),
			marks: fc.array(words),
			path: fc.array(fc.record({ point: words, by: fc.string({ unit: "binary" }) })),
			accepted: words,
		},
		{ requiredKeys: ["span"] },
	)
	.map(numbered);

describe("sarif", () => {
	test("any report fits", () => {
		fc.assert(
			fc.property(fc.array(anything), words, (all, file) => {
				const report: unknown = sarif(all, file);
				expect(fits(report), JSON.stringify(fits.errors)).toBe(true);
			}),
			{ numRuns: 300 },
		);
	});

	test("what is found in the wrong plan of every rule fits, with that rule described", () => {
		for (const { code, wrong } of rules) {
			const { findings } = checkPlan(wrong[0] ?? "", "van.ferrule");
			const report = sarif(findings);
			expect(fits(report), JSON.stringify(fits.errors)).toBe(true);
			const [only] = report.runs;
			expect(only.results).toHaveLength(findings.length);
			for (const { ruleId, ruleIndex } of only.results) expect(only.tool.driver.rules[ruleIndex].id).toBe(ruleId);
			const described = only.tool.driver.rules.find(({ id }: { id: string }) => id === code);
			expect(described.help.text).toContain("meter: ");
		}
	});

	test("a report that is not one does not fit", () => {
		const report = sarif([numbered({})]);
		const [first] = report.runs;
		expect(fits(report)).toBe(true);
		for (const wrong of [
			{ ...report, version: "2.0.0" },
			{ ...report, runs: [{ ...first, tool: {} }] },
			{ ...report, runs: [{ ...first, results: [{ ...first.results[0], level: "danger" }] }] },
			{ ...report, runs: [{ ...first, results: [{ ...first.results[0], message: {} }] }] },
			{ ...report, runs: [{ ...first, results: [{ ...first.results[0], place: "here" }] }] },
			{ ...report, runs: [{ ...first, artifacts: [{ location: { uri: "a b" } }] }] },
		])
			expect(fits(wrong)).toBe(false);
	});

	test("names in messages make no link and no gap to fill", () => {
		const [result] = sarif([numbered({ title: "[b1](http://h) {0}" })]).runs[0].results;
		expect(result.message.text).toContain("\\[b1\\](http://h) {{0}}");
	});

	test("what was accepted is suppressed with its reason; a danger is never", () => {
		const [danger, error] = sarif([
			numbered({ accepted: "looked at" }),
			numbered({ level: "error", accepted: "looked at" }),
		]).runs[0].results;
		expect(error.suppressions).toEqual([{ kind: "inSource", status: "accepted", justification: "looked at" }]);
		expect(danger.suppressions).toBe(undefined);
		expect(danger.message.text).toContain('Accepted by the builder, and as bad as before: "looked at"');
		expect([danger.level, danger.properties.accepted]).toEqual(["error", "looked at"]);
	});

	test("the command writes it, to nobody but the output", async () => {
		const folder = makeFolder();
		fs.writeFileSync(join(folder, "a b.ferrule"), "an error here\n");
		const { output, messages, status } = await run(folder, ["check", ".", "--as", "sarif"], { pages: () => pages });
		const report = JSON.parse(output);
		expect([status, messages, fits(report)]).toEqual([1, "", true]);
		expect(report.runs[0].tool.driver).toMatchObject({ name: "Ferrule", semanticVersion: "1.2.3" });
		expect(report.runs[0].results[0].locations[0].physicalLocation).toEqual({
			artifactLocation: { uri: "a%20b.ferrule" },
			region: { startLine: 1, startColumn: 4, endColumn: 9 },
		});
	});
});

describe("github", () => {
	const write = (slots: Partial<FindingSlots>) => writeGithub([plan([numbered(slots)])]).text;

	test("a line for each finding, with the level that the host knows", () => {
		expect(write({})).toBe(
			"::error file=van.ferrule,line=3,col=5,endColumn=8,title=danger (ground-broken)::t%0Aw.%0Ah.\n",
		);
		expect(write({ level: "error" })).toMatch(/^::error /);
		expect(write({ level: "warning" })).toMatch(/^::warning /);
		expect(write({ level: "note" })).toMatch(/^::notice /);
	});

	test("an accepted danger stands out still, what else was accepted is a notice", () => {
		expect(write({ accepted: "looked at" })).toBe(
			'::warning file=van.ferrule,line=3,col=5,endColumn=8,title=danger accepted (ground-broken)::t%0Aw.%0Ah.%0AAccepted by the builder: "looked at"\n',
		);
		expect(write({ level: "error", accepted: "looked at" })).toMatch(/^::notice .*title=error accepted /);
	});

	test("no text from a plan is a command, a slot or a second line", () => {
		const evil = "a%0A::error::x\r\n::stop-commands::y,line=9:";
		const span = { file: `a,b:c%${evil}`, line: 1, column: 1, endColumn: 1 };
		const text = write({ title: evil, why: evil, help: evil, accepted: evil, span });
		expect(text.trimEnd().split(/[\r\n]/)).toHaveLength(1);
		const [, slots = "", message = ""] = /^::warning (.*?)::(.*)\n$/.exec(text) ?? [];
		expect(slots.split(",").map((slot) => slot.split("=")[0])).toEqual(["file", "line", "col", "endColumn", "title"]);
		expect(slots.split(",")[0]).not.toMatch(/[:\r\n]/);
		expect(message).toContain("a%250A::error::x");
	});

	test("of very many the worst are printed, wherever they stand, and all are counted", async () => {
		const folder = makeFolder();
		fs.writeFileSync(join(folder, "a.ferrule"), `${"note\n".repeat(150)}${"error\n".repeat(60)}`);
		fs.writeFileSync(join(folder, "b.ferrule"), "danger\n".repeat(40));
		for (const form of ["text", "short", "github"]) {
			const { output } = await run(folder, ["check", ".", "--as", form]);
			const shown = (word: string) => output.split("\n").filter((line) => line.includes(`${word}-written`)).length;
			expect([shown("danger"), shown("error"), shown("note")]).toEqual([40, 60, 100]);
		}
		fs.rmSync(join(folder, "b.ferrule"));
		fs.writeFileSync(join(folder, "a.ferrule"), "error\n".repeat(250));
		const { output, messages } = await run(folder, ["check", "a.ferrule", "--as", "github"]);
		expect(output.trim().split("\n")).toHaveLength(200);
		expect(messages).toBe("a.ferrule: 250 errors (250 in all, 50 not listed here)\n");
	});
});
