// The smallest parts of a line: names, rows of names, terms, labels, cables. The other line rules stand on these.
import { EmbeddedActionsParser, type IToken } from "chevrotain";
import { figureOf } from "./figures.ts";
import type { Line } from "./lexer.ts";
import { checkNewName, nameTerm } from "./names.ts";
import { problem, quoted } from "./problem.ts";
import * as tokens from "./tokens.ts";
import type { NameTerm, NewName, QuantityTerm, Term, TextTerm, UnknownTerm } from "./tree.ts";
import { limits, reservedWords } from "./vocabulary.ts";

/** Rules for the parts of a line. In each, what an `ACTION` does waits until a line is really read. */
export class TermParser extends EmbeddedActionsParser {
	/** The line being read; undefined only before the first one. */
	protected line: Line | undefined;

	constructor(skipValidations: boolean) {
		super(tokens.parsed, { maxLookahead: 1, recoveryEnabled: false, skipValidations });
	}

	/** A name that must stand here; `what` says of what, for the message. */
	protected readonly name = this.RULE("name", (what: string) => {
		const token = this.CONSUME(tokens.NameWord, { ERR_MSG: `name-missing ${what}` });
		return this.ACTION(() => this.nameOf(token));
	});

	/** A name or a row of them, `b1`, `l1..l6`, that may be that of a thing declared before. */
	protected readonly nameOrRow = this.RULE("nameOrRow", (what: string) => {
		const first = this.SUBRULE(this.name, { ARGS: [what] });
		const last = this.OPTION(() => {
			this.CONSUME(tokens.Row);
			return this.SUBRULE2(this.name, { ARGS: ["the last of the row"] });
		});
		return this.ACTION(() => this.rowOf(first, last));
	});

	/** The name of something new, or a row of them. */
	protected readonly newName = this.RULE("newName", (what: string) => {
		const name = this.SUBRULE(this.nameOrRow, { ARGS: [what] });
		return this.ACTION(() => this.checkedNew(name));
	});

	/** Names in a row, one at least. A quantity among them is none of them. */
	protected readonly names = this.RULE("names", (what: string) => {
		const names = [this.SUBRULE(this.name, { ARGS: [what] })];
		this.MANY({
			GATE: () => !this.isDistance(),
			DEF: () => {
				const token = this.CONSUME(tokens.Nameable);
				this.ACTION(() => names.push(this.nameOf(token)));
			},
		});
		return names;
	});

	/** Names with commas between them: what follows without one is no more of the list. */
	protected readonly commaNames = this.RULE("commaNames", (what: string) => {
		const names = [this.SUBRULE(this.name, { ARGS: [what] })];
		this.MANY({
			GATE: () => this.hasCommaBefore(1) && !this.isDistance(),
			DEF: () => {
				const token = this.CONSUME(tokens.Nameable);
				this.ACTION(() => names.push(this.nameOf(token)));
			},
		});
		return names;
	});

	/** A label in double quotes, where there is one. */
	protected readonly label = this.RULE("label", () =>
		this.OPTION(() => {
			const token = this.CONSUME(tokens.Text);
			return this.ACTION(() => this.textOf(token, "label"));
		}),
	);

	/** What describes a thing: words and figures in any order. */
	protected readonly attributes = this.RULE("attributes", () => {
		const terms: Term[] = [];
		this.MANY(() => {
			const token = this.CONSUME(tokens.AttributeWord);
			this.ACTION(() => terms.push(this.termOf(token)));
		});
		return terms;
	});

	/** Words and figures of a line that is free in what it says. */
	protected readonly freeTerms = this.RULE("freeTerms", () => {
		const terms: Term[] = [];
		this.MANY(() => {
			const token = this.CONSUME(tokens.FreeWord);
			this.ACTION(() => terms.push(this.termOf(token)));
		});
		return terms;
	});

	/** `by` and the cable; a length ends it, and so does the word before `marked`. */
	protected readonly cable = this.RULE("cable", () => {
		const terms: Term[] = [];
		const by = this.CONSUME(tokens.By);
		this.OPTION(() => {
			const token = this.CONSUME(tokens.UnknownDistance);
			this.ACTION(() => terms.push(this.termOf(token)));
		});
		this.MANY({
			GATE: () => this.LA(2).tokenType !== tokens.Marked,
			DEF: () => {
				const token = this.CONSUME(tokens.CableWord);
				this.ACTION(() => terms.push(this.termOf(token)));
			},
		});
		this.ACTION(() => {
			if (terms.length === 0) this.#reportMissingCable(by);
		});
		return terms;
	});

	protected isDistance(): boolean {
		const type = this.LA(1).tokenType;
		return type === tokens.SolidLength || type === tokens.SolidQuantity;
	}

	/** The name, once it is seen to be fit for something new. */
	protected checkedNew(name: NewName): NewName {
		checkNewName(name.first, this.current().report);
		return name;
	}

	/** Whether a comma stands right before the token that is `ahead` away. */
	protected hasCommaBefore(ahead: number): boolean {
		const before = this.LA(ahead - 1);
		const text = this.line?.text ?? "";
		return text.slice(before.startOffset + before.image.length, this.LA(ahead).startOffset).includes(",");
	}

	/** The term that a word or figure is; a figure's problem is reported now that it is used as one. */
	protected termOf(token: IToken): Term {
		const line = this.current();
		switch (token.tokenType) {
			case tokens.Text:
				return this.textOf(token, "text");
			case tokens.Sign:
				return { kind: "sign", text: token.image === "+" ? "+" : "-", span: line.spanOf(token) };
			default: {
				if (token.payload === undefined) return nameTerm(token.image, line.spanOf(token), line.report);
				const figure = figureOf(token);
				if (figure.finding) line.report(figure.finding);
				return figure.term;
			}
		}
	}

	/** A word, or a figure in one piece, as a name. */
	protected nameOf(token: IToken): NameTerm {
		const line = this.current();
		const span = line.spanOf(token);
		if (reserved.has(token.image))
			line.report(
				problem("name-reserved", span, {
					title: `${quoted(token.image)} is a word of the notation and cannot be a name`,
					label: "kept for the notation",
					help: `Choose another name, or add to it: \`${token.image}-1\`.`,
				}),
			);
		return nameTerm(token.image, span, line.report);
	}

	/** How far, from a token that is a length or `?`. */
	protected distanceOf(token: IToken): QuantityTerm | UnknownTerm | undefined {
		const term = this.termOf(token);
		return term.kind === "quantity" || term.kind === "unknown" ? term : undefined;
	}

	protected textOf(token: IToken, use: "label" | "text"): TextTerm {
		const line = this.current();
		const text = token.image.slice(1, -1);
		const span = line.spanOf(token);
		const longest = use === "label" ? limits.label : limits.reason;
		if (text.length > longest)
			line.report(
				problem(use === "label" ? "label-too-long" : "reason-too-long", span, {
					title: `The text ${quoted(text)} has ${text.length} characters, and at most ${longest} are read here`,
					label: "too long",
				}),
			);
		return { kind: "text", text, span };
	}

	/** The line being read. */
	protected current(): Line {
		if (this.line === undefined) throw new TypeError("no line is being read");
		return this.line;
	}

	protected rowOf(first: NameTerm, last: NameTerm | undefined): NewName {
		const line = this.current();
		if (last === undefined) return { first, span: first.span };
		const span = { ...first.span, endColumn: last.span.endColumn };
		if (!isRow(first.text, last.text))
			line.report(
				problem("row-unclear", span, {
					title: `${quoted(`${first.text}..${last.text}`)} is no row of names`,
					label: "no row",
				}),
			);
		return { first, last, span };
	}

	#reportMissingCable(by: IToken): void {
		const line = this.current();
		line.report(
			problem("name-missing", line.spanOf(by), {
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
	while (start > 0 && /[0-9]/.test(name.charAt(start - 1))) start--;
	return { stem: name.slice(0, start), number: start === name.length ? Number.NaN : Number(name.slice(start)) };
}

const reserved = new Set(reservedWords);
