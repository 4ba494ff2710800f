// The left and right outline of what is drawn, in rows: neighbours move together until their outlines would touch.
import type { Box } from "../bounds.ts";

/** How far things reach to both sides, row by row from the top; a row without anything reaches nowhere. */
export interface Outline {
	readonly left: readonly number[];
	readonly right: readonly number[];
}

/** The outline of boxes; what lies above zero counts for the first row. */
export function outlineOf(boxes: readonly Box[]): Outline {
	const left: number[] = [];
	const right: number[] = [];
	for (const box of boxes) {
		const last = Math.floor((box.y + box.height) / rowHeight);
		for (let row = Math.max(0, Math.floor(box.y / rowHeight)); row <= last; row++) {
			left[row] = Math.min(left[row] ?? Number.POSITIVE_INFINITY, box.x);
			right[row] = Math.max(right[row] ?? Number.NEGATIVE_INFINITY, box.x + box.width);
		}
	}
	return { left, right };
}

/** Outlines set side by side: what stands on the left, seen from the right. */
export class Skyline {
	private readonly right: number[] = [];

	/**
	 * How far to the right `next`, lower by so many rows on a line of its own, must move to stay `gap` clear in every row;
	 * minus infinity where no row is shared.
	 */
	shiftFor(next: Outline, gap: number, lower = 0): number {
		let shift = Number.NEGATIVE_INFINITY;
		for (let row = 0; row < lower; row++) {
			const right = this.right[row];
			if (right !== undefined) shift = Math.max(shift, right + gap);
		}
		next.left.forEach((left, row) => {
			const right = this.right[row + lower];
			if (right !== undefined) shift = Math.max(shift, right - left + gap);
		});
		return shift;
	}

	/** Puts an outline, moved by `shift`, on the right of what is there. */
	put(next: Outline, shift: number): void {
		next.right.forEach((right, row) => {
			this.right[row] = Math.max(this.right[row] ?? Number.NEGATIVE_INFINITY, right + shift);
		});
	}
}

/** Height of a row, in units. */
export const rowHeight = 6;
