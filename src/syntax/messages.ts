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
	const misspelt = rule === "thing" ? misspeltStatement(line) : undefined;
	if (misspelt) return misspelt;
	if (token?.tokenType === tokens.Colon)
		return problem("colon-unexpected", line.spanOf(token), {
			title: `A colon cannot stand behind ${quoted(line.text.slice(0, token.startOffset).trim())}`,
			label: "no colon here",
			help: rule === "thing" ? swapped(line) : help,
		});
	const missing = /^(?<code>name|word|text|unit|colon|reason)-missing (?<what>.*)$/.exec(fault.message)?.groups;
	if (missing?.code === undefined || missing.what === undefined) return unexpected(token, rule, line, help);
	const span = token ? line.spanOf(token) : line.span(endOf(line), endOf(line) + 1);
	const where = token ? ` before ${quoted(token.image)}` : " at the end of the line";
	switch (missing.code) {
		case "word": {
			const word = missing.what.replaceAll("`", "");
			const near = nearWord(line, word);
			return problem("word-missing", near ? line.spanOf(near) : span, {
				title: `The word ${missing.what} is missing${where}`,
				label: near ? `perhaps ${word}` : `${word} is missing`,
				help: near ? `Did you mean \`${word}\`? ${help}` : help,
			});
		}
		case "text":
			return problem("text-missing", span, { title: `The text of ${missing.what} is missing${where}`, help });
		case "reason":
			return problem("reason-missing", span, { title: `The reason is missing${where}`, help });
		case "unit":
			return problem("unit-missing", span, { title: `Here ${missing.what} is needed, with its unit`, help });
		case "colon":
			return problem("colon-missing", span, { title: `A colon is missing${where}`, help });
		default:
			return problem("name-missing", span, {
				title: `A name is missing${where}: ${missing.what}`,
				label: "a name is missing",
				help,
			});
	}
}

/** The first word of a line that is no thing but looks like a statement word. */
export function misspeltStatement(line: Line): Finding | undefined {
	const [first] = line.tokens;
	const offer = first ? didYouMean(first.image, statementWords) : "";
	if (first === undefined || offer === "") return undefined;
	return problem("word-unknown", line.spanOf(first), {
		title: `${quoted(first.image)} is no word that begins a statement`,
		label: "misspelt?",
		help: offer,
	});
}

function unexpected(token: IToken | undefined, rule: LineRule, line: Line, help: string): Finding {
	if (token === undefined)
		return problem("word-missing", line.span(endOf(line), endOf(line) + 1), {
			title: "The line breaks off too early",
			label: "something is missing",
			help,
		});
	return problem("word-unexpected", line.spanOf(token), {
		title: `${quoted(token.image)} cannot stand here`,
		label: "not here",
		help: `${adviceFor(token, rule)}${help}`,
	});
}

/** What else to say of a word that stands at the wrong place. */
function adviceFor(token: IToken, rule: LineRule): string {
	if (rule === "hop" && leftWords.has(token.tokenType))
		return "What speaks of the cable stands left of `to`, what speaks of the thing right of its kind. ";
	if (rule === "hop" && token.tokenType !== tokens.Row)
		return "Words about a thing stand behind its kind, and the kind behind a colon. ";
	if (rule === "thing" && token.tokenType === tokens.By) return "`by` needs `from` and a name before it. ";
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

/** `b1: receptacle` at the left edge, put the right way round. */
function swapped(line: Line): string {
	const [name, colon, kind] = line.tokens;
	if (name === undefined || colon?.tokenType !== tokens.Colon || kind?.tokenType !== tokens.Word)
		return `Write it like this: \`${examples.thing}\`.`;
	return `At the left edge the kind comes first: \`${kind.image} ${name.image}\`. A part of something is indented below it.`;
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
