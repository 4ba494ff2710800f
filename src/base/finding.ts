// The one shape of everything Ferrule has to say about a plan. Findings travel as data to every reader of them.
import type { Span } from "./span.ts";

/** How bad: `danger` can shock or burn, `error` is wrong, `warning` is against good practice, `note` is for information. */
export type Level = "danger" | "error" | "warning" | "note";

/** The levels, worst first. */
export const levels: readonly Level[] = ["danger", "error", "warning", "note"];

/** A place in the text with a label of a few words. */
export interface LabelledSpan {
	readonly span: Span;
	readonly label: string;
}

/** One step of the electrical way that shows a fault: a point, and the conductor or contact by which it was reached. */
export interface PathStep {
	/** A point of the circuit by its name: `b1.hot`. */
	readonly point: string;
	/** The conductor, splice or contact that leads here from the step before: `bunks-1.black`; empty at the start. */
	readonly by: string;
}

/** A figure a finding was decided on, and the one it was held against. */
export interface Figure {
	readonly name: string;
	readonly found: number;
	readonly limit: number;
	readonly unit: string;
	/** Where the limit comes from: a handbook row or "common practice". */
	readonly source: string;
}

/** Lines of the plan to write: from `line` on, `instead` lines give way to `lines`; where it is 0 they come in before that line. */
export interface LineEdit {
	readonly line: number;
	readonly instead: number;
	readonly lines: readonly string[];
}

/** One reported problem. Every text is in words an electrician's apprentice understands. */
export interface Finding {
	/** The rule's name, the fault with its subject first: `ground-broken`. */
	readonly code: string;
	readonly level: Level;
	/** One line that stands alone, in the builder's own names; no closing stop. */
	readonly title: string;
	/** The smallest stretch of text that shows the fault. */
	readonly span: Span;
	/** A few words to stand under that stretch; may be empty. */
	readonly label: string;
	/** Other places that belong to it. */
	readonly also: readonly LabelledSpan[];
	/** What a drawing marks: names of points, conductors, cables, parts or boxes. The first is where the number goes. */
	readonly marks: readonly string[];
	/** The way through the circuit that shows the fault; empty where there is none. */
	readonly path: readonly PathStep[];
	readonly figures: readonly Figure[];
	/** What happens if it stays, in one sentence. */
	readonly why: string;
	/** What to do. */
	readonly help: string;
	/** The source modes in which it holds; empty means it does not depend on the mode. */
	readonly modes: readonly string[];
	/** The standard, handbook table or "common practice" behind it. */
	readonly basis: string;
	/** A name for this very finding, the same on each run: code and place. */
	readonly key: string;
	/** The key of the finding that this one follows from. */
	readonly consequenceOf?: string;
	/** Set where it tells that something was not checked because a fact is missing. */
	readonly unchecked?: true;
	/** Lines to write that put it right, tried out on the plan: then it is gone, and nothing else is found. Only where that is certain. */
	readonly repair?: readonly LineEdit[];
	/** The builder's reason, where an `accept` line stands behind it. */
	readonly accepted?: string;
}

/** A finding with the number under which lists and drawings speak of it. Numbers start at 1 in each plan. */
export type NumberedFinding = Finding & { readonly number: number };

/** The slots a finding can do without, at their empty values. */
const empty = { label: "", also: [], marks: [], path: [], figures: [], modes: [] } as const;

/** What must be said of every finding; the rest has empty values. */
export type FindingSlots = Pick<Finding, "code" | "level" | "title" | "span" | "why" | "help" | "basis"> &
	Partial<Finding>;

/** A finding from the slots that matter. Its key defaults to code and place. */
export function finding(slots: FindingSlots): Finding {
	const key = `${slots.code}@${slots.marks?.[0] ?? `${slots.span.file}:${slots.span.line}:${slots.span.column}`}`;
	return { ...empty, key, ...slots };
}
