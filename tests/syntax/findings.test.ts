// Every code with the smallest text that shows it, the place it marks, and what its message offers.
import { describe, expect, it } from "vitest";
import { type SyntaxCode, syntaxProblems } from "../../src/syntax/codes.ts";
import { readText } from "../../src/syntax/read.ts";
import { compact } from "./compact.ts";
import { found, unmark } from "./marked.ts";

const chain = "circuit c from LC by 12-2\n";
const deep = Array.from({ length: 33 }, (_, level) => `${" ".repeat(level)}light l${level}`).join("\n");

/** What is told of files that a text uses; `sources.test.ts` has texts for these. */
type FileCode = Extract<SyntaxCode, `file${string}`>;

/** Texts with the findings they give, marked; the code they are about is the key. */
const cases: Record<Exclude<SyntaxCode, "text-too-long" | FileCode>, readonly string[]> = {
	"character-hidden": [
		"light l\u202e1\n       ^ character-hidden",
		"light l1 \u0000\n         ^ character-hidden",
		'light l1 "a\u0001"\n           ^ character-hidden',
	],
	"character-look-alike": [
		"place bunk\u2013left\n          ^ character-look-alike",
		"light l\u0661 9 W\n       ^ character-look-alike",
		"light l1 \uff19 W\n         ^ character-look-alike",
		"light l1\u00a09 W\n        ^ character-look-alike",
		"plan \u201cFern\u201d\n     ^ character-look-alike",
		"place a \u221215 C\n        ^ character-look-alike",
		"cable own 2\u00d71.5\n           ^ character-look-alike",
	],
	"character-unknown": [
		"main = 30 A\n     ^ character-unknown",
		"light l1 /\n         ^ character-unknown",
		"light l1 \ud83d\ude00\n         ^^ character-unknown",
		"light l1 \ud800\n         ^ character-unknown",
	],
	"end-second": [`${chain}  9 ft to ch.+, ch.-\n                ^^^^ end-second`],
	"colon-missing": [
		`${chain}  9 ft to b1 receptacle\n             ^^^^^^^^^^ colon-missing`,
		"mode m a\n       ^ colon-missing",
	],
	"colon-unexpected": ["b1: receptacle\n  ^ colon-unexpected", "plan\n  region: us\n        ^ colon-unexpected"],
	"direction-unclosed": [
		'place a "\u202ex"\n         ^ direction-unclosed',
		"place a // \u2067x\n           ^ direction-unclosed",
	],
	"figures-unlike": [
		"load l 12 V / 5 A\n       ^^^^^^^^^^ figures-unlike",
		"load l 12 / 5\n       ^^^^^^ figures-unlike",
	],
	"hop-misplaced": [
		"14 ft to b1\n^^^^^^^^^^^ hop-misplaced",
		"from b1 by 12-2\n^^^^^^^^^^^^^^^ hop-misplaced",
		"at b1\n  9 ft to b2\n  ^^^^^^^^^^ hop-misplaced",
		`${chain}9 ft to b1\n^^^^ hop-misplaced\n9 ft to b2`,
	],
	"indentation-mixed": [`${chain}    9 ft to b1\n\t9 ft to b2\n^ indentation-mixed`],
	"indentation-too-deep": [`${deep}\n${" ".repeat(33)}light x\n${" ".repeat(33)}^^^^^^^ indentation-too-deep`],
	"indentation-uneven": [
		"box b\n    r1: receptacle\n  r2: receptacle\n  ^^ indentation-uneven",
		`${chain}  9 ft to b1\n      5 ft to b2\n      ^^^^ indentation-uneven`,
		" place a\nplace b\n^^^^^ indentation-uneven",
	],
	"indentation-unexpected": [
		"place a\n  place b\n  ^^^^^ indentation-unexpected",
		"at b\n  a.b on c.d\n    e.f on g.h\n    ^^^ indentation-unexpected",
	],
	"label-too-long": [`place a "${"x".repeat(201)}"\n        ${"^".repeat(203)} label-too-long`],
	"landing-misplaced": [
		"galley-1.black on g1.hot\n^^^^^^^^^^^^^^^^^^^^^^^^ landing-misplaced",
		"join a.b c.d by lever 2\n^^^^^^^^^^^^^^^^^^^^^^^ landing-misplaced",
	],
	"length-unexpected": [
		`${chain}  9 ft 3 ft to b1\n       ^^^^ length-unexpected`,
		`${chain}  9 ft bolted to b1\n  ^^^^ length-unexpected`,
		`${chain}  within 9 in via b1\n         ^^^^ length-unexpected`,
	],
	"line-too-long": [`place ${"x".repeat(9_995)}\n${"^".repeat(10_001)} line-too-long`],
	"name-dotted": ["place a.b\n      ^^^ name-dotted", `${chain}  9 ft to b.x: light\n          ^^^ name-dotted`],
	"name-hyphen": ["place a-\n      ^^ name-hyphen", "place -a\n      ^^ name-hyphen"],
	"name-missing": [
		"place\n     ^ name-missing",
		"panel main-30 30 A\nlight 9 W\n      ^^^ name-missing",
		`${chain}  9 ft to : light\n          ^ name-missing`,
		`${chain}  9 ft to b1:\n            ^ name-missing`,
		`${chain}  9 ft by to b1\n       ^^ name-missing`,
		"at b\n  link a.b\n  ^^^^^^^^ name-missing",
	],
	"name-mixed-script": ["place p\u043erch\n      ^^^^^ name-mixed-script\nlight l1 in p\u043erch"],
	"name-reserved": ["place via\n      ^^^ name-reserved"],
	"name-too-long": [`place ${"x".repeat(65)}\n      ${"^".repeat(65)} name-too-long`],
	"number-unclear": [
		"load l 1,500 W\n       ^^^^^^^ number-unclear",
		"load l 1.2.3\n       ^^^^^ number-unclear",
		"cable a 60 AWG\n        ^^^^^^ number-unclear",
		`${chain}  0 ft to b1\n  ^^^^ number-unclear`,
		`load l ${"9".repeat(400)} W\n       ${"^".repeat(400)} number-unclear`,
	],
	"quote-unclosed": ['plan "Fern\n     ^ quote-unclosed'],
	"reading-stopped": [`${"=\n".repeat(5_000)}x\n^ reading-stopped`],
	"reason-missing": [
		"accept a at b\n^^^^^^^^^^^^^ reason-missing",
		"accept a because\n                ^ reason-missing",
	],
	"reason-too-long": [`accept a because "${"x".repeat(501)}"\n                 ${"^".repeat(503)} reason-too-long`],
	"row-unclear": [
		"light l1..m6\n      ^^^^^^ row-unclear",
		"light l6..l1\n      ^^^^^^ row-unclear",
		"light l1..l1001\n      ^^^^^^^^^ row-unclear\nlight k1..k1000",
	],
	"text-missing": ["use file\n    ^^^^ text-missing"],
	"unit-missing": [`${chain}  14 to b1\n  ^^ unit-missing`, `${chain}  within to b1\n         ^^ unit-missing`],
	"unit-unfit": [`${chain}  14 A to b1\n  ^^^^ unit-unfit`],
	"unit-unknown": [
		`${chain}  14 fet to b1\n     ^^^ unit-unknown`,
		"load l 30 a\n          ^ unit-unknown",
		"load l 30xyz\n         ^^^ unit-unknown",
	],
	"word-missing": [
		`${chain}  9 ft b1\n         ^ word-missing`,
		"circuit c by 12-2\n          ^^ word-missing",
		"at b\n  a.b c.d\n  ^^^^^^^ word-missing",
		"at b\n  join (a.b c.d\n               ^ word-missing",
	],
	"word-unexpected": [
		`${chain}  9 ft to l: light by 12-2\n                   ^^ word-unexpected`,
		"panel LC from a by 10-2, 9 ft in b\n                              ^^ word-unexpected",
		`${chain}  9 ft to b1 in galley\n             ^^ word-unexpected`,
	],
	"word-unknown": [
		"circut c from LC by 12-2\n^^^^^^ word-unknown\n  9 ft to b1",
		"att b\n^^^ word-unknown\n  a.b on c.d",
		"mde m: a\n^^^ word-unknown",
	],
};

describe.each(Object.entries(cases))("%s", (code, texts) => {
	it.each(texts.map((text) => [text]))("%j", (marked) => {
		const { text, marks } = unmark(marked);
		expect(marks.some((mark) => mark.endsWith(` ${code}`))).toBe(true);
		const all = found(text);
		expect(code === "reading-stopped" ? all.filter((mark) => mark.endsWith(code)) : all).toEqual(marks);
	});
});

describe("the list of codes", () => {
	it("has a code once, in order, and a paragraph, a reason and a cure for each", () => {
		const codes = syntaxProblems.map(({ code }) => code);
		expect(codes).toEqual([...new Set(codes)].sort());
		for (const { meaning, why, help } of syntaxProblems) {
			expect(meaning.length).toBeGreaterThan(50);
			expect(why).toMatch(/\.$/);
			expect(help.length).toBeGreaterThan(10);
		}
	});

	it("is given by the cases above and by a text that is too long, each code", () => {
		expect(found(" ".repeat(2_000_001))).toEqual(["1:1-2 text-too-long"]);
		const ofTexts = syntaxProblems.map(({ code }) => code).filter((code) => !/^files?-/.test(code));
		expect([...Object.keys(cases), "text-too-long"].sort()).toEqual(ofTexts);
	});
});

describe("a message", () => {
	const helpOf = (text: string) =>
		readText(text, "p")
			.findings.map(({ help }) => help)
			.join(" ");

	it("offers the nearest word or unit, and the units that fit", () => {
		expect(helpOf(`${chain}  14 fet to b1`)).toContain("Did you mean `ft`?");
		expect(helpOf(`${chain}  14 to b1`)).toContain("m, cm, mm, ft, in");
		expect(helpOf("load l 30 ma")).toContain("Did you mean `mA`?");
		expect(helpOf("circut c from LC by 12-2\n  9 ft to b1")).toContain("Did you mean `circuit`?");
		expect(helpOf(`${chain}  9 ft too b1`)).toContain("Did you mean `to`?");
		expect(helpOf("acept a: b")).toContain("Did you mean `accept`?");
		expect(helpOf("circuit c from LC by 12/2\n  9 ft to b1")).toContain("Did you mean `12-2`?");
	});

	it("shows the line as it was meant where `to` or the conductors' commas are amiss", () => {
		expect(helpOf(`${chain}  5 ft d5: receptacle 20 A`)).toContain("`5 ft to d5: receptacle 20 A`");
		expect(helpOf(`${chain}  d4: receptacle`)).toContain("`14 ft to d4: receptacle`");
		expect(helpOf("at b\n  a.black fork, c.black fork on b.hot")).toContain("`a.black, c.black fork on b.hot`");
		expect(helpOf("b1: receptacle")).toContain("`14 ft to b1: receptacle`");
	});

	it("shows a line that is right, which is read without a finding", () => {
		const wrong = [
			"panel",
			"place",
			"mode m",
			"circuit c",
			"feed",
			"at",
			"cable",
			"use",
			"accept",
			"reading",
			"plan\n  :",
		];
		for (const text of [...wrong, `${chain}  9 ft`, `${chain}  from`, "at b\n  join (", "box b\n  r1:"]) {
			const help = helpOf(text);
			const shown = /like this: `(.*)`\./.exec(help)?.[1];
			expect(`${text}: ${shown}`).not.toContain("undefined");
			const [head, ...below] = text.split("\n");
			expect(found(below.length > 0 ? `${head}\n  ${shown}` : (shown ?? ":"))).toEqual([]);
		}
	});

	it("says where the notation is written down, and is an error unless it is only advice", () => {
		const levels = new Map(
			Object.values(cases).flatMap((texts) =>
				texts.flatMap((marked) => readText(unmark(marked).text, "p").findings.map(({ code, level }) => [code, level])),
			),
		);
		for (const [code, level] of levels)
			if (code !== "name-mixed-script" && code !== "character-hidden") expect(level).toBe("error");
		expect(levels.get("name-mixed-script")).toBe("warning");
		expect(readText("place", "p").findings[0]?.basis).toBe("the notation, grammar/reference.md");
	});

	it("counts columns in UTF-16 units and lines by every line ending", () => {
		expect(found('place "\u{1f600}" x\r\nplace\rplace a-\n')).toEqual([
			"1:7-11 name-missing",
			"2:6-7 name-missing",
			"3:7-9 name-hyphen",
		]);
	});
});

describe("what a hop says twice", () => {
	it.each([
		["9 ft 3 ft to b1", "length-unexpected", "hop length <9 ft> to b1"],
		["within 9 in within 3 in to b1", "length-unexpected", "hop within <9 in> to b1"],
		["9 ft within 3 in to b1", "length-unexpected", "hop within <3 in> to b1"],
		["9 ft as t1 as t2 to b1", "word-unexpected", "hop length <9 ft> tag t1 to b1"],
		["by 12-2 by 14-2 to b1", "word-unexpected", "hop by <12-2> to b1"],
		["by 12-2 bolted to b1", "word-unexpected", "hop by <12-2> bolted to b1"],
		["-3 ft to b1", "number-unclear", "hop to b1"],
	])("%s", (hop, code, read) => {
		const { tree, findings } = readText(`${chain}  ${hop}`, "p");
		expect(findings.map((finding) => finding.code)).toEqual([code]);
		expect(compact(tree).split("\n")[1]).toBe(`  ${read}`);
	});

	it("adds up where all of it runs through places", () => {
		const read = (hop: string) => compact(readText(`${chain}  ${hop}`, "p").tree).split("\n")[1];
		expect(read("3 m through attic to b1")).toBe("  hop length <3 m> through attic length <3 m> to b1");
		expect(read("1 m through bay, 50 cm through attic to b1")).toContain("hop length <1.5 m> through bay");
		expect(read("through attic to b1")).toBe("  hop through attic to b1");
		expect(read("? through attic to b1")).toBe("  hop through attic to b1");
	});
});

describe("what is guessed from a wrong line", () => {
	const read = (text: string) => compact(readText(text, "p").tree);

	it("reads hops in the column of their circuit as its own, and says so once", () => {
		const text = `${chain}9 ft to b1: box\n  r1: receptacle\n 3 ft to b2\nfrom b2\n  5 ft to b3\n`;
		expect(found(text)).toEqual(["2:1-5 hop-misplaced"]);
		expect(read(text)).toBe(
			"circuit c from LC by <12-2>\n  hop length <9 ft> to b1: box\n    member r1: receptacle\n" +
				"  hop length <3 ft> to b2\n  branch from b2\n    hop length <5 ft> to b3",
		);
		expect(found(`${chain}place a\n9 ft to b1`)).toEqual(["3:1-11 hop-misplaced"]);
	});

	it("reads a cable's make-up with a slash as the make-up", () => {
		expect(read("circuit c from LC by 12/2\n  9 ft to b1")).toContain("by <12-2>");
		expect(found("circuit c from LC by 12/2\n  9 ft to b1")).toEqual(["1:22-26 number-unclear"]);
		expect(read("circuit c from LC by 240/2\n  9 ft to b1")).toContain("by <?>");
	});

	it("takes what is said of each conductor's end for all of them", () => {
		const text = "at b\n  a-1.black fork, a-2.black fork on b.hot\n  a-1.red loose, a-2.red loose";
		expect(found(text)).toEqual(["2:13-17 word-unexpected", "3:11-16 word-unexpected"]);
		expect(read(text)).toContain("land a-1 > black, a-2 > black with fork on b > hot");
		expect(read(text)).toContain("free a-1 > red loose");
	});

	it("keeps the length where only its unit is misspelt, and the thing where only the colon is missing", () => {
		expect(read(`${chain}  14 fet to b1: light 9 w`)).toContain("hop length <14 ft> to b1: light [<9 W>]");
		expect(read(`${chain}  9 ft to b1 receptacle "Left"`)).toContain('hop length <9 ft> to b1: receptacle "Left"');
	});

	it("leaves out the length where nothing tells its unit", () => {
		expect(read(`${chain}  14 to b1`)).toContain("hop to b1");
	});

	it("reads a run under a misspelt first word, and the lines below a line that was not understood", () => {
		expect(read("circut c from LC by 12-2\n  9 ft to b1: light")).toBe(
			"circuit c from LC by <12-2>\n  hop length <9 ft> to b1: light",
		);
		expect(found("circuit c by 12-2\n  9 to b1")).toEqual(["1:11-13 word-missing", "2:3-4 unit-missing"]);
	});

	it("tells the names on lines that were not understood, so that nobody calls them unknown", () => {
		expect(readText("circuit c by 12-2\n  9 ft to b1: light", "p").tree.doubtful).toEqual(
			expect.arrayContaining(["c", "b1"]),
		);
		expect(readText(`${chain}  9 ft to b1: light`, "p").tree.doubtful).toEqual([]);
	});

	it("reads an indented statement as if it stood at the left edge", () => {
		expect(read("place a\n  circuit c from LC by 12-2\n    9 ft to b1")).toBe(
			"place a\ncircuit c from LC by <12-2>\n  hop length <9 ft> to b1",
		);
	});
});
