// What a repair is made from: a finding, the plan's own lines and what they say, and the circuit that they make.
import type { Finding, LineEdit } from "../base/finding.ts";
import type { Circuit } from "../circuit/circuit.ts";
import type { Tree } from "../syntax/tree.ts";
import { joinLines, splitLines, type TextLine } from "../writing/text-lines.ts";

export interface Subject {
	readonly finding: Finding;
	readonly circuit: Circuit;
	/** Of the plan's own text, without what it uses. */
	readonly tree: Tree;
	readonly lines: readonly TextLine[];
	/** The numbers of the plan's own lines that the finding speaks of, the place itself first. */
	readonly spoken: readonly number[];
	/** The parts and boxes that it marks, or whose terminals it marks. */
	readonly names: readonly string[];
}

/** A repair that may be one: it is tried before it is offered. */
export type Candidate = readonly LineEdit[];

/** A stretch of a line and what to write in its place. */
export interface Change {
	readonly line: number;
	readonly column: number;
	readonly endColumn: number;
	readonly text: string;
}

/** What there is to repair. */
export function makeSubject(finding: Finding, text: string, tree: Tree, circuit: Circuit): Subject {
	const spans = [finding.span, ...finding.also.map(({ span }) => span)];
	const spoken = new Set(spans.filter(({ file }) => file === tree.file).map(({ line }) => line));
	const names = new Set<string>();
	for (const mark of finding.marks) {
		const conductor = circuit.conductors[circuit.conductorByName.get(mark) ?? -1];
		// A conductor that the convention landed is spoken of by its cable's line.
		const cable = circuit.cableByTag.get(conductor?.cable ?? mark);
		if (cable !== undefined && cable.span.file === tree.file) spoken.add(cable.span.line);
		const point = circuit.points[circuit.pointByName.get(mark) ?? -1];
		if (point?.kind === "terminal") names.add(point.part);
		if (circuit.partByName.has(mark) || circuit.enclosureByName.has(mark)) names.add(mark);
		if (point !== undefined) names.add(point.enclosure.name);
		for (const end of conductor?.ends ?? []) names.add(end.enclosure.name);
	}
	return { finding, circuit, tree, lines: splitLines(text), spoken: [...spoken], names: [...names] };
}

/** The words of a line without its ending; lines count from 1. */
export function wordsOf({ lines }: Subject, line: number): string {
	return lines[line - 1]?.words ?? "";
}

/** The lines of a text with stretches of them changed. */
export function changeWords(subject: Subject, changes: readonly Change[]): Candidate {
	const byLine = new Map<number, Change[]>();
	for (const change of changes) byLine.set(change.line, [...(byLine.get(change.line) ?? []), change]);
	return [...byLine]
		.toSorted(([one], [other]) => one - other)
		.map(([line, all]) => {
			let words = wordsOf(subject, line);
			// From the right, so that columns further left stay what they are.
			for (const { column, endColumn, text } of all.toSorted((one, other) => other.column - one.column))
				words = words.slice(0, column - 1) + text + words.slice(endColumn - 1);
			return { line, instead: 1, lines: [words] };
		});
}

/** Edits in the order of their lines, neighbours as one. */
export function mergeEdits(edits: readonly LineEdit[]): Candidate {
	const merged: LineEdit[] = [];
	for (const edit of edits.toSorted((one, other) => one.line - other.line)) {
		const last = merged.at(-1);
		if (last !== undefined && last.line + last.instead === edit.line)
			merged[merged.length - 1] = {
				line: last.line,
				instead: last.instead + edit.instead,
				lines: [...last.lines, ...edit.lines],
			};
		else merged.push(edit);
	}
	return merged;
}

/** The text with the lines written; edits do not overlap. */
export function applyEdits(text: string, edits: readonly LineEdit[]): string {
	const lines = splitLines(text);
	const usual = lines[0]?.ending ?? "\n";
	for (const { line, instead, lines: words } of edits.toSorted((one, other) => other.line - one.line)) {
		const ending = lines[line - 1]?.ending ?? usual;
		lines.splice(line - 1, instead, ...words.map((each) => ({ words: each, ending })));
	}
	return joinLines(lines, text);
}
