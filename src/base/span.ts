// A stretch of one line of one source text. Everything a builder wrote, and everything inferred from it, carries one.

/** Where something stands: `line` and `column` count from 1 in UTF-16 units; `endColumn` is one past the last. */
export interface Span {
	/** The name the text was read under, as the user gave it; never a full path of the machine. */
	readonly file: string;
	readonly line: number;
	readonly column: number;
	readonly endColumn: number;
}

/** The stretch from the start of `first` to the end of `last`, which stand on the same line. */
export function joinSpans(first: Span, last: Span): Span {
	return { ...first, endColumn: Math.max(first.endColumn, last.endColumn) };
}

/** Orders spans by file, line and column, by code unit and never by locale. */
export function compareSpans(one: Span, other: Span): number {
	if (one.file !== other.file) return one.file < other.file ? -1 : 1;
	return one.line - other.line || one.column - other.column || one.endColumn - other.endColumn;
}
