// What is taken on a sheet or in a box, to the unit, so that a label finds a free spot. Boxes are kept by cells, so a look costs little.
import { type Box, boundsOfMark, boxesMeet } from "../bounds.ts";
import type { Mark, XY } from "../scene.ts";

/** A list of taken boxes that answers whether a box would be free. */
export class TakenBoxes {
	private readonly cells = new Map<number, Box[]>();

	/** Takes a box. */
	take(box: Box): void {
		const right = Math.floor((box.x + box.width) / cellSize);
		const bottom = Math.floor((box.y + box.height) / cellSize);
		for (let row = Math.floor(box.y / cellSize); row <= bottom; row++)
			for (let column = Math.floor(box.x / cellSize); column <= right; column++) {
				const cell = row * rowStride + column;
				const there = this.cells.get(cell);
				if (there === undefined) this.cells.set(cell, [box]);
				else there.push(box);
			}
	}

	/** Takes all that a mark paints; lines and wires stretch by stretch, of an enclosure or a bracket only the edge. */
	takeMark(mark: Mark): void {
		if (mark.kind === "rectangle" && (mark.as === "enclosure" || (mark.as === "plate" && mark.fill === undefined))) {
			const [right, bottom] = [mark.x + mark.width, mark.y + mark.height];
			const corners = [mark, { x: right, y: mark.y }, { x: right, y: bottom }, { x: mark.x, y: bottom }, mark];
			this.takeStretches(corners, edgeReach);
			return;
		}
		if (mark.kind === "wire")
			this.takeStretches(mark.points, mark.width / 2 + (mark.finding === undefined ? wireClearance : litClearance));
		else if (mark.kind === "jacket") this.takeStretches(mark.points, mark.width / 2 + 1);
		else if (mark.kind === "line") this.takeStretches(mark.points, mark.strokeWidth / 2 + 1);
		else this.take(boundsOfMark(mark));
	}

	/** Whether nothing taken meets `box`. */
	isFree(box: Box): boolean {
		const right = Math.floor((box.x + box.width) / cellSize);
		const bottom = Math.floor((box.y + box.height) / cellSize);
		for (let row = Math.floor(box.y / cellSize); row <= bottom; row++)
			for (let column = Math.floor(box.x / cellSize); column <= right; column++)
				for (const taken of this.cells.get(row * rowStride + column) ?? []) if (boxesMeet(taken, box)) return false;
		return true;
	}

	private takeStretches(points: readonly XY[], reach: number): void {
		let before: XY | undefined;
		for (const point of points) {
			if (before !== undefined) this.takeStretch(before, point, reach);
			before = point;
		}
	}

	/** A slanted stretch is taken in pieces, for the box around all of it would take too much. */
	private takeStretch(start: XY, end: XY, reach: number): void {
		const pieces = start.x !== end.x && start.y !== end.y ? 4 : 1;
		const width = (end.x - start.x) / pieces;
		const height = (end.y - start.y) / pieces;
		for (let piece = 0; piece < pieces; piece++) {
			const x = start.x + piece * width;
			const y = start.y + piece * height;
			this.take({
				x: Math.min(x, x + width) - reach,
				y: Math.min(y, y + height) - reach,
				width: Math.abs(width) + 2 * reach,
				height: Math.abs(height) + 2 * reach,
			});
		}
	}
}

/** Free room between a wire's colour and a label: its casing and a hair. */
const wireClearance = 1.6;
/** The same for one that a finding lights up: its band with ticks. */
const litClearance = 4.9;
/** Half of what an edge takes. */
const edgeReach = 1.8;
const cellSize = 80;
/** More columns than any sheet has cells. */
const rowStride = 100_003;
