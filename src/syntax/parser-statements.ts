// The lines that belong to no chain: statements behind their first word, parts of things, settings, and landings.
import { nameTerm } from "./names.ts";
import { HopParser } from "./parser-hops.ts";
import { problem } from "./problem.ts";
import * as tokens from "./tokens.ts";
import type { Landing, Link, Member, ModeStatement, NameTerm, Setting, Supply } from "./tree.ts";

/** Rules for statements, each for what follows the word it begins with, and for the lines below them. */
export class StatementParser extends HopParser {
	/** `"Title" notation 1`. */
	readonly plan = this.RULE("plan", () => {
		const title = this.OPTION(() => this.CONSUME(tokens.Text));
		const terms = this.SUBRULE(this.terms);
		return this.ACTION(() => {
			const settings: Setting[] = [];
			const titled = title ? { title: this.textOf(title, "label") } : {};
			return { kind: "plan" as const, ...titled, terms, settings, span: this.line.whole };
		});
	});

	/** `region us`, `black hot 12 AWG`: a word, then anything. */
	readonly setting = this.RULE("setting", () => {
		const key = this.OR({
			DEF: [
				{ ALT: () => this.CONSUME(tokens.Word) },
				{ ALT: () => this.CONSUME(tokens.Figure) },
				{ ALT: () => this.CONSUME(tokens.Bare) },
				{ ALT: () => this.CONSUME(tokens.SolidFigure) },
			],
			ERR_MSG: "name-missing The name of the setting",
		});
		const terms = this.SUBRULE(this.terms);
		return this.ACTION(() => {
			const name = nameTerm(key.image, this.line.spanOf(key), this.line.report);
			return { key: name, terms, span: this.line.whole };
		});
	});

	/** `porch "Porch" outdoor`. */
	readonly place = this.RULE("place", () => {
		const { name, ...rest } = this.SUBRULE(this.declared, { ARGS: ["The name of the place"] });
		return this.ACTION(() => ({ kind: "place" as const, name: name.first, ...rest, span: this.line.whole }));
	});

	/** `panel LC "Load centre" main 30 A from shore by 10-2, 12 ft`. */
	readonly thing = this.RULE("thing", () => {
		const type = this.CONSUME(tokens.Word);
		const declared = this.SUBRULE(this.declared, { ARGS: ["The name of the thing"] });
		const supply = this.OPTION(() => this.SUBRULE(this.supply));
		return this.ACTION(() => {
			const members: Member[] = [];
			const supplied = supply ? { supply } : {};
			const span = this.line.whole;
			return { kind: "thing" as const, type: this.nameOf(type), ...declared, ...supplied, members, span };
		});
	});

	/** `from shore by 10-2, 12 ft`. */
	private readonly supply = this.RULE("supply", () => {
		const start = this.CONSUME(tokens.From);
		const from = this.SUBRULE(this.names, { ARGS: ["What the thing is fed from", () => true] });
		const cable = this.OPTION(() => this.SUBRULE(this.cable)) ?? [];
		const distance = this.OPTION2(() => this.CONSUME(tokens.Distance));
		return this.ACTION((): Supply => {
			const length = distance && this.distanceOf(distance);
			const span = { ...this.line.whole, column: this.line.spanOf(start).column };
			return { from, cable, ...(length ? { length } : {}), span };
		});
	});

	/** `slot 1A: breaker 20 A`, `r1: receptacle`, `bonding screw`. */
	readonly member = this.RULE("member", () => {
		const role = this.OPTION({
			GATE: () => !this.#isNameEnd(2) && this.#isNameEnd(3),
			DEF: () => this.CONSUME(tokens.Word),
		});
		const name = this.OPTION2({
			GATE: () => this.#isNameEnd(2),
			DEF: () => {
				const row = this.SUBRULE(this.row, { ARGS: ["The name of the part"] });
				this.CONSUME(tokens.Colon, { ERR_MSG: "colon-missing a colon" });
				return row;
			},
		});
		const type = this.CONSUME2(tokens.Word, { ERR_MSG: "name-missing The kind of the part" });
		const label = this.OPTION3(() => this.CONSUME(tokens.Text));
		const terms = this.SUBRULE(this.terms);
		return this.ACTION(() => {
			const members: Member[] = [];
			if (name) this.checkNew(name);
			const known = { ...(role ? { role: this.nameOf(role) } : {}), ...(name ? { name } : {}) };
			const labelled = label ? { label: this.textOf(label, "label") } : {};
			const span = this.line.whole;
			return { kind: "member" as const, ...known, type: this.nameOf(type), ...labelled, terms, members, span };
		});
	});

	/** `bunks from LC.1A by 12-2`. What follows `from NAME` without a comma describes the run. */
	readonly run = this.RULE("run", (sort: "circuit" | "feed" | "bond") => {
		const { name, terms, ...label } = this.SUBRULE(this.declared, { ARGS: ["The name of the run"] });
		this.CONSUME(tokens.From, { ERR_MSG: "word-missing `from`" });
		const from = this.SUBRULE(this.names, { ARGS: ["What the run starts from", () => this.hasCommaBefore()] });
		const behind = this.SUBRULE(this.terms);
		const cable = this.OPTION(() => this.SUBRULE(this.cable)) ?? [];
		return this.ACTION(() => {
			const links: Link[] = [];
			const start = { sort, name: name.first, ...label, from, terms: [...terms, ...behind] };
			return { kind: "run" as const, ...start, cable, links, span: this.line.whole };
		});
	});

	/** The box of `at g1`. */
	readonly at = this.RULE("at", () => {
		const box = this.SUBRULE(this.name, { ARGS: ["The name of the box"] });
		return this.ACTION(() => {
			const landings: Landing[] = [];
			return { kind: "at" as const, box, landings, span: this.line.whole };
		});
	});

	/** `storm: gen, inv without shore with wh TS at off`. */
	readonly mode = this.RULE("mode", () => {
		const lists: Record<"sources" | "without" | "with", NameTerm[]> = { sources: [], without: [], with: [] };
		const positions: ModeStatement["positions"][number][] = [];
		let list = lists.sources;
		const name = this.SUBRULE(this.name, { ARGS: ["The name of the mode"] });
		this.CONSUME(tokens.Colon, { ERR_MSG: "colon-missing a colon" });
		this.MANY(() =>
			this.OR([
				{
					ALT: () => {
						this.CONSUME(tokens.Without);
						list = lists.without;
					},
				},
				{
					ALT: () => {
						this.CONSUME(tokens.With);
						list = lists.with;
					},
				},
				{
					ALT: () => {
						const thing = this.SUBRULE2(this.name, { ARGS: ["What is live"] });
						const position = this.OPTION(() => {
							this.CONSUME(tokens.At);
							return this.SUBRULE3(this.name, { ARGS: ["The position behind `at`"] });
						});
						this.ACTION(() => {
							if (position) positions.push({ thing, position, span: spanning(thing, position) });
							else list.push(thing);
						});
					},
				},
			]),
		);
		return this.ACTION(() => {
			this.checkNew({ first: name, span: name.span });
			return { kind: "mode" as const, name, ...lists, positions, span: this.line.whole };
		});
	});

	/** `own-pair flexible` of a cable, `fridge-relay "Fridge relay"` of a part. */
	readonly definition = this.RULE("definition", (sort: "cable" | "part") => {
		const { name, ...rest } = this.SUBRULE(this.declared, { ARGS: [`The name of the ${sort}`] });
		return this.ACTION(() => {
			const lines: Setting[] = [];
			return { kind: "definition" as const, sort, name: name.first, ...rest, lines, span: this.line.whole };
		});
	});

	/** `"common.ferrule"`. */
	readonly use = this.RULE("use", () => {
		const path = this.CONSUME(tokens.Text, { ERR_MSG: "text-missing The name of the file" });
		return this.ACTION(() => ({ kind: "use" as const, path: this.textOf(path, "text"), span: this.line.whole }));
	});

	/** `bond-doubled at LC because "..."`. */
	readonly accept = this.RULE("accept", () => {
		const rule = this.SUBRULE(this.name, { ARGS: ["The name of the rule"] });
		const at = this.OPTION(() => {
			this.CONSUME(tokens.At);
			return this.SUBRULE2(this.name, { ARGS: ["The thing behind `at`"] });
		});
		const reason = this.OPTION2(() => {
			this.CONSUME(tokens.Because);
			return this.CONSUME(tokens.Text, { ERR_MSG: "reason-missing The reason" });
		});
		return this.ACTION(() => {
			if (reason === undefined) this.#reportMissingReason();
			const because = reason ? { because: this.textOf(reason, "text") } : {};
			return { kind: "accept" as const, rule, ...(at ? { at } : {}), ...because, span: this.line.whole };
		});
	});

	/** `r1 b1.hot b1.neutral 118 V`: what a meter showed. */
	readonly reading = this.RULE("reading", () => {
		const name = this.SUBRULE(this.name, { ARGS: ["The name of the reading"] });
		this.OPTION(() => this.CONSUME(tokens.Colon));
		const terms = this.SUBRULE(this.terms);
		return this.ACTION(() => {
			this.checkNew({ first: name, span: name.span });
			return { kind: "reading" as const, name, terms, span: this.line.whole };
		});
	});

	#isNameEnd(ahead: number): boolean {
		const type = this.LA(ahead).tokenType;
		return type === tokens.Colon || type === tokens.Row;
	}

	#reportMissingReason(): void {
		this.line.report(
			problem("reason-missing", this.line.whole, {
				title: "The line accepts a deviation and gives no reason",
				label: "because of what?",
			}),
		);
	}
}

function spanning(first: NameTerm, last: NameTerm) {
	return { ...first.span, endColumn: last.span.endColumn };
}
