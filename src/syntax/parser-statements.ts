// The lines at the left edge: things, places, runs, modes, own cables and parts, and the rest of the statements.
import type { IToken } from "chevrotain";
import { nameTerm } from "./names.ts";
import { HopParser } from "./parser-hops.ts";
import { problem } from "./problem.ts";
import * as tokens from "./tokens.ts";
import type { Landing, Link, Member, ModeStatement, NameTerm, Setting, Supply } from "./tree.ts";

/** Rules for the statements that begin at the left edge, and for the lines of those that take settings. */
export class StatementParser extends HopParser {
	/** `plan "Title" notation 1`. */
	readonly plan = this.RULE("plan", () => {
		this.CONSUME(tokens.Plan);
		const title = this.SUBRULE(this.label);
		const terms = this.SUBRULE(this.freeTerms);
		return this.ACTION(() => {
			const settings: Setting[] = [];
			return { kind: "plan" as const, ...(title ? { title } : {}), terms, settings, span: this.current().whole };
		});
	});

	/** `region us`, `black hot 12 AWG`: a word, then anything. */
	readonly setting = this.RULE("setting", () => {
		const key = this.CONSUME(tokens.KeyWord, { ERR_MSG: "name-missing the setting" });
		const terms = this.SUBRULE(this.freeTerms);
		return this.ACTION(() => ({ key: this.keyOf(key), terms, span: this.current().whole }));
	});

	/** `place porch "Porch" outdoor`. */
	readonly place = this.RULE("place", () => {
		this.CONSUME(tokens.Place);
		const name = this.SUBRULE(this.newName, { ARGS: ["the place"] });
		const label = this.SUBRULE(this.label);
		const terms = this.SUBRULE(this.attributes);
		return this.ACTION(() => {
			const labelled = label ? { label } : {};
			return { kind: "place" as const, name: name.first, ...labelled, terms, span: this.current().whole };
		});
	});

	/** `panel LC "Load centre" main 30 A from shore by 10-2, 12 ft`. */
	readonly thing = this.RULE("thing", () => {
		const type = this.CONSUME(tokens.Word);
		const name = this.SUBRULE(this.newName, { ARGS: ["the thing"] });
		const label = this.SUBRULE(this.label);
		const terms = this.SUBRULE(this.attributes);
		const supply = this.OPTION(() => this.SUBRULE(this.supply));
		return this.ACTION(() => {
			const members: Member[] = [];
			const extra = { ...(label ? { label } : {}), ...(supply ? { supply } : {}) };
			const span = this.current().whole;
			return { kind: "thing" as const, type: this.nameOf(type), name, ...extra, terms, members, span };
		});
	});

	/** `from shore by 10-2, 12 ft`. */
	private readonly supply = this.RULE("supply", () => {
		const start = this.CONSUME(tokens.From);
		const from = this.SUBRULE(this.names, { ARGS: ["what the thing is fed from"] });
		const cable = this.OPTION(() => this.SUBRULE(this.cable)) ?? [];
		const distance = this.OPTION2(() => this.CONSUME(tokens.Distance));
		return this.ACTION((): Supply => {
			const length = distance && this.distanceOf(distance);
			const line = this.current();
			const span = { ...line.whole, column: line.spanOf(start).column };
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
				const name = this.SUBRULE(this.newName, { ARGS: ["the part"] });
				this.CONSUME(tokens.Colon, { ERR_MSG: "colon-missing a colon" });
				return name;
			},
		});
		const type = this.CONSUME2(tokens.Word, { ERR_MSG: "name-missing what it is" });
		const label = this.SUBRULE(this.label);
		const terms = this.SUBRULE(this.attributes);
		return this.ACTION(() => {
			const members: Member[] = [];
			const known = { ...(role ? { role: this.nameOf(role) } : {}), ...(name ? { name } : {}) };
			const labelled = label ? { label } : {};
			const span = this.current().whole;
			return { kind: "member" as const, ...known, type: this.nameOf(type), ...labelled, terms, members, span };
		});
	});

	/** `circuit NAME from X by CABLE`, and the same with `feed` and `bond`. */
	readonly run = this.RULE("run", () => {
		const sort = this.OR([
			{ ALT: () => this.CONSUME(tokens.Circuit) },
			{ ALT: () => this.CONSUME(tokens.Feed) },
			{ ALT: () => this.CONSUME(tokens.Bond) },
		]);
		const name = this.SUBRULE(this.newName, { ARGS: ["the run"] });
		const label = this.SUBRULE(this.label);
		const before = this.SUBRULE(this.attributes);
		this.CONSUME(tokens.From, { ERR_MSG: "word-missing `from`" });
		const from = this.SUBRULE(this.commaNames, { ARGS: ["what the run starts from"] });
		const behind = this.SUBRULE2(this.attributes);
		const cable = this.OPTION(() => this.SUBRULE(this.cable)) ?? [];
		return this.ACTION(() => {
			const links: Link[] = [];
			const start = { name: name.first, ...(label ? { label } : {}), from, terms: [...before, ...behind] };
			return { kind: "run" as const, sort: sortOf(sort), ...start, cable, links, span: this.current().whole };
		});
	});

	/** `at g1`. */
	readonly at = this.RULE("at", () => {
		this.CONSUME(tokens.At);
		const box = this.SUBRULE(this.name, { ARGS: ["the box"] });
		return this.ACTION(() => {
			const landings: Landing[] = [];
			return { kind: "at" as const, box, landings, span: this.current().whole };
		});
	});

	/** `mode storm: gen, inv without shore with wh TS at off`. */
	readonly mode = this.RULE("mode", () => {
		const lists: Record<"sources" | "without" | "with", NameTerm[]> = { sources: [], without: [], with: [] };
		const positions: ModeStatement["positions"][number][] = [];
		let list = lists.sources;
		this.CONSUME(tokens.Mode);
		const name = this.SUBRULE(this.newName, { ARGS: ["the mode"] });
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
						const token = this.CONSUME(tokens.Nameable);
						const position = this.OPTION(() => {
							this.CONSUME(tokens.At);
							return this.SUBRULE2(this.name, { ARGS: ["the position behind `at`"] });
						});
						this.ACTION(() => {
							const thing = this.nameOf(token);
							if (position) positions.push({ thing, position, span: spanning(thing, position) });
							else list.push(thing);
						});
					},
				},
			]),
		);
		return this.ACTION(() => {
			return { kind: "mode" as const, name: name.first, ...lists, positions, span: this.current().whole };
		});
	});

	/** `cable own-pair flexible`, `part fridge-relay "Fridge relay"`. */
	readonly definition = this.RULE("definition", () => {
		const sort = this.OR([{ ALT: () => this.CONSUME(tokens.Cable) }, { ALT: () => this.CONSUME(tokens.Part) }]);
		const name = this.SUBRULE(this.newName, { ARGS: ["the cable or part"] });
		const label = this.SUBRULE(this.label);
		const terms = this.SUBRULE(this.freeTerms);
		return this.ACTION(() => {
			const lines: Setting[] = [];
			const named = {
				sort: sort.tokenType === tokens.Cable ? ("cable" as const) : ("part" as const),
				name: name.first,
			};
			return {
				kind: "definition" as const,
				...named,
				...(label ? { label } : {}),
				terms,
				lines,
				span: this.current().whole,
			};
		});
	});

	/** `use "common.ferrule"`. */
	readonly use = this.RULE("use", () => {
		this.CONSUME(tokens.Use);
		const path = this.CONSUME(tokens.Text, { ERR_MSG: "text-missing the file" });
		return this.ACTION(() => ({ kind: "use" as const, path: this.textOf(path, "text"), span: this.current().whole }));
	});

	/** `accept bond-doubled at LC because "..."`. */
	readonly accept = this.RULE("accept", () => {
		this.CONSUME(tokens.Accept);
		const rule = this.SUBRULE(this.name, { ARGS: ["what is accepted"] });
		const at = this.OPTION(() => {
			this.CONSUME(tokens.At);
			return this.SUBRULE2(this.name, { ARGS: ["the place behind `at`"] });
		});
		const reason = this.OPTION2(() => {
			this.CONSUME(tokens.Because);
			return this.CONSUME(tokens.Text, { ERR_MSG: "reason-missing the reason" });
		});
		return this.ACTION(() => {
			if (reason === undefined) this.#reportMissingReason();
			const because = reason && this.textOf(reason, "text");
			const where = { ...(at ? { at } : {}), ...(because ? { because } : {}) };
			return { kind: "accept" as const, rule, ...where, span: this.current().whole };
		});
	});

	/** `reading r1 ...`: what a meter showed. */
	readonly reading = this.RULE("reading", () => {
		this.CONSUME(tokens.Reading);
		const name = this.SUBRULE(this.newName, { ARGS: ["the reading"] });
		this.OPTION(() => this.CONSUME(tokens.Colon));
		const terms = this.SUBRULE(this.freeTerms);
		return this.ACTION(() => ({ kind: "reading" as const, name: name.first, terms, span: this.current().whole }));
	});

	/** The word a free line begins with; a word of the notation is an ordinary one there, and so is a sign. */
	private keyOf(token: IToken): NameTerm {
		const line = this.current();
		return nameTerm(token.image, line.spanOf(token), line.report);
	}

	#isNameEnd(ahead: number): boolean {
		const type = this.LA(ahead).tokenType;
		return type === tokens.Colon || type === tokens.Row;
	}

	#reportMissingReason(): void {
		const line = this.current();
		line.report(
			problem("reason-missing", line.whole, {
				title: "The line accepts a deviation and gives no reason",
				label: "because of what?",
			}),
		);
	}
}

function sortOf(token: IToken): "circuit" | "feed" | "bond" {
	if (token.tokenType === tokens.Circuit) return "circuit";
	return token.tokenType === tokens.Feed ? "feed" : "bond";
}

function spanning(first: NameTerm, last: NameTerm) {
	return { ...first.span, endColumn: last.span.endColumn };
}
