// More plans for a rule, each its own plan with something else in it: what shows the fault, and what nearly does.
import { rules } from "../../../src/rules/index.ts";

/** What is put for what. */
export type Change = readonly [what: string, by: string];

/** Plans for one rule: those in which it reports, and near misses in which it stays silent. */
export interface MoreCases {
	readonly code: string;
	readonly fires: readonly string[];
	readonly silent: readonly string[];
}

/** A rule's first wrong plan with changes made in it; each must find what it changes. */
export function varied(code: string, ...changes: readonly Change[]): string {
	return vary(plansOf(code)[0] ?? "", changes);
}

/** The same with the second wrong plan. */
export function variedSecond(code: string, ...changes: readonly Change[]): string {
	return vary(plansOf(code)[1] ?? "", changes);
}

function plansOf(code: string): readonly string[] {
	return rules.find((rule) => rule.code === code)?.wrong ?? [];
}

function vary(text: string, changes: readonly Change[]): string {
	return changes.reduce((plan, [what, by]) => {
		if (!plan.includes(what)) throw new Error(`\`${what}\` is not in the plan`);
		return plan.replace(what, () => by);
	}, text);
}
