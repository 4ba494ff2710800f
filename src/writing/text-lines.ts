// A text as the lines of its file, each with the ending it has there, and back.

/** A line of a file. */
export interface TextLine {
	readonly words: string;
	/** `\n`, `\r\n` or `\r`; empty at the end of a file that ends without one. */
	readonly ending: string;
}

/** The lines of a text; a byte order mark is no part of the first. An ending at the very end begins no further line. */
export function splitLines(text: string): TextLine[] {
	const pieces = text.replace(/^\ufeff/, "").split(/(\r\n|\r|\n)/);
	const lines: TextLine[] = [];
	for (let index = 0; index < pieces.length; index += 2)
		lines.push({ words: pieces[index] ?? "", ending: pieces[index + 1] ?? "" });
	if (lines.at(-1)?.words === "") lines.pop();
	return lines;
}

/** The text of lines, with the byte order mark that `origin` has; a line without an ending is ended as the first of `origin` is. */
export function joinLines(lines: readonly TextLine[], origin: string): string {
	const mark = origin.startsWith("\ufeff") ? "\ufeff" : "";
	const usual = /\r\n|\r|\n/.exec(origin)?.[0] ?? "\n";
	return mark + lines.map(({ words, ending }) => words + (ending || usual)).join("");
}
