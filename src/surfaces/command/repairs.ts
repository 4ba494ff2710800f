// Findings get the lines to write that put them right, where the check can offer them.
import type { RepairBudget } from "../checker.ts";
import type { Judgement, Verdict } from "./judge.ts";

/** The judgement with repairs, as a verdict: what could still be made of the plan is let go. */
export async function addRepairs({ checked, ...verdict }: Judgement, budget: RepairBudget): Promise<Verdict> {
	const offers = await checked?.repairs(budget);
	if (offers === undefined || offers.size === 0) return verdict;
	const findings = verdict.findings.map((finding) => {
		const repair = offers.get(finding.key);
		return repair === undefined ? finding : { ...finding, repair };
	});
	return { ...verdict, findings };
}

/** Changed texts that are tried in a call: each is a check of its own. */
export const mostTrials = 200;
/** With more plans than these in a call nobody repairs from the report; a check of one tells what to write. */
export const mostRepaired = 10;
