import { readFileSync } from "node:fs";
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

const text = readFileSync(new URL("../../grammar/ferrule.ebnf", import.meta.url), "utf8");
const grammar = text.replace(/\(\*.*?\*\)/gs, "");
const terminals = new Set([...grammar.matchAll(/"([^"]+)"|'([^']+)'/g)].map((match) => match[1] ?? match[2] ?? ""));
const rules = grammar
	.replace(/"[^"]+"|'[^']+'|\?[^?;]+\?/g, " ")
	.split(";")
	.filter((rule) => rule.includes("="))
	.map((rule) => {
		const [name = "", ...definition] = rule.split("=");
		return {
			name: name.trim(),
			uses: definition
				.join("=")
				.split(/[^a-z ]+/)
				.map((word) => word.trim())
				.filter(Boolean),
		};
	});

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
		const defined = new Set(rules.map(({ name }) => name));
		const used = new Set(rules.flatMap(({ uses }) => uses));
		expect([...used].filter((name) => !defined.has(name))).toEqual([]);
		expect([...defined].filter((name) => !used.has(name)).sort()).toEqual(["comment", "plan text"]);
	});

	it("keeps every statement word from being a name, and no other word", () => {
		const codes = (name: string) => readText(`place ${name}`, "p").findings.map(({ code }) => code);
		for (const word of [...statementWords, ...landingWords, ...lineWords])
			expect(codes(word)).toEqual(["name-reserved"]);
		for (const word of placeWords) expect(codes(word)).toEqual([]);
	});
});
