// Whatever bytes are handed to the command: findings with a place, status 0 or 1, the same each time; never a fault of ours.
import * as fs from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import type { Reading } from "../../src/surfaces/files/read.ts";
import { makeFolder, run } from "./stand-in.ts";

const samples = new URL("../../samples/", import.meta.url);
const texts = fs
	.readdirSync(samples)
	.filter((name) => name.endsWith(".ferrule"))
	.map((name) => fs.readFileSync(new URL(name, samples), "utf8"));
const words = [...new Set(texts.join(" ").split(/\s+/))];

/** Samples cut short, or with a line taken out, doubled, exchanged with the next, or replaced. */
const mangled = fc
	.record({
		text: fc.constantFrom(...texts),
		at: fc.nat(),
		how: fc.constantFrom("prefix", "delete", "double", "swap", "replace", "indent"),
		words: fc.array(fc.constantFrom(...words), { maxLength: 12 }),
	})
	.map(({ text, at, how, words }) => {
		if (how === "prefix") return text.slice(0, at % (text.length + 1));
		const lines = text.split("\n");
		const index = at % lines.length;
		const line = lines[index] ?? "";
		const next = lines[index + 1] ?? "";
		const instead = {
			delete: [],
			double: [line, line],
			swap: [next, line],
			replace: [words.join(" ")],
			indent: [`${" ".repeat(words.length)}${line}`],
		};
		return lines.toSpliced(index, how === "swap" ? 2 : 1, ...instead[how]).join("\n");
	});
const soup = fc
	.array(
		fc.array(fc.constantFrom(...words, "\t", "  ", '"', "//", ":", ",", "(", "?", "@", "\u202e", "__proto__"), {
			maxLength: 14,
		}),
		{
			maxLength: 12,
		},
	)
	.map((lines) => lines.map((line) => line.join(" ")).join("\n"));
const bytes = fc.oneof(
	{ weight: 1, arbitrary: fc.uint8Array({ maxLength: 400 }) },
	{ weight: 2, arbitrary: fc.string({ unit: "binary", maxLength: 400 }).map((text) => new TextEncoder().encode(text)) },
	{ weight: 6, arbitrary: mangled.map((text) => new TextEncoder().encode(text)) },
	{ weight: 6, arbitrary: soup.map((text) => new TextEncoder().encode(text)) },
);

const folder = join(import.meta.dirname);
const check = (input: Uint8Array, form: string) =>
	run(folder, ["check", "-", "--as", form, "--fail-on", "note"], {
		checkPlan: (text, file) => ({
			...checkPlan(text, file),
			draw: async () => [],
			repairs: async () => new Map(),
			writeOut: async () => "",
			makeMistakes: async () => [],
			sizes: async () => ({ sizes: [], circuits: [], units: "feet" }),
			figures: async () => ({ kind: "refused", why: "" }),
			show: () => ({ text: "", short: "", json: {} }),
		}),
		readInput: async (): Promise<Reading> => ({ kind: "bytes", bytes: input, identity: { device: 0n, inode: 0n } }),
	});

test("2,000 texts: findings with a place, and twice the same", async () => {
	await fc.assert(
		fc.asyncProperty(bytes, async (input) => {
			const outcome = await check(input, "json");
			expect(outcome.messages).toBe("");
			const report = JSON.parse(outcome.output);
			expect(outcome.status).toBe(
				report.findings.some((each: { accepted: unknown }) => each.accepted === null) ? 1 : 0,
			);
			const lines = new TextDecoder().decode(input).split(/\r\n|\r|\n/);
			for (const finding of report.findings) {
				expect(finding.line).toBeLessThanOrEqual(lines.length);
				expect(finding.column).toBeGreaterThanOrEqual(1);
				expect(finding.endColumn).toBeGreaterThanOrEqual(finding.column);
			}
			expect(await check(input, "json")).toEqual(outcome);
		}),
		{ numRuns: 2000 },
	);
});

test("the text form takes the same, and lets no control character through", async () => {
	await fc.assert(
		fc.asyncProperty(bytes, async (input) => {
			for (const form of ["text", "short"]) {
				const { status, output } = await check(input, form);
				expect([0, 1]).toContain(status);
				expect(output).not.toMatch(/(?!\n)[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
			}
		}),
		{ numRuns: 300 },
	);
});

test("any words behind the command: a status of the table, never a fault of ours", async () => {
	const empty = makeFolder();
	const word = fc.oneof(
		fc.constantFrom(
			"check",
			"show",
			"tidy",
			"--write",
			"--diff",
			"explain",
			"help",
			"--help",
			"-",
			"--",
			"--as",
			"json",
			"--fail-on",
			"note",
			"--color",
		),
		fc.string({ unit: "binary", maxLength: 12 }).filter((text) => !text.includes("\0") && !text.includes("/")),
	);
	await fc.assert(
		fc.asyncProperty(fc.array(word, { maxLength: 5 }), async (call) => {
			const { status } = await run(empty, call);
			expect([0, 1, 64, 66]).toContain(status);
		}),
		{ numRuns: 500 },
	);
	expect(fs.readdirSync(empty)).toEqual([]);
});
