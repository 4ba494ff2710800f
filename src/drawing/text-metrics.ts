// How wide text comes out, from a built-in table of letter widths: no font, no browser. Also breaks and shortens text by it.
import { type AdvanceRows, boldAdvances, regularAdvances } from "./advances.ts";
import type { Box } from "./bounds.ts";
import type { TextMark } from "./scene.ts";

/** What decides a text's width; a TextMark is one. */
export interface TextStyle {
	/** Font size, in units. */
	readonly size: number;
	readonly bold?: boolean;
}

/** Height of capitals in parts of the font size: Liberation Sans 1.07, read from its OS/2 table. */
const capitalHeight = 1409 / 2048;

/** The smallest printed capital, in millimetres (ISO 3098, from memory). */
export const smallestCapital = 1.8;

/** Height of the capitals of a font size on paper, in millimetres: one unit prints as 0.25 mm. */
export function printedCapital(size: number): number {
	return size * capitalHeight * 0.25;
}

/** The smallest font size whose capitals still print at 1.8 mm. */
export const smallestText = 10.5;

/** Width of `text` in units, without reserve. Measured against a browser: exact to +2.4 %. */
export function textWidth(text: string, style: TextStyle): number {
	const advances = style.bold ? bold : regular;
	let sum = 0;
	for (let index = 0; index < text.length; index++) {
		const code = text.charCodeAt(index);
		sum += advances[code] ?? widest;
		// A letter outside the first plane is two units long and one letter wide.
		if (code >= 0xd800 && code <= 0xdbff) index++;
	}
	return (sum * style.size) / 2048;
}

/** The width to keep free for `text`: 15 % more, for a reader whose font runs wider. */
export function roomFor(text: string, style: TextStyle): number {
	return textWidth(text, style) * reserve;
}

/** What a text occupies on the sheet. */
export function textBox(mark: TextMark): Box {
	const width = textWidth(mark.text, mark);
	const x = mark.anchor === "start" ? mark.x : mark.anchor === "middle" ? mark.x - width / 2 : mark.x - width;
	return { x, y: mark.y - ascent * mark.size, width, height: (ascent + descent) * mark.size };
}

/** `text` in lines no wider than `width`; a word is broken only where it alone is wider. */
export function wrapText(text: string, style: TextStyle, width: number): string[] {
	const lines: string[] = [];
	const space = textWidth(" ", style);
	let line = "";
	let used = 0;
	for (const word of text.split(/[ \t\r\n]/)) {
		if (word === "") continue;
		const wide = textWidth(word, style);
		if (line !== "" && used + space + wide <= width) {
			line += ` ${word}`;
			used += space + wide;
			continue;
		}
		if (line !== "") lines.push(line);
		const pieces = wide <= width ? [word] : breakWord(word, style, width);
		line = pieces.pop() ?? "";
		used = pieces.length === 0 ? wide : textWidth(line, style);
		lines.push(...pieces);
	}
	return line === "" ? lines : [...lines, line];
}

/** `text`, or as much of it as fits in `width` with an ellipsis. */
export function shortenText(text: string, style: TextStyle, width: number): string {
	if (textWidth(text, style) <= width) return text;
	let kept = "";
	let room = width - textWidth("…", style);
	for (const letter of text) {
		room -= textWidth(letter, style);
		if (room < 0) break;
		kept += letter;
	}
	return `${kept.trimEnd()}…`;
}

/** A word in pieces that fit; at least one letter a piece, so that it ends. */
function breakWord(word: string, style: TextStyle, width: number): string[] {
	const pieces: string[] = [];
	let piece = "";
	let used = 0;
	for (const letter of word) {
		const wide = textWidth(letter, style);
		if (piece !== "" && used + wide > width) {
			pieces.push(piece);
			piece = "";
			used = 0;
		}
		piece += letter;
		used += wide;
	}
	return [...pieces, piece];
}

const reserve = 1.15;
/** Ink above and below the baseline, in parts of the font size, accents on capitals left out. */
const ascent = 0.74;
const descent = 0.22;
/** Letters that are not in the table count as a full square: the widest of common scripts. */
const widest = 2048;

const regular = letterWidths(regularAdvances);
const bold = letterWidths(boldAdvances);

/** Widths by code unit; what lies behind the end is as wide as anything unknown. */
function letterWidths(rows: AdvanceRows): Uint16Array {
	const letters = rows.flatMap(([width, row]) => [...row].map((letter) => [letter.charCodeAt(0), width] as const));
	const widths = new Uint16Array(Math.max(...letters.map(([code]) => code)) + 1).fill(widest);
	for (const [code, width] of letters) widths[code] = width;
	return widths;
}
