// Which lines of a text stay exactly as they are: every statement with something in it that cannot be read.
import type { Finding } from "../base/finding.ts";
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
	const worded = splitLines(read.text).flatMap(({ words }, index) =>
		setWords(words, []).words === "" ? [] : [index + 1],
	);
	const unread = new Set(findings.filter((finding) => hinders(finding)).map((finding) => finding.span.line));
	// A comment can hold what cannot be read, too.
	const kept = new Set(unread);
	for (const lines of linesOfStatements(tree.statements, worded)) {
		const [first, last] = [lines[0] ?? 0, lines.at(-1) ?? 0];
		const isKept = lines.some((line) => !known.has(line)) || [...unread].some((line) => line >= first && line <= last);
		for (let line = first; isKept && line <= last; line++) kept.add(line);
	}
	return kept;
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

/** Tabs beside blanks are what tidying is for, and are read all the same. */
function hinders(finding: Finding): boolean {
	return finding.level === "error" && finding.code !== "indentation-mixed";
}
