// Repairs that change a word or a figure where a thing or a cable is said: a rating, two poles, a bond taken out, a mark on a white.
import { standardRatings } from "../handbook/standard-ratings.ts";
import { type Candidate, type Subject, wordsOf } from "./subject.ts";

/** On each line that is spoken of, whatever may put a finding of this code right. */
export function* changeSaid(subject: Subject): Generator<Candidate> {
	const rewrite = rewrites.get(subject.finding.code);
	if (rewrite === undefined) return;
	for (const line of subject.spoken) {
		const words = wordsOf(subject, line);
		for (const changed of rewrite(words, subject))
			if (changed === undefined) yield [{ line, instead: 1, lines: [] }];
			else if (changed !== words) yield [{ line, instead: 1, lines: [changed] }];
	}
}

/** A line written otherwise, the likeliest way first; undefined is the line left out. */
type Rewrite = (words: string, subject: Subject) => readonly (string | undefined)[];

const amperes = /\b(\d+(?:\.\d+)?) ?A\b/g;

const rewrites: ReadonlyMap<string, Rewrite> = new Map<string, Rewrite>([
	["protection-too-large", takeSmaller],
	["receptacle-rating-wrong", takeSmaller],
	["one-pole-opened", (words) => behindEach(words, amperes, " two-pole")],
	[
		"leg-left-live",
		(words) => [
			...behindEach(words, /\b(?:switch|disconnect)\b/g, " two-pole"),
			...behindEach(words, amperes, " two-pole"),
		],
	],
	["back-feed-unfastened", (words) => behindEach(words, amperes, " held down")],
	[
		"bond-doubled",
		(words) => [
			words.replace(/,? bonded\b/, ""),
			...(/^\s*bonding (?:screw|strap)\s*$/.test(words) ? [undefined] : []),
		],
	],
	["neutral-not-isolated", (words) => [words.replace(/,? bonded\b/, "")]],
	["colour-misleading", markWhite],
	["ground-fault-missing", (words) => [words.replace(/: receptacle\b/, ": gfci")]],
	[
		"strands-unterminated",
		(words) => ["fork", "ring", "ferrule"].map((end) => words.replace(/ (?:bare )?on (?=\S+$)/, ` ${end} on `)),
	],
]);

/** The next smaller standard rating in place of the one that was found too large, then the one below it. */
function takeSmaller(words: string, { finding: { figures }, circuit }: Subject): string[] {
	const figure = figures.find(({ unit, found, limit }) => unit === "A" && found > limit);
	if (figure === undefined) return [];
	const { region } = circuit.plan.settings;
	const fitting = new Set(
		standardRatings.rows
			.filter((row) => row.region === region && row.ampere <= figure.limit)
			.map(({ ampere }) => ampere),
	);
	return [...fitting]
		.toSorted((one, other) => other - one)
		.slice(0, 2)
		.flatMap((ampere) =>
			[...words.matchAll(amperes)]
				.filter(([, found]) => Number(found) === figure.found)
				.map(({ index, 0: { length } }) => `${words.slice(0, index)}${ampere} A${words.slice(index + length)}`),
		);
}

/** The words put behind one place of those that match. */
function behindEach(words: string, place: RegExp, added: string): string[] {
	return [...words.matchAll(place)].map(
		({ index, 0: { length } }) => words.slice(0, index + length) + added + words.slice(index + length),
	);
}

/** The conductor that is white by its colour and a hot by its use, marked at both ends. */
function markWhite(words: string, { circuit }: Subject): string[] {
	const mark = circuit.plan.settings.region === "us" ? "white marked black" : "blue marked brown";
	return / marked /.test(words) ? [] : [words.replace(/ to (?=\S)/, ` ${mark} at both ends to `)];
}
