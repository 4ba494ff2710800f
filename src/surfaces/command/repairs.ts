// Findings get the lines to write that put them right, where the check can offer them.
import type { RepairBudget } from "../checker.ts";
import type { Judgement } from "./judge.ts";

/** The judgements with repairs, plan by plan. */
export async function addRepairs(judgements: readonly Judgement[]): Promise<Judgement[]> {
	const budget: RepairBudget = { left: mostTrials };
	const repaired: Judgement[] = [];
	for (const judgement of judgements) {
		const offers = await judgement.checked?.repairs(budget);
		repaired.push({
			...judgement,
			findings: judgement.findings.map((finding) => {
				const repair = offers?.get(finding.key);
				return repair === undefined ? finding : { ...finding, repair };
			}),
		});
	}
	return repaired;
}

/** Changed texts that are tried in a call: each is a check of its own. */
const mostTrials = 200;
