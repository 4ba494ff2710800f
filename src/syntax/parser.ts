// The line parser as a whole: the lines of an `at` block, and the one way in. One line of tokens in, one node out.
import type { IToken, TokenType } from "chevrotain";
import { newToken } from "./figures.ts";
import type { Line } from "./lexer.ts";
import { explainFault } from "./messages.ts";
import { StatementParser } from "./parser-statements.ts";
import { problem, quoted } from "./problem.ts";
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

/** Reads single lines. Get the one of the program with `lineParser()`: building it is what costs. */
export class LineParser extends StatementParser {
	/** `join A, B fork, (C D) by lever 3`. */
	private readonly join = this.RULE("join", () => {
		const ports: Port[] = [];
		this.CONSUME(tokens.Join);
		this.MANY(() => {
			const isListed = this.ACTION(() => this.hasCommaBefore());
			this.OR([
				{ ALT: () => ports.push({ names: [this.SUBRULE(this.name, { ARGS: ["What is joined"] })], isListed }) },
				{
					ALT: () => {
						this.CONSUME(tokens.Opening);
						ports.push({
							names: this.SUBRULE(this.names, { ARGS: ["What shares the port", () => true] }),
							isListed: true,
						});
						this.CONSUME(tokens.Closing, { ERR_MSG: "word-missing `)`" });
					},
				},
			]);
		});
		const connector = this.OPTION(() => this.SUBRULE(this.cable)) ?? [];
		return this.ACTION((): Landing[] => {
			if (ports.flatMap((port) => port.names).length < 2)
				this.#reportTooFew("join", "bunks-1.black, bunks-2.black, b1.hot by lever 3");
			return [{ kind: "join", ...withTerminations(ports), connector, span: this.line.whole }];
		});
	});

	/** One line of an `at` block. Several conductors left free on one line make a landing each. */
	readonly landing = this.RULE("landing", () =>
		this.OR([
			{ ALT: () => this.SUBRULE(this.join) },
			{
				// `link b1.hot, b2.hot by 12 AWG black`
				ALT: () => {
					this.CONSUME(tokens.Link);
					const between = this.SUBRULE(this.names, { ARGS: ["What is linked", () => true] });
					const cable = this.OPTION(() => this.SUBRULE(this.cable)) ?? [];
					return this.ACTION((): Landing[] => {
						if (between.length < 2) this.#reportTooFew("link", "b1.hot, b2.hot by 12 AWG black");
						return [{ kind: "link", between, cable, span: this.line.whole }];
					});
				},
			},
			{
				// `bunks-1.black fork on b1.hot`, `A, B on NB.3`, `bunks-2.red capped`
				ALT: () => {
					let isLastListed = true;
					const noteComma = () => {
						if (this.LA(1).tokenType !== tokens.On) isLastListed = this.hasCommaBefore();
						return true;
					};
					const names = this.SUBRULE2(this.names, { ARGS: ["The conductor", noteComma] });
					const on = this.OPTION2(() => {
						this.CONSUME(tokens.On);
						return this.SUBRULE(this.name, { ARGS: ["The terminal behind `on`"] });
					});
					return this.ACTION(() => {
						const listed = this.#withoutInnerEnds(names, on === undefined ? "" : ` on ${on.text}`);
						return on ? this.#landed(listed, isLastListed, on) : this.#free(listed);
					});
				},
			},
		]),
	);

	/** Give `true` to skip the checks of the grammar itself: they hold or fail for all texts, so a test makes them. */
	constructor(skipValidations: boolean) {
		super(skipValidations);
		this.performSelfAnalysis();
	}

	/**
	 * What a rule, called by `call`, makes of a line's words; undefined, with a finding reported, where it is not
	 * understood. Words that hold such a line together get their types here; anywhere else they are plain words.
	 */
	read<Node>(line: Line, words: readonly IToken[], rule: LineRule, call: () => Node): Node | undefined {
		this.line = line;
		this.input = words.map((token) => {
			const type = token.tokenType === tokens.Word ? meanings[rule].get(token.image) : undefined;
			return type ? newToken(type, token.image, token.startOffset) : token;
		});
		const node: Node | undefined = call();
		const [fault] = this.errors;
		if (fault === undefined) return node;
		const finding = explainFault(fault, rule, line);
		line.report(finding);
		// A statement under a misspelt word is nothing of the kind that it was read as.
		return finding.code === "word-unknown" ? undefined : node;
	}

	/** `A fork, B fork on T`: what holds for all the conductors is said once, behind the last of them; reported, and left out. */
	#withoutInnerEnds(names: readonly NameTerm[], on: string): readonly NameTerm[] {
		const hasComma = (index: number) => {
			const [before, after] = [names[index - 1], names[index]];
			return before && after && this.line.text.slice(before.span.endColumn - 1, after.span.column - 1).includes(",");
		};
		const inner = new Set(
			names.filter((name, at) => at > 0 && name.text === name.head && hasComma(at) === false && hasComma(at + 1)),
		);
		const [first] = inner;
		if (first === undefined) return names;
		const cores = names.filter((name) => name.text !== name.head).map((name) => name.text);
		this.line.report(
			problem("word-unexpected", first.span, {
				title: `${quoted(first.text)} stands between two conductors`,
				label: "not here",
				help: `Say it once for all of them, \`${cores.join(", ")} ${first.text}${on}\`, or write a line for each.`,
			}),
		);
		return names.filter((name) => !inner.has(name));
	}

	/** The last plain word before `on` is how the end is made up, unless a comma makes it one more conductor. */
	#landed(names: readonly NameTerm[], isLastListed: boolean, on: NameTerm): Landing[] {
		const last = names.at(-1);
		const hasTermination = names.length > 1 && !isLastListed && last?.text === last?.head;
		const cores = hasTermination ? names.slice(0, -1) : names;
		const termination = hasTermination && last ? { termination: last } : {};
		return [{ kind: "land", cores, ...termination, on, span: this.line.whole }];
	}

	#reportTooFew(word: string, example: string): void {
		this.line.report(
			problem("name-missing", this.line.whole, {
				title: `Behind \`${word}\` two names are needed at least`,
				label: "with what?",
				help: `Write it like this: \`${word} ${example}\`.`,
			}),
		);
	}

	#free(names: readonly NameTerm[]): Landing[] {
		const state = names.at(-1)?.text;
		if (names.length > 1 && (state === "loose" || state === "capped"))
			return names.slice(0, -1).map((core) => ({ kind: "free", core, state, span: this.line.whole }));
		this.line.report(
			problem("word-missing", this.line.whole, {
				title: "The line does not say where the conductor goes",
				label: "on which terminal?",
				help: "Write `on` and the terminal, such as `bunks-1.black on b1.hot`, or `loose` or `capped` behind the conductor.",
			}),
		);
		return [];
	}
}

/** What goes into one port of a joint. `isListed`: a comma stands before it, or it is in brackets. */
interface Port {
	readonly names: readonly NameTerm[];
	readonly isListed: boolean;
}

/** A plain word right behind a member, without a comma, is how its end is made up, as long as two members are left. */
function withTerminations(ports: readonly Port[]): Pick<Landing & { kind: "join" }, "members" | "terminations"> {
	const members: (readonly NameTerm[])[] = [];
	const terminations: { of: NameTerm; termination: NameTerm }[] = [];
	for (const [index, { names, isListed }] of ports.entries()) {
		const [name] = names;
		const before = ports[index - 1]?.names;
		const of = before?.length === 1 && members.at(-1) === before ? before[0] : undefined;
		const isTermination = !isListed && of !== undefined && of.text !== of.head && name?.text === name?.head;
		if (isTermination && name !== undefined) terminations.push({ of, termination: name });
		else members.push(names);
	}
	return members.length < 2
		? { members: ports.map((port) => port.names), terminations: [] }
		: { members, terminations };
}

/** The one line parser, built when the first line is read. */
export function lineParser(): LineParser {
	built ??= new LineParser(true);
	return built;
}

let built: LineParser | undefined;

const words = (...types: TokenType[]) => new Map(types.map((type) => [type.name.toLowerCase(), type]));
const none = words();
const supplied = words(tokens.From, tokens.By);
const hopWords = words(
	...[tokens.From, tokens.By, tokens.To, tokens.Via, tokens.Bolted, tokens.Within, tokens.As],
	...[tokens.Through, tokens.Marked],
);
/** The words that hold a line together, for each rule. */
const meanings: Record<LineRule, ReadonlyMap<string, TokenType>> = {
	plan: none,
	setting: none,
	place: none,
	thing: supplied,
	member: none,
	run: supplied,
	hop: hopWords,
	branch: supplied,
	at: none,
	landing: words(tokens.Join, tokens.Link, tokens.On, tokens.By),
	mode: words(tokens.With, tokens.Without, tokens.At),
	definition: none,
	use: none,
	accept: words(tokens.At, tokens.Because),
	reading: none,
};
