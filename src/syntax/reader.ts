// Reads line after line into the tree: decides what each line is, has it parsed, and hangs it where it belongs.
import { nearestWords } from "../base/nearest.ts";
import { indentationOf, type Line } from "./lexer.ts";
import { misspeltStatement } from "./messages.ts";
import { type Block, type Frame, Outline } from "./outline.ts";
import { type LineParser, lineParser } from "./parser.ts";
import { problem, quoted } from "./problem.ts";
import * as tokens from "./tokens.ts";
import type { Statement } from "./tree.ts";
import { statementWords } from "./vocabulary.ts";

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
		const word = statementWordOf(line);
		if (word !== undefined) this.#readStatement(line, this.#outline.placeStatement(line), word);
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
		const meant = meantStatement(line, below());
		const finding = meant && misspeltStatement(line);
		if (finding) line.report(finding);
		this.#readStatement(line, frame, finding ? meant : "thing");
	}

	#readStatement(line: Line, frame: Frame, word: StatementWord | "thing"): void {
		const read = this.#statement(line, word);
		if (frame.block.takes === "statements")
			frame.block.into.push(read?.node ?? { kind: "broken", text: line.words, span: line.whole });
		this.#open(line, read?.block, blocksBelow[word]);
	}

	#statement(
		line: Line,
		word: StatementWord | "thing",
	): { readonly node: Statement; readonly block: Block } | undefined {
		const parser = this.#parser;
		const rest = line.tokens.slice(1);
		switch (word) {
			case "thing": {
				const node = parser.read(line, line.tokens, "thing", () => parser.thing());
				return node && { node, block: { takes: "members", into: node.members } };
			}
			case "plan": {
				const node = parser.read(line, rest, "plan", () => parser.plan());
				return node && { node, block: { takes: "settings", into: node.settings } };
			}
			case "circuit":
			case "feed":
			case "bond": {
				const node = parser.read(line, rest, "run", () => parser.run(word));
				return node && { node, block: { takes: "links", into: node.links } };
			}
			case "at": {
				const node = parser.read(line, rest, "at", () => parser.at());
				return node && { node, block: { takes: "landings", into: node.landings } };
			}
			case "cable":
			case "part": {
				const node = parser.read(line, rest, "definition", () => parser.definition(word));
				return node && { node, block: { takes: "settings", into: node.lines } };
			}
			default: {
				const node = parser.read(line, rest, word, (): Statement => parser[word]());
				return node && { node, block: { takes: "nothing" } };
			}
		}
	}

	#readLink(line: Line, frame: Frame | undefined): void {
		const parser = this.#parser;
		const isLost = frame?.block.takes !== "links";
		const into = isLost ? [] : frame.block.into;
		if (line.tokens[0]?.image === "from") {
			const branch = parser.read(line, line.tokens, "branch", () => parser.branch());
			if (branch) into.push(branch);
			this.#open(line, branch && !isLost ? { takes: "links", into: branch.links } : undefined, "links");
			return;
		}
		const hop = parser.read(line, line.tokens, "hop", () => parser.hop());
		if (hop) into.push(hop);
		// A colon without a kind has been told; that the thing is not known then needs no second finding.
		if (hop && !hop.type && line.tokens.some((token) => token.tokenType === tokens.Colon))
			this.doubtful.add(hop.name.first.text);
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
		if (first === undefined || second?.tokenType === tokens.Colon || second?.tokenType === tokens.Row) return false;
		const isSetting = this.#outline.above(line).block.takes === "settings";
		if (first.tokenType === tokens.Word) return linkWords.has(first.image) && !isSetting;
		// `87 hot` is a terminal below a part; with a unit or `to` behind it the number is a length.
		if (isSetting && numbers.has(first.tokenType) && second?.image !== "to") return false;
		return figureTypes.has(first.tokenType) && !signs.has(first.image);
	}
}

type StatementWord = (typeof statementWords)[number];

/** The word of the notation that the line begins with. */
function statementWordOf(line: Line): StatementWord | undefined {
	const [first] = line.tokens;
	return first?.tokenType === tokens.Word ? statementWords.find((word) => word === first.image) : undefined;
}

/** The statement that a first word may have meant, where the line below can stand below no thing. */
function meantStatement(line: Line, below: string): StatementWord | undefined {
	const word = line.tokens[0]?.image ?? "";
	if (indentationOf(below) <= line.indentation) return undefined;
	const [near] = hopBelow.test(below)
		? nearestWords(word, ["circuit", "feed", "bond"])
		: landingBelow.test(below)
			? nearestWords(word, ["at"])
			: [];
	return statementWords.find((statementWord) => statementWord === near);
}

/** Whether the line says how conductors are landed: `join`, `link`, or `on` behind a name or two. */
function isLanding(line: Line): boolean {
	const [first, ...rest] = line.tokens.slice(0, 4);
	if (first?.image === "join" || first?.image === "link") return true;
	return first?.image.includes(".") === true && rest.some((token) => token.image === "on");
}

function emptyBlock(takes: Block["takes"]): Block {
	return takes === "anything" || takes === "nothing" ? { takes } : { takes, into: [] };
}

/** What stands below each statement, for one that was not understood: what its form does not say is guessed. */
const blocksBelow: Record<StatementWord | "thing", Block["takes"]> = {
	plan: "settings",
	cable: "settings",
	part: "settings",
	circuit: "links",
	feed: "links",
	bond: "links",
	at: "landings",
	thing: "anything",
	place: "anything",
	mode: "anything",
	use: "anything",
	accept: "anything",
	reading: "anything",
};

const figureTypes = new Set([tokens.Distance, tokens.Bare, tokens.SolidFigure, tokens.Figure]);
const numbers = new Set([tokens.Bare, tokens.SolidFigure]);
const signs = new Set(["+", "-"]);
const linkWords = new Set(["from", "to", "via", "bolted", "within", "as", "by", "through"]);
const hopBelow = /^[ \t]+(?:[0-9?]|to |from |via |bolted |within |by |as )/;
const landingBelow = /^[ \t]+(?:join |link |[^ \t]+ on )/;
