// Marks findings that the builder stands behind with a reason; an `accept` line that silences nothing is a finding itself.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import { listNames } from "../base/wording.ts";
import { planFinding } from "../plan/codes.ts";
import { foldName } from "../plan/names.ts";
import type { Acceptance, Plan } from "../plan/plan.ts";

/** The findings with `accepted` set where an `accept` line names their rule and one of their places; `known` lists the rules. */
export function applyAcceptances(findings: readonly Finding[], plan: Plan, known: readonly string[]): Finding[] {
	const used = new Set<Acceptance>();
	const rules = new Set(known);
	const marked = findings.map((finding) => {
		// What is wrong with the text itself is put right, not stood behind.
		if (!rules.has(finding.code)) return finding;
		const acceptance = plan.acceptances.find((candidate) => covers(candidate, finding));
		if (acceptance === undefined) return finding;
		used.add(acceptance);
		return { ...finding, accepted: acceptance.reason };
	});
	const unused = plan.acceptances.filter((acceptance) => !used.has(acceptance));
	return [...marked, ...unused.map((acceptance) => tellUnused(acceptance, marked, plan, known))];
}

/** A place covers what it names and what is inside it: `b1` covers `b1.hot`, `bunks` covers `bunks-1.black`. */
function covers(acceptance: Acceptance, finding: Finding): boolean {
	if (acceptance.rule !== finding.code) return false;
	if (acceptance.at === undefined) return true;
	const place = foldName(acceptance.at);
	return finding.marks.some((mark) => {
		const name = foldName(mark);
		return name === place || [".", "-", "/", "~"].some((step) => name.startsWith(place + step));
	});
}

function tellUnused(
	acceptance: Acceptance,
	findings: readonly Finding[],
	plan: Plan,
	known: readonly string[],
): Finding {
	const { rule, at, span } = acceptance;
	const place = at === undefined ? "" : ` at ${at}`;
	if (!known.includes(rule) && findings.some(({ code }) => code === rule))
		return planFinding("rule-unknown", {
			title: `${rule} is no rule on the wiring, and cannot be accepted`,
			span,
			help: "It is an error in the text: put that right, and take this line out.",
		});
	if (!known.includes(rule))
		return planFinding("rule-unknown", {
			title: `There is no rule ${rule}`,
			span,
			help: `${didYouMean(rule, known)} \`ferrule explain\` lists the rules.`.trim(),
		});
	const taken = findings.find((finding) => covers(acceptance, finding));
	const other = taken === undefined ? undefined : plan.acceptances.find((candidate) => covers(candidate, taken));
	if (other !== undefined)
		return planFinding("accept-unused", {
			title: `${rule}${place} is accepted by line ${other.span.line} already`,
			span,
			also: [{ span: other.span, label: "accepts it first" }],
			help: "Keep one of the two lines, with the reason that holds.",
		});
	const elsewhere = findings.filter((finding) => finding.code === rule).flatMap(({ marks }) => marks[0] ?? []);
	return planFinding("accept-unused", {
		title: `Nothing is found for ${rule}${place}`,
		span,
		...(elsewhere.length === 0
			? {}
			: { help: `It is found at ${listNames([...new Set(elsewhere)])}: name that place, or take the line out.` }),
	});
}
