import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { units } from "../../src/base/quantity.ts";
import { landingWords, lineWords, placeWords, statementWords } from "../../src/syntax/vocabulary.ts";

interface Rule {
	readonly name?: string;
	readonly match?: string;
	readonly begin?: string;
	readonly captures?: Readonly<Record<string, { readonly name: string }>>;
	readonly patterns?: readonly Rule[];
	readonly include?: string;
}

const file: {
	readonly scopeName: string;
	readonly patterns: readonly Rule[];
	readonly repository: Readonly<Record<string, Rule>>;
} = JSON.parse(readFileSync(new URL("../../grammar/ferrule.tmLanguage.json", import.meta.url), "utf8"));

/** The rules of the file in the order an editor tries them. */
const rules = file.patterns.flatMap(({ include = "" }) => {
	const rule = file.repository[include.slice(1)];
	return rule?.patterns ?? (rule ? [rule] : []);
});

/** The colours of a line: each stretch with its scope, found as an editor does, earliest and first rule first. */
function colours(line: string): [string, string][] {
	const found: [string, string][] = [];
	let at = 0;
	while (at < line.length) {
		const hits = rules.flatMap((rule) => {
			const pattern = new RegExp(rule.match ?? `${rule.begin}[^"]*(?:"|$)`, "dgu");
			pattern.lastIndex = at;
			const hit = pattern.exec(line);
			return hit ? [{ rule, hit }] : [];
		});
		const first = hits.reduce<(typeof hits)[number] | undefined>(
			(best, next) => (best === undefined || next.hit.index < best.hit.index ? next : best),
			undefined,
		);
		if (first === undefined) break;
		const { rule, hit } = first;
		if (rule.name) found.push([hit[0], rule.name]);
		for (const [group, { name }] of Object.entries(rule.captures ?? {}))
			if (hit[Number(group)] !== undefined) found.push([hit[Number(group)] ?? "", name]);
		at = Math.max(hit.index + hit[0].length, at + 1);
	}
	return found;
}

const scopeOf = (line: string, words: string) => colours(line).find(([text]) => text === words)?.[1];

describe("the highlighting file", () => {
	it("colours every statement word at the left edge, and every joining word within a line", () => {
		for (const word of statementWords) expect(scopeOf(`${word} x`, word)).toBe("keyword.control.statement.ferrule");
		for (const word of landingWords) expect(scopeOf(`  ${word} a.b`, word)).toBe("keyword.control.landing.ferrule");
		for (const word of [...lineWords, ...placeWords])
			expect(scopeOf(`light l9 x ${word} y`, word)).toBe("keyword.operator.word.ferrule");
	});

	it("colours every unit behind a figure, and sizes of conductors as such", () => {
		for (const unit of units)
			for (const spelling of [unit.symbol, ...(unit.also ?? [])])
				if (unit.dimension === "area")
					expect(scopeOf(`cable own 2.5 ${spelling}`, `2.5 ${spelling}`)).toBe("constant.numeric.gauge.ferrule");
				else expect(scopeOf(`load l9 20 ${spelling}`, spelling)).toBe("keyword.other.unit.ferrule");
		for (const size of ["#12", "4/0", "12 AWG", "12awg"])
			expect(scopeOf(`cable own ${size}`, size)).toBe("constant.numeric.gauge.ferrule");
		for (const makeUp of ["12-2", "3G2.5", "2x1.5"])
			expect(scopeOf(`cable own ${makeUp}`, makeUp)).toBe("constant.numeric.make-up.ferrule");
	});

	it("tells names, kinds, places and texts apart", () => {
		expect(colours('  14 ft to b1: receptacle "Left // of" in porch // note')).toEqual([
			["14", "constant.numeric.ferrule"],
			["ft", "keyword.other.unit.ferrule"],
			["to", "keyword.operator.word.ferrule"],
			["b1", "entity.name.tag.ferrule"],
			[":", "punctuation.separator.colon.ferrule"],
			["receptacle", "entity.name.type.kind.ferrule"],
			['"Left // of"', "string.quoted.double.ferrule"],
			["in", "keyword.operator.word.ferrule"],
			["porch", "variable.other.place.ferrule"],
			["// note", "comment.line.double-slash.ferrule"],
		]);
		expect(colours("  slot 1A: breaker 20 A").slice(0, 2)).toEqual([
			["slot", "storage.modifier.ferrule"],
			["1A", "entity.name.tag.ferrule"],
		]);
		expect(colours("  a@LC.black(2) on house.+")).toEqual([
			["a", "variable.other.thing.ferrule"],
			["@LC.black(2)", "variable.other.member.ferrule"],
			["on", "keyword.operator.word.ferrule"],
			["house", "variable.other.thing.ferrule"],
			[".+", "variable.other.member.ferrule"],
		]);
	});

	it("has an own scope name, and scopes that all end in it", () => {
		expect(file.scopeName).toBe("source.ferrule");
		const names = JSON.stringify(file.repository).match(/"name":"[^"]+"/g) ?? [];
		for (const name of names) expect(name).toMatch(/\.ferrule"$/);
	});
});
