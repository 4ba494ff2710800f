// What of a sheet is taken and what is free, on a grid of small squares: for finding room, and for measuring emptiness.
import { type Box, boundsOfMark, boundsOfPoints, growBox, marksInPlace } from "./bounds.ts";
import type { Group, Mark } from "./scene.ts";

/** A grid over part of a sheet, of squares with sides of `cell` units. */
export class Occupancy {
	private readonly area: Box;
	private readonly cell: number;
	private readonly columns: number;
	private readonly rows: number;
	private readonly taken: Uint8Array;
	/** Sums of `taken` over everything above and to the left; undefined when out of date. */
	private sums: Uint32Array | undefined;

	constructor(area: Box, cell: number) {
		this.area = area;
		this.cell = cell;
		this.columns = Math.max(1, Math.floor(area.width / cell));
		this.rows = Math.max(1, Math.floor(area.height / cell));
		this.taken = new Uint8Array(this.columns * this.rows);
	}

	/** Takes every square that `box` touches. */
	take(box: Box): void {
		const left = this.columnOf(box.x, Math.floor);
		const right = Math.max(left, this.columnOf(box.x + box.width, Math.ceil));
		const bottom = this.rowOf(box.y + box.height, Math.ceil);
		for (let row = this.rowOf(box.y, Math.floor); row < bottom; row++)
			this.taken.fill(1, row * this.columns + left, row * this.columns + right);
		this.sums = undefined;
	}

	/** Whether `box` lies inside the area and touches no square that is taken. */
	isFree(box: Box): boolean {
		if (box.x < this.area.x || box.x + box.width > this.area.x + this.columns * this.cell) return false;
		if (box.y < this.area.y || box.y + box.height > this.area.y + this.rows * this.cell) return false;
		this.sums ??= this.sumUp();
		const { sums } = this;
		const [left, right] = [this.columnOf(box.x, Math.floor), this.columnOf(box.x + box.width, Math.ceil)];
		const top = this.rowOf(box.y, Math.floor) * (this.columns + 1);
		const bottom = this.rowOf(box.y + box.height, Math.ceil) * (this.columns + 1);
		const below = (sums[bottom + right] ?? 0) - (sums[bottom + left] ?? 0);
		return below === (sums[top + right] ?? 0) - (sums[top + left] ?? 0);
	}

	/** The part of the area that is free, 0 to 1. */
	freeShare(): number {
		this.sums ??= this.sumUp();
		return 1 - (this.sums.at(-1) ?? 0) / this.taken.length;
	}

	/** What is taken as few boxes, one for each stretch of squares in a row. */
	stretches(): Box[] {
		const boxes: Box[] = [];
		for (let row = 0; row < this.rows; row++) {
			let start = -1;
			for (let column = 0; column <= this.columns; column++) {
				const isTaken = column < this.columns && this.taken[row * this.columns + column] === 1;
				if (isTaken && start < 0) start = column;
				if (isTaken || start < 0) continue;
				boxes.push({
					x: this.area.x + start * this.cell,
					y: this.area.y + row * this.cell,
					width: (column - start) * this.cell,
					height: this.cell,
				});
				start = -1;
			}
		}
		return boxes;
	}

	private columnOf(x: number, round: (value: number) => number): number {
		return clamp(round((x - this.area.x) / this.cell), this.columns);
	}

	private rowOf(y: number, round: (value: number) => number): number {
		return clamp(round((y - this.area.y) / this.cell), this.rows);
	}

	private sumUp(): Uint32Array {
		const wide = this.columns + 1;
		const sums = new Uint32Array(wide * (this.rows + 1));
		for (let row = 0; row < this.rows; row++) {
			let line = 0;
			for (let column = 0; column < this.columns; column++) {
				line += this.taken[row * this.columns + column] ?? 0;
				sums[(row + 1) * wide + column + 1] = (sums[row * wide + column + 1] ?? 0) + line;
			}
		}
		return sums;
	}
}

/** Side of a square for measuring, 3 mm, and for finding room, which may be coarser and is quicker. */
export const fineCell = 12;
export const coarseCell = 20;

/** The boxes that a mark's ink lies in: one a segment for what is drawn as a line. */
export function inkBoxes(mark: Mark): Box[] {
	if (mark.kind !== "line" && mark.kind !== "wire" && mark.kind !== "jacket") return [boundsOfMark(mark)];
	const width = mark.kind === "line" ? mark.strokeWidth : mark.width;
	return mark.points.slice(1).map((point, index) => {
		const before = mark.points[index];
		return growBox(boundsOfPoints(before === undefined ? [point] : [before, point]), width / 2);
	});
}

/** The part of `area` that is further than `air` from anything drawn in `groups`, 0 to 1. */
export function emptyShare(groups: readonly Group[], area: Box): number {
	const occupancy = new Occupancy(area, fineCell);
	for (const group of groups)
		for (const mark of marksInPlace(group)) for (const box of inkBoxes(mark)) occupancy.take(growBox(box, air));
	return occupancy.freeShare();
}

/** What is nearer to ink than this does not look empty: 5 mm. */
export const air = 20;

function clamp(value: number, most: number): number {
	return Math.max(0, Math.min(value, most));
}
