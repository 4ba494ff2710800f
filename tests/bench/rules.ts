// What the slowest rule takes: each alone, on a circuit whose shared facts the rules before it have worked out.
import { analyse } from "../../src/analysis/analysis.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { rules } from "../../src/rules/index.ts";
import { medianOf } from "./figures.ts";

/** The rule with the greatest median time in a check of a plan, and that time in milliseconds. */
export function findSlowestRule(
	text: string,
	rounds: number,
): { readonly code: string; readonly milliseconds: number } {
	const { circuit } = checkPlan(text, "plan.ferrule").analysis;
	const { region, rules: ruleSet } = circuit.plan.settings;
	const applicable = rules.filter(({ applies }) => applies.regions.includes(region) && applies.rules.includes(ruleSet));
	const times = new Map(applicable.map(({ code }) => [code, [] as number[]]));
	for (let round = 0; round < rounds; round++) {
		const analysis = analyse(circuit);
		for (const rule of applicable) {
			const start = performance.now();
			rule.check(analysis);
			times.get(rule.code)?.push(performance.now() - start);
		}
	}
	const medians = [...times].map(([code, ofRule]) => ({ code, milliseconds: medianOf(ofRule.slice(rounds / 2)) }));
	return medians.reduce((slowest, one) => (one.milliseconds > slowest.milliseconds ? one : slowest));
}
