// Reading never fails: 2,000 texts a run, from any characters at all to plans with a line too many or too few.
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { units } from "../../src/base/quantity.ts";
import { syntaxProblems } from "../../src/syntax/codes.ts";
import { readText } from "../../src/syntax/read.ts";
import type { Statement } from "../../src/syntax/tree.ts";
import { reservedWords } from "../../src/syntax/vocabulary.ts";
import { examples } from "../grammar/page.ts";

const samples = new URL("../../samples/", import.meta.url);
const plans = [
	...readdirSync(samples)
		.filter((name) => name.endsWith(".ferrule"))
		.sort()
		.map((name) => readFileSync(new URL(name, samples), "utf8")),
	examples()
		.map(({ plan }) => plan)
		.join("\n"),
];
const codes = new Set<string>(syntaxProblems.map(({ code }) => code));

/** Reads a text twice and sees to it that all that is said of it holds together. */
function readSoundly(text: string) {
	const read = readText(text, "p");
	expect(readText(text, "p")).toEqual(read);
	const lines = text.replace(/^\ufeff/, "").split(/\r\n|\r|\n/);
	for (const { code, span, title, help, why } of read.findings) {
		expect(codes).toContain(code);
		expect(title).not.toMatch(/undefined|[\p{Cc}\p{Cs}]/u);
		expect(`${help}${why}`).not.toMatch(/undefined|[\p{Cc}\p{Cs}]/u);
		expect(span.line).toBeGreaterThanOrEqual(1);
		expect(span.line).toBeLessThanOrEqual(lines.length);
		expect(span.column).toBeGreaterThanOrEqual(1);
		expect(span.endColumn).toBeGreaterThan(span.column);
		// A thing that is missing is marked one past the end.
		expect(span.endColumn).toBeLessThanOrEqual((lines[span.line - 1]?.length ?? 0) + 2);
	}
	if (read.tree.statements.some(({ kind }) => kind === "broken")) expect(read.findings).not.toEqual([]);
	return read;
}

const words = fc.constantFrom(
	...[
		...reservedWords,
		"b1",
		"LC.1A",
		"receptacle",
		"g1.load.hot",
		"house.-",
		"black(2)",
		"c@LC.red",
		"l1..l6",
		"loose",
		"both",
		"ends",
	],
	...[
		"12",
		"0.8",
		"-3",
		"12-2",
		"3G2.5",
		"#12",
		"4/0",
		"120/240",
		"1,5",
		"1.2.3",
		"30A",
		"?",
		":",
		"(",
		")",
		"..",
		"/",
		"+",
		"-",
		"=",
	],
	...[
		'"Left"',
		'"open',
		"\u201cx\u201d",
		"//",
		",",
		"\t",
		"\u202e",
		"\u2212",
		"\u00a0",
		"\ud800",
		"\0",
		"'",
		"constructor",
		"__proto__",
	],
	...units.map(({ symbol }) => symbol),
);
const blanks = fc.constantFrom(" ", " ", " ", "", "  ", ", ");
const starts = fc.nat({ max: 6 }).map((count) => " ".repeat(count));
const soup = fc
	.array(
		fc
			.tuple(starts, fc.array(fc.tuple(words, blanks), { maxLength: 10 }))
			.map(([start, pieces]) => start + pieces.flat().join("")),
		{ maxLength: 12 },
	)
	.map((lines) => lines.join("\n"));
const plan = fc.constantFrom(...plans);

describe("any text", () => {
	it("of any characters gives a tree and findings", () => {
		fc.assert(
			fc.property(fc.string({ unit: "binary", maxLength: 200 }), (text) => void readSoundly(text)),
			{ numRuns: 300 },
		);
		fc.assert(
			fc.property(fc.uint16Array({ maxLength: 60 }), (codes) => void readSoundly(String.fromCharCode(...codes))),
			{ numRuns: 300 },
		);
	});

	it("of the notation's own words in any order gives a tree and findings", () => {
		fc.assert(
			fc.property(soup, (text) => void readSoundly(text)),
			{ numRuns: 600 },
		);
	});

	it("that is the beginning of a plan gives a tree and findings", () => {
		fc.assert(
			fc.property(plan, fc.double({ min: 0, max: 1, noNaN: true }), (text, part) => {
				readSoundly(text.slice(0, Math.floor(text.length * part)));
			}),
			{ numRuns: 300 },
		);
	});
});

describe("a plan with a line deleted, doubled or exchanged", () => {
	it("keeps every statement that the change does not touch", () => {
		const change = fc.tuple(fc.constantFrom("delete", "double", "exchange"), fc.nat(), fc.nat());
		fc.assert(
			fc.property(plan, change, (text, [sort, one, other]) => {
				const lines = text.split("\n").map((content, index) => ({ content, index }));
				const first = one % lines.length;
				const second = other % lines.length;
				const changed = [...lines];
				const [a, b] = [lines[first], lines[second]];
				if (a === undefined || b === undefined) return;
				if (sort === "delete") changed.splice(first, 1);
				else if (sort === "double") changed.splice(first, 0, a);
				else {
					changed[first] = b;
					changed[second] = a;
				}
				const touched = new Set(sort === "exchange" ? [first, second] : [first]);
				const before = readSoundly(text).tree.statements;
				const after = readSoundly(changed.map(({ content }) => content).join("\n")).tree.statements;
				for (const [place, statement] of before.entries()) {
					// A line may also fall to the statement above it: that one is not held to anything.
					const top = before[place]?.span.line ?? 1;
					const end = before[place + 2]?.span.line ?? lines.length + 1;
					if ([...touched].some((index) => index + 1 >= top && index + 1 < end)) continue;
					const line = changed.findIndex(({ index }) => index + 1 === top) + 1;
					const kept = after.find(({ span }) => span.line === line);
					expect(kept && unplaced(kept)).toEqual(unplaced(statement));
				}
			}),
			{ numRuns: 500 },
		);
	});
});

/** A statement with its lines counted from its own first line. */
function unplaced(statement: Statement): unknown {
	return JSON.parse(
		JSON.stringify(statement, (key, value: unknown) =>
			key === "line" && typeof value === "number" ? value - statement.span.line : value,
		),
	);
}

describe("a text without end", () => {
	const million = (piece: string) => piece.repeat(Math.ceil(1_000_000 / piece.length));

	it.each([
		["one line", "a 1 ft "],
		["quotes", '"'],
		["quotes in lines", 'light a "x" "y\n'],
		["words alone", "a\n"],
		["marks alone", ":\n"],
		["figures", `${"1 1.1.1 1/1/1 1-1- 1,1 ".repeat(400)}\n`],
		["blanks", " "],
		["blanks in lines", `${" ".repeat(9_000)}a\n`],
		["other scripts", "\u201c\u00e9\u2212\uff11\u202e\u00a0\u{1f600}\ud800 x\n"],
		["nought characters", `${"\0".repeat(900)}\n`],
		["hops", "circuit c from LC by 12-2\n  9 ft to b: light\n"],
	])("of %s is read", (_, piece) => {
		const { tree, findings } = readText(million(piece), "p");
		expect(tree.statements.length + findings.length).toBeGreaterThan(0);
	});

	it("is read whatever its depth", () => {
		const deep = Array.from({ length: 1_900 }, (_, depth) => `${" ".repeat(depth)}a b`).join("\n");
		expect(readText(deep, "p").findings.map(({ code }) => code)).toEqual(["indentation-too-deep"]);
	});

	it("of names that every object has is read like any other", () => {
		const names = ["__proto__", "constructor", "toString", "hasOwnProperty", "valueOf"];
		const text = names.map((name) => `place ${name}\nlight ${name} 9 W in ${name}\n`).join("");
		expect(readText(text, "p").findings).toEqual([]);
		expect(readText(text, "p").tree.statements.length).toBe(2 * names.length);
	});
});
