// Turns the parser's "this token does not fit" into a finding that says what is missing and shows a line that is right.
import type { IRecognitionException, IToken } from "chevrotain";
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import type { Line } from "./lexer.ts";
import type { LineRule } from "./parser.ts";
import { problem, quoted } from "./problem.ts";
import * as tokens from "./tokens.ts";
import { lineWords, statementWords } from "./vocabulary.ts";

/** The finding for a line that the rule could not read, or could not read to its end. */
export function explainFault(fault: IRecognitionException, rule: LineRule, line: Line): Finding {
	const token = Number.isNaN(fault.token.startOffset) ? undefined : fault.token;
	const help = `Write it like this: \`${examples[rule]}\`.`;
	const isColon = token?.tokenType === tokens.Colon;
	if (rule === "thing") {
		const misspelt = misspeltStatement(line);
		if (misspelt) return misspelt;
		if (isColon) return unexpectedColon(token, line, swapped(line));
	}
	if (rule === "hop" && !line.tokens.some((word) => joiningWords.has(word.image)))
		return missingTo(line) ?? missing("word", "`to`", token, line, help);
	// The parser's own words may stand around what the rule says is missing.
	const said = /(?<code>name|word|text|unit|colon|reason)-missing (?<what>.*)$/m.exec(fault.message)?.groups;
	if (said?.code !== undefined && said.what !== undefined) return missing(said.code, said.what, token, line, help);
	if (token === undefined) return missing("word", "", undefined, line, help);
	return isColon ? unexpectedColon(token, line, help) : unexpected(token, rule, line, help);
}

/** The finding for a first word that is none of the notation's but looks like one that begins a statement. */
export function misspeltStatement(line: Line): Finding | undefined {
	const [first] = line.tokens;
	const word = first?.image ?? "";
	// Misspelt words keep their first letter; without it `fuse` would be taken for `use`.
	const alike = statementWords.filter((statement) => statement[0] === word[0]?.toLowerCase());
	const offer = didYouMean(word, alike);
	if (first === undefined || offer === "") return undefined;
	return problem("word-unknown", line.spanOf(first), {
		title: `${quoted(word)} is no word that begins a statement`,
		label: "misspelt?",
		help: offer,
	});
}

function missing(code: string, what: string, token: IToken | undefined, line: Line, help: string): Finding {
	const end = endOf(line);
	const span = token ? line.spanOf(token) : line.span(end, end + 1);
	const where = token ? `before ${quoted(token.image)}` : "at the end of the line";
	switch (code) {
		case "word": {
			const word = what.replaceAll("`", "");
			const near = nearWord(line, word);
			if (near === undefined)
				return problem("word-missing", span, {
					title: what === "" ? "The line breaks off too early" : `The word ${what} is missing ${where}`,
					label: what === "" ? "something is missing" : `${word} is missing`,
					help,
				});
			return problem("word-missing", line.spanOf(near), {
				title: `The word ${what} is missing, and ${quoted(near.image)} looks like it`,
				label: `perhaps ${word}`,
				help: `Did you mean \`${word}\`? ${help}`,
			});
		}
		case "text":
			return problem("text-missing", span, { title: `${what} in double quotes is missing ${where}`, help });
		case "reason":
			return problem("reason-missing", span, { title: `${what} in double quotes is missing ${where}`, help });
		case "unit":
			return problem("unit-missing", span, { title: `Here ${what} is needed, with its unit`, help });
		case "colon":
			return problem("colon-missing", span, { title: `A colon is missing ${where}`, help });
		default:
			return problem("name-missing", span, {
				title: `${what} is missing ${where}`,
				label: "a name is missing",
				help,
			});
	}
}

/** `d4: receptacle` and `5 ft d5: receptacle` in a chain: the line as it was meant. */
function missingTo(line: Line): Finding | undefined {
	const colon = line.tokens.findIndex((token) => token.tokenType === tokens.Colon);
	const name = line.tokens[colon - 1];
	const near = nearWord(line, "to");
	if (name === undefined || (near && near !== name)) return undefined;
	const before = printable(line.text.slice(line.start.column - 1, name.startOffset));
	const after = printable(line.text.slice(name.startOffset, endOf(line)));
	const advice =
		before === ""
			? `Write how far the cable goes and \`to\` before it: \`14 ft to ${after}\`; \`? to ${after}\` as long as that is not known.`
			: `Write it like this: \`${before}to ${after}\`.`;
	return problem("word-missing", line.spanOf(name), {
		title: `The word \`to\` is missing before ${quoted(name.image)}`,
		label: "to is missing",
		help: advice,
	});
}

function unexpectedColon(token: IToken, line: Line, help: string): Finding {
	return problem("colon-unexpected", line.spanOf(token), {
		title: `A colon cannot stand behind ${quoted(line.text.slice(0, token.startOffset).trim())}`,
		label: "no colon here",
		help,
	});
}

function unexpected(token: IToken, rule: LineRule, line: Line, help: string): Finding {
	return problem("word-unexpected", line.spanOf(token), {
		title: `${quoted(token.image)} cannot stand here`,
		label: "not here",
		help: `${adviceFor(token, rule, line)}${help}`,
	});
}

/** What else to say of a word that stands at the wrong place. */
function adviceFor(token: IToken, rule: LineRule, line: Line): string {
	if (rule === "hop" && leftWords.has(token.tokenType))
		return "What speaks of the cable stands left of `to`, what speaks of the thing right of its kind. ";
	if (rule === "hop" && token.tokenType !== tokens.Row)
		return "Words about a thing stand behind its kind, and the kind behind a colon. ";
	const isFed = line.tokens.some((word) => word.image === "from");
	if (rule === "thing" && !isFed) return "`by` needs `from` and a name before it. ";
	if (rule === "thing") return "`from` and what follows it end the line; put everything else before it. ";
	if ((rule === "run" || rule === "branch") && token.tokenType === tokens.Distance)
		return "The length belongs to a hop, on an indented line of its own. ";
	return "";
}

/** A word of the line that may be the missing one, misspelt. */
function nearWord(line: Line, word: string): IToken | undefined {
	if (!lineWords.some((lineWord) => lineWord === word)) return undefined;
	return line.tokens
		.slice(0, 20)
		.find((token) => token.tokenType === tokens.Word && didYouMean(token.image, [word]) !== "");
}

/** A stretch of a line as advice can repeat it: white space as single spaces, nothing that is no character. */
function printable(text: string): string {
	return text.replace(/\s+/g, " ").replace(/[\p{C}\p{Zl}\p{Zp}]/gu, "\ufffd");
}

/** `b1: receptacle` at the left edge: as the hop or part that it most likely is. */
function swapped(line: Line): string {
	const [name, colon, kind] = line.tokens;
	if (name === undefined || colon?.tokenType !== tokens.Colon || kind?.tokenType !== tokens.Word)
		return `Write it like this: \`${examples.thing}\`.`;
	return `If a cable arrives at it, write a hop, indented below its circuit: \`14 ft to ${name.image}: ${kind.image}\`. A part of something is indented below that. What stands at the left edge has its kind first and no colon: \`inlet shore 30 A 120 V\`.`;
}

function endOf(line: Line): number {
	const last = line.tokens.at(-1);
	return last === undefined ? 0 : last.startOffset + last.image.length;
}

const leftWords = new Set([
	tokens.By,
	tokens.As,
	tokens.Through,
	tokens.Via,
	tokens.Marked,
	tokens.Within,
	tokens.Bolted,
]);

const joiningWords = new Set(["to", "via", "bolted"]);

/** A line that is right, for each rule. */
const examples: Record<LineRule, string> = {
	plan: 'plan "Fern Cabin"',
	setting: "region us",
	place: "place porch outdoor",
	thing: 'panel LC "Load centre" main 30 A from shore by 10-2, 12 ft',
	member: "slot 1A: breaker 20 A",
	run: "circuit bunks from LC.1A by 12-2",
	hop: "14 ft to b1: receptacle",
	branch: "from g2",
	at: "at g1",
	landing: "bunks-1.black on b1.hot",
	mode: "mode travelling: inv without shore",
	definition: 'part relay "Fridge relay"',
	use: 'use "camper-feed.ferrule"',
	accept: 'accept bond-doubled at LC because "the reason"',
	reading: "reading r1 b1.hot b1.neutral 118 V",
};
