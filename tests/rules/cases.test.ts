// Every rule's own cases: its wrong plans show it and nothing unrelated, its right plans show nothing above a note.
import { describe, expect, test } from "vitest";
import type { NumberedFinding } from "../../src/base/finding.ts";
import { kinds } from "../../src/kinds/index.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { rules } from "../../src/rules/index.ts";
import { tellMeterTest } from "../../src/rules/meter-test.ts";
import { checkRight } from "../check-plan.ts";

/** Findings above a note that neither have this code nor follow, over any number of steps, from one that has. */
function unrelated(findings: readonly NumberedFinding[], code: string): string[] {
	const related = new Set(findings.filter((finding) => finding.code === code).map((finding) => finding.key));
	for (let grown = -1; grown !== related.size; ) {
		grown = related.size;
		for (const { key, consequenceOf } of findings) {
			if (consequenceOf !== undefined && related.has(consequenceOf)) related.add(key);
			if (consequenceOf !== undefined && related.has(key)) related.add(consequenceOf);
		}
	}
	return findings
		.filter((finding) => finding.level !== "note" && !related.has(finding.key))
		.map((finding) => `${finding.code}: ${finding.title}`);
}

describe.each(rules)("$code", (rule) => {
	test.each(rule.wrong.map((text, index) => [index + 1, text] as const))("wrong %i shows it", (_, text) => {
		const { findings } = checkPlan(text, "plan");
		expect(findings.map((finding) => finding.code)).toContain(rule.code);
		expect(unrelated(findings, rule.code)).toEqual([]);
	});

	test.each(rule.right.map((text, index) => [index + 1, text] as const))("right %i is free of findings", (_, text) => {
		checkRight(text);
	});

	test("says what it has to say", () => {
		expect(rule.wrong.length).toBeGreaterThan(0);
		expect(rule.right.length).toBeGreaterThan(0);
		for (const words of [rule.what, rule.why, rule.help]) expect(words).toMatch(/\.$/);
		expect(rule.basis).not.toBe("");
		expect(rule.applies.regions.length).toBeGreaterThan(0);
		expect(rule.applies.rules.length).toBeGreaterThan(0);
	});

	test("tells what shows it on the finished wiring, dead before live", () => {
		expect(rule.meter.length).toBeGreaterThan(0);
		const told = rule.meter.map(tellMeterTest);
		for (const words of told) expect(words).toMatch(/^(Dead|Live|No meter shows it)\b[^.].*[^.]\.$/);
		expect(new Set(told).size).toBe(told.length);
		const hows = rule.meter.map(({ how }) => how);
		expect(hows.lastIndexOf("dead")).toBeLessThan(hows.includes("live") ? hows.indexOf("live") : hows.length);
	});

	test("its findings are complete: places, marks that exist, a key of its own", () => {
		for (const text of rule.wrong) {
			const { findings, analysis } = checkPlan(text, "plan");
			const { circuit } = analysis;
			const names = new Set([
				...circuit.pointByName.keys(),
				...circuit.conductorByName.keys(),
				...circuit.cableByTag.keys(),
				...circuit.partByName.keys(),
				...circuit.enclosureByName.keys(),
			]);
			for (const finding of findings.filter((candidate) => candidate.code === rule.code)) {
				expect(finding.marks.length).toBeGreaterThan(0);
				expect(finding.marks.filter((mark) => !names.has(mark))).toEqual([]);
				expect(finding.title).not.toMatch(/[.]$|undefined/);
				expect(finding.unchecked ?? false).toBe(/ (not|is|are) checked|nothing about .* checked/.test(finding.title));
				expect(finding.help).not.toMatch(/undefined/);
				expect(finding.path.filter((step) => !names.has(step.point))).toEqual([]);
				expect(
					text.split("\n")[finding.span.line - 1]?.slice(finding.span.column - 1, finding.span.endColumn - 1),
				).toMatch(/\S/);
			}
			expect(new Set(findings.map((finding) => finding.key)).size).toBe(findings.length);
		}
	});
});

describe("plans of the kinds", () => {
	test.each(kinds.map((kind) => [kind.name, kind.example] as const))(
		"the example of %s is free of findings",
		(_, text) => {
			checkRight(text);
		},
	);
});
