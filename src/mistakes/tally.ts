// How many mistakes of each sort there were, and what came of them.
import type { JudgedMistake, Verdict } from "./mistake.ts";

/** The mistakes of one operator, counted by what came of them. */
export interface Tally {
	readonly operator: string;
	readonly made: number;
	readonly verdicts: Readonly<Record<Verdict["verdict"], number>>;
	/** Of those found, how many by a rule that names the fault itself. */
	readonly named: number;
	/** The share of those that change anything that does no harm, from 0 to 1. */
	readonly harmlessShare: number;
}

/** Counts mistakes by operator, in the order in which the operators are met. */
export class Counter {
	readonly #tallies = new Map<string, { made: number; named: number; verdicts: Record<Verdict["verdict"], number> }>();

	count(mistake: JudgedMistake): void {
		const tally = this.#tallies.get(mistake.operator) ?? {
			made: 0,
			named: 0,
			verdicts: { found: 0, same: 0, harmless: 0, "meter-only": 0, missed: 0 },
		};
		this.#tallies.set(mistake.operator, tally);
		tally.made += 1;
		tally.verdicts[mistake.verdict] += 1;
		if (mistake.verdict === "found" && mistake.named) tally.named += 1;
	}

	/** One row for each operator. */
	get tallies(): readonly Tally[] {
		return [...this.#tallies].map(([operator, { made, named, verdicts }]) => ({
			operator,
			made,
			verdicts: { ...verdicts },
			named,
			harmlessShare: verdicts.harmless === 0 ? 0 : verdicts.harmless / (made - verdicts.same),
		}));
	}
}
