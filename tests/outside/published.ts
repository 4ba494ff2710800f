// What a check against the outside carries: the published source of its value and how it is known.
import { checkPlan } from "../../src/pipeline.ts";

/** `read` in a stored public text, `recalled` from memory and not seen, or `common practice` of the trade. */
export type Known = "read" | "recalled" | "common practice";

/** A published value with its source. */
export type Published<Value> = Value & { readonly source: string; readonly known: Known };

/** The name of a check: what is checked, and where the value is from. */
export function nameOf({ source, known }: { source: string; known: Known }, what: string): string {
	return `${what} [${source}, ${known}]`;
}

/** The findings of a code on a plan text, at the level of an error or worse unless notes are asked for. */
export function findingsOf(text: string, code: string, notes = false) {
	return checkPlan(text, "plan").findings.filter(
		(finding) => finding.code === code && (notes || finding.level === "error" || finding.level === "danger"),
	);
}
