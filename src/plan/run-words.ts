// The words at the head of a run that say something of the run itself.
import type { Link, Term } from "../syntax/tree.ts";

/** Whether a run that says no cable says one on its first hop. */
export function everyHopSaysBy(links: readonly Link[]): boolean {
	const first = links[0];
	return first !== undefined && first.cable.length > 0;
}

/** Whether two words stand behind one another. */
export function hasWords(terms: readonly Term[], first: string, second: string): boolean {
	return terms.some((term, index) => isWord(term, first) && isWord(terms[index + 1], second));
}

/** Whether a word is one of `roughed in`. */
export function isRoughedIn(term: Term, terms: readonly Term[]): boolean {
	const index = terms.indexOf(term);
	return (
		(isWord(term, "roughed") && isWord(terms[index + 1], "in")) ||
		(isWord(term, "in") && isWord(terms[index - 1], "roughed"))
	);
}

function isWord(term: Term | undefined, word: string): boolean {
	return term?.kind === "name" && term.text === word;
}
