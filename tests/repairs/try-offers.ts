// Writes what is offered as a repair into a plan, each by itself, and holds what is found then against what was found before.
import { expect } from "vitest";
import type { Finding, LineEdit } from "../../src/base/finding.ts";
import { checkPlan, repairPlan } from "../../src/pipeline.ts";

/** By hand, so that nothing of what offered them judges them. */
function write(text: string, edits: readonly LineEdit[]): string {
	const lines: (string | undefined)[] = text.split("\n");
	for (const { line, instead, lines: words } of edits.toSorted((one, other) => other.line - one.line))
		lines.splice(line - 1, instead, ...words);
	return lines.join("\n");
}

/** What is offered for a plan, by the keys of its findings. */
export const offer = (text: string, left = 1000) => repairPlan(checkPlan(text, "plan"), text, undefined, { left });
/**
 * Of a note the code alone: what it speaks of may be another wire, once two are exchanged. What could not be looked at before
 * may lack a fact: that is no fault.
 */
const titles = (findings: readonly Finding[]) =>
	findings
		.filter(({ unchecked, level }) => unchecked !== true || level !== "note")
		.map(({ code, title, level }) => (level === "note" ? code : `${code}: ${title}`))
		.toSorted();

/** Writes each offer in: its finding is gone and nothing new has come. Gives the codes of what was put right. */
export async function tryOffers(text: string): Promise<string[]> {
	const { findings } = checkPlan(text, "plan");
	const offers = await offer(text);
	for (const [key, edits] of offers) {
		const target = findings.find((finding) => finding.key === key);
		const after = titles(checkPlan(write(text, edits), "plan").findings);
		const [said] = titles(target === undefined ? [] : [target]);
		expect(after).not.toContain(said);
		const before = titles(findings);
		for (const title of after) {
			expect(before).toContain(title);
			before.splice(before.indexOf(title), 1);
		}
		expect(before.length).toBeGreaterThan(0);
	}
	return findings.filter(({ key }) => offers.has(key)).map(({ code }) => code);
}
