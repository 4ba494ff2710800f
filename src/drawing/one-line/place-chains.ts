// Chains in the free places of a sheet: the largest first, each further one as high as it stands clear of those before it.
import type { Box } from "../bounds.ts";
import type { XY } from "../scene.ts";

/** Where pieces go, each by what its corner moves by, and the space all take together. */
export interface Places {
	readonly at: readonly XY[];
	readonly width: number;
	readonly height: number;
}

/** Places within `width` where a piece fits in it, otherwise below all others; the answers stand in the order of `shapes`. */
export function placeApart(shapes: readonly Shape[], width: number): Places {
	const order = [...shapes.entries()].sort(
		([one, first], [other, second]) => areaOf(second) - areaOf(first) || one - other,
	);
	const taken: Span[][] = [];
	const at: XY[] = shapes.map(() => ({ x: 0, y: 0 }));
	const most = { width: 0, height: 0 };
	for (const [index, shape] of order) {
		const { row, shift } = findPlace(taken, shape, width);
		shape.rows.forEach((spans, below) => {
			const there = taken[row + below] ?? [];
			for (const { from, to } of spans) there.push({ from: from + shift, to: to + shift });
			taken[row + below] = there;
		});
		at[index] = { x: shift, y: row * rowHeight - shape.top };
		most.width = Math.max(most.width, shape.right + shift);
		most.height = Math.max(most.height, row * rowHeight + shape.bottom - shape.top);
	}
	return { at, ...most };
}

interface Span {
	readonly from: number;
	readonly to: number;
}

/** What boxes take, row by row from their top, the gap to others on their right and below included. */
export interface Shape {
	readonly rows: readonly (readonly Span[])[];
	readonly top: number;
	readonly bottom: number;
	readonly left: number;
	readonly right: number;
}

const rowHeight = 12;

/** The shape of what lies in boxes, that others keep `gap` away from. */
export function shapeOf(boxes: readonly Box[], gap: number): Shape {
	const top = Math.min(...boxes.map((box) => box.y));
	const rows: Span[][] = [];
	for (const box of boxes) {
		const last = Math.floor((box.y - top + box.height + gap) / rowHeight);
		for (let row = Math.floor((box.y - top) / rowHeight); row <= last; row++) {
			const spans = rows[row] ?? [];
			spans.push({ from: box.x, to: box.x + box.width + gap });
			rows[row] = spans;
		}
	}
	return {
		rows: Array.from(rows, (spans) => joinSpans(spans ?? [], gap)),
		top,
		bottom: Math.max(...boxes.map((box) => box.y + box.height)),
		left: Math.min(...boxes.map((box) => box.x)),
		right: Math.max(...boxes.map((box) => box.x + box.width)),
	};
}

/** Spans in order, those drawn as one that nothing fits between. */
function joinSpans(spans: readonly Span[], gap: number): Span[] {
	const joined: Span[] = [];
	for (const span of spans.toSorted((one, other) => one.from - other.from)) {
		const last = joined.at(-1);
		if (last === undefined || span.from > last.to + gap) joined.push(span);
		else joined.splice(-1, 1, { from: last.from, to: Math.max(last.to, span.to) });
	}
	return joined;
}

function areaOf(shape: Shape): number {
	return (shape.right - shape.left) * shape.rows.length;
}

/** The highest row in which a shape finds room, as far left as it goes there; below everything there always is room. */
function findPlace(
	taken: readonly (readonly Span[])[],
	shape: Shape,
	width: number,
): { readonly row: number; readonly shift: number } {
	for (let row = 0; row < taken.length; row++) {
		const shift = shiftIn(taken, shape, row, width);
		if (shift !== undefined) return { row, shift };
	}
	return { row: taken.length, shift: -shape.left };
}

/** How far right a shape moves to stand clear in its rows from `row` on; undefined where that leads beyond the width. */
function shiftIn(
	taken: readonly (readonly Span[])[],
	{ rows, left, right }: Shape,
	row: number,
	width: number,
): number | undefined {
	let shift = -left;
	for (let settled = false; !settled; ) {
		settled = true;
		for (let at = 0; at < rows.length; at++)
			for (const there of taken[row + at] ?? [])
				for (const span of rows[at] ?? [])
					if (span.from + shift < there.to && there.from < span.to + shift) {
						shift = there.to - span.from;
						settled = false;
					}
		if (right + shift > width) return undefined;
	}
	return shift;
}
