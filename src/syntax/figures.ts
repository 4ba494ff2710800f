// Joins what the lexer found into figures: number and unit, feet and inches, two ratings with a slash.
// Lexed tokens of one line in, tokens for the line parser out; each figure's token carries its term.
import type { IToken, TokenType } from "chevrotain";
import type { Finding } from "../base/finding.ts";
import { squareMillimetres } from "../base/gauge.ts";
import { findUnit, quantity } from "../base/quantity.ts";
import type { Span } from "../base/span.ts";
import { figureShape } from "./figure-shape.ts";
import { problem, quoted } from "./problem.ts";
import * as tokens from "./tokens.ts";
import type { QuantityTerm, Term } from "./tree.ts";
import { gaugeByNumber, isGaugeWord, nearUnit, rounded, unitInOtherCase, unknownUnit } from "./units.ts";

/** What a token carries once its figure is joined. A finding is reported when the figure is used as one, not as a name. */
export interface Figure {
	readonly term: Term;
	readonly finding?: Finding;
}

/** The figure that a joined token carries. */
export function figureOf(token: IToken): Figure {
	return token.payload;
}

/** One line while its figures are joined. */
export class FigureJoiner {
	readonly #lexed: readonly IToken[];
	readonly #line: string;
	readonly #span: (start: number, end: number) => Span;
	readonly #report: (finding: Finding) => void;
	readonly #joined: IToken[] = [];

	/** `span` gives the place of a stretch of the line; `report` takes what is wrong whatever the figure is used for. */
	constructor(
		lexed: readonly IToken[],
		line: string,
		span: (start: number, end: number) => Span,
		report: (finding: Finding) => void,
	) {
		this.#lexed = lexed;
		this.#line = line;
		this.#span = span;
		this.#report = report;
	}

	/** The line's tokens with every figure joined. */
	join(): IToken[] {
		let index = 0;
		for (let token = this.#lexed[index]; token !== undefined; token = this.#lexed[index]) {
			const type = token.tokenType;
			if (type === tokens.Digits || type === tokens.GaugeMark) index = this.#joinFigure(index, token);
			else if (type === tokens.Query) index = this.#joinUnknown(index, token);
			else {
				if (type !== tokens.Sign) this.#joined.push(token);
				else if (!this.#isEdgeHyphen(index, token)) this.#pushSign(index, token);
				index++;
			}
		}
		return this.#joined;
	}

	#joinFigure(index: number, token: IToken): number {
		const first = this.#readFigure(index, token);
		// Behind the place word stands a name, even one that looks like a figure.
		const isPlace = this.#joined.at(-1)?.image === "in" && first !== undefined && placeTypes.has(typeOf(first));
		if (first === undefined || isPlace) {
			this.#joined.push(newToken(tokens.Word, token.image, token.startOffset));
			return index + 1;
		}
		const whole = this.#readPair(first) ?? this.#readSum(first);
		this.#push(typeOf(whole), whole.figure, token.startOffset, whole.next);
		return whole.next;
	}

	/** One figure with the unit that follows it; undefined where the word is a name. */
	#readFigure(index: number, token: IToken): Reading | undefined {
		if (token.tokenType === tokens.GaugeMark) {
			const [number, aught] = token.image.slice(1).split("/");
			return this.#gauge(index, index + 1, aught === undefined ? Number(number) : 1 - Number(number));
		}
		const shape = figureShape(token.image);
		switch (shape.shape) {
			case "name":
				return undefined;
			case "make-up":
				return this.#reading(index, index + 1, (text, span) => ({ term: { kind: "make-up", text, span } }));
			case "aught": {
				const next = isGaugeWord(this.#lexed[index + 1]?.image ?? "") ? index + 2 : index + 1;
				return this.#gauge(index, next, 1 - shape.noughts);
			}
			case "unclear":
				return this.#unclear(index, index + 1, "is no figure of the notation");
			case "two-numbers":
				return this.#twoNumbers(index, shape.first, shape.second, shape.unit);
			case "number":
				return this.#commaNumber(index, token, shape.unit) ?? this.#number(index, shape.value, shape.unit);
		}
	}

	#number(index: number, value: number, solidUnit: string): Reading {
		if (solidUnit !== "") return this.#withUnit(index, index + 1, value, solidUnit);
		const unit = this.#unitAfter(index);
		if (unit !== undefined) return this.#withUnit(index, index + 2, value, unit);
		return this.#reading(index, index + 1, (text, span) => ({ term: { kind: "number", value, text, span } }));
	}

	/** The spelling of the unit behind a number, in its own or in wrong capitals; undefined where no unit stands. */
	#unitAfter(index: number): string | undefined {
		const next = this.#lexed[index + 1];
		if (next?.tokenType === tokens.Percent) return next.image;
		if (next?.tokenType !== tokens.Word) return undefined;
		// Behind a comma `in` leads to a place: `spaces 8, in galley`.
		if (next.image === "in" && this.#line.slice(this.#endOf(index), next.startOffset).includes(",")) return undefined;
		const isUnit = findUnit(next.image) ?? unitInOtherCase(next.image);
		return isUnit !== undefined || isGaugeWord(next.image) ? next.image : undefined;
	}

	#withUnit(index: number, next: number, value: number, spelling: string): Reading {
		if (isGaugeWord(spelling)) return this.#gauge(index, next, value);
		const known = findUnit(spelling);
		if (known?.dimension === "area") return this.#metricSize(index, next, value * known.factor);
		if (known) return this.#quantity(index, next, quantity(value, known));
		const near = unitInOtherCase(spelling) ?? nearUnit(spelling);
		return this.#reading(index, next, (text, span) => {
			const finding = unknownUnit(spelling, { ...span, column: span.endColumn - spelling.length }, near);
			return near && near.dimension !== "area"
				? { term: { kind: "quantity", quantity: quantity(value, near), text, span }, finding }
				: { term: { kind: "unknown", span }, finding };
		});
	}

	#quantity(index: number, next: number, measure: QuantityTerm["quantity"]): Reading {
		return this.#reading(index, next, (text, span) => ({ term: { kind: "quantity", quantity: measure, text, span } }));
	}

	/** `1,500` and `2,5`: a comma is white space, so these would be two figures; read as one and reported. */
	#commaNumber(index: number, token: IToken, solidUnit: string): Reading | undefined {
		const other = this.#lexed[index + 1];
		const end = this.#endOf(index);
		if (solidUnit !== "" || other?.tokenType !== tokens.Digits) return undefined;
		if (other.startOffset !== end + 1 || this.#line[end] !== ",") return undefined;
		const shape = figureShape(other.image);
		if (shape.shape !== "number" || token.image.includes(".")) return undefined;
		const hasUnit = shape.unit === "" && this.#unitAfter(index + 1) !== undefined;
		return this.#unclear(index, hasUnit ? index + 3 : index + 2, "has a comma between its digits");
	}

	/** `120/240 V`: two ratings with one unit. */
	#twoNumbers(index: number, first: number, second: number, solidUnit: string): Reading {
		const behind = solidUnit === "" ? this.#unitAfter(index) : undefined;
		const spelling = behind ?? solidUnit;
		const unit = findUnit(spelling) ?? unitInOtherCase(spelling);
		const next = behind === undefined ? index + 1 : index + 2;
		if (unit === undefined) return this.#makeUpWithSlash(index, next, first, second);
		return this.#reading(index, next, (text, span) => {
			const slash = text.indexOf("/");
			const middle = span.column + slash;
			const one = { text: text.slice(0, slash), span: { ...span, endColumn: middle } };
			const other = { text: text.slice(slash + 1), span: { ...span, column: middle + 1 } };
			return {
				term: {
					kind: "pair",
					first: { kind: "quantity", quantity: quantity(first, unit), ...one },
					second: { kind: "quantity", quantity: quantity(second, unit), ...other },
					span,
				},
			};
		});
	}

	/** `12/2`, as cables are called in speech: read as the make-up that it is, and reported. */
	#makeUpWithSlash(index: number, next: number, size: number, cores: number): Reading {
		const isCable =
			next === index + 1 && size >= 1 && gaugeByNumber(size) !== undefined && /^[1-5]$/.test(String(cores));
		if (!isCable) return this.#unclear(index, next, "has no unit that is known behind it");
		return this.#reading(index, next, (text, span) => ({
			term: { kind: "make-up", text: `${size}-${cores}`, span },
			finding: problem("number-unclear", span, {
				title: `${quoted(text)} has a slash, and the make-up of a cable is written with a hyphen`,
				label: `${size}-${cores}`,
				help: `Did you mean \`${size}-${cores}\`? Two ratings with a slash have a unit behind them: \`120/240 V\`.`,
			}),
		}));
	}

	#gauge(index: number, next: number, number: number): Reading {
		const gauge = gaugeByNumber(number);
		if (gauge === undefined) return this.#notASize(index, next);
		return this.#reading(index, next, (text, span) => ({ term: { kind: "gauge", gauge, text, span } }));
	}

	#metricSize(index: number, next: number, mm2: number): Reading {
		if (mm2 <= 0) return this.#notASize(index, next);
		const gauge = squareMillimetres(rounded(mm2));
		return this.#reading(index, next, (text, span) => ({ term: { kind: "gauge", gauge, text, span } }));
	}

	/** Feet and inches and the like: one quantity as long as smaller units follow and no comma stands between. */
	#readSum(first: Reading): Reading {
		let sum = first;
		let unit = unitOf(first);
		for (;;) {
			const token = this.#lexed[sum.next];
			const term = sum.figure.term;
			if (term.kind !== "quantity" || token?.tokenType !== tokens.Digits || sum.figure.finding) return sum;
			if (this.#line.slice(this.#endOf(sum.next - 1), token.startOffset).includes(",")) return sum;
			const added = this.#readFigure(sum.next, token);
			const part = added?.figure.term;
			if (added === undefined || part?.kind !== "quantity") return sum;
			// `1 m 20 cm / 30 cm` ends in a pair of its own.
			if (this.#lexed[added.next]?.tokenType === tokens.Slash) return sum;
			if (smallerUnits.get(unit)?.includes(part.quantity.unit) !== true) return sum;
			const value = rounded(term.quantity.value + part.quantity.value);
			const written = rounded(value / (findUnit(term.quantity.unit)?.factor ?? 1));
			sum = this.#quantity(first.index, added.next, { ...term.quantity, value, written });
			unit = part.quantity.unit;
		}
	}

	/** `12 V / 120 V`; a unit behind the second figure alone is that of both. */
	#readPair(first: Reading): Reading | undefined {
		const token = this.#lexed[first.next + 1];
		if (this.#lexed[first.next]?.tokenType !== tokens.Slash || token?.tokenType !== tokens.Digits) return undefined;
		const second = this.#readFigure(first.next + 1, token);
		if (second === undefined) return undefined;
		return this.#reading(first.index, second.next, (text, span) => {
			const other = second.figure.term;
			const one = other.kind === "quantity" ? inUnitOf(first.figure.term, other) : undefined;
			const finding = first.figure.finding ?? second.figure.finding;
			if (one !== undefined && other.kind === "quantity")
				return { term: { kind: "pair", first: one, second: other, span }, ...(finding ? { finding } : {}) };
			const unlike = problem("figures-unlike", span, {
				title: `The two figures of ${quoted(text)} do not measure the same`,
				label: "not alike",
			});
			return { term: { kind: "unknown", span }, finding: finding ?? unlike };
		});
	}

	#joinUnknown(index: number, token: IToken): number {
		const next = this.#lexed[index + 1];
		const symbol = this.#unitOfUnknown(next);
		const after = symbol === undefined ? index + 1 : index + 2;
		const span = this.#span(token.startOffset, this.#endOf(after - 1));
		const isDistance = symbol === undefined || findUnit(symbol)?.dimension === "length";
		const term: Term = symbol === undefined ? { kind: "unknown", span } : { kind: "unknown", unit: symbol, span };
		this.#push(isDistance ? tokens.Distance : tokens.Figure, { term }, token.startOffset, after);
		return after;
	}

	/** Behind `?` the word `in` is the place word, as anywhere but behind a number. */
	#unitOfUnknown(next: IToken | undefined): string | undefined {
		const isWord = next?.tokenType === tokens.Word || next?.tokenType === tokens.Percent;
		if (!isWord || next.image === "in") return undefined;
		return isGaugeWord(next.image) ? "AWG" : findUnit(next.image)?.symbol;
	}

	#pushSign(index: number, token: IToken): void {
		const span = this.#span(token.startOffset, this.#endOf(index));
		const term: Term = { kind: "sign", text: token.image === "+" ? "+" : "-", span };
		this.#push(tokens.Figure, { term }, token.startOffset, index + 1);
	}

	/** A hyphen right before a word: reported, and left out. */
	#isEdgeHyphen(index: number, token: IToken): boolean {
		const next = this.#lexed[index + 1];
		if (token.image !== "-" || next?.tokenType !== tokens.Word || next.startOffset !== token.startOffset + 1)
			return false;
		this.#report(
			problem("name-hyphen", this.#span(token.startOffset, this.#endOf(index + 1)), {
				title: `The name ${quoted(`-${next.image}`)} has a hyphen at its edge`,
				label: "hyphen at the edge",
			}),
		);
		return true;
	}

	#unclear(index: number, next: number, what: string): Reading {
		return this.#reading(index, next, (text, span) => ({
			term: { kind: "unknown", span },
			finding: problem("number-unclear", span, { title: `${quoted(text)} ${what}`, label: "cannot be read" }),
		}));
	}

	#notASize(index: number, next: number): Reading {
		return this.#reading(index, next, (text, span) => ({
			term: { kind: "unknown", span },
			finding: problem("number-unclear", span, {
				title: `${quoted(text)} is no size of a conductor`,
				label: "no such size",
				help: "Gauges run from 40 up to 1, then 1/0 to 4/0: `12 AWG`, `#12`, `4/0`. Metric sizes are areas: `2.5 mm2`.",
			}),
		}));
	}

	#reading(index: number, next: number, figure: (text: string, span: Span) => Figure): Reading {
		const start = this.#lexed[index]?.startOffset ?? 0;
		const end = this.#endOf(next - 1);
		return { index, next, figure: figure(this.#line.slice(start, end), this.#span(start, end)) };
	}

	#push(type: TokenType, figure: Figure, start: number, next: number): void {
		const image = this.#line.slice(start, this.#endOf(next - 1));
		this.#joined.push({ ...newToken(type, image, start), payload: figure });
	}

	#endOf(index: number): number {
		const token = this.#lexed[index];
		return token === undefined ? this.#line.length : token.startOffset + token.image.length;
	}
}

/** A figure, with the places among the lexed tokens of its first and of the one after its last. */
interface Reading {
	readonly index: number;
	readonly next: number;
	readonly figure: Figure;
}

/** A token of another type in the place of a lexed one. */
export function newToken(type: TokenType, image: string, startOffset: number): IToken {
	return { image, startOffset, tokenType: type, tokenTypeIdx: type.tokenTypeIdx ?? 0 };
}

function unitOf(reading: Reading): string {
	return reading.figure.term.kind === "quantity" ? reading.figure.term.quantity.unit : "";
}

/** The first of two ratings, once it is a quantity of the same dimension as the second. */
function inUnitOf(first: Term, second: QuantityTerm): QuantityTerm | undefined {
	if (first.kind === "quantity") return first.quantity.dimension === second.quantity.dimension ? first : undefined;
	const unit = findUnit(second.quantity.unit);
	if (first.kind !== "number" || unit === undefined) return undefined;
	return { kind: "quantity", quantity: quantity(first.value, unit), text: first.text, span: first.span };
}

/** The type a joined figure's token has. A figure written in one piece can still be taken for a name. */
function typeOf(reading: Reading): TokenType {
	const term = reading.figure.term;
	if (term.kind === "quantity" && term.quantity.dimension === "length") return tokens.Distance;
	const isSolid = reading.next === reading.index + 1;
	if (!isSolid || term.kind === "gauge" || term.kind === "pair") return tokens.Figure;
	return term.kind === "number" ? tokens.Bare : tokens.SolidFigure;
}

/** What can be the name of a place, as it is written in one piece. */
const placeTypes = new Set([tokens.Bare, tokens.SolidFigure]);

/** Units that may follow one another in a sum, larger first. */
const smallerUnits = new Map([
	["ft", ["in"]],
	["m", ["cm", "mm"]],
	["cm", ["mm"]],
	["h", ["min"]],
	["min", ["s"]],
]);
