// A piece of a one-line diagram: what it occupies below the point where its line comes in, and how it is drawn once that point is known.
import { type Box, joinBoxes } from "../bounds.ts";
import type { Group, XY } from "../scene.ts";
import { outlineOf, rowHeight, Skyline } from "./outline.ts";

/** A piece with its line coming in at (0, 0). */
export interface Piece {
	/** Everything it occupies, texts and badges included. */
	readonly boxes: readonly Box[];
	/** How far below its line goes on. */
	readonly height: number;
	/** How far to the right its line goes on; straight below where it is not said. */
	readonly shift?: number;
	readonly draw: (at: XY) => Group[];
}

/** Pieces one below the other on one line. */
export function stack(pieces: readonly Piece[]): Piece {
	const tops: XY[] = [];
	let [x, y] = [0, 0];
	for (const piece of pieces) {
		tops.push({ x, y });
		x += piece.shift ?? 0;
		y += piece.height;
	}
	const topOf = (index: number): XY => tops[index] ?? { x: 0, y: 0 };
	return {
		boxes: pieces.flatMap((piece, index) => moveBoxes(piece.boxes, topOf(index).x, topOf(index).y)),
		height: y,
		shift: x,
		draw: (at) => pieces.flatMap((piece, index) => piece.draw({ x: at.x + topOf(index).x, y: at.y + topOf(index).y })),
	};
}

/** Pieces side by side, each as near to those on its left as their outlines allow; the lines they come in on, the first at 0. */
export function pack(pieces: readonly Piece[], gap: number): number[] {
	const axes: number[] = [];
	const skyline = new Skyline();
	for (const piece of pieces) {
		const outline = outlineOf(piece.boxes);
		const last = axes.at(-1);
		const axis = last === undefined ? 0 : Math.ceil(Math.max(skyline.shiftFor(outline, gap), last + leastPitch));
		axes.push(axis);
		skyline.put(outline, axis);
	}
	return axes;
}

/** Pieces that hang side by side: a wide one on a longer line where it then goes below its neighbours, and all gets no lower by it than `slack` times. */
export function hang(
	pieces: readonly Piece[],
	gap: number,
	slack: number,
): { readonly piece: Piece; readonly x: number }[] {
	const extents = pieces.map(({ boxes }) => joinBoxes(boxes));
	const lowest = Math.max(0, ...extents.map(({ y, height }) => y + height));
	const skyline = new Skyline();
	let last: number | undefined;
	return pieces.map((piece, index) => {
		const extent = extents[index] ?? { x: 0, y: 0, width: 0, height: 0 };
		const most =
			last === undefined || extent.width < wide ? 0 : Math.min(mostDrop, slack * lowest - extent.y - extent.height);
		const outline = outlineOf(piece.boxes);
		const axisOf = (lower: number): number =>
			last === undefined ? 0 : Math.ceil(Math.max(skyline.shiftFor(outline, gap, lower), last + leastPitch));
		let best = { x: axisOf(0), lower: 0 };
		for (let lower = dropRows; lower * rowHeight <= most; lower += dropRows) {
			const x = axisOf(lower);
			if (x < best.x - worthwhile) best = { x, lower };
		}
		const hung = best.lower === 0 ? piece : lowered(piece, best.lower * rowHeight);
		skyline.put(best.lower === 0 ? outline : outlineOf(hung.boxes), best.x);
		last = best.x;
		return { piece: hung, x: best.x };
	});
}

/** Only what is wider than this is hung lower, in such steps, and only where it comes so much nearer. */
const wide = 300;
const dropRows = 6;
const worthwhile = 40;
/** Nor is it hung lower than so many units: a very long branch beside it would call for endless tries. */
const mostDrop = 1440;

/** A piece on a line that is longer by `drop`. */
function lowered(piece: Piece, drop: number): Piece {
	return {
		...piece,
		boxes: [{ x: -2, y: 0, width: 4, height: drop }, ...moveBoxes(piece.boxes, 0, drop)],
		height: piece.height + drop,
		draw: (at) => [
			...piece.draw({ x: at.x, y: at.y + drop }),
			{
				name: `longer line at ${at.x} ${at.y}`,
				sort: "decoration",
				marks: [
					{
						kind: "line",
						as: "conductor",
						points: [at, { x: at.x, y: at.y + drop }],
						stroke: "ink",
						strokeWidth: 1.5,
					},
				],
			},
		],
	};
}

/** Boxes moved. */
export function moveBoxes(boxes: readonly Box[], dx: number, dy: number): Box[] {
	return boxes.map((box) => ({ ...box, x: box.x + dx, y: box.y + dy }));
}

/** Two lines next to each other are never closer. */
const leastPitch = 56;
