// Repairs of what `at` blocks say: two conductors exchanged, the two sides of a device exchanged, a joint where too many share a terminal.
import { foldName } from "../plan/names.ts";
import type { AtStatement, Landing, NameTerm } from "../syntax/tree.ts";
import { type Candidate, type Change, changeWords, type Subject } from "./subject.ts";

/** Two conductors of a block each put where the other one is. */
export function* exchangeConductors(subject: Subject): Generator<Candidate> {
	for (const { statement, spoken } of spokenBlocks(subject)) {
		const cores = statement.landings.flatMap((landing) =>
			coresOf(landing)
				.filter((core) => isConductor(subject, core))
				.map((core) => ({ core, landing })),
		);
		for (const [index, one] of cores.entries())
			for (const other of cores.slice(index + 1)) {
				if (one.landing === other.landing) continue;
				if (!spoken.has(one.landing) && !spoken.has(other.landing)) continue;
				yield changeWords(subject, [put(other.core.text, one.core), put(one.core.text, other.core)]);
			}
	}
}

/** Of a part that is spoken of, wherever a line names it: line for load, in for out, plus for minus, and the other way round. */
export function* exchangeSides(subject: Subject): Generator<Candidate> {
	for (const name of subject.names)
		for (const [first, second] of sidePairs) {
			const edits = subject.lines.flatMap(({ words }, index) => {
				const changed = exchangeSteps(words, name, first, second);
				return changed === words ? [] : [{ line: index + 1, instead: 1, lines: [changed] }];
			});
			if (edits.length > 0) yield edits;
			// One of the lines may hold the mistake by itself.
			if (edits.length > 1) for (const edit of edits) yield [edit];
		}
}

const sidePairs = [
	["line", "load"],
	["in", "out"],
	["+", "-"],
] as const;

function exchangeSteps(words: string, name: string, first: string, second: string): string {
	const start = `${foldName(name)}.`;
	return words
		.split(/([\s,()]+)/)
		.map((word) => {
			if (!foldName(word).startsWith(start)) return word;
			const [side = "", ...rest] = word.slice(start.length).split(".");
			const other = side === first ? second : side === second ? first : side;
			return [word.slice(0, name.length), other, ...rest].join(".");
		})
		.join("");
}

/** What is under one terminal put into a joint, with a pigtail to the terminal. */
export function* joinUnderTerminal(subject: Subject): Generator<Candidate> {
	for (const { spoken } of spokenBlocks(subject))
		for (const landing of spoken) {
			if (landing.kind !== "land" || landing.cores.length < 2) continue;
			const { line, column, endColumn } = landing.span;
			const members = [...landing.cores, landing.on].map(({ text }) => text).join(", ");
			yield changeWords(subject, [{ line, column, endColumn, text: `join ${members}` }]);
		}
}

/** The blocks of which a landing is spoken of, with those landings. */
export function spokenBlocks(
	subject: Subject,
): { readonly statement: AtStatement; readonly spoken: ReadonlySet<Landing> }[] {
	return subject.tree.statements.flatMap((statement) => {
		if (statement.kind !== "at") return [];
		const spoken = statement.landings.filter((landing) => subject.spoken.includes(landing.span.line));
		return spoken.length === 0 ? [] : [{ statement, spoken: new Set(spoken) }];
	});
}

/** The names in a landing that may be conductors. */
export function coresOf(landing: Landing): readonly NameTerm[] {
	switch (landing.kind) {
		case "land":
			return landing.cores;
		case "join":
			return landing.members.flat();
		case "free":
			return [landing.core];
		case "link":
			return [];
	}
}

function isConductor({ circuit }: Subject, { head }: NameTerm): boolean {
	const tag = foldName(head);
	return circuit.cables.some((cable) => foldName(cable.tag) === tag);
}

function put(text: string, { span }: NameTerm): Change {
	return { line: span.line, column: span.column, endColumn: span.endColumn, text };
}
