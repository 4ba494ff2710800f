// Parts of a drawing beside and below its first part: in rows, or one below the other on the right, so that the sheet is filled best.
import type { Size } from "./estimate.ts";

/** Where parts stand, by their places in the list. */
export interface Shelves {
	readonly rows: readonly (readonly number[])[];
	readonly right: readonly number[];
	/** The ground of a sheet that holds them. */
	readonly paper: number;
}

/** A part to stand on a shelf. */
export interface ShelvedPart extends Size {
	/** Nothing stands right of it. */
	readonly isLast: boolean;
}

/** The shelves that fill a sheet best, the parts in their order: the last of them may stand on the right. */
export function shelve(first: Size, parts: readonly ShelvedPart[]): Shelves {
	let best: Shelves = { rows: parts.map((_, index) => [index]), right: [], paper: Number.POSITIVE_INFINITY };
	for (let below = parts.length; below >= 0; below--) {
		const right = [...parts.keys()].slice(below);
		// Each bit is a break behind a part; with many parts only the first few may stand beside the next.
		for (let choice = 0; choice < 2 ** Math.min(Math.max(0, below - 1), mostBreaks); choice++) {
			const rows: number[][] = [];
			for (let index = 0; index < below; index++) {
				const isBroken =
					index === 0 || index > mostBreaks || parts[index - 1]?.isLast === true || ((choice >> (index - 1)) & 1) === 1;
				if (isBroken) rows.push([index]);
				else rows.at(-1)?.push(index);
			}
			const paper = paperFor(sizeOf(first, parts, rows, right)) * (right.length === 0 ? 1 : leftBelow);
			if (paper < best.paper) best = { rows, right, paper };
		}
	}
	return best;
}

function sizeOf(
	first: Size,
	parts: readonly ShelvedPart[],
	rows: readonly (readonly number[])[],
	right: readonly number[],
): Size {
	let { width, height } = first;
	for (const row of rows) {
		let across = -besideEachOther;
		let down = 0;
		for (const index of row) {
			across += (parts[index]?.width ?? 0) + besideEachOther;
			down = Math.max(down, parts[index]?.height ?? 0);
		}
		width = Math.max(width, across);
		height += down + channel;
	}
	if (right.length === 0) return { width, height };
	const aside = Math.max(...right.map((index) => parts[index]?.width ?? 0));
	const down = right.reduce((sum, index) => sum + (parts[index]?.height ?? 0) + channel, -channel);
	return { width: width + corridor + aside, height: Math.max(height, down) };
}

/** The ground of a sheet that holds so much: one that is too long or too high for a sheet leaves ground empty. */
export function paperFor({ width, height }: Size): number {
	return Math.max(width, height * slimmest) * Math.max(height, width / longest);
}

/** Limits of width to height of a sheet's drawing. */
const slimmest = 1.3;
const longest = 2.1;
/** Between rows, for the feeds; between parts in a row; and before what stands on the right. */
export const channel = 80;
export const besideEachOther = 110;
const corridor = 160;
/** What stands on the right leaves ground below what is beside it. */
const leftBelow = 1.08;
const mostBreaks = 5;
