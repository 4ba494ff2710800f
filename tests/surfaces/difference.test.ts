import { describe, expect, test } from "vitest";
import { tidyPlan } from "../../src/pipeline.ts";
import { writeDifference } from "../../src/surfaces/report/difference.ts";
import { finishedPlans } from "../writing/plan-texts.ts";
import { ruffle } from "../writing/ruffle.ts";

/** Lines with what a difference asks for done to them. */
function apply(before: string, difference: string): string {
	const lines = before.split("\n");
	const after: string[] = [];
	let next = 0;
	for (const row of difference.split("\n").slice(2, -1)) {
		const start = /^@@ -([0-9]+),([0-9]+) \+/.exec(row);
		if (start !== null) {
			const first = Number(start[1]) - (start[2] === "0" ? 0 : 1);
			after.push(...lines.slice(next, first));
			next = first;
			continue;
		}
		if (row.startsWith("+")) after.push(row.slice(1));
		else {
			expect(lines[next]).toBe(row.slice(1));
			if (row.startsWith(" ")) after.push(row.slice(1));
			next++;
		}
	}
	return [...after, ...lines.slice(next)].join("\n");
}

describe("a difference", () => {
	test("has three lines around each change, and changes near each other in one piece", () => {
		const before = ["a", "b", "c", "d", "e  e", "f", "g", "h  h", "i", "j", "k", "l", "m", "n", "o", "p  p", ""];
		const after = before.map((line) => line.replace("  ", " "));
		expect(writeDifference(before.join("\n"), after.join("\n"), "x").split("\n")).toEqual([
			"--- x",
			"+++ x",
			"@@ -2,10 +2,10 @@",
			...[" b", " c", " d", "-e  e", "+e e", " f", " g", "-h  h", "+h h", " i", " j", " k"],
			"@@ -13,4 +13,4 @@",
			...[" m", " n", " o", "-p  p", "+p p", ""],
		]);
	});

	test("has lines that go before lines that come, and blank lines that are left out", () => {
		expect(writeDifference("\na  b\n\n\nc  d\n", "a b\n\nc d\n", "x").split("\n").slice(2)).toEqual([
			"@@ -1,5 +1,3 @@",
			...["-", "-a  b", "+a b", " ", "-", "-c  d", "+c d", ""],
		]);
	});

	test("tells a last line that is not ended", () => {
		expect(writeDifference("a", "a\n", "x").split("\n").slice(3)).toEqual([
			"-a",
			"\\ No newline at end of file",
			"+a",
			"",
		]);
	});

	test("of one text with itself is empty", () => {
		expect(writeDifference("a\nb\n", "a\nb\n", "x")).toBe("");
	});

	test.each(finishedPlans)("done to $name with another layout, makes it tidy", async ({ text }) => {
		let seed = 5;
		const next = () => {
			seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
			return seed / 2 ** 32;
		};
		const ruffled = ruffle(text, next);
		const tidied = await tidyPlan(ruffled, "x");
		expect(apply(ruffled, writeDifference(ruffled, tidied.text, "x"))).toBe(tidied.text);
	});
});
