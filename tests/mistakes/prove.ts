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

/** What the mistakes of some plans came to. */
export class Proof {
	readonly counter = new Counter();
	readonly missed: { readonly plan: string; readonly operator: string; readonly at: string }[] = [];
	/** Findings above a note in plans with nothing wrong in them, a line each. */
	readonly falseAlarms: string[] = [];
	/** Found by a rule that only tells what follows. */
	readonly unnamed: string[] = [];

	/** Makes a share of all mistakes in a plan, drawn by `seed`, and judges them. */
	add({ name, text }: RightPlan, share: number, seed: number): void {
		const { findings, analysis } = checkPlan(text, name);
		for (const { level, code, title } of findings)
			if (level !== "note") this.falseAlarms.push(`${name}: ${code}: ${title}`);
		const chance = new Chance(seed);
		for (const mistake of surveyMistakes(analysis.circuit, checkCircuit, () => share === 1 || chance.maybe(share)))
			this.#take(name, mistake);
	}

	/** Of all mistakes that a rule finds, the share found by one that names the fault itself. */
	get namedShare(): number {
		const { found, named } = this.counter.tallies.reduce(
			(sum, tally) => ({ found: sum.found + tally.verdicts.found, named: sum.named + tally.named }),
			{ found: 0, named: 0 },
		);
		return found === 0 ? 0 : named / found;
	}

	#take(name: string, mistake: JudgedMistake): void {
		this.counter.count(mistake);
		const line = `${name}: ${mistake.operator}: ${mistake.at}`;
		if (mistake.verdict === "missed") this.missed.push({ plan: name, operator: mistake.operator, at: mistake.at });
		if (mistake.verdict === "found" && !mistake.named) this.unnamed.push(`${line} (${mistake.by})`);
	}
}
