// One long line without partings, set in columns: its way back to the top of the next column carries an arrow.
import { boundsOfMark, joinBoxes, moveMark } from "../bounds.ts";
import type { Mark } from "../scene.ts";
import { moveBoxes, type Piece, stack } from "./piece.ts";
import { conductorWidth } from "./step-pieces.ts";

/** The pieces of one line in `columns` columns of about the same height; the line starts at the top of the first. */
export function foldLine(pieces: readonly Piece[], columns: number): Piece {
	const stacks = shareOut(pieces, columns).map(stack);
	const boxes = stacks.map((column) => joinBoxes(column.boxes));
	const lowest = Math.max(...stacks.map((column) => column.height), 0) + turn;
	const axes: number[] = [];
	const marks: Mark[] = [];
	let right = 0;
	boxes.forEach((box, index) => {
		const axis = index === 0 ? 0 : right + 2 * gutter - box.x;
		axes.push(axis);
		if (index > 0)
			marks.push(...wayBack(axes[index - 1] ?? 0, stacks[index - 1]?.height ?? 0, right + gutter, axis, lowest));
		right = axis + box.x + box.width;
	});
	return {
		boxes: [
			...marks.map(boundsOfMark),
			...stacks.flatMap((column, index) => moveBoxes(column.boxes, axes[index] ?? 0, 0)),
		],
		height: lowest,
		draw: (at) => [
			...stacks.flatMap((column, index) => column.draw({ x: at.x + (axes[index] ?? 0), y: at.y })),
			{ name: "turns of the line", sort: "decoration", marks: marks.map((mark) => moveMark(mark, at.x, at.y)) },
		],
	};
}

const turn = 14;
const gutter = 14;

/** From the foot of one column up to the head of the next. */
function wayBack(from: number, foot: number, across: number, to: number, lowest: number): Mark[] {
	const points = [
		{ x: from, y: foot },
		{ x: from, y: lowest },
		{ x: across, y: lowest },
		{ x: across, y: -turn },
		{ x: to, y: -turn },
		{ x: to, y: 0 },
	];
	const middle = (lowest - turn) / 2;
	const arrow = [
		{ x: across - 4, y: middle + 8 },
		{ x: across, y: middle },
		{ x: across + 4, y: middle + 8 },
	];
	return [points, arrow].map((way) => ({
		kind: "line",
		as: "conductor",
		points: way,
		stroke: "ink",
		strokeWidth: conductorWidth,
	}));
}

/** Consecutive pieces in columns, none much higher than its share. */
function shareOut(pieces: readonly Piece[], columns: number): Piece[][] {
	const whole = pieces.reduce((sum, piece) => sum + heightOf(piece), 0);
	const found: Piece[][] = [[]];
	let used = 0;
	for (const piece of pieces) {
		const share = (whole / columns) * found.length;
		if (used + heightOf(piece) / 2 > share && found.length < columns) found.push([]);
		found.at(-1)?.push(piece);
		used += heightOf(piece);
	}
	return found;
}

/** What a piece takes: one that ends a line has no height of its own, only what it is drawn in. */
function heightOf(piece: Piece): number {
	const box = joinBoxes(piece.boxes);
	return Math.max(piece.height, box.y + box.height);
}
