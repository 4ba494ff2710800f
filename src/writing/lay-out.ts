// A plan text in the one layout of all plans: two blanks a level, lengths of a chain with their ends in one column, comments
// in one column, one blank between words, usual spelling of units. What cannot be read stays exactly as it is.
import { indentationOf } from "../syntax/lexer.ts";
import { numberWidth } from "../syntax/outline.ts";
import { findKeptLines, type ReadPlan } from "./kept-lines.ts";
import { type SetLine, setWords } from "./set-words.ts";
import { joinLines, splitLines, type TextLine } from "./text-lines.ts";
import { listTreeLines, type TreeLine } from "./tree-lines.ts";

/** A text laid out, and the numbers of the lines that stayed as they were because something there cannot be read. */
export interface LaidOut {
	readonly text: string;
	readonly kept: ReadonlySet<number>;
}

/** Lays a text out. Below the statements on the lines of `flush`, lengths begin in one column instead of ending in one. */
export function layOut(read: ReadPlan, flush: ReadonlySet<number>): LaidOut {
	const layout = new Layout(read, flush);
	return { text: layout.write(), kept: layout.kept };
}

/** A line to be written. */
type Row =
	| { readonly sort: "kept"; readonly line: TextLine }
	| { readonly sort: "blank"; readonly line: TextLine }
	| { readonly sort: "comment"; readonly line: TextLine; readonly set: SetLine; readonly depth: number }
	| { readonly sort: "words"; readonly line: TextLine; readonly set: SetLine; readonly place: TreeLine };

class Layout {
	readonly kept: ReadonlySet<number>;
	readonly #read: ReadPlan;
	readonly #flush: ReadonlySet<number>;
	readonly #lines: readonly TextLine[];
	readonly #known: ReadonlyMap<number, TreeLine>;
	/** The leftmost column of the lines of each group, as the text has it. */
	readonly #columns = new Map<number, number>();
	/** Of each line, by its position, the nearest with words before and behind it; undefined where one that is kept is nearer. */
	readonly #before: readonly (TreeLine | undefined)[];
	readonly #after: readonly (TreeLine | undefined)[];

	constructor(read: ReadPlan, flush: ReadonlySet<number>) {
		this.#read = read;
		this.#flush = flush;
		this.#lines = splitLines(read.text);
		this.#known = listTreeLines(read.tree);
		this.kept = findKeptLines(read, this.#known);
		for (const { line, group } of this.#known.values())
			this.#columns.set(group, Math.min(this.#columnOf(line), this.#columns.get(group) ?? Number.POSITIVE_INFINITY));
		const numbers = this.#lines.map((_, index) => index + 1);
		this.#before = this.#nearest(numbers);
		this.#after = this.#nearest(numbers.toReversed()).toReversed();
	}

	write(): string {
		const rows = alignKinds(withoutIdleBlanks(this.#lines.map((line, index) => this.#rowOf(line, index + 1))));
		const indents = this.#indentAll(rows);
		const columns = alignComments(rows, indents);
		const lines = rows.map((row, index): TextLine => {
			if (row.sort === "kept") return row.line;
			if (row.sort === "blank") return { ...row.line, words: "" };
			const { words, comment } = row.set;
			const start = " ".repeat(indents[index] ?? 0) + words;
			return { ...row.line, words: comment === "" ? start : start.padEnd(columns[index] ?? 0) + comment };
		});
		return joinLines(lines, this.#read.text);
	}

	#rowOf(line: TextLine, number: number): Row {
		if (this.kept.has(number)) return { sort: "kept", line };
		const place = this.#known.get(number);
		const set = setWords(line.words, place?.figures ?? []);
		if (place !== undefined) return { sort: "words", line, set, place };
		return set.comment === ""
			? { sort: "blank", line }
			: { sort: "comment", line, set, depth: this.#depthOfComment(number) };
	}

	/** A comment stands with the line that follows it; at the end of a block, with the lines it was indented like. */
	#depthOfComment(number: number): number {
		const column = this.#columnOf(number);
		const before = this.#before[number - 1];
		const least = this.#after[number - 1]?.depth ?? 0;
		if (before === undefined) return least;
		if (before.sort !== "hop" && column > this.#columnOfGroup(before)) return before.depth + 1;
		let above: TreeLine | undefined = before;
		while (above !== undefined && above.depth > least && this.#columnOfGroup(above) > column) above = above.above;
		return Math.max(least, above?.depth ?? 0);
	}

	/** For each line of a row the one with words that stands before it in the row. */
	#nearest(numbers: readonly number[]): (TreeLine | undefined)[] {
		let nearest: TreeLine | undefined;
		return numbers.map((number) => {
			const found = nearest;
			nearest = this.kept.has(number) ? undefined : (this.#known.get(number) ?? nearest);
			return found;
		});
	}

	/** Two blanks deeper than the line above them; lengths narrower than the widest of their chain are pushed to where that ends. */
	#indentAll(rows: readonly Row[]): number[] {
		const widths = this.#widthsOfLengths(rows);
		const widest = new Map<number, number>();
		for (const [index, row] of rows.entries())
			if (row.sort === "words")
				widest.set(row.place.group, Math.max(widths[index] ?? 0, widest.get(row.place.group) ?? 0));
		/** Where lines of each depth begin at this place of the text. */
		const starts = [0];
		return rows.map((row, index) => {
			if (row.sort === "comment") return starts[row.depth] ?? 0;
			if (row.sort !== "words") return 0;
			const { depth, group } = row.place;
			const width = widths[index];
			const indent = (starts[depth] ?? 0) + (width === undefined ? 0 : (widest.get(group) ?? 0) - width);
			starts[depth + 1] = indent + levelWidth;
			return indent;
		});
	}

	/** How wide the length of each hop is that begins with one, where lengths end in one column. */
	#widthsOfLengths(rows: readonly Row[]): (number | undefined)[] {
		let isFlush = false;
		return rows.map((row) => {
			if (row.sort !== "words") return undefined;
			if (row.place.depth === 0) isFlush = this.#flush.has(row.place.line);
			const width = row.place.sort === "hop" && !isFlush ? numberWidth(row.set.words) : -1;
			return width < 0 ? undefined : width;
		});
	}

	#columnOf(number: number): number {
		return indentationOf(this.#lines[number - 1]?.words ?? "");
	}

	#columnOfGroup({ group }: TreeLine): number {
		return this.#columns.get(group) ?? 0;
	}
}

/** No blank line at the edges of the text, and no two in a row. */
function withoutIdleBlanks(rows: readonly Row[]): Row[] {
	const kept = rows.filter((row, index) => row.sort !== "blank" || (index > 0 && rows[index - 1]?.sort !== "blank"));
	return kept.at(-1)?.sort === "blank" ? kept.slice(0, -1) : kept;
}

/** Slots are a table: their kinds begin in one column, behind the colon of the longest name. */
function alignKinds(rows: readonly Row[]): Row[] {
	const widest = new Map<number, number>();
	for (const row of rows)
		if (row.sort === "words" && row.place.sort === "slot")
			widest.set(row.place.group, Math.max(widest.get(row.place.group) ?? 0, row.set.words.indexOf(": ")));
	return rows.map((row) => {
		const width = row.sort === "words" && row.place.sort === "slot" ? widest.get(row.place.group) : undefined;
		if (row.sort !== "words" || width === undefined) return row;
		const colon = row.set.words.indexOf(": ") + 1;
		const words = row.set.words.slice(0, colon).padEnd(width + 1) + row.set.words.slice(colon);
		return { ...row, set: { ...row.set, words } };
	});
}

/** The column for the comment behind each row: one for all rows of a statement, or of several that are a line each. */
function alignComments(rows: readonly Row[], indents: readonly number[]): number[] {
	const columns: number[] = [];
	let block: number[] = [];
	const close = (): void => {
		let widest = 0;
		for (const index of block) {
			const width = widthOf(rows, indents, index);
			if (hasComment(rows[index]) && width <= widestAligned) widest = Math.max(widest, width);
		}
		for (const index of block) columns[index] = Math.max(widest, widthOf(rows, indents, index)) + commentGap;
		block = [];
	};
	for (const [index, row] of rows.entries()) {
		if (row.sort !== "words" || beginsBlock(rows, index)) close();
		if (row.sort === "words") block.push(index);
	}
	close();
	return columns;
}

/** A statement with lines below it has its comments to itself, and so has what follows it. */
function beginsBlock(rows: readonly Row[], index: number): boolean {
	return depthOf(rows[index]) === 0 && (depthOf(rows[index + 1]) > 0 || depthOf(rows[index - 1]) > 0);
}

function depthOf(row: Row | undefined): number {
	return row?.sort === "words" ? row.place.depth : 0;
}

function hasComment(row: Row | undefined): boolean {
	return row?.sort === "words" && row.set.comment !== "";
}

function widthOf(rows: readonly Row[], indents: readonly number[], index: number): number {
	const row = rows[index];
	return (indents[index] ?? 0) + (row?.sort === "words" ? row.set.words.length : 0);
}

/** Columns of one level, and between words and a comment behind them. */
const levelWidth = 2;
const commentGap = 2;
/** The comment of a wider line stands right behind it, and pushes no other out. */
const widestAligned = 72;
