// Makes the findings of the syntax room from its list of codes. The list says why; each place says what and what to do.
import { type Finding, finding, type LabelledSpan, type Level } from "../base/finding.ts";
import type { Span } from "../base/span.ts";
import { type SyntaxCode, syntaxProblems } from "./codes.ts";

/** What a place in the text says about its problem; the rest comes from the list of codes. */
export interface ProblemSlots {
	readonly title: string;
	/** A few words under the marked stretch. */
	readonly label?: string;
	/** What to do here; without it the general advice of the code is given. */
	readonly help?: string;
	readonly level?: Level;
	readonly also?: readonly LabelledSpan[];
	/** A name it is about wherever that stands: told once for a text. */
	readonly name?: string;
}

/** Where the notation is written down; the basis of every finding of this room. */
export const basis = "the notation, grammar/reference.md";

/** A finding of the syntax room: `error` unless said otherwise. */
export function problem(code: SyntaxCode, span: Span, slots: ProblemSlots): Finding {
	const entry = entries.get(code);
	return finding({
		code,
		level: slots.level ?? "error",
		title: slots.title,
		span,
		label: slots.label ?? "",
		also: slots.also ?? [],
		marks: slots.name === undefined ? [] : [slots.name],
		why: entry?.why ?? "",
		help: slots.help ?? entry?.help ?? "",
		basis,
	});
}

/** A stretch of the plan as it can stand in a message: shortened, and without what cannot be printed. */
export function quoted(text: string): string {
	const shown = text.length > 40 ? `${text.slice(0, 37)}...` : text;
	return `\`${shown.replace(/[\p{C}\p{Zl}\p{Zp}]/gu, "\ufffd")}\``;
}

const entries = new Map<string, (typeof syntaxProblems)[number]>(syntaxProblems.map((entry) => [entry.code, entry]));
