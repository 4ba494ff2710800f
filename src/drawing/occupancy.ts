// What of a sheet is taken and what is free, on a grid of small squares: for finding room, and for measuring emptiness.
import { type Box, boundsOfMark } from "./bounds.ts";
import type { Group, Mark, Placement } from "./scene.ts";

/** A grid over part of a sheet, of squares with sides of `cell` units; the last of a row or column may reach over the edge. */
export class Occupancy {
	private readonly area: Box;
	private readonly cell: number;
	private readonly columns: number;
	private readonly rows: number;
	private readonly taken: Uint8Array;
	/** How many squares, from each downwards, are free; undefined when out of date. */
	private depths: Uint16Array | undefined;

	constructor(area: Box, cell: number) {
		this.area = area;
		this.cell = cell;
		this.columns = Math.max(1, Math.ceil(area.width / cell));
		this.rows = Math.max(1, Math.ceil(area.height / cell));
		this.taken = new Uint8Array(this.columns * this.rows);
	}

	/** Takes every square that `box`, once placed, comes nearer to than `reach`. */
	take(box: Box, reach = 0, { x, y, scale } = unmoved): void {
		const left = box.x * scale + x - this.area.x - reach;
		const top = box.y * scale + y - this.area.y - reach;
		const right = left + box.width * scale + 2 * reach;
		const bottom = top + box.height * scale + 2 * reach;
		const [first, last] = [this.columnAt(left), this.columnBehind(right)];
		if (first >= last) return;
		const below = this.rowBehind(bottom);
		for (let row = this.rowAt(top); row < below; row++)
			this.taken.fill(1, row * this.columns + first, row * this.columns + last);
		this.depths = undefined;
	}

	/** Whether `box` touches no square that is taken; what lies outside the area is free. */
	isFree(box: Box): boolean {
		const [x, y] = [box.x - this.area.x, box.y - this.area.y];
		const [first, last] = [this.columnAt(x), this.columnBehind(x + box.width)];
		const below = this.rowBehind(y + box.height);
		for (let row = this.rowAt(y); row < below; row++)
			for (let square = row * this.columns + first; square < row * this.columns + last; square++)
				if (this.taken[square] === 1) return false;
		return true;
	}

	/** The upper left corner of the highest free place for something so large inside the area, the rightmost of these. */
	findPlace(width: number, height: number): { readonly x: number; readonly y: number } | undefined {
		if (width > this.area.width || height > this.area.height) return undefined;
		const depths = this.depthsNow();
		const [wide, high] = [Math.ceil(width / this.cell), Math.ceil(height / this.cell)];
		for (let row = 0; row * this.cell + height <= this.area.height; row++) {
			let run = 0;
			for (let column = this.columns - 1; column >= 0; column--) {
				run = (depths[row * this.columns + column] ?? 0) >= high ? run + 1 : 0;
				const left = Math.min((column + wide) * this.cell, this.area.width) - width;
				if (run < wide || left < column * this.cell) continue;
				return { x: this.area.x + left, y: this.area.y + row * this.cell };
			}
		}
		return undefined;
	}

	/** The part of the area that is free, 0 to 1. */
	freeShare(): number {
		let free = 0;
		for (const taken of this.taken) free += 1 - taken;
		return free / this.taken.length;
	}

	/** What is taken as few boxes: one for each stretch of squares in a row, and one for stretches alike in rows that follow each other. */
	stretches(): Box[] {
		const boxes: Box[] = [];
		let open = new Map<number, number>();
		for (let row = 0; row < this.rows; row++) {
			const still = new Map<number, number>();
			let start = -1;
			for (let column = 0; column <= this.columns; column++) {
				const isTaken = column < this.columns && this.taken[row * this.columns + column] === 1;
				if (isTaken && start < 0) start = column;
				if (isTaken || start < 0) continue;
				const place = start * (this.columns + 1) + column;
				const above = open.get(place);
				const box = above === undefined ? undefined : boxes[above];
				if (above === undefined || box === undefined) {
					still.set(place, boxes.length);
					boxes.push({
						x: this.area.x + start * this.cell,
						y: this.area.y + row * this.cell,
						width: (column - start) * this.cell,
						height: this.cell,
					});
				} else {
					still.set(place, above);
					boxes[above] = { ...box, height: box.height + this.cell };
				}
				start = -1;
			}
			open = still;
		}
		return boxes;
	}

	/** The largest upright rectangle of free squares; of no size where all is taken. */
	largestFree(): Box {
		let best: Box = { x: this.area.x, y: this.area.y, width: 0, height: 0 };
		/** Free squares above and with each square of the row at hand. */
		const heights = new Uint32Array(this.columns + 1);
		for (let row = 0; row < this.rows; row++) {
			// Columns whose heights rise: each reaches left to the one before it, and right to the next lower one.
			const rising: { readonly from: number; readonly height: number }[] = [];
			for (let column = 0; column <= this.columns; column++) {
				const isTaken = column === this.columns || this.taken[row * this.columns + column] === 1;
				const height = isTaken ? 0 : (heights[column] ?? 0) + 1;
				heights[column] = height;
				let from = column;
				for (let last = rising.at(-1); last !== undefined && last.height >= height; last = rising.at(-1)) {
					rising.pop();
					from = last.from;
					const [width, high] = [(column - from) * this.cell, last.height * this.cell];
					if (width * high <= best.width * best.height) continue;
					const bottom = this.area.y + (row + 1) * this.cell;
					best = { x: this.area.x + from * this.cell, y: bottom - high, width, height: high };
				}
				rising.push({ from, height });
			}
		}
		return best;
	}

	/** The same squares taken, to go on from. */
	copy(): Occupancy {
		const copy = new Occupancy(this.area, this.cell);
		copy.taken.set(this.taken);
		return copy;
	}

	private columnAt(x: number): number {
		return clamp(Math.floor(x / this.cell), this.columns);
	}

	private columnBehind(x: number): number {
		return clamp(Math.ceil(x / this.cell), this.columns);
	}

	private rowAt(y: number): number {
		return clamp(Math.floor(y / this.cell), this.rows);
	}

	private rowBehind(y: number): number {
		return clamp(Math.ceil(y / this.cell), this.rows);
	}

	private depthsNow(): Uint16Array {
		if (this.depths !== undefined) return this.depths;
		const { taken, columns } = this;
		const depths = new Uint16Array(taken.length);
		for (let square = taken.length - 1; square >= 0; square--)
			if (taken[square] === 0) depths[square] = 1 + (depths[square + columns] ?? 0);
		this.depths = depths;
		return depths;
	}
}

const unmoved: Placement = { x: 0, y: 0, scale: 1 };

/** Side of a square for measuring, 3 mm, and for finding room, which may be coarser and is quicker. */
export const fineCell = 12;
export const coarseCell = 20;

/** The boxes that a mark's ink lies in: one a segment for what is drawn as a line. */
export function inkBoxes(mark: Mark): Box[] {
	if (mark.kind !== "line" && mark.kind !== "wire" && mark.kind !== "jacket") return [boundsOfMark(mark)];
	const reach = (mark.kind === "line" ? mark.strokeWidth : mark.width) / 2;
	const [first] = mark.points;
	if (first === undefined) return [];
	const boxes: Box[] = [];
	let before = first;
	for (const point of mark.points) {
		if (point === first) continue;
		boxes.push({
			x: Math.min(before.x, point.x) - reach,
			y: Math.min(before.y, point.y) - reach,
			width: Math.abs(before.x - point.x) + 2 * reach,
			height: Math.abs(before.y - point.y) + 2 * reach,
		});
		before = point;
	}
	return boxes;
}

/** The largest rectangle of `area` in which nothing of `groups` is drawn. */
export function largestEmpty(groups: readonly Group[], area: Box): Box {
	const occupancy = new Occupancy(area, fineCell);
	for (const group of groups)
		for (const mark of group.marks) for (const box of inkBoxes(mark)) occupancy.take(box, 0, group.at);
	return occupancy.largestFree();
}

/** The part of `area` that is further than `air` from anything drawn in `groups`, 0 to 1. */
export function emptyShare(groups: readonly Group[], area: Box): number {
	const occupancy = new Occupancy(area, fineCell);
	for (const group of groups)
		for (const mark of group.marks) for (const box of inkBoxes(mark)) occupancy.take(box, air, group.at);
	return occupancy.freeShare();
}

/** What is nearer to ink than this does not look empty: 5 mm. */
export const air = 20;

function clamp(value: number, most: number): number {
	return Math.max(0, Math.min(value, most));
}
