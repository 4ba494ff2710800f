// Repairs that land conductors as the trade's convention would, and say so line by line, in place of what an `at` block says.
import type { LineEdit } from "../base/finding.ts";
import type { Circuit } from "../circuit/circuit.ts";
import { foldName } from "../plan/names.ts";
import type { AtStatement, Landing } from "../syntax/tree.ts";
import { sayLandings } from "../writing/say-landings.ts";
import { coresOf, spokenBlocks } from "./landings.ts";
import { applyEdits, type Candidate, type Subject, wordsOf } from "./subject.ts";

/** What a text comes to as a circuit. */
export type BuildText = (text: string) => Circuit;

/**
 * Landings are taken out, and what the convention makes of their conductors then is said in their place: those that are spoken
 * of, then all of their blocks, then all in the boxes that are marked.
 */
export function* landByConvention(subject: Subject, text: string, build: BuildText): Generator<Candidate> {
	const spoken = spokenBlocks(subject);
	const marked = subject.tree.statements.flatMap((statement) =>
		statement.kind === "at" && subject.names.some((name) => foldName(name) === foldName(statement.box.text))
			? [{ statement, removed: statement.landings }]
			: [],
	);
	for (const removals of [
		spoken.map(({ statement, spoken: landings }) => ({ statement, removed: [...landings] })),
		spoken.map(({ statement }) => ({ statement, removed: statement.landings })),
		marked,
	])
		if (removals.length > 0) yield sayInstead(subject, text, build, removals);
}

interface Removal {
	readonly statement: AtStatement;
	readonly removed: readonly Landing[];
}

function sayInstead(subject: Subject, text: string, build: BuildText, removals: readonly Removal[]): Candidate {
	const without = removals.flatMap(({ removed }) =>
		removed.map(({ span }) => ({ line: span.line, instead: 1, lines: [] })),
	);
	const circuit = build(applyEdits(text, without));
	const landings = sayLandings(circuit);
	return removals.flatMap(({ statement, removed }) => {
		const box = circuit.plan.thingByName.get(foldName(statement.box.text));
		const enclosure = circuit.partByName.get(box?.name ?? "")?.enclosure.name ?? "";
		const names = removed.flatMap((landing) => coresOf(landing).map((core) => core.text));
		const said = (landings.get(enclosure) ?? []).filter((line) => names.some((name) => speaksOf(line, name)));
		const edits = writeInPlace(subject, removed, said);
		// A block with nothing below it says nothing.
		const isEmpty = said.length === 0 && removed.length === statement.landings.length;
		return isEmpty ? [{ line: statement.span.line, instead: 1, lines: [] }, ...edits] : edits;
	});
}

/** The said lines where the first of the removed ones stood. */
function writeInPlace(subject: Subject, removed: readonly Landing[], said: readonly string[]): LineEdit[] {
	const numbers = removed.map(({ span }) => span.line).toSorted((one, other) => one - other);
	return numbers.map((line, index) => {
		const start = /^\s*/.exec(wordsOf(subject, line))?.[0] ?? "";
		return { line, instead: 1, lines: index === 0 ? said.map((words) => start + words) : [] };
	});
}

function speaksOf(line: string, name: string): boolean {
	return foldName(line)
		.split(/[ ,()]+/)
		.includes(foldName(name));
}
