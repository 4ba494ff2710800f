// The token types of a line: first what the lexer finds, then what the line parser asks for. No type is a family of
// others, because families cost time at each start; a word gets its type from the line it stands in.
import { createToken, Lexer, type TokenType } from "chevrotain";
import { hiddenMark, scanFigure, scanWord } from "./scan.ts";

/** Code units at which a word of another script may begin: each one up to 255, then one in every run of 128. */
const foreignStarts = Array.from({ length: 128 + 510 }, (_, index) =>
	index < 128 ? 128 + index : (index - 126) * 128,
);
const asciiStarts = Array.from({ length: 128 }, (_, code) => code);

// ---- what the lexer finds ----

/** A word, names with their dots included. */
export const Word = createToken({
	name: "Word",
	pattern: (text, offset) => lexeme(text, offset, scanWord(text, offset)),
	start_chars_hint: [..."abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ_", ...foreignStarts],
	line_breaks: false,
});
/** A word that begins with a digit, not yet joined with its unit. */
export const Digits = createToken({
	name: "Digits",
	pattern: (text, offset) => lexeme(text, offset, scanFigure(text, offset)),
	start_chars_hint: [..."0123456789+-"],
	line_breaks: false,
});
export const Sign = createToken({ name: "Sign", pattern: /[+-]/, start_chars_hint: ["+", "-"] });
export const GaugeMark = createToken({ name: "GaugeMark", pattern: /#[0-9]+(?:\/0)?/, start_chars_hint: ["#"] });
export const Text = createToken({ name: "Text", pattern: /"[^"]*"/, start_chars_hint: ['"'], line_breaks: false });
/** A text that the line ends in. */
export const OpenText = createToken({
	name: "OpenText",
	pattern: /"[^"]*/,
	start_chars_hint: ['"'],
	line_breaks: false,
});
export const Colon = createToken({ name: "Colon", pattern: ":" });
export const Opening = createToken({ name: "Opening", pattern: "(" });
export const Closing = createToken({ name: "Closing", pattern: ")" });
export const Row = createToken({ name: "Row", pattern: ".." });
export const Slash = createToken({ name: "Slash", pattern: "/" });
export const Query = createToken({ name: "Query", pattern: "?" });
export const Percent = createToken({ name: "Percent", pattern: "%" });
const Blank = createToken({
	name: "Blank",
	pattern: new RegExp(`[ \\t,${hiddenMark}]+`),
	start_chars_hint: [" ", "\t", ",", hiddenMark],
	group: Lexer.SKIPPED,
});
const Comment = createToken({
	name: "Comment",
	pattern: /\/\/[\s\S]*/,
	start_chars_hint: ["/"],
	line_breaks: false,
	group: Lexer.SKIPPED,
});
/** Whatever the notation has no use for, one character at a time. */
export const Stray = createToken({
	name: "Stray",
	pattern: (text, offset) => lexeme(text, offset, offset + ((text.codePointAt(offset) ?? 0) > 0xffff ? 2 : 1)),
	start_chars_hint: [...asciiStarts, ...foreignStarts],
	line_breaks: false,
});

/** What the lexer looks for: of two that fit, the first wins. */
export const lexed: TokenType[] = [
	...[Blank, Word, Digits, Sign, Comment, Text, OpenText, GaugeMark],
	...[Row, Colon, Opening, Closing, Slash, Query, Percent, Stray],
];

// ---- what figures become once they are joined ----

const joined = (name: string) => createToken({ name, pattern: Lexer.NA });

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
