// Where marks stand: the box around a mark, a group or several, and groups moved elsewhere.
import { findSymbol } from "../symbols/index.ts";
import type {
	CircleMark,
	Group,
	JacketMark,
	LineMark,
	Mark,
	Placement,
	RectangleMark,
	SymbolMark,
	TextMark,
	WireMark,
	XY,
} from "./scene.ts";
import { textBox } from "./text-metrics.ts";

/** An upright rectangle, in units. */
export interface Box {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

/** The box around everything in `groups`; an empty one at the origin when there is nothing. */
export function boundsOf(groups: readonly Group[]): Box {
	return joinBoxes(groups.flatMap((group) => group.marks.map((mark) => boxInPlace(boundsOfMark(mark), group))));
}

/** A box in a group's own units, where it stands on the sheet. */
export function boxInPlace(box: Box, { at }: Group): Box {
	if (at === undefined) return box;
	const { x, y, scale } = at;
	return { x: box.x * scale + x, y: box.y * scale + y, width: box.width * scale, height: box.height * scale };
}

/** The box a mark paints in, half its stroke included. */
export function boundsOfMark(mark: Mark): Box {
	switch (mark.kind) {
		case "rectangle":
			return growBox(mark, (mark.strokeWidth ?? 0) / 2);
		case "circle": {
			const reach = mark.radius + (mark.strokeWidth ?? 0) / 2;
			return { x: mark.x - reach, y: mark.y - reach, width: 2 * reach, height: 2 * reach };
		}
		case "line":
			return growBox(boundsOfPoints(mark.points), mark.strokeWidth / 2);
		case "wire":
		case "jacket":
			return growBox(boundsOfPoints(mark.points), mark.width / 2);
		case "text":
			return textBox(mark);
		case "symbol":
			return boundsOfSymbol(mark);
	}
}

/** The box around points; an empty one at the origin when there are none. */
export function boundsOfPoints(points: readonly XY[]): Box {
	const first = points[0];
	if (first === undefined) return { x: 0, y: 0, width: 0, height: 0 };
	let left = first.x;
	let top = first.y;
	let right = left;
	let bottom = top;
	for (const { x, y } of points) {
		left = Math.min(left, x);
		top = Math.min(top, y);
		right = Math.max(right, x);
		bottom = Math.max(bottom, y);
	}
	return { x: left, y: top, width: right - left, height: bottom - top };
}

/** The box around boxes. */
export function joinBoxes(boxes: readonly Box[]): Box {
	const first = boxes[0];
	if (first === undefined) return { x: 0, y: 0, width: 0, height: 0 };
	let left = first.x;
	let top = first.y;
	let right = left + first.width;
	let bottom = top + first.height;
	for (const box of boxes) {
		left = Math.min(left, box.x);
		top = Math.min(top, box.y);
		right = Math.max(right, box.x + box.width);
		bottom = Math.max(bottom, box.y + box.height);
	}
	return { x: left, y: top, width: right - left, height: bottom - top };
}

/** The box with `by` more on each of its sides. */
export function growBox(box: Box, by: number): Box {
	return { x: box.x - by, y: box.y - by, width: box.width + 2 * by, height: box.height + 2 * by };
}

/** Whether two boxes share more than an edge. */
export function boxesMeet(one: Box, other: Box): boolean {
	return (
		one.x < other.x + other.width &&
		other.x < one.x + one.width &&
		one.y < other.y + other.height &&
		other.y < one.y + one.height
	);
}

/** Whether `inner` lies wholly inside `outer`, edges included. */
export function boxHolds(outer: Box, inner: Box): boolean {
	return (
		inner.x >= outer.x &&
		inner.y >= outer.y &&
		inner.x + inner.width <= outer.x + outer.width &&
		inner.y + inner.height <= outer.y + outer.height
	);
}

/** A point of a symbol's own coordinates on the sheet. */
function placeOnSymbol(mark: SymbolMark, point: XY): XY {
	const [x, y] = [point.x * mark.scale, point.y * mark.scale];
	switch (mark.turn ?? 0) {
		case 0:
			return { x: mark.x + x, y: mark.y + y };
		case 90:
			return { x: mark.x - y, y: mark.y + x };
		case 180:
			return { x: mark.x - x, y: mark.y - y };
		case 270:
			return { x: mark.x + y, y: mark.y - x };
	}
}

function boundsOfSymbol(mark: SymbolMark): Box {
	const box = findSymbol(mark.symbol)?.box ?? { x: 0, y: 0, width: 0, height: 0 };
	const corners = [
		{ x: box.x, y: box.y },
		{ x: box.x + box.width, y: box.y + box.height },
	];
	return boundsOfPoints(corners.map((corner) => placeOnSymbol(mark, corner)));
}

/** The group moved by `dx`, `dy` after being scaled by `scale` about the origin. */
export function moveGroup(group: Group, dx: number, dy: number, scale = 1): Group {
	return { ...group, marks: group.marks.map((mark) => moveMark(mark, dx, dy, scale)) };
}

/** The group scaled and moved as a whole: its marks stay as they are. */
export function placeGroup(group: Group, to: Placement): Group {
	const { at = unmoved } = group;
	const x = at.x * to.scale + to.x;
	const y = at.y * to.scale + to.y;
	return { ...group, at: { x, y, scale: at.scale * to.scale } };
}

/** A group's marks where they stand on the sheet, in its units. */
export function marksInPlace({ at, marks }: Group): readonly Mark[] {
	return at === undefined ? marks : marks.map((mark) => moveMark(mark, at.x, at.y, at.scale));
}

const unmoved: Placement = { x: 0, y: 0, scale: 1 };

/** The mark moved by `dx`, `dy` after being scaled by `scale` about the origin. */
export function moveMark(mark: Mark, dx: number, dy: number, scale = 1): Mark {
	if (mark.kind === "line" || mark.kind === "wire" || mark.kind === "jacket") {
		const points = mark.points.map((point) => ({ x: point.x * scale + dx, y: point.y * scale + dy }));
		const moved = { ...mark, points };
		return scale === 1 ? moved : scaleWay(moved, scale);
	}
	const moved = { ...mark, x: mark.x * scale + dx, y: mark.y * scale + dy };
	return scale === 1 ? moved : scaleShape(moved, scale);
}

function scaleWay(mark: LineMark | WireMark | JacketMark, scale: number): Mark {
	if (mark.kind === "line") return { ...mark, strokeWidth: mark.strokeWidth * scale };
	return { ...mark, width: mark.width * scale, radius: mark.radius * scale };
}

function scaleShape(mark: RectangleMark | CircleMark | TextMark | SymbolMark, scale: number): Mark {
	switch (mark.kind) {
		case "text":
			return { ...mark, size: mark.size * scale };
		case "symbol":
			return { ...mark, scale: mark.scale * scale };
		case "circle":
			return { ...mark, radius: mark.radius * scale, ...scaleStroke(mark, scale) };
		case "rectangle":
			return {
				...mark,
				width: mark.width * scale,
				height: mark.height * scale,
				...(mark.radius === undefined ? {} : { radius: mark.radius * scale }),
				...scaleStroke(mark, scale),
			};
	}
}

function scaleStroke(mark: RectangleMark | CircleMark, scale: number): { strokeWidth?: number } {
	return mark.strokeWidth === undefined ? {} : { strokeWidth: mark.strokeWidth * scale };
}
