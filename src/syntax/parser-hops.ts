// The lines of a chain: a hop with everything left and right of its `to`, and a branch.
import type { IToken } from "chevrotain";
import { findUnit, quantity, unitsOf } from "../base/quantity.ts";
import type { Span } from "../base/span.ts";
import { figureOf } from "./figures.ts";
import { LeftOfTo } from "./left-of-to.ts";
import { TermParser } from "./parser-terms.ts";
import { problem, quoted } from "./problem.ts";
import * as tokens from "./tokens.ts";
import type { HopStatement, Link, Member, NameTerm, QuantityTerm } from "./tree.ts";
import { nearUnit, unknownUnit } from "./units.ts";

/** Rules for hops and branches. */
export class HopParser extends TermParser {
	/** `14 ft` and `2 ft through engine-bay`. */
	private readonly lengthPiece = this.RULE("lengthPiece", (left: LeftOfTo) => {
		const token = this.CONSUME(tokens.Distance);
		const place = this.OPTION(() => {
			this.CONSUME(tokens.Through);
			return this.SUBRULE(this.name, { ARGS: ["the place behind `through`"] });
		});
		this.ACTION(() => {
			const length = this.distanceOf(token);
			const known = length?.kind === "quantity" ? { length } : {};
			if (place) left.through.push({ ...known, place, span: this.#between(token, place.span) });
			else left.setLength(length, this.current().spanOf(token));
		});
	});

	/** A number without a unit where a length is due; a word that looks like a unit is taken for it. */
	private readonly numberPiece = this.RULE("numberPiece", (left: LeftOfTo) => {
		const number = this.CONSUME(tokens.NumberFigure);
		const unit = this.OPTION({
			GATE: () => nearUnit(this.LA(1).image, "length") !== undefined,
			DEF: () => this.CONSUME(tokens.Word),
		});
		this.ACTION(() => left.setLength(this.#doubtfulLength(number, unit), this.current().spanOf(number)));
	});

	/** `through engine-bay` for the whole of a hop. */
	private readonly throughPiece = this.RULE("throughPiece", (left: LeftOfTo) => {
		const start = this.CONSUME(tokens.Through);
		const place = this.SUBRULE(this.name, { ARGS: ["the place behind `through`"] });
		this.ACTION(() => left.through.push({ place, span: this.#between(start, place.span) }));
	});

	/** `within 7 in`. */
	private readonly withinPiece = this.RULE("withinPiece", (left: LeftOfTo) => {
		this.CONSUME(tokens.Within);
		const token = this.CONSUME(tokens.Distance, { ERR_MSG: "unit-missing a length behind `within`" });
		this.ACTION(() => left.setWithin(this.distanceOf(token), this.current().spanOf(token)));
	});

	/** `as bunks-2`. */
	private readonly tagPiece = this.RULE("tagPiece", (left: LeftOfTo) => {
		this.CONSUME(tokens.As);
		const tag = this.SUBRULE(this.name, { ARGS: ["the cable's tag behind `as`"] });
		this.ACTION(() => left.setTag(tag));
	});

	/** A word of the run's own, or `white marked red at both ends`. */
	private readonly wordPiece = this.RULE("wordPiece", (left: LeftOfTo) => {
		const core = this.CONSUME(tokens.Word);
		const marking = this.OPTION(() => {
			this.CONSUME(tokens.Marked);
			const colour = this.SUBRULE(this.name, { ARGS: ["the colour behind `marked`"] });
			const at = this.OPTION2(() => {
				this.CONSUME(tokens.At);
				return this.SUBRULE2(this.name, { ARGS: ["the end behind `at`"] });
			});
			this.OPTION3({ GATE: () => this.LA(0).image === "both", DEF: () => this.CONSUME(tokens.Ends) });
			return this.ACTION(() => ({ colour, ...(at === undefined || at.text === "both" ? {} : { at }) }));
		});
		this.ACTION(() => {
			if (marking === undefined) left.terms.push(this.termOf(core));
			else left.markings.push({ core: this.nameOf(core), ...marking, span: this.#between(core, marking.colour.span) });
		});
	});

	/** One piece of what speaks of the cable; they stand in any order. */
	private readonly leftPiece = this.RULE("leftPiece", (left: LeftOfTo) => {
		this.OR([
			{ ALT: () => this.SUBRULE(this.lengthPiece, { ARGS: [left] }) },
			{ ALT: () => this.SUBRULE(this.numberPiece, { ARGS: [left] }) },
			{ ALT: () => this.SUBRULE(this.throughPiece, { ARGS: [left] }) },
			{ ALT: () => this.SUBRULE(this.withinPiece, { ARGS: [left] }) },
			{ ALT: () => this.SUBRULE(this.tagPiece, { ARGS: [left] }) },
			{ ALT: () => this.SUBRULE(this.wordPiece, { ARGS: [left] }) },
			{
				ALT: () => {
					const start = this.LA(1);
					const cable = this.SUBRULE(this.cable);
					this.ACTION(() => left.setCable(cable, this.current().spanOf(start)));
				},
			},
			{
				ALT: () => {
					const token = this.CONSUME(tokens.Quantity);
					this.ACTION(() => this.#reportUnfit(token));
				},
			},
			{
				ALT: () => {
					const token = this.CONSUME(tokens.LooseTerm);
					this.ACTION(() => left.terms.push(this.termOf(token)));
				},
			},
		]);
	});

	/** `to`, `via` or `bolted to`. */
	private readonly manner = this.RULE("manner", () => {
		const first = this.OR({
			DEF: [
				{ ALT: () => this.CONSUME(tokens.To) },
				{ ALT: () => this.CONSUME(tokens.Via) },
				{
					ALT: () => {
						const bolted = this.CONSUME(tokens.Bolted);
						this.CONSUME2(tokens.To, { ERR_MSG: "word-missing `to`" });
						return bolted;
					},
				},
			],
			ERR_MSG: "word-missing `to`",
		});
		return this.ACTION(() => first);
	});

	/** `[LENGTH] [as TAG] [by CABLE] ... to NAME: KIND attributes`, or with `via`, `bolted to`, `within LENGTH to`. */
	readonly hop = this.RULE("hop", () => {
		const left = new LeftOfTo((finding) => this.current().report(finding));
		this.MANY(() => this.SUBRULE(this.leftPiece, { ARGS: [left] }));
		const manner = this.SUBRULE(this.manner);
		const name = this.SUBRULE(this.nameOrRow, { ARGS: ["what the hop arrives at"] });
		const colon = this.OPTION(() => this.CONSUME(tokens.Colon));
		const thing = this.OPTION2(() => {
			const type = this.CONSUME(tokens.Word);
			const label = this.SUBRULE(this.label);
			const attributes = this.SUBRULE(this.attributes);
			return this.ACTION(() => ({ type: this.nameOf(type), ...(label ? { label } : {}), attributes }));
		});
		return this.ACTION((): HopStatement & { members: Member[] } => {
			this.#checkColon(name.span, colon, thing?.type);
			if (thing) this.checkedNew(name);
			const members: Member[] = [];
			return {
				kind: "hop",
				...left.resolve(wordOf(manner), this.current().spanOf(manner)),
				name,
				...(thing ?? { attributes: [] }),
				members,
				span: this.current().whole,
			};
		});
	});

	/** `from g2`, `from g3.line by 14-2`. */
	readonly branch = this.RULE("branch", () => {
		this.CONSUME(tokens.From);
		const from = this.SUBRULE(this.names, { ARGS: ["what the branch starts from"] });
		const cable = this.OPTION(() => this.SUBRULE(this.cable)) ?? [];
		return this.ACTION(() => {
			const links: Link[] = [];
			return { kind: "branch" as const, from, cable, links, span: this.current().whole };
		});
	});

	/** A kind needs its colon, and a colon its kind. */
	#checkColon(name: Span, colon: IToken | undefined, type: NameTerm | undefined): void {
		const line = this.current();
		if (type && !colon)
			line.report(
				problem("colon-missing", type.span, {
					title: `The colon is missing before ${quoted(type.text)}`,
					label: "a colon before this",
				}),
			);
		if (colon && !type)
			line.report(
				problem("name-missing", line.spanOf(colon), {
					title: "The kind of the thing is missing behind the colon",
					label: "what is it?",
					also: [{ span: name, label: "of this thing" }],
					help: "Write what it is, such as `b1: receptacle`; without the colon the hop arrives at a thing declared elsewhere.",
				}),
			);
	}

	/** What a number without a unit of length may have been; what is missing of it is reported. */
	#doubtfulLength(number: IToken, word: IToken | undefined): QuantityTerm | undefined {
		const line = this.current();
		const span = line.spanOf(number);
		const figure = figureOf(number);
		if (figure.finding) {
			line.report(figure.finding);
			return undefined;
		}
		const near = word && nearUnit(word.image, "length");
		if (word && near && figure.term.kind === "number") {
			line.report(unknownUnit(word.image, line.spanOf(word), near, "length"));
			const value = quantity(figure.term.value, findUnit(near.symbol) ?? near);
			const whole = { ...span, endColumn: line.spanOf(word).endColumn };
			return { kind: "quantity", quantity: value, text: `${number.image} ${word.image}`, span: whole };
		}
		line.report(
			problem("unit-missing", span, {
				title: `The length ${quoted(number.image)} has no unit`,
				label: "which unit?",
				help: `Units that fit here: ${unitsOf("length").join(", ")}. Write, for example, \`${number.image} ft\`.`,
			}),
		);
		return undefined;
	}

	#reportUnfit(token: IToken): void {
		const line = this.current();
		line.report(
			problem("unit-unfit", line.spanOf(token), {
				title: `${quoted(token.image)} is not a length, and left of \`to\` a hop says how long its cable is`,
				label: "not a length",
				help: `Units that fit here: ${unitsOf("length").join(", ")}. What describes the thing stands right of its kind.`,
			}),
		);
	}

	#between(start: IToken, end: Span): Span {
		return { ...end, column: this.current().spanOf(start).column };
	}
}

function wordOf(manner: IToken): "to" | "via" | "bolted" {
	if (manner.tokenType === tokens.Via) return "via";
	return manner.tokenType === tokens.Bolted ? "bolted" : "to";
}
