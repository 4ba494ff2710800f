// Words and figures one by one: what each is read as.
import { describe, expect, it } from "vitest";
import { quantity, units } from "../../src/base/quantity.ts";
import { readText } from "../../src/syntax/read.ts";
import type { Term } from "../../src/syntax/tree.ts";
import { compact } from "./compact.ts";

/** What the words behind a name are read as. */
const read = (words: string) => compact(readText(`load l ${words}`, "p").tree).replace(/^thing l: load ?/, "");
const term = (words: string): Term | undefined => {
	const [statement] = readText(`load l ${words}`, "p").tree.statements;
	return statement?.kind === "thing" ? statement.terms[0] : undefined;
};

describe("figures", () => {
	it.each([
		["30 A", "[<30 A>]"],
		["30A", "[<30 A>]"],
		["0.8", "[<0.8>]"],
		["12", "[<12>]"],
		["-15 C", "[<-15 C>]"],
		["95 F", "[<95 F>]"],
		["85 %", "[<85 %>]"],
		["85%", "[<85 %>]"],
		["4 ft 6 in", "[<4.5 ft>]"],
		["4ft 6in", "[<4.5 ft>]"],
		["1 m 20 cm 5 mm", "[<1.205 m>]"],
		["4 ft, 6 in", "[<4 ft> <6 in>]"],
		["12 cm 5 mm / 2 in", "[<12 cm> <5 mm / 2 in>]"],
		["4 ft 2 ft", "[<4 ft> <2 ft>]"],
		["6 in in porch", "[<6 in> in porch]"],
		["spaces 6, in porch", "[spaces <6> in porch]"],
		["in 10", "[in 10]"],
		["in 10 9 W", "[in 10 <9 W>]"],
		["roughed in 12 ft", "[roughed in <12 ft>]"],
		["12 AWG", "[<12 AWG>]"],
		["12awg", "[<12 AWG>]"],
		["#12", "[<12 AWG>]"],
		["#2/0", "[<2/0 AWG>]"],
		["4/0", "[<4/0 AWG>]"],
		["4/0 AWG 3", "[<4/0 AWG> <3>]"],
		["2.5 mm2", "[<2.5 mm2>]"],
		["2.5mm²", "[<2.5 mm2>]"],
		["250 kcmil", "[<126.67687 mm2>]"],
		["12-2", "[<12-2>]"],
		["2-2-2-4", "[<2-2-2-4>]"],
		["3G2.5", "[<3G2.5>]"],
		["2x1.5", "[<2x1.5>]"],
		["5-15R", "[5-15R]"],
		["12 V / 120 V", "[<12 V / 120 V>]"],
		["12V/120V", "[<12 V / 120 V>]"],
		["120/240 V", "[<120 V / 240 V>]"],
		["120/240V", "[<120 V / 240 V>]"],
		["12 / 120 V", "[<12 V / 120 V>]"],
		["?", "[<?>]"],
		["? A", "[<? A>]"],
		["?A", "[<? A>]"],
		["? %", "[<? %>]"],
		["? in porch", "[<?> in porch]"],
		["+ -", "[<+> <->]"],
		["18 cuin", "[<18 cuin>]"],
	])("%s", (words, expected) => {
		expect(readText(`load l ${words}`, "p").findings).toEqual([]);
		expect(read(words)).toBe(expected);
	});

	it("reads every unit in every spelling, apart and close", () => {
		for (const unit of units)
			for (const spelling of [unit.symbol, ...(unit.also ?? [])])
				for (const written of [`2 ${spelling}`, `2${spelling}`])
					if (unit.dimension === "area") expect(term(written)?.kind).toBe("gauge");
					else expect(term(written)).toMatchObject({ kind: "quantity", quantity: quantity(2, unit), text: written });
	});

	it("adds feet and inches up in metres, exactly", () => {
		expect(term("4 ft 6 in")).toMatchObject({ quantity: { value: 1.3716, written: 4.5, unit: "ft" } });
	});

	it("keeps the place of each, and of both sides of a pair", () => {
		expect(term("12 V / 120 V")).toMatchObject({
			span: { line: 1, column: 8, endColumn: 20 },
			first: { span: { column: 8, endColumn: 12 } },
			second: { span: { column: 15, endColumn: 20 } },
		});
		expect(term("120/240 V")).toMatchObject({
			first: { text: "120", span: { column: 8, endColumn: 11 } },
			second: { text: "240 V", span: { column: 12, endColumn: 17 } },
		});
	});

	it("takes a figure in one piece for a name where a name is due", () => {
		const text = "box 10\n  slot 1A: breaker\n  2: light\n  3..8: spare\nat 2\n  10.black on 2.hot\n";
		expect(readText(text, "p").findings).toEqual([]);
		expect(compact(readText(text, "p").tree)).toBe(
			"thing 10: box\n  member slot 1A: breaker\n  member 2: light\n  member 3..8: spare\nat 2\n  land 10 > black on 2 > hot",
		);
	});
});

describe("names", () => {
	it.each([
		["g1.load.hot", "[g1 > load > hot]"],
		["house.+", "[house > +]"],
		["house.-", "[house > -]"],
		["c.black(2)", "[c > black [number 2]]"],
		["black(2)", "[black [number 2]]"],
		["bunks-1@LC", "[bunks-1 [end at LC]]"],
		["bunks-1@LC.black", "[bunks-1 [end at LC] > black]"],
		["bunks-1.black@LC", "[bunks-1 [end at LC] > black]"],
		["LC.1A", "[LC > 1A]"],
		["Küche.steckdose", "[Küche > steckdose]"],
		["寝台", "[寝台]"],
		["__proto__", "[__proto__]"],
		["constructor.toString", "[constructor > toString]"],
		["from-here", "[from-here]"],
		["plan circuit at on with", "[plan circuit at on with]"],
	])("%s", (words, expected) => {
		expect(readText(`load l ${words}`, "p").findings).toEqual([]);
		expect(read(words)).toBe(expected);
	});

	it("are what they look like, look-alike characters replaced and hidden ones left out", () => {
		expect(read("bunk\u2013left l\u0661 a\u200bb")).toBe("[bunk-left l1 ab]");
	});
});

describe("white space, comments and texts", () => {
	it("takes commas for white space", () => {
		expect(read("9 W, in porch,, x")).toBe(read("9 W in porch x"));
	});

	it("ends a line at `//`, but not within a text", () => {
		expect(read('"a // b" 9 W// c "d')).toBe('"a // b" [<9 W>]');
	});

	it("reads every line ending and a byte order mark", () => {
		const lines = ["plan", "  region us", "place a"];
		const trees = ["\n", "\r\n", "\r"].map((end) => readText(lines.join(end), "p").tree);
		expect(trees[1]).toEqual(trees[0]);
		expect(trees[2]).toEqual(trees[0]);
		expect(readText(`\ufeff${lines.join("\n")}\n`, "p").tree).toEqual(trees[0]);
	});
});
