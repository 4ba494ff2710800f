// A report as one line a finding, for editors and scripts: `file:line:col: CODE message`.
import { choosePrinted, type PlanReport } from "./report.ts";
import { visible } from "./visible.ts";

/** One line for each finding that is printed, and how many are not. */
export function writeShort(plans: readonly PlanReport[]): { readonly text: string; readonly leftOut: number } {
	const findings = plans.flatMap((plan) => plan.findings);
	const lines = choosePrinted(findings).map(({ span, code, level, title, accepted }) => {
		// A danger that was accepted is a danger still.
		const aside = accepted === undefined ? "" : ` (accepted${level === "danger" ? " danger" : ""}: ${accepted})`;
		return visible(`${span.file}:${span.line}:${span.column}: ${code} ${title}${aside}`);
	});
	return { text: lines.map((line) => `${line}\n`).join(""), leftOut: findings.length - lines.length };
}
