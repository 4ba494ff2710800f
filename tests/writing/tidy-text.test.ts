// One layout for all plans: that nothing of a plan is lost or changed by it.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buildCircuit } from "../../src/circuit/build-circuit.ts";
import { canonicalCircuit } from "../../src/documents/circuit-record.ts";
import { tidyPlan } from "../../src/pipeline.ts";
import { buildPlan } from "../../src/plan/build-plan.ts";
import { readText } from "../../src/syntax/read.ts";
import { chancePlans, finishedPlans, shownPlans } from "./plan-texts.ts";
import { ruffle } from "./ruffle.ts";
import { tidy } from "./tidy.ts";

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
