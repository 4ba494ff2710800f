// The words a builder may use for what a conductor or a terminal is for.
import type { Role } from "../kinds/kind.ts";
import type { Term } from "../syntax/tree.ts";

/** What a word says a conductor or a terminal is for; undefined for any other word. */
export function roleOfTerm(term: Term | undefined): Role | undefined {
	if (term?.kind === "sign") return term.text === "+" ? "positive" : "negative";
	return term?.kind === "name" ? roleByWord.get(term.text) : undefined;
}

const roleByWord: ReadonlyMap<string, Role> = new Map<string, Role>([
	["hot", "hot"],
	["live", "hot"],
	["hot2", "hot2"],
	["hot3", "hot3"],
	["neutral", "neutral"],
	["ground", "ground"],
	["earth", "ground"],
	["positive", "positive"],
	["plus", "positive"],
	["negative", "negative"],
	["minus", "negative"],
]);

/** Every such word, for a message that offers the nearest. */
export const roleWords: readonly string[] = [...roleByWord.keys()];
