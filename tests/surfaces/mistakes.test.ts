import * as fs from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import schema from "../../grammar/mistakes.schema.json" with { type: "json" };
import { makeFolder, run } from "./stand-in.ts";

const fits = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(schema);

function folderWith(text: string): string {
	const folder = makeFolder();
	fs.writeFileSync(join(folder, "a.ferrule"), text);
	return folder;
}

test("a table has a row for each sort of slip, and what was missed is listed", async () => {
	const { output, messages } = await run(folderWith("slip\n"), ["mistakes", "a.ferrule"]);
	expect(messages).toBe("");
	expect(
		output,
	).toBe(`a.ferrule: 6 single mistakes: 2 found, 1 the same as the plan, 1 harmless, 1 for the meter only, 1 missed

slip               made  found  by name  same  harmless  meter  missed
an end left loose     6      2        1     1  1 (20 %)      1       1

missed: an end left loose: a.black off b.hot
`);
});

test("every mistake is listed on request, with what came of it", async () => {
	const { output } = await run(folderWith("fine\n"), ["mistakes", "a.ferrule", "--every"]);
	expect(output.split("\n").slice(5)).toEqual([
		"found: an end left loose: a.black off b.hot (end-loose)",
		"found: an end left loose: a.black off b.hot (ground-broken, by what follows from it)",
		"same: an end left loose: a.black off b.hot",
		"harmless: an end left loose: a.black off b.hot (it is a spare)",
		"meter-only: an end left loose: a.black off b.hot (12 V at b)",
		"",
	]);
});

test("json fits the published schema", async () => {
	const { output } = await run(folderWith("slip\n"), ["mistakes", "a.ferrule", "--as", "json"]);
	const report = JSON.parse(output);
	expect(fits(report), JSON.stringify(fits.errors)).toBe(true);
	expect(report.mistakes[0]).toEqual({
		file: "a.ferrule",
		operator: "an end left loose",
		at: "a.black off b.hot",
		verdict: "found",
		by: "end-loose",
		named: true,
		reason: null,
		reading: null,
	});
	expect(report.summary).toMatchObject({ made: 6, found: 2, same: 1, harmless: 1, "meter-only": 1, missed: 1 });
});
