// The one way in which tests check a plan: its text with the findings that must stand in it written under their lines.
import { expect } from "vitest";
import type { NumberedFinding } from "../src/base/finding.ts";
import { type CheckResult, checkPlan } from "../src/pipeline.ts";

/**
 * Checks a plan whose comment lines say what must be found, and fails on anything missing or beyond it.
 * Under a line, `//   ^^^^ code` says that a finding of that code covers exactly these columns of it; with a text in
 * quotes behind the code, that its title holds that text. `// also code code`, anywhere, names what may and must be
 * found as a consequence of these. A note is looked at only where it is marked.
 * Marker lines are not part of the text that is checked.
 */
export function checkMarked(marked: string): CheckResult {
	const { text, marks, also } = readMarks(marked);
	const result = checkPlan(text, "plan");
	const found = result.findings.filter(
		(finding) => finding.level !== "note" || marks.some((mark) => fits(mark, finding)),
	);
	const consequences = found.filter((finding) => also.includes(finding.code) && follows(finding, result));
	const told = found.filter((finding) => !consequences.includes(finding)).map(tellFinding);
	expect(told.toSorted()).toEqual(marks.map(tellMark).toSorted());
	expect(also.filter((code) => !consequences.some((finding) => finding.code === code))).toEqual([]);
	for (const { title, ...mark } of marks)
		if (title !== undefined)
			expect(
				found
					.filter((finding) => fits(mark, finding))
					.map(titleOf)
					.join("\n"),
			).toContain(title);
	return result;
}

/** Checks a plan in which nothing above a note may be found. */
export function checkRight(text: string): CheckResult {
	const result = checkPlan(text, "plan");
	expect(
		result.findings
			.filter((finding) => finding.level !== "note")
			.map((finding) => `${tellFinding(finding)} ${finding.title}`),
	).toEqual([]);
	return result;
}

interface Mark {
	readonly line: number;
	readonly column: number;
	readonly endColumn: number;
	readonly code: string;
	readonly title?: string;
}

function readMarks(marked: string): { text: string; marks: readonly Mark[]; also: readonly string[] } {
	const kept: string[] = [];
	const marks: Mark[] = [];
	const also: string[] = [];
	for (const line of marked.split("\n")) {
		const mark = /^(\s*\/\/\s*)(\^+) ([a-z-]+)(?: "(.*)")?$/.exec(line);
		const others = /^\s*\/\/ also ([a-z -]+)$/.exec(line);
		if (mark !== null) {
			const column = (mark[1] ?? "").length + 1;
			marks.push({
				line: kept.length,
				column,
				endColumn: column + (mark[2] ?? "").length,
				code: mark[3] ?? "",
				...(mark[4] === undefined ? {} : { title: mark[4] }),
			});
		} else if (others !== null) also.push(...(others[1] ?? "").split(" "));
		else kept.push(line);
	}
	return { text: kept.join("\n"), marks, also };
}

function fits(mark: Mark, { code, span }: NumberedFinding): boolean {
	return (
		code === mark.code && span.line === mark.line && span.column === mark.column && span.endColumn === mark.endColumn
	);
}

function follows(finding: NumberedFinding, result: CheckResult): boolean {
	return result.findings.some((other) => other !== finding && other.key === finding.consequenceOf);
}

function tellFinding({ code, span }: NumberedFinding): string {
	return `${span.line}:${span.column}-${span.endColumn} ${code}`;
}

function tellMark({ code, line, column, endColumn }: Mark): string {
	return `${line}:${column}-${endColumn} ${code}`;
}

function titleOf(finding: NumberedFinding): string {
	return finding.title;
}
