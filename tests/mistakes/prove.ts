// Every single mistake in many right plans: what came of them, counted, and what was missed.
import type { JudgedMistake } from "../../src/mistakes/mistake.ts";
import { surveyMistakes } from "../../src/mistakes/survey.ts";
import { Counter } from "../../src/mistakes/tally.ts";
import { checkCircuit, checkPlan } from "../../src/pipeline.ts";
import { Chance } from "../generator/chance.ts";

/** A right plan by its name. */
export interface RightPlan {
	readonly name: string;
	readonly text: string;
}

/** What the mistakes of one plan came to. */
export interface ProvenPlan {
	readonly name: string;
	/** Findings above a note in the plan as it is, a line each. */
	readonly falseAlarms: readonly string[];
	readonly mistakes: readonly JudgedMistake[];
}

/** Makes a share of all mistakes in a plan, drawn by `seed`, and judges them. */
export function provePlan({ name, text }: RightPlan, share: number, seed: number): ProvenPlan {
	const { findings, analysis } = checkPlan(text, name);
	const chance = new Chance(seed);
	return {
		name,
		falseAlarms: findings.flatMap(({ level, code, title }) => (level === "note" ? [] : [`${name}: ${code}: ${title}`])),
		mistakes: [...surveyMistakes(analysis.circuit, checkCircuit, () => share === 1 || chance.maybe(share))],
	};
}

/** What the mistakes of some plans came to. */
export class Proof {
	readonly counter = new Counter();
	readonly missed: { readonly plan: string; readonly operator: string; readonly at: string }[] = [];
	/** Findings above a note in plans with nothing wrong in them, a line each. */
	readonly falseAlarms: string[] = [];
	/** Found by a rule that only tells what follows. */
	readonly unnamed: string[] = [];

	/** Proves a plan and takes in what came of it. */
	add(plan: RightPlan, share: number, seed: number): void {
		this.take(provePlan(plan, share, seed));
	}

	take({ name, falseAlarms, mistakes }: ProvenPlan): void {
		this.falseAlarms.push(...falseAlarms);
		for (const mistake of mistakes) this.#count(name, mistake);
	}

	/** Of all mistakes that a rule finds, the share found by one that names the fault itself. */
	get namedShare(): number {
		const { found, named } = this.counter.tallies.reduce(
			(sum, tally) => ({ found: sum.found + tally.verdicts.found, named: sum.named + tally.named }),
			{ found: 0, named: 0 },
		);
		return found === 0 ? 0 : named / found;
	}

	#count(name: string, mistake: JudgedMistake): void {
		this.counter.count(mistake);
		const line = `${name}: ${mistake.operator}: ${mistake.at}`;
		if (mistake.verdict === "missed") this.missed.push({ plan: name, operator: mistake.operator, at: mistake.at });
		if (mistake.verdict === "found" && !mistake.named) this.unnamed.push(`${line} (${mistake.by})`);
	}
}
