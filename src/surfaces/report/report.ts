// What a check has to report, over all its plans: the findings with the texts they speak of, and how many of each level.

import type { NumberedFinding } from "../../base/finding.ts";
import { type Level, levels } from "../../base/finding.ts";
import type { CheckScope } from "../checker.ts";
import { visible } from "./visible.ts";

/** One plan as it was read and judged. */
export interface PlanReport {
	/** The name it goes by: relative, with `/`. */
	readonly file: string;
	readonly text: string;
	/** The texts that it uses, by the names of their files, where it uses any. */
	readonly used?: ReadonlyMap<string, string>;
	readonly findings: readonly NumberedFinding[];
	/** What was looked at; undefined where nothing could be read. */
	readonly scope?: CheckScope | undefined;
}

/** How many findings are told one by one; the number of all is told besides. */
export const mostPrinted = 200;

/** The findings that are told one by one: all, or the worst of very many, in their own order. */
export function choosePrinted(findings: readonly NumberedFinding[]): readonly NumberedFinding[] {
	if (findings.length <= mostPrinted) return findings;
	const worst = levels.flatMap((level) => findings.filter((finding) => finding.level === level));
	const chosen = new Set(worst.slice(0, mostPrinted));
	return findings.filter((finding) => chosen.has(finding));
}

/** How many findings of each level; those that the builder accepted are counted apart. */
export interface Counts {
	readonly levels: Readonly<Record<Level, number>>;
	readonly accepted: Readonly<Record<Level, number>>;
}

/** Counts over any number of plans. */
export function countFindings(findings: readonly NumberedFinding[]): Counts {
	const counted = { danger: 0, error: 0, warning: 0, note: 0 };
	const accepted = { ...counted };
	for (const finding of findings) (finding.accepted === undefined ? counted : accepted)[finding.level] += 1;
	return { levels: counted, accepted };
}

/** `1 danger, 2 errors, 1 warning accepted`, or `nothing to put right`: what was accepted is still there. */
function tellCounts(counts: Counts): string {
	const tell = (numbers: Counts["levels"], word: string) =>
		levels.filter((level) => numbers[level] > 0).map((level) => tellNumber(numbers[level], level) + word);
	return [...tell(counts.levels, ""), ...tell(counts.accepted, " accepted")].join(", ") || "nothing to put right";
}

/** `1 error`, `2 errors`. */
export function tellNumber(number: number, word: string): string {
	return `${number} ${word}${number === 1 ? "" : "s"}`;
}

/** The last line of a report: what was checked, what was found, and how many findings the list above leaves out. */
export function summarise(plans: readonly PlanReport[], leftOut: number): string {
	const findings = plans.flatMap((plan) => plan.findings);
	const [only] = plans;
	const subject = plans.length === 1 && only !== undefined ? visible(only.file) : tellNumber(plans.length, "plan");
	const rest = leftOut > 0 ? ` (${findings.length} in all, ${leftOut} not listed here)` : "";
	const unchecked = findings.filter((finding) => finding.unchecked === true).length;
	const gap = unchecked > 0 ? `; ${tellNumber(unchecked, "thing")} not checked` : "";
	return `${subject}: ${tellCounts(countFindings(findings))}${rest}${gap}`;
}

/** Whether a finding of this level or worse stands that the builder has not accepted. */
export function reaches(findings: readonly NumberedFinding[], least: Level): boolean {
	const worst = levels.slice(0, levels.indexOf(least) + 1);
	return findings.some((finding) => finding.accepted === undefined && worst.includes(finding.level));
}
