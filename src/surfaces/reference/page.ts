// A page that `explain` prints, as data: about a rule, a word of the notation's own errors, or a kind of thing.
import type { Level } from "../../base/finding.ts";

/** Everything there is to say about one code or kind. */
export interface Page {
	readonly name: string;
	/** Other words under which it is found. */
	readonly also: readonly string[];
	readonly group: "rule" | "text" | "kind";
	/** How bad it is; a kind has none. */
	readonly level?: Level;
	/** One sentence for the list. */
	readonly summary: string;
	/** What is said of it, each under a word or two. */
	readonly slots: readonly { readonly word: string; readonly text: string }[];
	/** Whole plans that show it. */
	readonly plans: readonly { readonly word: string; readonly text: string }[];
}
