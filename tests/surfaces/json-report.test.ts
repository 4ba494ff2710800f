import * as fs from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import schema from "../../grammar/findings.schema.json" with { type: "json" };
import type { NumberedFinding } from "../../src/base/finding.ts";
import { finding, levels } from "../../src/base/finding.ts";
import { writeJson } from "../../src/surfaces/report/json.ts";
import { makeFolder, run } from "./stand-in.ts";

const fits = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(schema);

const words = fc.string({ minLength: 1, unit: "binary" });
const place = fc.record({
	file: words,
	line: fc.integer({ min: 1 }),
	column: fc.integer({ min: 1 }),
	endColumn: fc.integer({ min: 1 }),
});
const findings: fc.Arbitrary<NumberedFinding> = fc
	.record({
		level: fc.constantFrom(...levels),
		title: words,
		span: place,
		also: fc.array(fc.record({ span: place, label: words })),
		path: fc.array(fc.record({ point: words, by: fc.string() })),
		figures: fc.array(
			fc.record({
				name: words,
				found: fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e12, max: 1e12 }),
				limit: fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e12, max: 1e12 }),
				unit: fc.string(),
				source: words,
			}),
		),
		modes: fc.array(words),
		accepted: words,
		consequenceOf: words,
		unchecked: fc.constant(true as const),
		repair: fc.array(
			fc.record({ line: fc.integer({ min: 1 }), instead: fc.nat(), lines: fc.array(fc.string({ unit: "binary" })) }),
			{ minLength: 1 },
		),
	})
	.map((slots) => ({ ...finding({ code: "ground-broken", why: "w", help: "h", basis: "b", ...slots }), number: 1 }));

test("any report fits the published schema", () => {
	fc.assert(
		fc.property(fc.array(findings), (all) => {
			const report: unknown = JSON.parse(writeJson([{ file: "a", text: "", understood: true, findings: all }]));
			expect(fits(report), JSON.stringify(fits.errors)).toBe(true);
		}),
		{ numRuns: 200 },
	);
});

test("the report of the command fits it too, and holds what was found", async () => {
	const folder = makeFolder();
	fs.writeFileSync(join(folder, "a.ferrule"), "an error here\nand a note, accept it\n");
	fs.writeFileSync(join(folder, "b.ferrule"), "nonsense\n");
	const { output, messages } = await run(folder, ["check", ".", "--as", "json"]);
	const report = JSON.parse(output);
	expect(fits(report), JSON.stringify(fits.errors)).toBe(true);
	expect(messages).toBe("");
	expect(report.plans).toEqual([
		{
			file: "a.ferrule",
			understood: true,
			counts: { danger: 0, error: 1, warning: 0, note: 0, accepted: 1, acceptedDangers: 0 },
			checked: { rules: 3, modes: ["shore"], parts: 2, conductors: 3, incomplete: false },
		},
		{
			file: "b.ferrule",
			understood: false,
			counts: { danger: 0, error: 0, warning: 0, note: 0, accepted: 0, acceptedDangers: 0 },
			checked: { rules: 3, modes: ["shore"], parts: 2, conductors: 2, incomplete: true },
		},
	]);
	expect(report.findings[0]).toEqual({
		number: 1,
		key: "error-written@a.ferrule:1:4",
		code: "error-written",
		level: "error",
		file: "a.ferrule",
		line: 1,
		column: 4,
		endColumn: 9,
		title: "The word error stands here",
		label: "",
		why: "It asks for a finding.",
		help: "Take it out.",
		basis: "common practice",
		figures: [],
		path: [],
		modes: [],
		marks: [],
		also: [],
		unchecked: false,
		repair: null,
		consequenceOf: null,
		accepted: null,
	});
	expect(report.findings[1].accepted).toBe("on purpose");
});

test("a report with anything left out or added does not fit", () => {
	const report = JSON.parse(writeJson([{ file: "a", text: "", understood: true, findings: [] }]));
	expect(fits({ ...report, schema: 2 })).toBe(false);
	expect(fits({ ...report, when: "today" })).toBe(false);
	expect(fits({ schema: 1, plans: [] })).toBe(false);
});

test("figures are rounded as in the text form, and there is no negative zero", () => {
	const figure = { name: "n", found: 0.1 + 0.2, limit: -0.0001, unit: "A", source: "s" };
	const base = finding({
		code: "x",
		level: "note",
		title: "t",
		span: { file: "a", line: 1, column: 1, endColumn: 1 },
		why: "w",
		help: "h",
		basis: "b",
		figures: [figure],
	});
	const text = writeJson([{ file: "a", text: "", understood: true, findings: [{ ...base, number: 1 }] }]);
	expect(text).toContain('"found": 0.3,');
	expect(text).toContain('"limit": 0,');
});
