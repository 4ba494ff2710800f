// A report as workflow commands, one a finding, which a code host shows beside the lines of a change.
import type { NumberedFinding } from "../../base/finding.ts";
import { choosePrinted, type PlanReport } from "./report.ts";
import { visible } from "./visible.ts";

/** One command for each finding that is printed, and how many are not. */
export function writeGithub(plans: readonly PlanReport[]): { readonly text: string; readonly leftOut: number } {
	const findings = plans.flatMap((plan) => plan.findings);
	const lines = choosePrinted(findings).map(tellCommand);
	return { text: lines.map((line) => `${line}\n`).join(""), leftOut: findings.length - lines.length };
}

function tellCommand(finding: NumberedFinding): string {
	const { code, level, title, why, help, span, accepted } = finding;
	const heading = `${level}${accepted === undefined ? "" : " accepted"} (${code})`;
	const slots = [
		`file=${escapeSlot(span.file)}`,
		`line=${span.line}`,
		`col=${span.column}`,
		`endColumn=${Math.max(span.column, span.endColumn - 1)}`,
		`title=${escapeSlot(heading)}`,
	];
	const reason = accepted === undefined ? "" : `\nAccepted by the builder: "${visible(accepted)}"`;
	const text = `${visible(title)}\n${visible(why)}\n${visible(help)}${reason}`;
	return `::${commandFor(finding)} ${slots.join(",")}::${escapeText(text)}`;
}

/** What was accepted does not count as failed; a danger that was still stands out. */
function commandFor({ level, accepted }: NumberedFinding): "error" | "warning" | "notice" {
	if (accepted !== undefined) return level === "danger" ? "warning" : "notice";
	if (level === "note") return "notice";
	return level === "warning" ? "warning" : "error";
}

function escapeText(text: string): string {
	return text.replaceAll("%", "%25").replaceAll("\r", "%0D").replaceAll("\n", "%0A");
}

function escapeSlot(text: string): string {
	return escapeText(visible(text)).replaceAll(":", "%3A").replaceAll(",", "%2C");
}
