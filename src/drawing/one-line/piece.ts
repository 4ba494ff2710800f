// A piece of a one-line diagram: what it occupies below the point where its line comes in, and how it is drawn once that point is known.
import type { Box } from "../bounds.ts";
import type { Group, XY } from "../scene.ts";
import { outlineOf, Skyline } from "./outline.ts";

/** A piece with its line coming in at (0, 0). */
export interface Piece {
	/** Everything it occupies, texts and badges included. */
	readonly boxes: readonly Box[];
	/** Where its line goes on, straight below. */
	readonly height: number;
	readonly draw: (at: XY) => Group[];
}

/** Pieces one below the other on one line. */
export function stack(pieces: readonly Piece[]): Piece {
	const tops: number[] = [];
	let height = 0;
	for (const piece of pieces) {
		tops.push(height);
		height += piece.height;
	}
	return {
		boxes: pieces.flatMap((piece, index) => piece.boxes.map((box) => ({ ...box, y: box.y + (tops[index] ?? 0) }))),
		height,
		draw: (at) => pieces.flatMap((piece, index) => piece.draw({ x: at.x, y: at.y + (tops[index] ?? 0) })),
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

/** Boxes moved. */
export function moveBoxes(boxes: readonly Box[], dx: number, dy: number): Box[] {
	return boxes.map((box) => ({ ...box, x: box.x + dx, y: box.y + dy }));
}

/** Two lines next to each other are never closer. */
const leastPitch = 56;
