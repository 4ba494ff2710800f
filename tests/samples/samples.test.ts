// Every sample and starter says what it should: finished plans have nothing above a note, faulty ones exactly what is listed beside them.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { checkPlan, tidyPlan } from "../../src/pipeline.ts";

const root = join(import.meta.dirname, "../..");

/** What was found above a note, a line each: `line code`, consequences indented under their root's line. */
function listFindings(folder: string, name: string): string[] {
	const result = checkPlan(readFileSync(join(root, folder, name), "utf8"), name);
	return result.findings
		.filter((finding) => finding.level !== "note")
		.map(
			(finding) =>
				`${finding.consequenceOf === undefined ? "" : "  "}${finding.span.line} ${finding.level} ${finding.code}`,
		);
}

const plans = ["samples", "seeds"].flatMap((folder) =>
	readdirSync(join(root, folder))
		.filter((name) => name.endsWith(".ferrule"))
		.map((name) => [folder, name] as const),
);

describe("finished plans and starters", () => {
	test.each(plans.filter(([, name]) => !name.startsWith("faulty-")))(
		"%s/%s has nothing above a note",
		(folder, name) => {
			expect(listFindings(folder, name)).toEqual([]);
		},
	);
});

describe("every plan", () => {
	test.each(plans)("%s/%s is laid out as tidy lays it out", async (folder, name) => {
		const text = readFileSync(join(root, folder, name), "utf8");
		expect(await tidyPlan(text, name)).toEqual({ text, kept: [] });
	});
});

describe("plans that are wrong on purpose", () => {
	test.each(plans.filter(([, name]) => name.startsWith("faulty-")))(
		"%s/%s has exactly its planted faults",
		(folder, name) => {
			const expected = readFileSync(join(root, folder, name.replace(/\.ferrule$/, ".findings")), "utf8");
			expect(listFindings(folder, name)).toEqual(expected.trimEnd().split("\n"));
		},
	);
});
