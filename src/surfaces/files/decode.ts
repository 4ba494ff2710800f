// Bytes of a plan become text. Whatever the bytes are there is a text, and a finding for what could not be read as UTF-8.
import { certain } from "../../base/certain.ts";
import { type Finding, finding } from "../../base/finding.ts";
import type { Span } from "../../base/span.ts";
import { syntaxProblems } from "../../syntax/codes.ts";
import { textNotUtf8 } from "./codes.ts";
import { largestPlan } from "./read.ts";

/** A text as read, and what is to be said about how it was read. */
export interface Decoded {
	readonly text: string;
	readonly findings: readonly Finding[];
}

/** The text of `bytes`, without a byte order mark; bytes that are not UTF-8 become replacement characters. */
export function decodePlan(bytes: Uint8Array, file: string): Decoded {
	const text = new TextDecoder().decode(bytes);
	const spans = unreadableSpans(bytes, file);
	const [first, ...others] = spans;
	if (first === undefined) return { text, findings: [] };
	return {
		text,
		findings: [
			finding({
				code: textNotUtf8.code,
				level: textNotUtf8.level,
				title:
					spans.length === 1 ? "A character here cannot be read" : `Characters cannot be read on ${spans.length} lines`,
				span: first,
				label: "not UTF-8",
				also: others.slice(0, 9).map((span) => ({ span, label: "not UTF-8" })),
				why: textNotUtf8.why,
				help: textNotUtf8.help,
				basis: "a plan is UTF-8 text",
			}),
		],
	};
}

/** The one finding of a plan that is too large to be read: the same as for a text that is too long. */
export function findTooLarge(size: number, file: string): Finding {
	const problem = certain(
		syntaxProblems.find(({ code }) => code === "text-too-long"),
		"the entry on long texts",
	);
	return finding({
		code: problem.code,
		level: "error",
		title: "The plan is too large to be read",
		span: { file, line: 1, column: 1, endColumn: 1 },
		figures: [{ name: "size", found: size, limit: largestPlan, unit: "bytes", source: "a limit of Ferrule" }],
		why: problem.why,
		help: problem.help,
		basis: "a limit of Ferrule",
	});
}

/** One stretch for each line that holds bytes which are not UTF-8. */
function unreadableSpans(bytes: Uint8Array, file: string): Span[] {
	const strict = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
	if (readable(strict, bytes)) return [];
	const spans: Span[] = [];
	let start = 0;
	for (let line = 1; start <= bytes.length; line++) {
		const newline = bytes.indexOf(10, start);
		const end = newline < 0 ? bytes.length : newline;
		const row = bytes.subarray(start, end);
		if (!readable(strict, row)) {
			const column = new TextDecoder().decode(row).indexOf("\uFFFD") + 1;
			spans.push({ file, line, column, endColumn: column + 1 });
		}
		start = end + 1;
	}
	return spans;
}

function readable(strict: Pick<InstanceType<typeof TextDecoder>, "decode">, bytes: Uint8Array): boolean {
	try {
		strict.decode(bytes);
		return true;
	} catch {
		return false;
	}
}
