// Which lines of a text stay exactly as they are: every statement with something in it that cannot be read.
import type { Finding } from "../base/finding.ts";
import { indentationOf } from "../syntax/lexer.ts";
import type { Statement, Tree } from "../syntax/tree.ts";
import { setWords } from "./set-words.ts";
import { splitLines } from "./text-lines.ts";
import type { TreeLine } from "./tree-lines.ts";

/** A text as it was read. */
export interface ReadPlan {
	readonly text: string;
	readonly tree: Tree;
	readonly findings: readonly Finding[];
}

/**
 * The numbers of the lines to keep, those between a statement's lines included. Its other lines could be set, but where
 * they belong may hang on what is wrong with one of them. `known` are the lines of the tree.
 */
export function findKeptLines(read: ReadPlan, known: ReadonlyMap<number, TreeLine>): ReadonlySet<number> {
	const { findings, tree } = read;
	const texts = splitLines(read.text);
	const worded = texts.flatMap(({ words }, index) => (setWords(words, []).words === "" ? [] : [index + 1]));
	// A comment can hold what cannot be read, too.
	const unread = new Set(findings.filter((finding) => hinders(finding)).map((finding) => finding.span.line));
	const edge = tree.statements[0]?.span.column;
	// Of several statements that are indented without reason the first is told.
	for (const { span } of tree.statements) if (span.column !== edge) unread.add(span.line);
	const kept = new Set(unread);
	const hindering = [...unread];
	const isAtEdge = (line: number): boolean => indentationOf(texts[line - 1]?.words ?? "") < (edge ?? 1);
	const blocks = linesOfStatements(tree.statements, worded).flatMap((lines) => splitOffTail(lines, known, isAtEdge));
	for (const lines of blocks) {
		const [first, last] = [lines[0] ?? 0, lines.at(-1) ?? 0];
		const isKept = lines.some((line) => !known.has(line)) || hindering.some((line) => line >= first && line <= last);
		for (let line = first; isKept && line <= last; line++) kept.add(line);
	}
	// What stays indented would come to stand below what is moved to the left edge.
	return kept.size > 0 && edge !== undefined && edge > 1 ? new Set(worded) : kept;
}

/** The lines with words of each statement; those before the first one belong together too. */
function linesOfStatements(statements: readonly Statement[], worded: readonly number[]): number[][] {
	const starts = new Set(statements.map((statement) => statement.span.line));
	const blocks: number[][] = [];
	for (const line of worded) {
		const block = blocks.at(-1);
		if (block === undefined || starts.has(line)) blocks.push([line]);
		else block.push(line);
	}
	return blocks;
}

/** What was not understood at the left edge, behind all lines of a statement, is none of that statement. */
function splitOffTail(
	lines: readonly number[],
	known: ReadonlyMap<number, TreeLine>,
	isAtEdge: (line: number) => boolean,
): (readonly number[])[] {
	const last = lines.findLastIndex((line) => known.has(line));
	const next = lines[last + 1];
	return next !== undefined && last >= 0 && isAtEdge(next)
		? [lines.slice(0, last + 1), lines.slice(last + 1)]
		: [lines];
}

/** Tabs beside blanks are what tidying is for, and are read all the same. */
function hinders(finding: Finding): boolean {
	return finding.level === "error" && finding.code !== "indentation-mixed";
}
