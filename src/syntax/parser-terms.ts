// The smallest parts of a line: names, rows of names, terms, labels, cables. The other line rules stand on these.
import { EmbeddedActionsParser, type IToken, type TokenType } from "chevrotain";
import { certain } from "../base/certain.ts";
import { figureOf } from "./figures.ts";
import type { Line } from "./lexer.ts";
import { LateLookahead } from "./lookahead.ts";
import { checkNewName, nameTerm } from "./names.ts";
import { problem, quoted } from "./problem.ts";
import { isDigit } from "./scan.ts";
import * as tokens from "./tokens.ts";
import type { NameTerm, NewName, QuantityTerm, Term, TextTerm, UnknownTerm } from "./tree.ts";
import { limits, reservedWords } from "./vocabulary.ts";

/** Rules for the parts of a line. In each, what an `ACTION` does waits until a line is really read. */
export class TermParser extends EmbeddedActionsParser {
	#line: Line | undefined;
	// Made once, since the library would have them made anew for every token.
	readonly #nameAlternatives = this.#anyOf(nameTypes);
	readonly #termAlternatives = this.#anyOf(termTypes);
	readonly #cableAlternatives = this.#anyOf(cableTypes);

	/** A name that must stand here; `what` says of what, for the message. */
	protected readonly name = this.RULE("name", (what: string) => {
		const token = this.OR({ DEF: this.#nameAlternatives, ERR_MSG: `name-missing ${what}` });
		return this.ACTION(() => this.nameOf(token));
	});

	/** A name or a row of them: `b1`, `l1..l6`. */
	protected readonly row = this.RULE("row", (what: string) => {
		const first = this.SUBRULE(this.name, { ARGS: [what] });
		const last = this.OPTION(() => {
			this.CONSUME(tokens.Row);
			return this.SUBRULE2(this.name, { ARGS: ["The last name of the row"] });
		});
		return this.ACTION(() => this.#rowOf(first, last));
	});

	/** Names in a row, one at least, as long as `continues` holds. */
	protected readonly names = this.RULE("names", (what: string, continues: () => boolean) => {
		const names = [this.SUBRULE(this.name, { ARGS: [what] })];
		this.MANY({
			GATE: () => continues(),
			DEF: () => names.push(this.SUBRULE2(this.name, { ARGS: [what] })),
		});
		return names;
	});

	/** Words, figures and texts in any order, as many as there are. */
	protected readonly terms = this.RULE("terms", () => {
		const terms: Term[] = [];
		this.MANY(() => {
			const token = this.OR(this.#termAlternatives);
			this.ACTION(() => terms.push(this.termOf(token)));
		});
		return terms;
	});

	/** A new name or a row of them, a label, and what describes it. */
	protected readonly declared = this.RULE("declared", (what: string) => {
		const name = this.SUBRULE(this.row, { ARGS: [what] });
		const label = this.OPTION(() => this.CONSUME(tokens.Text));
		const terms = this.SUBRULE(this.terms);
		return this.ACTION(() => {
			this.checkNew(name);
			return { name, ...(label ? { label: this.textOf(label, "label") } : {}), terms };
		});
	});

	/** `by` and the cable; a length ends it, and so does the word before `marked`. */
	protected readonly cable = this.RULE("cable", () => {
		const terms: Term[] = [];
		const by = this.CONSUME(tokens.By);
		this.OPTION({
			GATE: () => this.LA(1).image === "?",
			DEF: () => {
				const unknown = this.CONSUME(tokens.Distance);
				this.ACTION(() => terms.push(this.termOf(unknown)));
			},
		});
		this.MANY({
			GATE: () => this.LA(2).tokenType !== tokens.Marked,
			DEF: () => {
				const token = this.OR(this.#cableAlternatives);
				this.ACTION(() => terms.push(this.termOf(token)));
			},
		});
		this.ACTION(() => {
			if (terms.length === 0) this.#reportMissingCable(by);
		});
		return terms;
	});

	protected constructor(skipValidations: boolean) {
		super(tokens.parsed, {
			maxLookahead: 1,
			lookaheadStrategy: new LateLookahead({ maxLookahead: 1 }),
			recoveryEnabled: false,
			skipValidations,
		});
	}

	/** The line being read. */
	protected get line(): Line {
		return certain(this.#line, "the line being read");
	}

	protected set line(line: Line) {
		this.#line = line;
	}

	/** Whether a comma stands right before the next token. */
	protected hasCommaBefore(): boolean {
		const before = this.LA(0);
		const end = before.startOffset + before.image.length;
		return this.line.text.slice(end, this.LA(1).startOffset).includes(",");
	}

	/** Whether the next token is a word that cannot be a name. */
	protected isReserved(): boolean {
		return reserved.has(this.LA(1).image);
	}

	/** Whether the new name is plain, as new names must be. */
	protected checkNew(name: NewName): void {
		checkNewName(name.first, this.line.report);
	}

	/** The term that a word or figure is; a figure's problem is reported now that it is used as one. */
	protected termOf(token: IToken): Term {
		if (token.tokenType === tokens.Text) return this.textOf(token, "text");
		if (token.payload === undefined) return nameTerm(token.image, this.line.spanOf(token), this.line.report);
		const figure = figureOf(token);
		if (figure.finding) this.line.report(figure.finding);
		return figure.term;
	}

	/** A word, or a figure in one piece, as a name. */
	protected nameOf(token: IToken): NameTerm {
		const span = this.line.spanOf(token);
		if (reserved.has(token.image))
			this.line.report(
				problem("name-reserved", span, {
					title: `${quoted(token.image)} is a word of the notation and cannot be a name`,
					label: "kept for the notation",
					help: `Choose another name, or add to it: \`${token.image}-1\`.`,
				}),
			);
		return nameTerm(token.image, span, this.line.report);
	}

	/** How far, from a token that is a length or `?`. */
	protected distanceOf(token: IToken): QuantityTerm | UnknownTerm | undefined {
		const term = this.termOf(token);
		return term.kind === "quantity" || term.kind === "unknown" ? term : undefined;
	}

	protected textOf(token: IToken, use: "label" | "text"): TextTerm {
		const text = token.image.slice(1, -1);
		const span = this.line.spanOf(token);
		const longest = use === "label" ? limits.label : limits.reason;
		if (text.length > longest)
			this.line.report(
				problem(use === "label" ? "label-too-long" : "reason-too-long", span, {
					title: `The text ${quoted(text)} has ${text.length} characters, and at most ${longest} are read here`,
					label: "too long",
				}),
			);
		return { kind: "text", text, span };
	}

	/** One alternative for each type, whichever of them comes. */
	#anyOf(types: readonly TokenType[]) {
		return types.map((type, index) => ({ ALT: () => this.consume(index, type) }));
	}

	#rowOf(first: NameTerm, last: NameTerm | undefined): NewName {
		if (last === undefined) return { first, span: first.span };
		const span = { ...first.span, endColumn: last.span.endColumn };
		if (!isRow(first.text, last.text))
			this.line.report(
				problem("row-unclear", span, {
					title: `${quoted(`${first.text}..${last.text}`)} is no row of names`,
					label: "no row",
				}),
			);
		return { first, last, span };
	}

	#reportMissingCable(by: IToken): void {
		this.line.report(
			problem("name-missing", this.line.spanOf(by), {
				title: "The cable is missing behind `by`",
				label: "by which cable?",
				help: "Write the cable, such as `by 12-2`, or `by ?` as long as it is not known.",
			}),
		);
	}
}

/** Alike up to the number at their end, the first number the smaller one, and not too many between. */
function isRow(first: string, last: string): boolean {
	const one = splitRowName(first);
	const other = splitRowName(last);
	const count = other.number - one.number + 1;
	return one.stem === other.stem && count >= 2 && count <= limits.row;
}

function splitRowName(name: string): { readonly stem: string; readonly number: number } {
	let start = name.length;
	while (start > 0 && isDigit(name.charCodeAt(start - 1))) start--;
	return { stem: name.slice(0, start), number: start === name.length ? Number.NaN : Number(name.slice(start)) };
}

const reserved = new Set(reservedWords);
/** What can be a name. */
const nameTypes = [tokens.Word, tokens.Bare, tokens.SolidFigure];
/** What can describe something. `to` is a plain word there, as in `bonds neutral to frame`. */
const termTypes = [
	tokens.Word,
	tokens.Text,
	tokens.Bare,
	tokens.Distance,
	tokens.SolidFigure,
	tokens.Figure,
	tokens.To,
];
/** What can describe a cable. */
const cableTypes = [tokens.Word, tokens.Bare, tokens.SolidFigure, tokens.Figure];
