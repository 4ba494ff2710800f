// What a rule is: the fault it names, where it applies, what it says of itself, a wrong and a right plan.
import type { Analysis } from "../analysis/analysis.ts";
import type { Finding, Level } from "../base/finding.ts";
import type { Region, RuleSet } from "../kinds/kind.ts";
import type { MeterTest } from "./meter-test.ts";

/** One fault that is looked for. Its file is named after its code. */
export interface Rule {
	readonly code: string;
	readonly level: Level;
	/** What is wrong, in one sentence. */
	readonly what: string;
	/** What happens to a person or a thing if it stays. */
	readonly why: string;
	/** What to do about it, in general. */
	readonly help: string;
	/** The published clause, handbook table, or "common practice". */
	readonly basis: string;
	/** What shows it on the finished wiring, dead tests first: at least one. */
	readonly meter: readonly MeterTest[];
	readonly applies: {
		readonly regions: readonly Region[];
		readonly rules: readonly RuleSet[];
		/** How it judges differently from one region or place to the next, in a sentence; left out where it does not. */
		readonly differs?: string;
	};
	/** Plans that show the fault: each is a whole plan text in which this rule, and nothing unrelated, reports. */
	readonly wrong: readonly string[];
	/** Near misses: whole plan texts in which this rule stays silent. */
	readonly right: readonly string[];
	readonly check: (analysis: Analysis) => Finding[];
}
