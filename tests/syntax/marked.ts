// Plan texts with carets: a line such as `  ^^ unit-missing` marks the stretch above it and names the finding there.
import { readText } from "../../src/syntax/read.ts";

/** The text without its caret lines, and what they say: `line:column-endColumn code`. */
export function unmark(marked: string): { readonly text: string; readonly marks: string[] } {
	const lines: string[] = [];
	const marks: string[] = [];
	for (const line of marked.split("\n")) {
		const mark = /^( *)(\^+) (\S+)$/.exec(line);
		if (mark === null) lines.push(line);
		else {
			const column = (mark[1]?.length ?? 0) + 1;
			marks.push(`${lines.length}:${column}-${column + (mark[2]?.length ?? 0)} ${mark[3]}`);
		}
	}
	return { text: lines.join("\n"), marks: marks.sort() };
}

/** The findings of a text in the same form. */
export function found(text: string): string[] {
	return readText(text, "p")
		.findings.map(({ span, code }) => `${span.line}:${span.column}-${span.endColumn} ${code}`)
		.sort();
}
