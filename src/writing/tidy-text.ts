// A plan text laid out as all plans are, and read back: what says anything else than before is never handed out.
import { readText } from "../syntax/read.ts";
import type { ReadPlan } from "./kept-lines.ts";
import { type LaidOut, layOut } from "./lay-out.ts";
import { saySame } from "./same-reading.ts";
import { splitLines } from "./text-lines.ts";
import { listTreeLines } from "./tree-lines.ts";

/** Lays a text out. The result says the same, statement for statement, with every comment in its order; tidied again, it stays as it is. */
export function tidyText(read: ReadPlan): LaidOut {
	const aligned = layOut(read, new Set());
	const unclear = findUnclear(read, aligned);
	if (unclear.size === 0) return aligned;
	// Where lengths of a chain and of its branch would end in one column, nobody could tell which line belongs to which.
	const flush = layOut(read, unclear);
	if (findUnclear(read, flush).size === 0) return flush;
	return { text: read.text, kept: new Set(splitLines(read.text).map((_, index) => index + 1)) };
}

/** The lines of statements that are not read from what was laid out as they stand in the tree. */
function findUnclear({ tree }: ReadPlan, { text, kept }: LaidOut): ReadonlySet<number> {
	const again = readText(text, tree.file);
	const found = again.tree.statements;
	if (found.length > tree.statements.length) return new Set([0]);
	const known = listTreeLines(again.tree);
	// What belongs to no statement was kept as it is, and is told as before.
	const misplaced = again.findings.flatMap(({ code, span }) =>
		isOfPlace(code) && known.has(span.line) ? span.line : [],
	);
	return new Set(
		tree.statements.flatMap((statement, index) => {
			const [from, to] = [found[index]?.span.line ?? 0, found[index + 1]?.span.line ?? Number.POSITIVE_INFINITY];
			const isClear = kept.has(statement.span.line) || !misplaced.some((line) => line >= from && line < to);
			return isClear && saySame(statement, found[index]) ? [] : [statement.span.line];
		}),
	);
}

/** Codes that tell of a line by where it begins. */
function isOfPlace(code: string): boolean {
	return (code.startsWith("indentation-") && code !== "indentation-mixed") || code.endsWith("-misplaced");
}
