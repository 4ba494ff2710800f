// The token types of a line: first what the lexer finds, then what the line parser asks for. No type is a family of
// others, because families cost time at each start; a word gets its type from the line it stands in. They are plain data, which the lexer completes.
import { Lexer, type TokenType } from "chevrotain";
import { hiddenMark, scanFigure, scanWord } from "./scan.ts";

/** Code units at which a word of another script may begin: each one up to 255, then one in every run of 255, as the lexer tells them apart. */
const foreignStarts = Array.from({ length: 128 + 257 }, (_, index) =>
	index < 128 ? 128 + index : Math.max(256, (index - 127) * 255),
);
const asciiStarts = Array.from({ length: 128 }, (_, code) => code);

// ---- what the lexer finds ----

/** A word, names with their dots included. */
export const Word: TokenType = {
	name: "Word",
	PATTERN: (text, offset) => lexeme(text, offset, scanWord(text, offset)),
	START_CHARS_HINT: [..."abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ_", ...foreignStarts],
	LINE_BREAKS: false,
};
/** A word that begins with a digit, not yet joined with its unit. */
export const Digits: TokenType = {
	name: "Digits",
	PATTERN: (text, offset) => lexeme(text, offset, scanFigure(text, offset)),
	START_CHARS_HINT: [..."0123456789+-"],
	LINE_BREAKS: false,
};
export const Sign: TokenType = { name: "Sign", PATTERN: /[+-]/, START_CHARS_HINT: ["+", "-"] };
export const GaugeMark: TokenType = { name: "GaugeMark", PATTERN: /#[0-9]+(?:\/0)?/, START_CHARS_HINT: ["#"] };
export const Text: TokenType = { name: "Text", PATTERN: /"[^"]*"/, START_CHARS_HINT: ['"'], LINE_BREAKS: false };
/** A text that the line ends in. */
export const OpenText: TokenType = {
	name: "OpenText",
	PATTERN: /"[^"]*/,
	START_CHARS_HINT: ['"'],
	LINE_BREAKS: false,
};
export const Colon: TokenType = { name: "Colon", PATTERN: ":" };
export const Opening: TokenType = { name: "Opening", PATTERN: "(" };
export const Closing: TokenType = { name: "Closing", PATTERN: ")" };
export const Row: TokenType = { name: "Row", PATTERN: ".." };
export const Slash: TokenType = { name: "Slash", PATTERN: "/" };
export const Query: TokenType = { name: "Query", PATTERN: "?" };
export const Percent: TokenType = { name: "Percent", PATTERN: "%" };
const Blank: TokenType = {
	name: "Blank",
	PATTERN: new RegExp(`[ \\t,${hiddenMark}]+`),
	START_CHARS_HINT: [" ", "\t", ",", hiddenMark],
	GROUP: Lexer.SKIPPED,
};
const Comment: TokenType = {
	name: "Comment",
	PATTERN: /\/\/[\s\S]*/,
	START_CHARS_HINT: ["/"],
	LINE_BREAKS: false,
	GROUP: Lexer.SKIPPED,
};
/** Whatever the notation has no use for, one character at a time. */
export const Stray: TokenType = {
	name: "Stray",
	PATTERN: (text, offset) => lexeme(text, offset, offset + ((text.codePointAt(offset) ?? 0) > 0xffff ? 2 : 1)),
	START_CHARS_HINT: [...asciiStarts, ...foreignStarts],
	LINE_BREAKS: false,
};

/** What the lexer looks for: of two that fit, the first wins. */
export const lexed: TokenType[] = [
	...[Blank, Word, Digits, Sign, Comment, Text, OpenText, GaugeMark],
	...[Row, Colon, Opening, Closing, Slash, Query, Percent, Stray],
];

// ---- what figures become once they are joined ----

const joined = (name: string): TokenType => ({ name, PATTERN: Lexer.NA });

/** A bare number. */
export const Bare = joined("Bare");
/** How far: a length, or `?` for one that is not known. */
export const Distance = joined("Distance");
/** Any other figure in one piece: a name where a name is due, as the `1A` of `slot 1A`. */
export const SolidFigure = joined("SolidFigure");
/** Any other figure, and a sign alone. */
export const Figure = joined("Figure");

// ---- words with a meaning in the line they stand in ----

export const From = joined("From");
export const By = joined("By");
export const To = joined("To");
export const Via = joined("Via");
export const Bolted = joined("Bolted");
export const Within = joined("Within");
export const As = joined("As");
export const Through = joined("Through");
export const Marked = joined("Marked");
export const At = joined("At");
export const On = joined("On");
export const With = joined("With");
export const Without = joined("Without");
export const Because = joined("Because");
export const Join = joined("Join");
export const Link = joined("Link");

/** What the line parser may meet. */
export const parsed: TokenType[] = [
	...[Word, Text, Bare, Distance, SolidFigure, Figure, Colon, Row, Opening, Closing],
	...[From, By, To, Via, Bolted, Within, As, Through, Marked, At, On, With, Without, Because, Join, Link],
];

function lexeme(text: string, start: number, end: number): [string] | null {
	return end > start ? [text.slice(start, end)] : null;
}
