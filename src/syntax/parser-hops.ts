// The lines of a chain: a hop with everything left and right of its `to`, and a branch.
import type { IToken } from "chevrotain";
import { quantity, unitsOf } from "../base/quantity.ts";
import type { Span } from "../base/span.ts";
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
			return this.SUBRULE(this.name, { ARGS: ["The place behind `through`"] });
		});
		this.ACTION(() => {
			const length = this.distanceOf(token);
			const known = length?.kind === "quantity" ? { length } : {};
			if (place) left.through.push({ ...known, place, span: this.#between(token, place.span) });
			else left.setLength(length, this.line.spanOf(token));
		});
	});

	/** A word of the run's own with its figure, such as `bundled 3`, or `white marked red at both ends`. */
	private readonly wordPiece = this.RULE("wordPiece", (left: LeftOfTo) => {
		const core = this.CONSUME(tokens.Word);
		const figure = this.OPTION4({
			// The first length is that of the hop, whatever stands before it.
			GATE: () => this.LA(1).tokenType !== tokens.Distance || left.hasLength,
			DEF: () =>
				this.OR([
					{ ALT: () => this.CONSUME(tokens.Bare) },
					{ ALT: () => this.CONSUME(tokens.Distance) },
					{ ALT: () => this.CONSUME(tokens.SolidFigure) },
					{ ALT: () => this.CONSUME(tokens.Figure) },
				]),
		});
		const marking = this.OPTION(() => {
			this.CONSUME(tokens.Marked);
			const colour = this.SUBRULE(this.name, { ARGS: ["The colour behind `marked`"] });
			const at = this.OPTION2({
				GATE: () => this.LA(1).image === "at",
				DEF: () => {
					this.CONSUME2(tokens.Word);
					return this.SUBRULE2(this.name, { ARGS: ["The end behind `at`"] });
				},
			});
			this.OPTION3({
				GATE: () => this.LA(0).image === "both" && this.LA(1).image === "ends",
				DEF: () => this.CONSUME3(tokens.Word),
			});
			return this.ACTION(() => ({ colour, ...(at === undefined || at.text === "both" ? {} : { at }) }));
		});
		this.ACTION(() => {
			if (marking === undefined) left.terms.push(this.termOf(core));
			if (figure) left.terms.push(this.termOf(figure));
			if (marking)
				left.markings.push({ core: this.nameOf(core), ...marking, span: this.#between(core, marking.colour.span) });
		});
	});

	/** One piece of what speaks of the cable; they stand in any order. */
	private readonly leftPiece = this.RULE("leftPiece", (left: LeftOfTo) => {
		this.OR([
			{ ALT: () => this.SUBRULE(this.lengthPiece, { ARGS: [left] }) },
			{ ALT: () => this.SUBRULE(this.wordPiece, { ARGS: [left] }) },
			{
				ALT: () => {
					const start = this.LA(1);
					const cable = this.SUBRULE(this.cable);
					this.ACTION(() => left.setCable(cable, this.line.spanOf(start)));
				},
			},
			{
				ALT: () => {
					this.CONSUME(tokens.As);
					const tag = this.SUBRULE(this.row, { ARGS: ["The tag behind `as`"] });
					this.ACTION(() => left.setTag(tag));
				},
			},
			{
				ALT: () => {
					const start = this.CONSUME(tokens.Through);
					const place = this.SUBRULE2(this.name, { ARGS: ["The place behind `through`"] });
					this.ACTION(() => left.through.push({ place, span: this.#between(start, place.span) }));
				},
			},
			{
				ALT: () => {
					this.CONSUME(tokens.Within);
					const token = this.CONSUME(tokens.Distance, { ERR_MSG: "unit-missing a length behind `within`" });
					this.ACTION(() => left.setWithin(this.distanceOf(token), this.line.spanOf(token)));
				},
			},
			{
				ALT: () => {
					const number = this.CONSUME(tokens.Bare);
					// A word that looks like a unit of length is taken for one.
					const unit = this.OPTION({
						GATE: () => nearUnit(this.LA(1).image, "length") !== undefined,
						DEF: () => this.CONSUME(tokens.Word),
					});
					this.ACTION(() => left.setLength(this.#doubtfulLength(number, unit), this.line.spanOf(number)));
				},
			},
			{
				ALT: () => {
					const token = this.CONSUME(tokens.SolidFigure);
					this.ACTION(() => this.#addFigure(left, token));
				},
			},
			{
				ALT: () => {
					const token = this.CONSUME(tokens.Figure);
					this.ACTION(() => this.#addFigure(left, token));
				},
			},
			{
				ALT: () => {
					const token = this.CONSUME(tokens.Text);
					this.ACTION(() => left.terms.push(this.termOf(token)));
				},
			},
		]);
	});

	/** `[LENGTH] [as TAG] [by CABLE] ... to NAME: KIND attributes`, or with `via`, `bolted to`, `within LENGTH to`. */
	readonly hop = this.RULE("hop", () => {
		const left = new LeftOfTo((finding) => this.line.report(finding));
		this.MANY(() => this.SUBRULE(this.leftPiece, { ARGS: [left] }));
		const manner = this.OR({
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
		const name = this.SUBRULE(this.row, { ARGS: ["What the hop arrives at"] });
		const colon = this.OPTION(() => this.CONSUME(tokens.Colon));
		const thing = this.OPTION2({
			// Without a colon a reserved word is no kind: `to LC in galley`.
			GATE: () => colon !== undefined || !this.isReserved(),
			DEF: () => {
				const type = this.CONSUME(tokens.Word);
				const label = this.OPTION3(() => this.CONSUME(tokens.Text));
				const attributes = this.SUBRULE(this.terms);
				return this.ACTION(() => {
					const labelled = label ? { label: this.textOf(label, "label") } : {};
					return { type: this.nameOf(type), ...labelled, attributes };
				});
			},
		});
		return this.ACTION((): HopStatement & { members: Member[] } => {
			// A second end behind a comma is no kind.
			if (thing && !colon && thing.type.steps.length > 0) {
				this.#tellSecondEnd(name.first, thing.type);
				const cableSide = left.resolve(wordOf(manner), this.line.spanOf(manner));
				return { kind: "hop", ...cableSide, name, attributes: [], members: [], span: this.line.whole };
			}
			this.#checkColon(name.span, colon, thing?.type);
			if (thing) this.checkNew(name);
			const cableSide = left.resolve(wordOf(manner), this.line.spanOf(manner));
			return { kind: "hop", ...cableSide, name, ...(thing ?? { attributes: [] }), members: [], span: this.line.whole };
		});
	});

	/** `from g2`, `from g3.line by 14-2`. */
	readonly branch = this.RULE("branch", () => {
		this.CONSUME(tokens.From);
		const from = this.SUBRULE(this.names, { ARGS: ["What the branch starts from", () => true] });
		const cable = this.OPTION(() => this.SUBRULE(this.cable)) ?? [];
		return this.ACTION(() => {
			const links: Link[] = [];
			return { kind: "branch" as const, from, cable, links, span: this.line.whole };
		});
	});

	/** A figure left of `to` that is not the length: a quantity of another sort is a mistake. */
	#addFigure(left: LeftOfTo, token: IToken): void {
		const term = this.termOf(token);
		if (term.kind !== "quantity") left.terms.push(term);
		else
			this.line.report(
				problem("unit-unfit", term.span, {
					title: `${quoted(term.text)} is not a length, and left of \`to\` a hop says how long its cable is`,
					label: "not a length",
					help: `Units that fit here: ${unitsOf("length").join(", ")}. What describes the thing stands right of its kind.`,
				}),
			);
	}

	#tellSecondEnd(first: NameTerm, second: NameTerm): void {
		this.line.report(
			problem("end-second", second.span, {
				title: `A hop goes to one thing, and ${quoted(second.text)} is a second behind ${quoted(first.text)}`,
				label: "a second end",
				help: "Lead a pair to the plus: its minus goes to the minus beside it. A cable to something else is a hop of its own.",
			}),
		);
	}

	/** A kind needs its colon, and a colon its kind. */
	#checkColon(name: Span, colon: IToken | undefined, type: NameTerm | undefined): void {
		if (type && !colon)
			this.line.report(
				problem("colon-missing", type.span, {
					title: `The colon is missing before ${quoted(type.text)}`,
					label: "a colon before this",
				}),
			);
		if (colon && !type)
			this.line.report(
				problem("name-missing", this.line.spanOf(colon), {
					title: "The kind of the thing is missing behind the colon",
					label: "what is it?",
					also: [{ span: name, label: "of this thing" }],
					help: "Write what it is, such as `b1: receptacle`; without the colon the hop arrives at a thing declared elsewhere.",
				}),
			);
	}

	/** What a number without a unit of length may have been; what is missing of it is reported. */
	#doubtfulLength(number: IToken, word: IToken | undefined): QuantityTerm | undefined {
		const span = this.line.spanOf(number);
		const term = this.termOf(number);
		const near = word && nearUnit(word.image, "length");
		if (word && near && term.kind === "number") {
			this.line.report(unknownUnit(word.image, this.line.spanOf(word), near, "length"));
			const whole = { ...span, endColumn: this.line.spanOf(word).endColumn };
			const text = this.line.text.slice(whole.column - 1, whole.endColumn - 1);
			return { kind: "quantity", quantity: quantity(term.value, near), text, span: whole };
		}
		this.line.report(
			problem("unit-missing", span, {
				title: `The length ${quoted(number.image)} has no unit`,
				label: "which unit?",
				help: `Units that fit here: ${unitsOf("length").join(", ")}. Write, for example, \`${number.image} ft\`.`,
			}),
		);
		return undefined;
	}

	#between(start: IToken, end: Span): Span {
		return { ...end, column: this.line.spanOf(start).column };
	}
}

function wordOf(manner: IToken): "to" | "via" | "bolted" {
	if (manner.tokenType === tokens.Via) return "via";
	return manner.tokenType === tokens.Bolted ? "bolted" : "to";
}
