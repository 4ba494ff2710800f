// The line parser as a whole: the lines of an `at` block, and the one way in. One line of tokens in, one node out.
import type { IToken } from "chevrotain";
import type { Line } from "./lexer.ts";
import { explainFault } from "./messages.ts";
import { StatementParser } from "./parser-statements.ts";
import { problem } from "./problem.ts";
import * as tokens from "./tokens.ts";
import type { Landing, NameTerm } from "./tree.ts";

/** The rules of which each reads one whole line. */
export type LineRule =
	| "plan"
	| "setting"
	| "place"
	| "thing"
	| "member"
	| "run"
	| "hop"
	| "branch"
	| "at"
	| "landing"
	| "mode"
	| "definition"
	| "use"
	| "accept"
	| "reading";

/** Reads single lines. Build one with `lineParser()`; building is what costs. */
export class LineParser extends StatementParser {
	/** `join A, B, (C D) by lever 3`. */
	private readonly join = this.RULE("join", () => {
		const members: NameTerm[][] = [];
		this.CONSUME(tokens.Join);
		this.AT_LEAST_ONE({
			DEF: () =>
				this.OR([
					{
						ALT: () => {
							const token = this.CONSUME(tokens.Nameable);
							this.ACTION(() => members.push([this.nameOf(token)]));
						},
					},
					{
						ALT: () => {
							this.CONSUME(tokens.Opening);
							const group = this.SUBRULE(this.names, { ARGS: ["what shares the port"] });
							this.CONSUME(tokens.Closing, { ERR_MSG: "word-missing `)`" });
							members.push(group);
						},
					},
				]),
			ERR_MSG: "name-missing what is joined",
		});
		const connector = this.OPTION(() => this.SUBRULE(this.cable)) ?? [];
		return this.ACTION((): Landing[] => [{ kind: "join", members, connector, span: this.current().whole }]);
	});

	/** `link b1.hot, b2.hot by 12 AWG black`. */
	private readonly link = this.RULE("link", () => {
		this.CONSUME(tokens.Link);
		const between = this.SUBRULE(this.names, { ARGS: ["what is linked"] });
		const cable = this.OPTION(() => this.SUBRULE(this.cable)) ?? [];
		return this.ACTION((): Landing[] => [{ kind: "link", between, cable, span: this.current().whole }]);
	});

	/** `bunks-1.black fork on b1.hot`, `A, B on NB.3`, `bunks-2.red capped`. */
	private readonly cores = this.RULE("cores", () => {
		const names: NameTerm[] = [];
		let isLastListed = true;
		this.AT_LEAST_ONE({
			DEF: () => {
				isLastListed = this.hasCommaBefore(1);
				const token = this.CONSUME(tokens.Nameable);
				this.ACTION(() => names.push(this.nameOf(token)));
			},
			ERR_MSG: "name-missing the conductor",
		});
		const on = this.OPTION(() => {
			this.CONSUME(tokens.On);
			return this.SUBRULE(this.name, { ARGS: ["the terminal behind `on`"] });
		});
		return this.ACTION(() => (on ? this.#landed(names, isLastListed, on) : this.#free(names)));
	});

	/** One line of an `at` block. Several conductors left free on one line make a landing each. */
	readonly landing = this.RULE("landing", () =>
		this.OR([
			{ ALT: () => this.SUBRULE(this.join) },
			{ ALT: () => this.SUBRULE(this.link) },
			{ ALT: () => this.SUBRULE(this.cores) },
		]),
	);

	/** Give `true` to skip the checks of the grammar itself: they hold or fail for all texts, so a test makes them. */
	constructor(skipValidations: boolean) {
		super(skipValidations);
		this.performSelfAnalysis();
	}

	/** What a rule, called by `call`, makes of a line's words; undefined, with a finding reported, where it is not understood. */
	read<Node>(line: Line, words: readonly IToken[], rule: LineRule, call: () => Node): Node | undefined {
		this.line = line;
		this.input = [...words];
		const node: Node | undefined = call();
		const [fault] = this.errors;
		if (fault && !line.isGuessed) line.report(explainFault(fault, rule, line));
		return node;
	}

	/** The last plain word before `on` is how the end is made up, unless a comma makes it one more conductor. */
	#landed(names: readonly NameTerm[], isLastListed: boolean, on: NameTerm): Landing[] {
		const last = names.at(-1);
		const hasTermination = names.length > 1 && !isLastListed && last?.text === last?.head;
		const cores = hasTermination ? names.slice(0, -1) : names;
		const termination = hasTermination && last ? { termination: last } : {};
		return [{ kind: "land", cores, ...termination, on, span: this.current().whole }];
	}

	#free(names: readonly NameTerm[]): Landing[] {
		const line = this.current();
		const state = names.at(-1)?.text;
		if (names.length > 1 && (state === "loose" || state === "capped"))
			return names.slice(0, -1).map((core) => ({ kind: "free", core, state, span: line.whole }));
		line.report(
			problem("word-missing", line.whole, {
				title: "The line does not say where the conductor goes",
				label: "on which terminal?",
				help: "Write `on` and the terminal, such as `bunks-1.black on b1.hot`, or `loose` or `capped` behind the conductor.",
			}),
		);
		return [];
	}
}

/** The one line parser, built when the first line is read. */
export function lineParser(): LineParser {
	built ??= new LineParser(true);
	return built;
}

let built: LineParser | undefined;
