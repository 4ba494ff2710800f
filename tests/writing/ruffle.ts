// Takes the layout of a plan away: other indentation, other gaps, other spellings of units, blank lines, blanks at ends.
import { readText } from "../../src/syntax/read.ts";
import { listTreeLines } from "../../src/writing/tree-lines.ts";

/** The text with its words in their order and any layout at all. `next` gives numbers from 0 to below one. */
export function ruffle(text: string, next: () => number): string {
	const pick = <Item>(items: readonly [Item, ...Item[]]): Item => items[Math.floor(next() * items.length)] ?? items[0];
	const known = listTreeLines(readText(text, "plan").tree);
	const level = pick(["\t", " ", "  ", "   ", "      "]);
	return text
		.split("\n")
		.map((line, index) => {
			const place = known.get(index + 1);
			if (place === undefined) return line === "" ? pick(["", "\n", " \n\t\n"]) : line;
			const { words, comment } = splitComment(line.trimStart());
			const gaps = words
				.trimEnd()
				.split(/("[^"]*")/)
				.map((piece, part) => (part % 2 === 1 ? piece : ruffleGaps(piece, pick)));
			const end = comment === "" ? pick(["", " ", "\t"]) : pick(["", " ", "      "]) + comment;
			return `${level.repeat(place.depth)}${gaps.join("")}${end}`;
		})
		.join("\n");
}

function ruffleGaps(words: string, pick: <Item>(items: readonly [Item, ...Item[]]) => Item): string {
	return words
		.replace(/\b([0-9.]+) (A|V|W|ft|in|AWG)\b(?! [a-z]+:)/g, (_, number: string, unit: string) => {
			return number + pick(["", " ", "  "]) + pick(spellings.get(unit) ?? [unit]);
		})
		.replace(/: /g, () => pick([":", " : ", ":   "]))
		.replace(/, /g, () => pick([",", " ,", ",  ", " , "]))
		.replace(/ /g, () => pick([" ", "  ", "\t"]));
}

/** `in` behind a number is inches: only where it is one does this look at it. */
const spellings = new Map<string, readonly [string, ...string[]]>([
	["A", ["A", "amp", "amps"]],
	["V", ["V", "volt", "volts"]],
	["W", ["W", "watts"]],
	["ft", ["ft", "foot", "feet"]],
	["AWG", ["AWG", "awg"]],
]);

function splitComment(line: string): { words: string; comment: string } {
	const at = /^(?:[^"/]|"[^"]*"|\/(?!\/))*/.exec(line)?.[0].length ?? line.length;
	return { words: line.slice(0, at), comment: line.slice(at) };
}
