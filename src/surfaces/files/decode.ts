// Bytes of a plan become text. Whatever the bytes are there is a text, and a finding for what could not be read as UTF-8.
import { certain } from "../../base/certain.ts";
import { type Finding, finding } from "../../base/finding.ts";
import type { Span } from "../../base/span.ts";
import { syntaxProblems } from "../../syntax/codes.ts";
import { notText, textNotUtf8 } from "./codes.ts";
import { largestPlan } from "./read.ts";

/** A text as read, and what is to be said about how it was read. */
export interface Decoded {
	/** Undefined where the bytes are no text at all. */
	readonly text: string | undefined;
	readonly findings: readonly Finding[];
}

/** The text of `bytes`, without a byte order mark; bytes that are not UTF-8 become replacement characters. */
export function decodePlan(bytes: Uint8Array, file: string): Decoded {
	const place = noTextAt(bytes);
	if (place !== undefined) return { text: undefined, findings: [findNoText(bytes, place, file)] };
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

/** The offset of the first byte that no text has, where there is enough of such to tell: a zero, or many control characters. */
function noTextAt(bytes: Uint8Array): number | undefined {
	const zero = bytes.indexOf(0);
	if (zero >= 0) return zero;
	const controls = bytes.filter(isControl).length;
	return controls * 10 > bytes.length ? bytes.findIndex(isControl) : undefined;
}

/** Below the blank, and none of tab, line feed, vertical tab, form feed and carriage return. */
function isControl(byte: number): boolean {
	return byte < 9 || (byte > 13 && byte < 32) || byte === 127;
}

function findNoText(bytes: Uint8Array, place: number, file: string): Finding {
	const isWide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
	const before = bytes.subarray(0, isWide ? 0 : place);
	const line = before.filter((byte) => byte === 10).length + 1;
	const column = new TextDecoder().decode(before.subarray(before.lastIndexOf(10) + 1)).length + 1;
	return finding({
		code: notText.code,
		level: notText.level,
		title: isWide ? "The plan is saved as UTF-16, and a plan is UTF-8 text" : "This is no text, so it is no plan",
		span: { file, line, column, endColumn: column + 1 },
		why: notText.why,
		help: isWide ? "Save the plan as UTF-8 text in your editor." : notText.help,
		basis: "a plan is UTF-8 text",
	});
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
