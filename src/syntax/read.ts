// The way into this room: a text in, its tree and what is wrong with the text out. It never fails, whatever the text.
import type { Finding } from "../base/finding.ts";
import { compareSpans } from "../base/span.ts";
import { Line } from "./lexer.ts";
import { problem } from "./problem.ts";
import { Reader } from "./reader.ts";
import type { Tree } from "./tree.ts";
import { limits } from "./vocabulary.ts";

/**
 * The tree of a text and the findings on it, in the order of their places.
 * `file` names the text in every span. Never throws: what cannot be read is a finding.
 */
export function readText(text: string, file: string): { tree: Tree; findings: Finding[] } {
	const findings = new Map<string, Finding>();
	const report = (finding: Finding) => {
		if (!findings.has(finding.key)) findings.set(finding.key, finding);
	};
	const reader = new Reader();
	if (text.length > limits.text) report(textTooLong(text, file));
	else {
		const lines = text.replace(/^\ufeff/, "").split(/\r\n|\r|\n/);
		const tabs = new TabWatch();
		for (const [index, words] of lines.entries()) {
			if (findings.size >= limits.findings) {
				report(readingStopped(file, index + 1));
				break;
			}
			if (words.length > limits.line) {
				report(lineTooLong(words, file, index + 1));
				continue;
			}
			const line = new Line(words, file, index + 1, report);
			tabs.watch(line, report);
			reader.read(line, () => nextLine(lines, index));
		}
	}
	return {
		tree: { file, statements: reader.statements, doubtful: [...reader.doubtful] },
		findings: [...findings.values()].sort((one, other) => compareSpans(one.span, other.span)),
	};
}

/** Sees to it that a text is indented with tabs or with spaces; the first line that differs is reported. */
class TabWatch {
	#mark: string | undefined;
	#isReported = false;

	watch(line: Line, report: (finding: Finding) => void): void {
		const indentation = /^[ \t]*/.exec(line.text)?.[0] ?? "";
		if (line.tokens.length === 0 || indentation === "" || this.#isReported) return;
		this.#mark ??= indentation.charAt(0);
		if ([...indentation].every((mark) => mark === this.#mark)) return;
		this.#isReported = true;
		report(
			problem("indentation-mixed", line.span(0, indentation.length), {
				title: "Lines are indented with tabs here and with spaces there",
				label: "differs from the lines above",
			}),
		);
	}
}

/** The next line that says something, as it stands; empty where there is none. */
function nextLine(lines: readonly string[], index: number): string {
	for (let next = index + 1; next < lines.length; next++) {
		const words = lines[next]?.trimStart() ?? "";
		if (words !== "" && !words.startsWith("//")) return lines[next] ?? "";
	}
	return "";
}

function textTooLong(text: string, file: string): Finding {
	return problem(
		"text-too-long",
		{ file, line: 1, column: 1, endColumn: 2 },
		{
			title: `The text has ${text.length} characters, and at most ${limits.text} are read`,
			label: "too long",
		},
	);
}

function readingStopped(file: string, line: number): Finding {
	return problem(
		"reading-stopped",
		{ file, line, column: 1, endColumn: 2 },
		{
			title: `More than ${limits.findings} problems were found, and the text is not read any further`,
			label: "not read from here on",
		},
	);
}

function lineTooLong(words: string, file: string, line: number): Finding {
	return problem(
		"line-too-long",
		{ file, line, column: 1, endColumn: words.length + 1 },
		{
			title: `The line has ${words.length} characters, and at most ${limits.line} are read`,
			label: "too long",
		},
	);
}
