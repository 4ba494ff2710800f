// Makes a line safe to read: look-alike and hidden characters are reported and replaced, column for column.
// Quoted text and comments keep every character; only what is dangerous in them is reported.
import type { Finding } from "../base/finding.ts";
import type { Span } from "../base/span.ts";
import { problem } from "./problem.ts";
import { hiddenMark } from "./scan.ts";

/** The line with every look-alike replaced and every hidden character made a mark, as long as before. */
export function cleanLine(line: string, span: Span, report: (finding: Finding) => void): string {
	return plain.test(line) ? line : new Cleaning(line, span).clean(report);
}

/** One pass over a line that holds more than plain characters. */
class Cleaning {
	readonly #line: string;
	readonly #span: Span;
	readonly #alike: Sighting[] = [];
	readonly #hidden: Sighting[] = [];
	readonly #hiddenInText: Sighting[] = [];

	constructor(line: string, span: Span) {
		this.#line = line;
		this.#span = span;
	}

	clean(report: (finding: Finding) => void): string {
		let cleaned = "";
		let offset = 0;
		while (offset < this.#line.length) {
			if (this.#line.startsWith("//", offset)) {
				this.#reportDirection(offset, this.#line.length, "comment", report);
				cleaned += this.#line.slice(offset);
				break;
			}
			if (openingQuotes.has(this.#line.charAt(offset))) {
				const end = this.#endOfText(offset);
				this.#reportDirection(offset, end, "text", report);
				cleaned += this.#cleanText(offset, end);
				offset = end;
			} else {
				cleaned += this.#cleanCharacter(offset);
				offset++;
			}
		}
		this.#reportSightings(report);
		return cleaned;
	}

	/** One past the quote that closes the text, or the end of the line. A curved quote may close a curved one. */
	#endOfText(start: number): number {
		const curved = this.#line[start] !== '"';
		for (let offset = start + 1; offset < this.#line.length; offset++) {
			const mark = this.#line.charAt(offset);
			if (mark === '"' || (curved && closingQuotes.has(mark))) return offset + 1;
		}
		return this.#line.length;
	}

	#cleanText(start: number, end: number): string {
		const text = this.#line.slice(start, end);
		for (const match of text.matchAll(undrawable()))
			this.#hiddenInText.push({ offset: start + match.index, shown: codePoint(match[0]) });
		if (text.startsWith('"')) return text;
		this.#alike.push({ offset: start, shown: `${text.charAt(0)} (${codePoint(text)}) for \`"\`` });
		const closed = text.length > 1 && (closingQuotes.has(text.charAt(text.length - 1)) || text.endsWith('"'));
		return `"${text.slice(1, closed ? -1 : undefined).replaceAll('"', "'")}${closed ? '"' : ""}`;
	}

	#cleanCharacter(offset: number): string {
		const character = this.#line.charAt(offset);
		if (plain.test(character)) return character;
		if (isHidden(character)) {
			this.#hidden.push({ offset, shown: codePoint(character) });
			return hiddenMark;
		}
		const alike = lookAlike(this.#line, offset);
		if (alike === undefined) return character;
		this.#alike.push({ offset, shown: `${character} (${codePoint(character)}) for \`${alike}\`` });
		return alike;
	}

	#reportSightings(report: (finding: Finding) => void): void {
		const [alike] = this.#alike;
		if (alike)
			report(
				problem("character-look-alike", this.#at(alike.offset), {
					title: `A character only looks like one of the notation: ${alike.shown}`,
					label: "looks like another character",
					also: this.#others(this.#alike),
				}),
			);
		const [unseen] = this.#hidden;
		if (unseen)
			report(
				problem("character-hidden", this.#at(unseen.offset), {
					title: `A hidden character (${unseen.shown}) stands in the line`,
					label: "hidden character",
					also: this.#others(this.#hidden),
				}),
			);
		const [unprinted] = this.#hiddenInText;
		if (unprinted)
			report(
				problem("character-hidden", this.#at(unprinted.offset), {
					level: "warning",
					title: `A character that cannot be drawn (${unprinted.shown}) stands in a text`,
					label: "cannot be drawn",
					also: this.#others(this.#hiddenInText),
				}),
			);
	}

	/** The stretch turns the direction of writing and leaves it turned. */
	#reportDirection(start: number, end: number, where: string, report: (finding: Finding) => void): void {
		const open: string[] = [];
		let first = start;
		for (let offset = start; offset < end; offset++) {
			const mark = this.#line.charAt(offset);
			const closing = directionClosings.get(mark);
			if (closing !== undefined) {
				if (open.length === 0) first = offset;
				open.push(closing);
			} else if (open.at(-1) === mark) open.pop();
		}
		if (open.length > 0)
			report(
				problem("direction-unclosed", this.#at(first), {
					title: `A ${where} turns the direction of writing (${codePoint(this.#line.slice(first))}) and does not turn it back`,
					label: "direction turns here",
				}),
			);
	}

	#others(sightings: readonly Sighting[]) {
		return sightings.slice(1, 9).map((sighting) => ({ span: this.#at(sighting.offset), label: sighting.shown }));
	}

	#at(offset: number): Span {
		return { ...this.#span, column: offset + 1, endColumn: offset + 2 };
	}
}

/** A character worth a word, and how the message shows it. */
interface Sighting {
	readonly offset: number;
	readonly shown: string;
}

/** The plain character that this one is easily taken for. */
function lookAlike(line: string, offset: number): string | undefined {
	const character = line.charAt(offset);
	const known = lookAlikes.get(character);
	if (known !== undefined) return known;
	if (/\p{Nd}/u.test(character)) return String(digitValue(character));
	if (/\p{Zs}/u.test(character)) return " ";
	const code = character.charCodeAt(0);
	const narrow = String.fromCharCode(code - 0xfee0);
	// The full-width forms of the marks; full-width letters are letters of their own.
	return code > 0xff00 && code < 0xff5f && !/[A-Za-z]/.test(narrow) ? narrow : undefined;
}

/** What a decimal digit of any script stands for: those of a script come in an unbroken run from nought to nine. */
function digitValue(digit: string): number {
	const code = digit.charCodeAt(0);
	let value = 0;
	while (value < 9 && /\p{Nd}/u.test(String.fromCharCode(code - value - 1))) value++;
	return value;
}

function codePoint(text: string): string {
	return `U+${(text.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;
}

/** Controls and formatting characters, whatever their use, and characters that are none. */
function isHidden(character: string): boolean {
	return /[\p{Cc}\p{Cf}\ufffe\uffff\u2028\u2029]/u.test(character);
}

/** What no drawing can hold: controls, lone halves of a character, and characters that are none. */
function undrawable(): RegExp {
	return /[\p{Cs}\ufffe\uffff]|(?!\t)\p{Cc}/gu;
}

const plain = /^[\t\x20-\x7e]*$/;
const openingQuotes = new Set(['"', "\u201c", "\u201d", "\u201e", "\u201f", "\u00ab", "\u00bb", "\uff02"]);
const closingQuotes = new Set(["\u201c", "\u201d", "\u201f", "\u00ab", "\u00bb", "\uff02"]);
const lookAlikes = new Map([
	...["\u2010", "\u2011", "\u2012", "\u2013", "\u2014", "\u2015", "\u2212", "\ufe58", "\ufe63"].map(
		(dash) => [dash, "-"] as const,
	),
	["\u00d7", "x"],
	["\u2044", "/"],
	["\u2215", "/"],
	["\u2236", ":"],
	["\u037e", ";"],
	["\u2024", "."],
]);
/** Characters that turn the direction of writing, each with the one that turns it back. */
const directionClosings = new Map([
	...["\u202a", "\u202b", "\u202d", "\u202e"].map((mark) => [mark, "\u202c"] as const),
	...["\u2066", "\u2067", "\u2068"].map((mark) => [mark, "\u2069"] as const),
]);
