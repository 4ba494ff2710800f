import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { units } from "../../src/base/quantity.ts";
import { readText } from "../../src/syntax/read.ts";
import { lexed, parsed } from "../../src/syntax/tokens.ts";
import {
	gaugeWords,
	landingWords,
	lineWords,
	makeUpLetters,
	placeWords,
	punctuation,
	statementWords,
} from "../../src/syntax/vocabulary.ts";
import { makeUp, type Part, readEbnf } from "./ebnf-reader.ts";

const rules = readEbnf();
const inside = (part: Part): Part[] => {
	if (part.sort === "choice" || part.sort === "row") return [part, ...part.parts.flatMap(inside)];
	return "part" in part ? [part, ...inside(part.part)] : [part];
};
const symbols = [...rules.values()].flatMap(inside);
const terminals = new Set(symbols.flatMap((part) => (part.sort === "terminal" ? [part.text] : [])));

/** What an EBNF cannot say: that two figures measure the same, and that a length is said once and not of everything. */
const meant = new Set(["figures-unlike", "length-unexpected"]);
const unitSpellings = units.flatMap((unit) => [unit.symbol, ...(unit.also ?? [])]);
const digits = [..."0123456789"];

describe("the EBNF", () => {
	it("has the vocabulary of the lexer: words, units and marks, no more and no less", () => {
		const vocabulary = new Set<string>([
			...[...statementWords, ...landingWords, ...lineWords, ...placeWords],
			...[...gaugeWords, ...makeUpLetters, ...unitSpellings, ...punctuation, ...digits],
		]);
		expect([...terminals].sort()).toEqual([...vocabulary].sort());
	});

	it("names every mark and word that the lexer tells apart", () => {
		const fixed = lexed.map(({ PATTERN }) => PATTERN).filter((pattern) => typeof pattern === "string");
		for (const mark of fixed) expect(terminals).toContain(mark);
		const words = parsed.filter(({ name }) => terminals.has(name.toLowerCase())).map(({ name }) => name.toLowerCase());
		expect(words.sort()).toEqual([...landingWords, ...lineWords.filter((word) => word !== "in"), "at"].sort());
	});

	it("defines every rule it uses, and uses every rule it defines", () => {
		const used = new Set(symbols.flatMap((part) => (part.sort === "rule" ? [part.name] : [])));
		expect([...used].filter((name) => !rules.has(name))).toEqual([]);
		expect([...rules.keys()].filter((name) => !used.has(name)).sort()).toEqual(["comment", "plan text"]);
	});

	it("allows nothing that is not read without a finding", () => {
		const statement = fc
			.infiniteStream(fc.nat())
			.map((numbers) => makeUp(rules, "statement", (below) => numbers.next().value % below));
		fc.assert(
			fc.property(statement, (text) => {
				const findings = readText(text, "p").findings.filter(({ code }) => !meant.has(code));
				expect(findings.map(({ code, title }) => `${code}: ${title}`)).toEqual([]);
			}),
			{ numRuns: 2_000 },
		);
	});

	it("keeps every statement word from being a name, and no other word", () => {
		const codes = (name: string) => readText(`place ${name}`, "p").findings.map(({ code }) => code);
		for (const word of [...statementWords, ...landingWords, ...lineWords])
			expect(codes(word)).toEqual(["name-reserved"]);
		for (const word of placeWords) expect(codes(word)).toEqual([]);
	});
});
