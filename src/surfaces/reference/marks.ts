// Words for a page in Markdown.

/** Text of which nothing becomes a mark of Markdown but what stands in backticks. */
export function withoutMarks(text: string): string {
	return text
		.split(/(`[^`]*`)/)
		.map((piece) => (piece.startsWith("`") ? piece : piece.replace(/[\\*_<>|#[\]]/g, "\\$&")))
		.join("");
}
