// Indentation: which line stands below which, found with a stack and without recursion. What stands wrong is reported
// and read where it most likely belongs.
import type { Line } from "./lexer.ts";
import { problem, quoted } from "./problem.ts";
import type { Landing, Link, Member, Setting, Statement } from "./tree.ts";
import { limits } from "./vocabulary.ts";

/** What may stand below a line, and where it goes. */
export type Block =
	| { readonly takes: "statements"; readonly into: Statement[] }
	| { readonly takes: "settings"; readonly into: Setting[] }
	| { readonly takes: "members"; readonly into: Member[] }
	| { readonly takes: "links"; readonly into: Link[] }
	| { readonly takes: "landings"; readonly into: Landing[] }
	/** Below a line that was not understood: read for its own problems, then dropped. */
	| { readonly takes: "anything" }
	| { readonly takes: "nothing" };

/** A line that others may stand below. */
export interface Frame {
	/** The column of the line, -1 for the text as a whole. */
	readonly column: number;
	readonly block: Block;
	/** The line was not understood, so that nothing below it reaches the tree. */
	readonly isLost: boolean;
	/** The columns in which the lines below it begin, and in which the first numbers of its hops end. */
	readonly starts: number[];
	readonly numberEnds: number[];
	/** The columns in which those of its hops and branches begin that begin with a word. */
	readonly wordStarts: number[];
	/** Something below it was reported as misplaced: the lines that follow need not say so again. */
	isReported: boolean;
}

/** The lines that are open while a text is read from top to bottom. */
export class Outline {
	readonly #frames: Frame[];
	/** The chain at the left edge that was opened last, as long as nothing but its own lines follow. */
	#chain: { readonly frame: Frame; readonly line: Line } | undefined;

	constructor(statements: Statement[]) {
		this.#frames = [newFrame(-1, { takes: "statements", into: statements }, false)];
	}

	/** The line that this one stands below by its columns alone. */
	above(line: Line): Frame {
		while (this.#top.column >= line.indentation) this.#frames.pop();
		return this.#top;
	}

	/** The place of a line that can only stand at the left edge. */
	placeStatement(line: Line): Frame {
		const above = this.above(line);
		const root = this.#frames[0] ?? above;
		if (above === root) this.#settle(root, line);
		else if (above.block.takes !== "anything")
			this.#reportOnce(above, line, `${quoted(line.tokens[0]?.image ?? "")} begins a statement of its own`);
		return root;
	}

	/** The place of a line that is neither a statement's first word nor a hop. */
	placeOther(line: Line): Frame {
		const above = this.above(line);
		if (above.block.takes !== "nothing") {
			this.#settle(above, line);
			return above;
		}
		this.#reportOnce(above, line, "The line above takes no lines below it");
		return this.#frames.findLast((frame) => frame.block.takes !== "nothing") ?? above;
	}

	/**
	 * The chain that a hop or branch belongs to; undefined, and reported, where there is none.
	 * Hops begin in one column or have the ends of their lengths in one, so a hop can be deeper than the one above it.
	 */
	placeLink(line: Line): Frame | undefined {
		const column = line.indentation;
		const chains = this.#frames.filter((frame) => takesLinks(frame) && frame.column < column);
		const innermost = chains.at(-1);
		if (innermost === undefined) return this.#placeOutdentedLink(line);
		const width = numberWidth(line.words);
		const end = width < 0 ? -1 : column + width;
		const beginning = chains.findLast((frame) => frame.starts.includes(column));
		const ending = chains.filter((frame) => frame.numberEnds.includes(end));
		const isFirst = innermost.starts.length === 0;
		const only = ending.length === 1 ? ending[0] : undefined;
		// Left of all hops of the only chain there is, a line can belong to nothing else.
		const isOutdented = chains.length === 1 && column < Math.min(...innermost.starts);
		const frame = isFirst ? innermost : (beginning ?? only ?? innermost);
		if (!isFirst && !beginning && !only && !isOutdented && !isFirstOfItsSort(innermost, column, end))
			this.#reportUneven(line);
		while (this.#top !== frame) this.#frames.pop();
		note(frame.starts, column);
		if (end >= 0) note(frame.numberEnds, end);
		else note(frame.wordStarts, column);
		return frame;
	}

	/** Opens the line for those below it. */
	open(line: Line, block: Block, isLost: boolean): void {
		const frame = newFrame(line.indentation, block, isLost || this.isLost(line));
		if (this.#frames.length === 1) this.#chain = takesLinks(frame) ? { frame, line } : undefined;
		this.#frames.push(frame);
	}

	/** Whether a line that this one stands below was not understood. */
	isLost(line: Line): boolean {
		return this.#frames.some((frame) => frame.isLost && frame.column < line.indentation);
	}

	/** Whether the line stands deeper than is read; reported. */
	isTooDeep(line: Line): boolean {
		const above = this.above(line);
		if (this.#frames.length <= limits.depth + 1) return false;
		if (!above.isReported)
			line.report(
				problem("indentation-too-deep", line.whole, {
					title: `The line is indented in more than ${limits.depth} steps, and such lines are not read`,
					label: "too deep",
				}),
			);
		above.isReported = true;
		return true;
	}

	get #top(): Frame {
		return this.#frames[this.#frames.length - 1] ?? newFrame(-1, { takes: "nothing" }, true);
	}

	/** Lines below one line begin in one column. */
	#settle(frame: Frame, line: Line): void {
		const isLink = frame.block.takes === "links";
		if (frame.starts.length > 0 && !frame.starts.includes(line.indentation)) {
			this.#reportUneven(line);
			if (!isLink) frame.starts.length = 0;
		}
		note(frame.starts, line.indentation);
	}

	#reportOnce(frame: Frame, line: Line, title: string): void {
		if (!frame.isReported)
			line.report(problem("indentation-unexpected", line.start, { title, label: "indented too far" }));
		frame.isReported = true;
	}

	#reportUneven(line: Line): void {
		line.report(
			problem("indentation-uneven", line.start, {
				title: "The line begins in another column than its neighbours",
				label: "out of line",
			}),
		);
	}

	/** A hop or branch in the column of its circuit, or left of it: it belongs to the circuit all the same. */
	#placeOutdentedLink(line: Line): Frame | undefined {
		const chain = this.#chain;
		if (chain === undefined || chain.frame.block.takes !== "links") {
			this.#reportMisplacedHop(line);
			return undefined;
		}
		this.above(line);
		// The frame was left because of the column; what stands below the line is placed as if it had never been.
		this.#frames.push(chain.frame);
		if (chain.frame.isReported) return chain.frame;
		chain.frame.isReported = true;
		const name = quoted(
			chain.line.tokens
				.slice(0, 2)
				.map((token) => token.image)
				.join(" "),
		);
		line.report(
			problem("hop-misplaced", line.start, {
				title: `${quoted(line.words)} is not indented below ${name}`,
				label: "indent it",
				also: [{ span: chain.line.start, label: "below this line" }],
				help: `Put two blanks in front of it, and of every other line that belongs to ${name}.`,
			}),
		);
		return chain.frame;
	}

	#reportMisplacedHop(line: Line): void {
		const above = this.above(line);
		if (!above.isReported)
			line.report(
				problem("hop-misplaced", line.whole, {
					title: `${quoted(line.words)} stands outside any circuit, feed or bond`,
					label: "belongs to no chain",
				}),
			);
		above.isReported = true;
	}
}

/** Notes a column once: those of one line's neighbours are few, so that a list of them is soon searched. */
function note(columns: number[], column: number): void {
	if (!columns.includes(column)) columns.push(column);
}

function newFrame(column: number, block: Block, isLost: boolean): Frame {
	return { column, block, isLost, starts: [], numberEnds: [], wordStarts: [], isReported: false };
}

/**
 * Whether the line is the first of its chain that begins with a word, left of all numbers, or with a number, a little right of
 * all words: numbers that end in one column begin where the widest of them begins, and so do the words.
 */
function isFirstOfItsSort({ starts, numberEnds, wordStarts }: Frame, column: number, end: number): boolean {
	if (end < 0) return wordStarts.length === 0 && column < Math.min(...starts);
	const shift = column - Math.max(...starts);
	return numberEnds.length === 0 && shift > 0 && shift < widestNumber;
}

/** Digits of the longest length that anyone writes, dot included. */
const widestNumber = 5;

function takesLinks(frame: Frame): boolean {
	return frame.block.takes === "links" || frame.block.takes === "anything";
}

/** How wide the number is, or the `?` for one, that the words of a line begin with; -1 where they begin with none. */
export function numberWidth(words: string): number {
	return /^(?:[0-9.]+|\?)/.exec(words)?.[0].length ?? -1;
}
