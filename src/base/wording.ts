// Names and sentences put together as a person reads them out.

/** `a`, `a and b`, `a, b and c`; beyond `most` names only how many more there are: `a, b and 7 more`. */
export function listNames(names: readonly string[], most = 4): string {
	const shown = names.length > most ? names.slice(0, most - 1) : names;
	const more = names.length - shown.length;
	const parts = more > 0 ? [...shown, `${more} more`] : shown;
	const last = parts.at(-1) ?? "";
	return parts.length > 1 ? `${parts.slice(0, -1).join(", ")} and ${last}` : last;
}

/** The text with its first letter large, as a sentence begins. */
export function startSentence(text: string): string {
	return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A word with its article: `a box`, `an inlet`. */
export function withArticle(word: string): string {
	return `${/^(?:[aeio]|u(?!sb|til))/i.test(word) ? "an" : "a"} ${word}`;
}
