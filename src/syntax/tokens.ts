// The token types of a line: what the lexer finds, and the families of them by which the line parser asks.
import { createToken, Lexer, type TokenType } from "chevrotain";
import { hiddenMark, scanFigure, scanWord } from "./scan.ts";

const family = (name: string, ...categories: TokenType[]) => createToken({ name, pattern: Lexer.NA, categories });

// ---- families ----

/** Any word or figure in lines that are free in what they say: settings, readings, own parts. */
export const FreeWord = family("FreeWord");
/** A word or figure that describes a thing. */
export const AttributeWord = family("AttributeWord", FreeWord);
/** A word or figure that describes a cable. */
export const CableWord = family("CableWord", AttributeWord);
/** Whatever stands where a name is due, reserved words included, other than those that show the name was forgotten. */
export const NameWord = family("NameWord");
/** Whatever can be the name of something: words, and figures written in one piece. */
export const Nameable = family("Nameable", NameWord);
/** A word that begins a free line. */
export const KeyWord = family("KeyWord", FreeWord);
/** What stands left of `to` without a meaning of the notation's own. */
export const LooseTerm = family("LooseTerm");
/** How far: a length, or a length that is not known. */
export const Distance = family("Distance", AttributeWord);

// ---- words and figures ----

/** Code units at which a word of another script may begin: each one up to 255, then one in every run of 128. */
const foreignStarts = Array.from({ length: 128 + 510 }, (_, index) =>
	index < 128 ? 128 + index : (index - 126) * 128,
);
const letters = [..."abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ_"];
const digits = [..."0123456789"];

export const Word = createToken({
	name: "Word",
	pattern: (text, offset) => lexeme(text, offset, scanWord(text, offset)),
	start_chars_hint: [...letters, ...foreignStarts],
	line_breaks: false,
	categories: [CableWord, Nameable, KeyWord],
});
/** As the lexer finds it; joined with its unit it becomes one of the types below. */
export const Figure = createToken({
	name: "Figure",
	pattern: (text, offset) => lexeme(text, offset, scanFigure(text, offset)),
	start_chars_hint: [...digits, "+", "-"],
	line_breaks: false,
});
export const NumberFigure = family("Number", CableWord, Nameable);
/** A figure in several pieces that could not be made out. */
export const SpacedNumber = family("SpacedNumber", CableWord, LooseTerm);
export const Quantity = family("Quantity", CableWord);
export const Length = family("Length", Distance);
/** A length or another quantity written in one piece, which is a name where one is due: the `1A` of `slot 1A`. */
export const SolidQuantity = family("SolidQuantity", Quantity, Nameable);
export const SolidLength = family("SolidLength", Length, Nameable);
export const Gauge = family("Gauge", CableWord, LooseTerm);
export const MakeUp = family("MakeUp", CableWord, Nameable, LooseTerm);
export const Pair = family("Pair", AttributeWord, LooseTerm);
/** `?` alone or with a unit of length. */
export const UnknownDistance = family("UnknownDistance", Distance);
/** `?` with another unit. */
export const Unknown = family("Unknown", CableWord, LooseTerm);
export const Sign = createToken({
	name: "Sign",
	pattern: /[+-]/,
	start_chars_hint: ["+", "-"],
	categories: [CableWord, KeyWord, LooseTerm],
});
export const Text = createToken({
	name: "Text",
	pattern: /"[^"]*"/,
	start_chars_hint: ['"'],
	line_breaks: false,
	categories: [AttributeWord, LooseTerm],
});
export const OpenText = createToken({
	name: "OpenText",
	pattern: /"[^"]*/,
	start_chars_hint: ['"'],
	line_breaks: false,
});

// ---- marks ----

export const Colon = createToken({ name: "Colon", pattern: ":" });
export const Opening = createToken({ name: "Opening", pattern: "(" });
export const Closing = createToken({ name: "Closing", pattern: ")" });
export const Row = createToken({ name: "Row", pattern: ".." });
export const Slash = createToken({ name: "Slash", pattern: "/" });
export const Query = createToken({ name: "Query", pattern: "?" });
export const GaugeMark = createToken({
	name: "GaugeMark",
	pattern: /#[0-9]+(?:\/0)?/,
	start_chars_hint: ["#"],
});
export const Percent = createToken({ name: "Percent", pattern: "%" });
const Comment = createToken({
	name: "Comment",
	pattern: /\/\/[\s\S]*/,
	start_chars_hint: ["/"],
	line_breaks: false,
	group: Lexer.SKIPPED,
});
const Blank = createToken({
	name: "Blank",
	pattern: new RegExp(`[ \\t,${hiddenMark}]+`),
	start_chars_hint: [" ", "\t", ",", hiddenMark],
	group: Lexer.SKIPPED,
});
/** Whatever the notation has no use for, one character at a time. */
export const Stray = createToken({
	name: "Stray",
	pattern: (text, offset) => lexeme(text, offset, offset + ((text.codePointAt(offset) ?? 0) > 0xffff ? 2 : 1)),
	start_chars_hint: [...Array.from({ length: 128 }, (_, code) => code), ...foreignStarts],
	line_breaks: false,
});

// ---- statement words ----

const word = (pattern: string, ...categories: TokenType[]) =>
	createToken({ name: `Word_${pattern}`, pattern, longer_alt: Word, categories });
/** Words that begin a statement: never a name, plain words within a line. */
const statement = (pattern: string) => word(pattern, AttributeWord, NameWord);

export const Plan = statement("plan");
export const Place = statement("place");
export const Circuit = statement("circuit");
export const Feed = statement("feed");
export const Bond = statement("bond");
export const At = statement("at");
export const Mode = statement("mode");
export const Cable = statement("cable");
export const Part = statement("part");
export const Use = statement("use");
export const Accept = statement("accept");
export const Reading = statement("reading");
export const Join = word("join", AttributeWord, NameWord, KeyWord);
export const Link = word("link", AttributeWord, NameWord, KeyWord);
export const From = word("from", FreeWord, KeyWord);
export const By = word("by", FreeWord, KeyWord);
export const To = word("to", AttributeWord, NameWord, KeyWord);
export const Via = word("via", FreeWord, NameWord, KeyWord);
export const Bolted = word("bolted", FreeWord, NameWord, KeyWord);
export const Within = word("within", FreeWord, NameWord, KeyWord);
export const As = word("as", FreeWord, NameWord, KeyWord);
export const Through = word("through", FreeWord, NameWord, KeyWord);
export const Marked = word("marked", FreeWord, NameWord, KeyWord);
export const On = word("on", AttributeWord, NameWord, KeyWord);
export const In = word("in", AttributeWord, KeyWord, LooseTerm);
export const With = word("with", AttributeWord, NameWord, KeyWord);
export const Without = word("without", AttributeWord, NameWord, KeyWord);
export const Because = word("because", FreeWord, KeyWord);
export const Loose = word("loose", Word);
export const Capped = word("capped", Word);
export const Both = word("both", Word);
export const Ends = word("ends", Word);

/** What the lexer looks for, in this order: of two that fit, the first wins. */
export const lexed: TokenType[] = [
	...[Blank, Comment, Text, OpenText],
	...[Plan, Place, Circuit, Feed, Bond, At, Mode, Cable, Part, Use, Accept, Reading, Join, Link],
	...[From, By, To, Via, Bolted, Within, As, Through, Marked, On, In, Without, With, Because],
	...[Loose, Capped, Both, Ends],
	...[Word, Figure, Sign, GaugeMark, Row, Colon, Opening, Closing, Slash, Query, Percent, Stray],
];

/** All token types the line parser may meet, families included. */
export const parsed: TokenType[] = [
	...new Set([
		...lexed,
		...[FreeWord, AttributeWord, CableWord, NameWord, Nameable, KeyWord, Distance, LooseTerm],
		...[
			NumberFigure,
			SpacedNumber,
			Quantity,
			Length,
			SolidQuantity,
			SolidLength,
			Gauge,
			MakeUp,
			Pair,
			Unknown,
			UnknownDistance,
		],
	]),
];

function lexeme(text: string, start: number, end: number): [string] | null {
	return end > start ? [text.slice(start, end)] : null;
}
