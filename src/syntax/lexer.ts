// One line of text into the tokens that the line parser reads, with what is wrong in its characters reported.
import { type IToken, Lexer } from "chevrotain";
import type { Finding } from "../base/finding.ts";
import type { Span } from "../base/span.ts";
import { cleanLine } from "./characters.ts";
import { FigureJoiner, newToken } from "./figures.ts";
import { problem, quoted } from "./problem.ts";
import * as tokens from "./tokens.ts";

/** A line as the rest of the room sees it. */
export class Line {
	readonly file: string;
	readonly number: number;
	/** The text with look-alike characters replaced; columns are those of the file. */
	readonly text: string;
	/** How far it is indented, in columns; a tab reaches to the next multiple of four. */
	readonly indentation: number;
	/** Empty for a line without words. */
	readonly tokens: readonly IToken[];
	/** Takes what is wrong with its form. Where marks were left out or a text not closed, its form says nothing new. */
	readonly report: (finding: Finding) => void;

	/** Reads one line of a file. `report` takes what is wrong with its characters and figures, and later with its form. */
	constructor(text: string, file: string, number: number, report: (finding: Finding) => void) {
		this.file = file;
		this.number = number;
		this.report = report;
		this.text = cleanLine(text, this.span(0, 0), report);
		this.indentation = indentationOf(this.text);
		const lexed = lineLexer().tokenize(this.text).tokens;
		const closed = this.#withClosedText(lexed);
		const joined = new FigureJoiner(closed, this.text, (start, end) => this.span(start, end), report).join();
		this.tokens = this.#withoutStrays(joined);
		const isGuessed = this.tokens.length < joined.length || lexed.at(-1)?.tokenType === tokens.OpenText;
		if (isGuessed) this.report = () => {};
	}

	/** The place of a stretch of the line, by offsets. */
	span(start: number, end: number): Span {
		return { file: this.file, line: this.number, column: start + 1, endColumn: end + 1 };
	}

	spanOf(token: IToken): Span {
		return this.span(token.startOffset, token.startOffset + token.image.length);
	}

	/** The place of all its words. */
	get whole(): Span {
		return this.span(this.tokens[0]?.startOffset ?? 0, endOf(this.tokens.at(-1)));
	}

	/** The place of its first word. */
	get start(): Span {
		const [first] = this.tokens;
		return first ? this.spanOf(first) : this.span(0, 1);
	}

	/** Its words as they stand, without indentation and comment. */
	get words(): string {
		return this.text.slice(this.tokens[0]?.startOffset ?? 0, endOf(this.tokens.at(-1)));
	}

	/** The names on it, without what they lead to. */
	get names(): string[] {
		const words = this.tokens.filter((token) => nameTypes.has(token.tokenType));
		return words.map((token) => /^[^.@(]*/.exec(token.image)?.[0] ?? "");
	}

	/** A text that is not closed reaches to the end of the line. */
	#withClosedText(lexed: IToken[]): IToken[] {
		const last = lexed.at(-1);
		if (last?.tokenType !== tokens.OpenText) return lexed;
		this.report(
			problem("quote-unclosed", this.span(last.startOffset, last.startOffset + 1), {
				title: `The text ${quoted(last.image)} is not closed`,
				label: "opens here",
			}),
		);
		return [...lexed.slice(0, -1), newToken(tokens.Text, `${last.image}"`, last.startOffset)];
	}

	/** Marks that the notation does not know are reported, the first of them by name, and left out. */
	#withoutStrays(lexed: IToken[]): IToken[] {
		const strays = lexed.filter((token) => unused.has(token.tokenType));
		const [first, ...others] = strays;
		if (first === undefined) return lexed;
		const hint = hints.get(first.image);
		this.report(
			problem("character-unknown", this.spanOf(first), {
				title: `The mark ${shown(first.image)} has no meaning here`,
				label: "not understood",
				also: others.slice(0, 8).map((token) => ({ span: this.spanOf(token), label: "nor this" })),
				...(hint === undefined ? {} : { help: hint }),
			}),
		);
		return lexed.filter((token) => !unused.has(token.tokenType));
	}
}

/** Columns of white space at the start of a line. */
export function indentationOf(text: string): number {
	let columns = 0;
	for (const character of text) {
		if (character === "\t") columns += tabWidth - (columns % tabWidth);
		else if (character === " ") columns++;
		else break;
	}
	return columns;
}

function shown(mark: string): string {
	const code = mark.codePointAt(0) ?? 0;
	const number = code > 126 ? ` (U+${code.toString(16).toUpperCase().padStart(4, "0")})` : "";
	return `${quoted(mark)}${number}`;
}

function endOf(token: IToken | undefined): number {
	return token === undefined ? 0 : token.startOffset + token.image.length;
}

/** Built when the first line is read, and once. */
function lineLexer(): Lexer {
	// With those that only the parser meets: this is where the library numbers them all.
	built ??= new Lexer([...new Set([...tokens.lexed, ...tokens.parsed])], {
		ensureOptimizations: true,
		positionTracking: "onlyOffset",
		skipValidations: true,
	});
	return built;
}

let built: Lexer | undefined;
const tabWidth = 4;
const unused = new Set([tokens.Stray, tokens.Slash, tokens.Percent]);
const nameTypes = new Set([tokens.Word, tokens.Bare, tokens.SolidFigure]);
/** Advice for marks that come from another habit. */
const hints = new Map([
	["'", "Feet are written `ft`, and text stands in double quotes."],
	["#", "A comment begins with `//`. `#` stands right before a wire gauge: `#12`."],
	[";", "A line needs nothing at its end. A comment begins with `//`."],
	["=", "Leave the sign out: `main 30 A`, not `main = 30 A`."],
	["&", "Names in a row need nothing between them: `plus, minus`."],
	[".", "A dot joins a thing and a part of it without white space: `LC.1A`."],
	["@", "`@` stands right between a cable and the thing it ends at: `bunks-1@LC`."],
	["*", "Several alike are a row of names: `l1..l6: light 2 W each`."],
	["{", "What belongs to a line is indented below it, without brackets."],
	["}", "What belongs to a line is indented below it, without brackets."],
]);
