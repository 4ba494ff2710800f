// Marks findings that the builder stands behind with a reason; an `accept` line that silences nothing is a finding itself.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import { planFinding } from "../plan/codes.ts";
import { foldName } from "../plan/names.ts";
import type { Acceptance, Plan } from "../plan/plan.ts";

/** The findings with `accepted` set where an `accept` line names their rule and one of their places; `known` lists the rules. */
export function applyAcceptances(findings: readonly Finding[], plan: Plan, known: readonly string[]): Finding[] {
	const used = new Set<Acceptance>();
	const marked = findings.map((finding) => {
		const acceptance = plan.acceptances.find((candidate) => covers(candidate, finding));
		if (acceptance === undefined) return finding;
		used.add(acceptance);
		return { ...finding, accepted: acceptance.reason };
	});
	const unused = plan.acceptances.filter((acceptance) => !used.has(acceptance));
	return [...marked, ...unused.map((acceptance) => tellUnused(acceptance, known))];
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

function tellUnused(acceptance: Acceptance, known: readonly string[]): Finding {
	const place = acceptance.at === undefined ? "" : ` at ${acceptance.at}`;
	return known.includes(acceptance.rule)
		? planFinding("accept-unused", { title: `Nothing is found for ${acceptance.rule}${place}`, span: acceptance.span })
		: planFinding("rule-unknown", {
				title: `There is no rule ${acceptance.rule}`,
				span: acceptance.span,
				help: `${didYouMean(acceptance.rule, known)} \`ferrule explain\` lists the rules.`.trim(),
			});
}
