// One layout for all plans: what it looks like, and that nothing of a plan is lost or changed by it.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buildCircuit } from "../../src/circuit/build-circuit.ts";
import { canonicalCircuit } from "../../src/documents/circuit-record.ts";
import { tidyPlan } from "../../src/pipeline.ts";
import { buildPlan } from "../../src/plan/build-plan.ts";
import { readText } from "../../src/syntax/read.ts";
import { tidyText } from "../../src/writing/tidy-text.ts";
import { chancePlans, finishedPlans, shownPlans } from "./plan-texts.ts";
import { ruffle } from "./ruffle.ts";

function tidy(text: string): { text: string; kept: number[] } {
	const tidied = tidyText({ text, ...readText(text, "plan") });
	return { text: tidied.text, kept: [...tidied.kept].toSorted((one, other) => one - other) };
}

/** What a text comes to: its circuit, and what is found on the way to it, which tells what else it says. */
function meaningOf(text: string): { circuit: string; codes: readonly string[] } {
	const read = readText(text, "plan");
	const planned = buildPlan(read.tree);
	const { circuit } = buildCircuit(planned.plan);
	return {
		circuit: canonicalCircuit(circuit),
		codes: [...read.findings, ...planned.findings].map(({ code }) => code),
	};
}

function circuitOf(text: string): string {
	return meaningOf(text).circuit;
}

function commentsOf(text: string): string[] {
	return text
		.split(/\r\n|\r|\n/)
		.flatMap((line) => /^(?:[^"/]|"[^"]*"|\/(?!\/))*(\/\/.*)$/.exec(line)?.[1]?.trimEnd() ?? []);
}

/** Numbers in a row from a seed, each at least 0 and below 1. */
function chanceFrom(seed: number): () => number {
	let state = seed >>> 0;
	return () => {
		state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
		return state / 2 ** 32;
	};
}

/** A text laid out, as one column of lines. */
function laidOut(...lines: readonly string[]): string[] {
	const { text, kept } = tidy(lines.join("\n"));
	expect(kept).toEqual([]);
	expect(tidy(text).text).toBe(text);
	expect(text.endsWith("\n")).toBe(true);
	return text.slice(0, -1).split("\n");
}

describe("the layout", () => {
	test("has two blanks a level, whatever there was", () => {
		expect(
			laidOut(
				"plan",
				"\tregion us",
				"box a",
				"     b: light",
				"circuit c from LC by 12-2",
				" 9 ft to x: box",
				"   y: light",
			),
		).toEqual([
			"plan",
			"  region us",
			"box a",
			"  b: light",
			"circuit c from LC by 12-2",
			"  9 ft to x: box",
			"    y: light",
		]);
	});

	test("takes a comma between a figure and its unit for white space, and keeps one between words", () => {
		expect(laidOut("inlet,   shore 30,A 120 V", "feed f from shore by 10-2", "  30, ft to LC")).toEqual([
			"inlet, shore 30 A 120 V",
			"feed f from shore by 10-2",
			"  30 ft to LC",
		]);
	});

	test("ends the lengths of a chain in one column", () => {
		expect(
			laidOut(
				"circuit c from LC by 12-2",
				" 9 ft to a: light",
				" 14 ft to b: light",
				" 4 ft 6 in to d: light",
				" ? to e: light",
			),
		).toEqual([
			"circuit c from LC by 12-2",
			"   9 ft to a: light",
			"  14 ft to b: light",
			"   4 ft 6 in to d: light",
			"   ? to e: light",
		]);
		expect(laidOut("feed c from b by 3G2.5", " 2.4 m to a: light", " 3 m to b: light", " 12.75 m to d: light")).toEqual(
			["feed c from b by 3G2.5", "    2.4 m to a: light", "      3 m to b: light", "  12.75 m to d: light"],
		);
	});

	test("begins hops that begin with a word where the widest length begins", () => {
		expect(
			laidOut(
				"circuit c from LC by 12-2",
				" via s: switch",
				" 9 ft to a: box",
				" from a",
				"  9 ft to b: light",
				"  from b",
				"   3 ft to d: light",
				"  120 ft to e: light",
				" within 14 in to f: light",
				" 14 ft to g: light",
			),
		).toEqual([
			"circuit c from LC by 12-2",
			"  via s: switch",
			"   9 ft to a: box",
			"  from a",
			"      9 ft to b: light",
			"    from b",
			"      3 ft to d: light",
			"    120 ft to e: light",
			"  within 14 in to f: light",
			"  14 ft to g: light",
		]);
	});

	test("begins all lengths in one column where their ends would not tell which chain they belong to", () => {
		const lines = [
			"circuit c from LC by 3G2.5",
			"  1200 mm to a: box",
			"  900 mm to b: box",
			"  from b",
			"    12 m to d: light",
			"    9 m to e: light",
			"  7 mm to f: light",
		];
		expect(laidOut(...lines)).toEqual(lines);
	});

	test("indents what is below a hop from where the hop begins", () => {
		expect(
			laidOut("circuit c from LC by 12-2", " 1000 mm to a: box", "   r1: light", " 9 mm to b: box", "   r2: light"),
		).toEqual([
			"circuit c from LC by 12-2",
			"  1000 mm to a: box",
			"    r1: light",
			"     9 mm to b: box",
			"       r2: light",
		]);
	});

	test("begins what slots hold in one column", () => {
		expect(
			laidOut(
				"panel LC",
				" slot 1A:breaker // a",
				" slot 10:  breaker",
				" NB: neutral-bar 8",
				" slot 2 : breaker // b",
			),
		).toEqual([
			"panel LC",
			"  slot 1A: breaker  // a",
			"  slot 10: breaker",
			"  NB: neutral-bar 8",
			"  slot 2:  breaker  // b",
		]);
	});

	test("has one blank between words, and marks where they belong", () => {
		expect(
			laidOut(
				'panel   LC"Load   centre"main 30A from shore by 10-2,12ft',
				"  slot 1A :breaker 20 A,",
				"box j1 , metal",
				"  l1 .. l6:light 2W each",
				"at j1",
				"  join one-1.black(2)  ferrule ,( r1.hot   r2.hot )by lever 3",
			),
		).toEqual([
			'panel LC "Load   centre" main 30 A from shore by 10-2, 12 ft',
			"  slot 1A: breaker 20 A",
			"box j1, metal",
			"  l1..l6: light 2 W each",
			"at j1",
			"  join one-1.black(2) ferrule, (r1.hot r2.hot) by lever 3",
		]);
	});

	test.each([
		["inlet s 30amps 120volts", "inlet s 30 A 120 V"],
		["inverter i 2kW 12V/120 V,eff 88%", "inverter i 2 kW 12 V / 120 V, eff 88 %"],
		["inlet s 120/240V 5 kA", "inlet s 120/240 V 5 kA"],
		["place p 45°C sink 1 foot 6inches", "place p 45 C sink 1 ft 6 in"],
		[
			"cable c 12awg #14 4/0AWG 2/0 2.5mm² 250kcmil 3G2.5 12-2",
			"cable c 12 AWG #14 4/0 AWG 2/0 2.5 mm2 250 kcmil 3G2.5 12-2",
		],
		["box b 18in3 20cm³ 3ohms 5mΩ -15C", "box b 18 cuin 20 cm3 3 ohm 5 mohm -15 C"],
		["battery h fault ?kA, ? volts", "battery h fault ? kA, ? V"],
		["light l1 30A", "light l1 30 A"],
	])("spells units in one way: %s", (line, spelt) => {
		expect(laidOut(line)).toEqual([spelt]);
	});

	test("leaves names alone that look like figures", () => {
		expect(
			laidOut(
				"panel LC",
				"  slot 1A: breaker",
				"place 1A",
				"light l in  1A",
				"circuit 12V from LC.1A by 12-2",
				"  9 ft as 30A to 20A: light",
			),
		).toEqual([
			"panel LC",
			"  slot 1A: breaker",
			"place 1A",
			"light l in 1A",
			"circuit 12V from LC.1A by 12-2",
			"  9 ft as 30A to 20A: light",
		]);
	});

	test("keeps comments: alone with what follows them, behind the lines of a statement in one column", () => {
		expect(
			laidOut(
				"// head  ",
				"plan // a",
				"    // of region",
				"   region us//b",
				"   rules building    // c",
				'   note "a long one that nothing is said of"',
				"   // last",
				"box j // d",
				"box long-name//e",
				"circuit c from LC by 12-2",
				"      // first",
				"  9 ft to x: box // f",
				"    y: light // g",
				"    // end of x",
				"// end",
			),
		).toEqual([
			"// head",
			"plan  // a",
			"  // of region",
			"  region us       //b",
			"  rules building  // c",
			'  note "a long one that nothing is said of"',
			"  // last",
			"box j          // d",
			"box long-name  //e",
			"circuit c from LC by 12-2",
			"  // first",
			"  9 ft to x: box  // f",
			"    y: light      // g",
			"    // end of x",
			"// end",
		]);
	});

	test("keeps single blank lines between lines, and none at the edges", () => {
		expect(laidOut("", "box a", "", " ", "", "box b", "", "")).toEqual(["box a", "", "box b"]);
		expect(tidy("").text).toBe("");
		expect(tidy(" \n\n").text).toBe("");
	});

	test.each(["\n", "\r\n", "\r"])("keeps the ending of lines %j", (ending) => {
		expect(tidy(["box a", "", "", "box  b"].join(ending)).text).toBe(["box a", "", "box b", ""].join(ending));
	});

	test("keeps a byte order mark, and each ending where they are mixed", () => {
		expect(tidy("\ufeffbox  a\r\nbox b\nbox c").text).toBe("\ufeffbox a\r\nbox b\nbox c\r\n");
	});
});

describe("what cannot be read", () => {
	test("stays exactly as it is, with all of its statement; the rest is tidied", () => {
		const { text, kept } = tidy(
			[
				"box  a",
				"circuit c   from LC by 12-2",
				"   14 to b:  light  // no unit",
				"",
				"",
				"   9  ft to d: light",
				"// between",
				"box   e",
			].join("\n"),
		);
		expect(text.split("\n")).toEqual([
			"box a",
			"circuit c   from LC by 12-2",
			"   14 to b:  light  // no unit",
			"",
			"",
			"   9  ft to d: light",
			"// between",
			"box e",
			"",
		]);
		expect(kept).toEqual([2, 3, 4, 5, 6]);
	});

	test.each([
		["a statement of no known shape", "box  a\n]]  x\nbox  b\n", "box a\n]]  x\nbox b\n", [2]],
		["a text that is not closed", 'box  a\nplace p  "Porch\n', 'box a\nplace p  "Porch\n', [2]],
		["what stands at the edge behind a statement", "box  a\n]]\nbox  b\n", "box a\n]]\nbox b\n", [2]],
		["the same between lines of one", "box  a\n]]\n  x:  y\n", "box  a\n]]\n  x:  y\n", [1, 2, 3]],
		["hops that belong to nothing", "9 ft to  b: light\nbox  b\n", "9 ft to  b: light\nbox b\n", [1]],
		[
			"lines below one that takes none",
			"place  a\n  light  b\n  light  c\n",
			"place a\n  light  b\n  light  c\n",
			[2, 3],
		],
		["a character that only looks like another", "box  a\nplace  a–b\n", "box a\nplace  a–b\n", [2]],
	])("%s", (_, before, after, kept) => {
		expect(tidy(before)).toEqual({ text: after, kept });
	});
});

describe("with tags written down", () => {
	async function pinned(...lines: readonly string[]): Promise<string[]> {
		const text = ["inlet shore 30 A 120 V", "panel LC main 30 A from shore by 10-2, 12 ft", ...lines, ""].join("\n");
		const tidied = await tidyPlan(text, "plan", { pinTags: true });
		expect(circuitOf(tidied.text)).toBe(circuitOf(text));
		expect((await tidyPlan(tidied.text, "plan", { pinTags: true })).text).toBe(tidied.text);
		return tidied.text.split("\n").slice(2, -1);
	}

	test("every cable of a chain has its own, behind its length or at the front", async () => {
		expect(
			await pinned(
				"place bay",
				"circuit c from LC breaker 15 A by 14-2",
				"  9 ft to a: light 5 W",
				"  14 ft, 2 ft through bay as x to b: light 5 W",
				"  12 ft, 2 ft through bay to d: light 5 W",
				"  2 ft through bay to e: light 5 W",
				"  ? by 14-3 to f: light 5 W",
				"  by 14-2, 3 ft to g: light 5 W",
				"  to h: light 5 W",
				"  from b",
				"    9 ft to l1..l3: light 2 W each",
			),
		).toEqual([
			"place bay",
			"circuit c from LC breaker 15 A by 14-2",
			"   9 ft as c-1 to a: light 5 W",
			"  14 ft, 2 ft through bay as x to b: light 5 W",
			"  12 ft as c-3, 2 ft through bay to d: light 5 W",
			"  as c-4 2 ft through bay to e: light 5 W",
			"   ? as c-5 by 14-3 to f: light 5 W",
			"  by 14-2, 3 ft as c-6 to g: light 5 W",
			"  as c-7 to h: light 5 W",
			"  from b",
			"    9 ft as c-8..c-10 to l1..l3: light 2 W each",
		]);
	});

	test("a statement that cannot be read gets none", async () => {
		const lines = ["circuit c from LC breaker 15 A by 14-2", "  9 ft to a: light 5 W", "  14 to b: light 5 W"];
		expect(await pinned(...lines)).toEqual(lines);
	});
});

/** A tidied text says the same, is tidy, has all comments, and any other layout of it becomes it again. */
function holds(name: string, text: string, seed: number): void {
	const tidied = tidy(text);
	expect(tidied.kept, name).toEqual([]);
	expect(tidy(tidied.text).text, name).toBe(tidied.text);
	expect(meaningOf(tidied.text), name).toEqual(meaningOf(text));
	expect(commentsOf(tidied.text), name).toEqual(commentsOf(text));
	const ruffled = tidy(ruffle(tidied.text, chanceFrom(seed))).text;
	expect(ruffled, name).toBe(tidied.text);
}

describe("nothing is lost or changed", () => {
	test.each(finishedPlans)("of $name", ({ name, text }) => {
		for (let seed = 0; seed < 5; seed++) holds(name, text, seed);
	});

	test.each(shownPlans.filter(({ name }) => !name.includes("finds=")))("of $name", ({ name, text }) => {
		holds(name, text, 7);
	});

	test("of 1,000 plans by chance", { timeout: 120_000 }, () => {
		for (const [seed, { name, text }] of chancePlans(1000).entries()) holds(name, text, seed);
	});

	test("of samples cut short, or with lines taken out, doubled, moved, changed, indented", () => {
		const mangled = fc
			.record({
				text: fc.constantFrom(...finishedPlans.map((plan) => plan.text)),
				at: fc.nat(),
				how: fc.constantFrom("prefix", "delete", "double", "swap", "replace", "indent", "join"),
				words: fc.array(
					fc.constantFrom(...'from to by 9 ft // " : , ( ) ? at join slot box é – in 12-2 1A'.split(" ")),
					{ maxLength: 8 },
				),
				ending: fc.constantFrom("\n", "\r\n", "\r"),
			})
			.map(({ text, at, how, words, ending }) => {
				if (how === "prefix") return text.slice(0, at % (text.length + 1));
				const lines = text.split("\n");
				const index = at % lines.length;
				const line = lines[index] ?? "";
				const instead = {
					delete: [],
					double: [line, line],
					swap: [lines[index + 1] ?? "", line],
					replace: [words.join(" ")],
					indent: [" ".repeat(words.length) + line],
					join: [`${line} ${words.join(" ")}`],
				};
				return lines.toSpliced(index, how === "swap" ? 2 : 1, ...instead[how]).join(ending);
			});
		fc.assert(
			fc.property(mangled, (text) => {
				const { text: tidied, kept } = tidy(text);
				expect(tidy(tidied).text).toBe(tidied);
				expect(circuitOf(tidied)).toBe(circuitOf(text));
				expect(commentsOf(tidied)).toEqual(commentsOf(text));
				const lines = text.split(/\r\n|\r|\n/);
				const after = new Set(tidied.split(/\r\n|\r|\n/));
				for (const line of kept) expect(after).toContain(lines[line - 1]);
				expect(wordsOf(tidied)).toBe(wordsOf(text));
			}),
			{ numRuns: 600 },
		);
	});

	test("of any text at all, and nothing is thrown", () => {
		fc.assert(
			fc.property(fc.oneof(fc.string({ unit: "binary", maxLength: 200 }), fc.string({ maxLength: 200 })), (text) => {
				const tidied = tidy(text).text;
				expect(tidy(tidied).text).toBe(tidied);
				expect(wordsOf(tidied)).toBe(wordsOf(text));
			}),
			{ numRuns: 500 },
		);
	});
});

/** All that is written, without white space; units in their usual spelling. */
function wordsOf(text: string): string {
	return text.replace(/[ \t\r\n,]+/g, "");
}
