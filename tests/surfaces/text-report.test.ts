import { describe, expect, test } from "vitest";
import type { NumberedFinding } from "../../src/base/finding.ts";
import { type FindingSlots, finding } from "../../src/base/finding.ts";
import type { Span } from "../../src/base/span.ts";
import { drawExcerpt } from "../../src/surfaces/report/excerpt.ts";
import { choosePaint } from "../../src/surfaces/report/paint.ts";
import { writeText } from "../../src/surfaces/report/text.ts";
import { visible, widthOf, wrap } from "../../src/surfaces/report/visible.ts";

const plan = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
`;
const at = (line: number, column: number, endColumn: number): Span => ({
	file: "van.ferrule",
	line,
	column,
	endColumn,
});
const numbered = (number: number, slots: Partial<FindingSlots>): NumberedFinding => ({
	...finding({
		code: "ground-broken",
		level: "danger",
		title: "The ground of b2 does not lead back to where its supply is bonded",
		span: at(5, 12, 14),
		why: "A fault in anything that is plugged in at b2 leaves its metal case live.",
		help: "Land bunks-2.bare on the ground splice of b1.",
		basis: "common practice",
		...slots,
	}),
	number,
});
const write = (findings: readonly NumberedFinding[], width = 80, colours = false, text = plan) =>
	writeText([{ file: "van.ferrule", text, findings }], { width, paint: choosePaint(colours) });

describe("what was checked", () => {
	const scope = { rules: 57, modes: ["shore", "inv"], parts: 9, conductors: 1, incomplete: false };
	const report = (file: string, findings: readonly NumberedFinding[], changes: Partial<typeof scope> = {}) => ({
		file,
		text: plan,
		findings,
		scope: { ...scope, ...changes },
	});
	const gap = (number: number) => numbered(number, { level: "note", unchecked: true });
	const tell = (...reports: ReturnType<typeof report>[]) =>
		writeText(reports, { width: 500, paint: choosePaint(false) });

	test("is told of one plan with its modes", () => {
		expect(tell(report("a", []))).toContain("Checked: 57 rules on 9 parts and 1 conductor, on shore and on inv.\n");
	});

	test("and what was not, by number and in the line of counts", () => {
		const text = tell(report("a", [numbered(1, {}), gap(2), gap(3)]));
		expect(text).toContain("on inv. Not checked for want of facts: see 2 and 3.\n");
		expect(text).toMatch(/\na: 1 danger, 2 notes; 2 things not checked\n$/);
	});

	test("of several plans in a sum, what was not checked plan by plan", () => {
		const text = tell(report("a", [gap(1)]), report("b\u001b", [gap(1), gap(2)]), report("c", []));
		expect(text).toContain(
			"Checked: 3 plans with 27 parts and 3 conductors. Not checked for want of facts: see 1 of a, ",
		);
		expect(text).toContain("see 1 of a, 1 and 2 of b\\x1b.");
		expect(text).toMatch(/\n3 plans: 3 notes; 3 things not checked\n$/);
	});

	test("and that lines were left out", () => {
		expect(tell(report("a", [], { incomplete: true }))).toContain(" Lines that were not understood are left out");
	});
});

const full = numbered(1, {
	key: "root",
	label: "no ground arrives here",
	also: [{ span: at(3, 9, 14), label: "the circuit" }],
	path: [
		{ point: "shore.ground", by: "" },
		{ point: "LC.ground.1", by: "LC-1.bare" },
		{ point: "b1/ground", by: "bunks-1.bare" },
	],
	figures: [{ name: "way back", found: 1.25, limit: 0.5, unit: "ohm", source: "common practice" }],
	modes: ["shore", "inverting"],
});
const consequence = numbered(2, {
	code: "ground-missing",
	level: "error",
	title: "b3 has no ground",
	consequenceOf: "root",
});

test("a note tells the place, the sum, the way, why, what to do, and what follows", () => {
	expect(write([full, consequence])).toBe(`1  DANGER: The ground of b2 does not lead back to where its supply is bonded
   (ground-broken)
     place  van.ferrule:5:12
         5     9 ft to b2: receptacle
                       ^^ no ground arrives here
         3  circuit bunks from LC breaker 20 A by 12-2
                    ^^^^^ the circuit
     found  way back 1.25 ohm, limit 0.5 ohm (common practice)
       way  shore.ground
            LC-1.bare to LC.ground.1
            bunks-1.bare to b1/ground
   if left  A fault in anything that is plugged in at b2 leaves its metal case
            live.
     to do  Land bunks-2.bare on the ground splice of b1.
        by  common practice
  while on  shore, inverting
  leads to  number 2, line 5: b3 has no ground (ground-missing)

Do not switch it on as it is. Follow the local code, have the work checked by a
licensed person, and isolate and prove dead before you touch a conductor.
van.ferrule: 1 danger, 1 error
`);
});

test("a plan without findings says so, and that it is not yet safe", () => {
	expect(write([])).toBe(`Follow the local code, have the work checked by a licensed person, and isolate
and prove dead before you touch a conductor.
van.ferrule: nothing to put right
`);
});

test("what was accepted is told with its reason and counted apart", () => {
	const text = write([numbered(1, { level: "warning", accepted: "looked at" })]);
	expect(text).toContain("1  WARNING, accepted: ");
	expect(text).toContain('  accepted  "looked at"\n');
	expect(text).toContain("van.ferrule: 1 warning accepted\n");
});

test("a danger that was accepted is told as one, in full and with a caution", () => {
	const text = write([{ ...full, accepted: "looked at" }]);
	for (const words of ["1  DANGER, accepted: ", "   if left  ", '  accepted  "looked at"'])
		expect(text).toContain(words);
	expect(text).toContain("A danger that was accepted is a danger still. ");
	expect(text).toMatch(/van\.ferrule: 1 danger accepted\n$/);
});

test("the place of a finding is told once, also where its line is empty", () => {
	const text = write([numbered(1, { span: { file: "van.ferrule", line: 99, column: 1, endColumn: 1 } })]);
	expect(text.match(/van\.ferrule:99/g)).toHaveLength(1);
});

test("what follows from an accepted finding is told in full", () => {
	const text = write([{ ...full, accepted: "looked at" }, consequence]);
	expect(text).toContain("2  ERROR: b3 has no ground");
	expect(text).toContain("   follows  from number 1: The ground of b2");
});

test("findings that follow from each other, or from one that is not there, are told by themselves", () => {
	const one = numbered(1, { key: "one", consequenceOf: "other" });
	const other = numbered(2, { key: "other", consequenceOf: "one" });
	const lost = numbered(3, { key: "lost", consequenceOf: "nowhere" });
	expect(write([one, other, lost]).match(/DANGER/g)).toHaveLength(3);
});

test("a consequence of a consequence stands under the root", () => {
	const third = numbered(3, { key: "third", title: "b4 has no ground", consequenceOf: consequence.key });
	expect(write([full, consequence, third])).toContain("  leads to  number 3, line 5: b4 has no ground");
});

test("places of one stretch are shown once, with all that is said of them", () => {
	const also = ["b1.hot", "b1.neutral"].map((label) => ({ span: at(4, 12, 14), label }));
	const text = write([numbered(1, { label: "here", also: [...also, { span: at(5, 12, 14), label: "and here" }] })]);
	expect(text).toContain("^^ here, and here\n");
	expect(text).toContain("^^ b1.hot, b1.neutral\n");
	expect(text.match(/14 ft to b1/g)).toHaveLength(1);
});

test("a long way is told at both ends", () => {
	const path = Array.from({ length: 40 }, (_, step) => ({ point: `p${step}`, by: step === 0 ? "" : `w${step}` }));
	const text = write([numbered(1, { path })]);
	expect(text).toContain("w5 to p5\n            (28 more)\n            w34 to p34");
});

test("every line fits in the columns, wide letters and long words included", () => {
	const title = `寝台の緑 ${"x".repeat(200)}`;
	const text = `${" ".repeat(300)}${"界".repeat(300)}\n`;
	const long = numbered(1, { title, span: { ...at(1, 400, 405) }, label: "word ".repeat(40).trim() });
	for (const width of [50, 80, 110])
		for (const line of write([long, full], width, false, text).split("\n"))
			expect(widthOf(line)).toBeLessThanOrEqual(width);
});

test("colours change nothing but the colours", () => {
	const coloured = write([full, consequence], 80, true);
	expect(coloured).not.toBe(write([full, consequence]));
	expect(
		coloured
			.split("\u001b")
			.map((part, index) => (index === 0 ? part : part.slice(part.indexOf("m") + 1)))
			.join(""),
	).toBe(write([full, consequence]));
});

describe("nothing in a plan can steer the terminal", () => {
	test.each([
		["\u001b[2J", "\\x1b[2J"],
		["\u0007", "\\x07"],
		["\u007f", "\\x7f"],
		["\u009b31m", "\\x9b31m"],
		["a\tb", "a\\x09b"],
		["\u202eabc", "\\u{202e}abc"],
		["\u200b", "\\u{200b}"],
		["\ud800", "\\u{d800}"],
		["\u2028", "\\u{2028}"],
		["café 寝 𝄞", "café 寝 𝄞"],
	])("%j is shown as %s", (text, shown) => {
		expect(visible(text)).toBe(shown);
	});

	test("wherever it stands in a finding", () => {
		const evil = "\u001b]8;;x\u0007\u202e\n";
		const text = write(
			[
				numbered(1, {
					title: evil,
					label: evil,
					why: evil,
					help: evil,
					basis: evil,
					accepted: evil,
					modes: [evil],
					path: [{ point: evil, by: evil }],
					figures: [{ name: evil, found: 1, limit: 1, unit: evil, source: evil }],
					span: { ...at(1, 1, 2), file: `van${evil}` },
				}),
			],
			80,
			false,
			evil,
		);
		expect(text).not.toMatch(/[^\P{C}\n]/u);
	});
});

describe("an excerpt", () => {
	const draw = (line: string, column: number, end: number, width = 40, label = "") =>
		drawExcerpt(line, at(7, column, end), label, width, 3).map(({ text }) => text);

	test("puts the marks under the place, whatever stands before it", () => {
		expect(draw("a\tb寝c", 5, 6)).toEqual(["  7  a  b寝c", "           ^"]);
		expect(draw("\u001bx", 2, 3)).toEqual(["  7  \\x1bx", "         ^"]);
	});

	test("marks one column where the place is empty, and none past the end of the line", () => {
		expect(draw("ab", 3, 3)).toEqual(["  7  ab", "       ^"]);
		expect(draw("ab", 2, 99)).toEqual(["  7  ab", "      ^"]);
		expect(draw("ab", 99, 120)).toEqual(["  7  ab", "       ^"]);
	});

	test("is cut around the place", () => {
		expect(draw(`${"a".repeat(60)}HERE${"b".repeat(60)}`, 61, 65)).toEqual([
			"  7  ...aaaaaaaaaaaaaaHEREbbbbbbbbbbb...",
			"                      ^^^^",
		]);
		expect(draw(`HERE${"b".repeat(60)}`, 1, 5)).toEqual(["  7  HEREbbbbbbbbbbbbbbbbbbbbbbbbbbbb...", "     ^^^^"]);
		expect(draw(`${"a".repeat(60)}HERE`, 61, 65)).toEqual(["  7  ...aaaaaaaaaaaaaaHERE", "                      ^^^^"]);
	});

	test("takes a line of ten thousand letters", () => {
		for (const text of draw("x".repeat(10_000), 1, 10_001)) expect(text.length).toBeLessThanOrEqual(40);
	});

	test("puts a label that does not fit on lines of its own", () => {
		expect(draw("abc", 1, 4, 30, "a label that is longer than the line")).toEqual([
			"  7  abc",
			"     ^^^",
			"     a label that is longer",
			"     than the line",
		]);
	});
});

test("wrapping keeps every word and breaks only what is too long", () => {
	expect(wrap("one two three", 7)).toEqual(["one two", "three"]);
	expect(wrap("abcdefghij", 4)).toEqual(["abcd", "efgh", "ij"]);
	expect(wrap("", 4)).toEqual([""]);
	expect(wrap("寝台寝", 4)).toEqual(["寝台", "寝"]);
});

describe("a repair", () => {
	test("is told with the lines to write and where they go", () => {
		const repair = [
			{ line: 3, instead: 1, lines: ["circuit bunks from LC breaker 15 A by 12-2 \u001b"] },
			{ line: 5, instead: 2, lines: [] },
			{ line: 9, instead: 0, lines: ["a", "b"] },
		];
		const text = write([numbered(1, { repair })]);
		expect(text).toContain(`     write  once it is wired so, in place of line 3
         3  circuit bunks from LC breaker 15 A by 12-2 \\x1b
            and nothing in place of lines 5 to 6
            and before line 9
         9  a
        10  b
        by  common practice
`);
	});
});
