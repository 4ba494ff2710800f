// A plan text in which every cable says its tag: the automatic ones are written down where they are, as `as TAG`.
import { namesOf } from "../plan/name-rows.ts";
import type { Hop, Plan } from "../plan/plan.ts";
import type { HopStatement, Link, Tree } from "../syntax/tree.ts";
import { limits } from "../syntax/vocabulary.ts";
import { findKeptLines, type ReadPlan } from "./kept-lines.ts";
import { joinLines, splitLines } from "./text-lines.ts";
import { listTreeLines } from "./tree-lines.ts";

/**
 * Writes down the tags that would shift when a hop is put before theirs. The one cable of `from X by CABLE` behind a thing
 * keeps the tag that the thing gives it, and so do cables whose tags are no row, or stand where something cannot be read.
 */
export function pinTags(read: ReadPlan, plan: Plan): string {
	const { text, tree } = read;
	const kept = findKeptLines(read, listTreeLines(tree));
	const tags = new Map<number, Hop[]>();
	for (const hop of plan.runs.flatMap((run) => run.hops)) {
		const { file, line } = hop.span;
		if (file === tree.file) tags.set(line, [...(tags.get(line) ?? []), hop]);
	}
	const lines = splitLines(text);
	for (const hop of hopsOf(tree)) {
		const index = hop.span.line - 1;
		const line = lines[index];
		const tag = kept.has(hop.span.line) ? undefined : tagOf(hop, tags.get(hop.span.line) ?? []);
		if (line !== undefined && tag !== undefined) lines[index] = { ...line, words: insertTag(line.words, hop, tag) };
	}
	return joinLines(lines, text);
}

/** The tag of a hop's cable, or the row of tags of its cables; undefined where one is said, or cannot be. */
function tagOf(hop: HopStatement, cables: readonly Hop[]): string | undefined {
	const [first] = cables;
	const last = cables.at(-1);
	const things = namesOf(hop.name);
	if (first === undefined || last === undefined || cables.length !== things.length) return undefined;
	if (hop.tag !== undefined || last.tag.length > limits.name) return undefined;
	if (cables.length === 1) return first.tag;
	const row = namesOf({ first: nameOf(first.tag, hop), last: nameOf(last.tag, hop), span: hop.span });
	const isRow = row.length === cables.length && row.every((name, index) => name.text === cables[index]?.tag);
	return isRow ? `${first.tag}..${last.tag}` : undefined;
}

function nameOf(text: string, hop: HopStatement) {
	return { kind: "name" as const, head: text, steps: [], text, span: hop.span };
}

/** Behind the length, or at the front of a hop without one; a length of a part of the way is none of the hop's. */
function insertTag(words: string, { length, through, span }: HopStatement, tag: string): string {
	const ofPart = through.some(
		(part) =>
			length !== undefined && part.span.column <= length.span.column && length.span.column < part.span.endColumn,
	);
	if (length === undefined || ofPart) {
		const start = span.column - 1;
		return `${words.slice(0, start)}as ${tag} ${words.slice(start)}`;
	}
	const end = length.span.endColumn - 1;
	return `${words.slice(0, end)} as ${tag}${words.slice(end)}`;
}

function hopsOf(tree: Tree): HopStatement[] {
	const hops: HopStatement[] = [];
	const follow = (links: readonly Link[]): void => {
		for (const link of links) {
			if (link.kind === "branch") follow(link.links);
			else hops.push(link);
		}
	};
	for (const statement of tree.statements) if (statement.kind === "run") follow(statement.links);
	return hops;
}
