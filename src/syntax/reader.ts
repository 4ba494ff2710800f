// Reads line after line into the tree: decides what each line is, has it parsed, and hangs it where it belongs.
import type { IToken, TokenType } from "chevrotain";
import { nearestWords } from "../base/nearest.ts";
import { newToken } from "./figures.ts";
import { indentationOf, type Line } from "./lexer.ts";
import { misspeltStatement } from "./messages.ts";
import { type Block, type Frame, Outline } from "./outline.ts";
import { type LineParser, type LineRule, lineParser } from "./parser.ts";
import { problem, quoted } from "./problem.ts";
import * as tokens from "./tokens.ts";
import type { Statement } from "./tree.ts";

/** The tree of one text while its lines come in. */
export class Reader {
	readonly statements: Statement[] = [];
	/** Names that stand on lines that were not understood. */
	readonly doubtful = new Set<string>();
	readonly #outline = new Outline(this.statements);
	readonly #parser: LineParser = lineParser();

	/** Takes the next line. `below` gives the line with words that follows it, for what a misspelt word may have meant. */
	read(line: Line, below: () => string): void {
		const [first] = line.tokens;
		if (first === undefined || this.#outline.isTooDeep(line)) return;
		const rule = statementRules.get(first.tokenType);
		if (rule !== undefined) this.#readStatement(line, this.#outline.placeStatement(line), rule);
		else if (this.#isLink(line)) this.#readLink(line, this.#outline.placeLink(line));
		else this.#readBelow(line, this.#outline.placeOther(line), below);
	}

	/** A line that is whatever the one it stands below takes. */
	#readBelow(line: Line, frame: Frame, below: () => string): void {
		if (isLanding(line) && frame.block.takes !== "landings" && frame.block.takes !== "settings")
			this.#readStrayLanding(line, frame);
		else if (frame.block.takes === "statements") this.#readThing(line, frame, below);
		else if (frame.block.takes === "settings") this.#readSetting(line, frame);
		else if (frame.block.takes === "landings") this.#readLanding(line, frame);
		else if (frame.block.takes === "links") this.#readLink(line, frame);
		else this.#readMember(line, frame);
	}

	/** A thing, or a run or block whose first word is misspelt, as the line below it shows. */
	#readThing(line: Line, frame: Frame, below: () => string): void {
		const meant = this.#meantStatement(line, below());
		const finding = meant && misspeltStatement(line);
		if (meant === undefined || finding === undefined) this.#readStatement(line, frame, "thing");
		else {
			line.report(finding);
			const [first, ...rest] = line.tokens;
			const corrected = newToken(meant.type, first?.image ?? "", first?.startOffset ?? 0);
			this.#readStatement(line, frame, meant.rule, [corrected, ...rest]);
		}
	}

	#readStatement(line: Line, frame: Frame, rule: StatementRule, words: readonly IToken[] = line.tokens): void {
		const read = this.#statement(line, rule, words);
		if (frame.block.takes === "statements")
			frame.block.into.push(read?.node ?? { kind: "broken", text: line.words, span: line.whole });
		this.#open(line, read?.block, lostBlocks[rule]);
	}

	#statement(
		line: Line,
		rule: StatementRule,
		words: readonly IToken[],
	): { readonly node: Statement; readonly block: Block } | undefined {
		const parser = this.#parser;
		switch (rule) {
			case "plan": {
				const node = parser.read(line, words, rule, () => parser.plan());
				return node && { node, block: { takes: "settings", into: node.settings } };
			}
			case "thing": {
				const node = parser.read(line, words, rule, () => parser.thing());
				return node && { node, block: { takes: "members", into: node.members } };
			}
			case "run": {
				const node = parser.read(line, words, rule, () => parser.run());
				return node && { node, block: { takes: "links", into: node.links } };
			}
			case "at": {
				const node = parser.read(line, words, rule, () => parser.at());
				return node && { node, block: { takes: "landings", into: node.landings } };
			}
			case "definition": {
				const node = parser.read(line, words, rule, () => parser.definition());
				return node && { node, block: { takes: "settings", into: node.lines } };
			}
			default: {
				const node = parser.read(line, words, rule, (): Statement => parser[rule]());
				return node && { node, block: { takes: "nothing" } };
			}
		}
	}

	#readLink(line: Line, frame: Frame | undefined): void {
		const parser = this.#parser;
		const isLost = frame?.block.takes !== "links";
		const into = isLost ? [] : frame.block.into;
		if (line.tokens[0]?.tokenType === tokens.From) {
			const branch = parser.read(line, line.tokens, "branch", () => parser.branch());
			if (branch) into.push(branch);
			this.#open(line, branch && !isLost ? { takes: "links", into: branch.links } : undefined, "links");
			return;
		}
		const hop = parser.read(line, line.tokens, "hop", () => parser.hop());
		if (hop) into.push(hop);
		const block: Block = hop?.type ? { takes: "members", into: hop.members } : { takes: "nothing" };
		this.#open(line, hop && !isLost ? block : undefined, "members");
	}

	#readMember(line: Line, frame: Frame): void {
		const member = this.#parser.read(line, line.tokens, "member", () => this.#parser.member());
		const isKept = frame.block.takes === "members" && member !== undefined;
		if (isKept) frame.block.into.push(member);
		this.#open(line, isKept ? { takes: "members", into: member.members } : undefined, "members");
	}

	#readSetting(line: Line, frame: Frame): void {
		const setting = this.#parser.read(line, line.tokens, "setting", () => this.#parser.setting());
		if (setting && frame.block.takes === "settings") frame.block.into.push(setting);
		this.#open(line, setting && { takes: "nothing" }, "anything");
	}

	#readLanding(line: Line, frame: Frame): void {
		const landings = this.#parser.read(line, line.tokens, "landing", () => this.#parser.landing());
		if (landings && frame.block.takes === "landings") frame.block.into.push(...landings);
		this.#open(line, landings && { takes: "nothing" }, "anything");
	}

	/** A landing where none can stand: read for its own problems, and dropped. */
	#readStrayLanding(line: Line, frame: Frame): void {
		if (frame.block.takes !== "anything" && !frame.isReported) {
			line.report(
				problem("landing-misplaced", line.whole, {
					title: `${quoted(line.words)} stands outside an \`at\` block`,
					label: "of which box?",
				}),
			);
			frame.isReported = true;
		}
		this.#parser.read(line, line.tokens, "landing", () => this.#parser.landing());
		this.#open(line, undefined, "anything");
	}

	/** Opens the line for those below it. Without a block the line is lost, and so is what stands below. */
	#open(line: Line, block: Block | undefined, lost: Block["takes"]): void {
		const isLost = block === undefined || this.#outline.isLost(line);
		if (isLost) for (const name of line.names) this.doubtful.add(name);
		this.#outline.open(line, block ?? emptyBlock(lost), isLost);
	}

	/** A hop or a branch: it begins with a figure that is no name, or with a word that only these begin with. */
	#isLink(line: Line): boolean {
		const [first, second] = line.tokens;
		const type = first?.tokenType;
		if (type === undefined || second?.tokenType === tokens.Colon || second?.tokenType === tokens.Row) return false;
		if (!linkStarts.has(type)) return false;
		return !linkWords.has(type) || this.#outline.above(line).block.takes !== "settings";
	}

	/** The statement that a first word may have meant, where the line below can stand below no thing. */
	#meantStatement(line: Line, below: string): { readonly rule: "run" | "at"; readonly type: TokenType } | undefined {
		const word = line.tokens[0]?.image ?? "";
		if (indentationOf(below) <= line.indentation) return undefined;
		if (hopBelow.test(below)) {
			const type = runTypes.get(nearestWords(word, runTypes.keys())[0] ?? "");
			return type && { rule: "run", type };
		}
		return landingBelow.test(below) && nearestWords(word, ["at"]).length > 0
			? { rule: "at", type: tokens.At }
			: undefined;
	}
}

type StatementRule = Exclude<LineRule, "setting" | "member" | "hop" | "branch" | "landing">;

/** Whether the line says how conductors are landed: `join`, `link`, or `on` behind a name or two. */
function isLanding(line: Line): boolean {
	const type = line.tokens[0]?.tokenType;
	if (type === tokens.Join || type === tokens.Link) return true;
	return line.tokens.slice(1, 4).some((token) => token.tokenType === tokens.On) && line.words.includes(".");
}

function emptyBlock(takes: Block["takes"]): Block {
	return takes === "anything" || takes === "nothing" ? { takes } : { takes, into: [] };
}

const statementRules = new Map<TokenType, StatementRule>([
	[tokens.Plan, "plan"],
	[tokens.Place, "place"],
	[tokens.Circuit, "run"],
	[tokens.Feed, "run"],
	[tokens.Bond, "run"],
	[tokens.At, "at"],
	[tokens.Mode, "mode"],
	[tokens.Cable, "definition"],
	[tokens.Part, "definition"],
	[tokens.Use, "use"],
	[tokens.Accept, "accept"],
	[tokens.Reading, "reading"],
]);

/** What is read below a line that was not understood, by what the line seemed to be. */
const lostBlocks: Record<StatementRule, Block["takes"]> = {
	plan: "settings",
	definition: "settings",
	run: "links",
	at: "landings",
	thing: "anything",
	place: "anything",
	mode: "anything",
	use: "anything",
	accept: "anything",
	reading: "anything",
};

const runTypes = new Map<string, TokenType>([
	["circuit", tokens.Circuit],
	["feed", tokens.Feed],
	["bond", tokens.Bond],
]);
const linkWords = new Set([tokens.From, tokens.To, tokens.Via, tokens.Bolted, tokens.Within, tokens.As, tokens.By]);
const linkStarts = new Set([
	...linkWords,
	...[tokens.Through, tokens.Length, tokens.SolidLength, tokens.UnknownDistance, tokens.NumberFigure],
	...[tokens.SpacedNumber, tokens.Quantity, tokens.SolidQuantity, tokens.Gauge, tokens.Unknown, tokens.Pair],
]);
const hopBelow = /^[ \t]+(?:[0-9?]|to |from |via |bolted |within |by |as )/;
const landingBelow = /^[ \t]+(?:join |link |[^ \t]+ on )/;
