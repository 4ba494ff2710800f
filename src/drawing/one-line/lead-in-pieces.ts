// Where a further line leads into a device or a bus: beside the line that is there, clear of it, and into its symbol.
import { boundsOfPoints, growBox, moveMark } from "../bounds.ts";
import type { Mark, XY } from "../scene.ts";
import { outlineOf, Skyline } from "./outline.ts";
import { moveBoxes, type Piece, stack } from "./piece.ts";
import { conductorWidth } from "./step-pieces.ts";

const gap = 16;

/** Free space over a source that stands below a bus, so that it does not seem to hang from it. */
const headroom = 34;

/** A line that ends at a converter, `device`, with a further one that comes from below into its other end. */
export function leadBelow(above: Piece, device: Piece, further: Piece, name: string): Piece {
	const turn = above.height + device.height + 14;
	const short = Math.max(0, further.height + headroom - turn);
	const line = stack([above, { boxes: [], height: short, draw: () => [] }, device]);
	const low = turn + short;
	const axis = -axisBeside(moved(further, 0, low - further.height), line);
	const way = [
		{ x: axis, y: low },
		{ x: 0, y: low },
		{ x: 0, y: line.height },
	];
	const lines = joining(name, [...stretch(above, short), way]);
	return together([line, moved(further, axis, low - further.height), lines], low, 0);
}

/** A line that comes to the direct-current side of a `device` whose way through is that of the further line. */
export function leadAbove(above: Piece, device: Piece, further: Piece, side: XY, name: string): Piece {
	const top = Math.max(above.height - side.y + 14, further.height + headroom);
	const source = moved(further, 0, top - further.height);
	const axis = -Math.max(axisBeside(source, above), side.x + leastLine);
	const level = top + side.y;
	const way = [
		{ x: 0, y: above.height },
		{ x: 0, y: level },
		{ x: axis + side.x, y: level },
	];
	const pieces = [above, moved(source, axis, 0), moved(device, axis, top), joining(name, [way])];
	return together(pieces, top + device.height, axis);
}

/** What stands above a bus and beside that the further line, and how far right this comes down on the bar. */
export function leadBeside(above: Piece, head: number, further: Piece, name: string): { piece: Piece; reach: number } {
	const short = Math.max(0, further.height - above.height - head);
	const height = above.height + short;
	const source = moved(further, 0, height + head - further.height);
	const skyline = new Skyline();
	// The line goes on to the bar, and what stands beside it there keeps clear of it too.
	skyline.put(outlineOf([...above.boxes, { x: -2, y: above.height, width: 4, height: short + head }]), 0);
	const reach = Math.ceil(Math.max(skyline.shiftFor(outlineOf(source.boxes), gap), leastReach));
	const pieces = [above, moved(source, reach, 0), joining(name, stretch(above, short))];
	return { piece: together(pieces, height, 0), reach };
}

/** How far left of a line a further one must stand. */
function axisBeside(further: Piece, line: Piece): number {
	const skyline = new Skyline();
	skyline.put(outlineOf(further.boxes), 0);
	return Math.ceil(Math.max(skyline.shiftFor(outlineOf(line.boxes), gap), leastLine));
}

/** From one line down on a bar to the next. */
const leastReach = 56;

/** The room that the label of a device takes below its direct-current line. */
const leastLine = 150;

function moved(piece: Piece, x: number, y: number): Piece {
	return { ...piece, boxes: moveBoxes(piece.boxes, x, y), draw: (at) => piece.draw({ x: at.x + x, y: at.y + y }) };
}

function together(pieces: readonly Piece[], height: number, shift: number): Piece {
	return {
		boxes: pieces.flatMap(({ boxes }) => boxes),
		height,
		shift,
		draw: (at) => pieces.flatMap((piece) => piece.draw(at)),
	};
}

/** The lines that join what stands beside each other. */
function joining(name: string, ways: readonly (readonly XY[])[]): Piece {
	const marks = ways.map(
		(points): Mark => ({ kind: "line", as: "conductor", points, stroke: "ink", strokeWidth: conductorWidth }),
	);
	return {
		boxes: ways.flatMap((points) =>
			points.slice(1).map((point, index) => growBox(boundsOfPoints([points[index] ?? point, point]), 2)),
		),
		height: 0,
		draw: (at) =>
			marks.length === 0 ? [] : [{ name, sort: "decoration", marks: marks.map((mark) => moveMark(mark, at.x, at.y)) }],
	};
}

/** A line made longer at its foot. */
function stretch({ height }: Piece, by: number): XY[][] {
	if (by === 0) return [];
	return [
		[
			{ x: 0, y: height },
			{ x: 0, y: height + by },
		],
	];
}
