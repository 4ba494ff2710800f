// A page that `explain` prints, as data: about a rule, a word of the notation's own errors, or a kind of thing.
import type { Level } from "../../base/finding.ts";
import type { MeterTest } from "../../rules/meter-test.ts";
import type { Rule } from "../../rules/rule.ts";

/** Everything there is to say about one code or kind. */
export interface Page {
	readonly name: string;
	/** Other words under which it is found. */
	readonly also: readonly string[];
	readonly group: "rule" | "text" | "kind";
	/** What a rule says besides; nothing else has it. */
	readonly rule?: RuleFacts;
	/** How bad it is; a kind has none. */
	readonly level?: Level;
	/** One sentence for the list. */
	readonly summary: string;
	/** What is said of it, each under a word or two. */
	readonly slots: readonly { readonly word: string; readonly text: string }[];
	/** Whole plans that show it. */
	readonly plans: readonly PagePlan[];
}

/** A whole plan: of a rule one that shows the fault or a near miss, of a kind an example. */
export interface PagePlan {
	readonly sort: "wrong" | "right" | "example";
	/** `Wrong`, or `Wrong 2` where there are several. */
	readonly word: string;
	readonly text: string;
}

/** What a program may want of a rule's page as more than words. */
export interface RuleFacts {
	/** The rules' group: `ground`. */
	readonly group: string;
	/** The published clause with how it is known, or common practice. */
	readonly clause: string;
	readonly applies: Rule["applies"];
	readonly meter: readonly MeterTest[];
}
