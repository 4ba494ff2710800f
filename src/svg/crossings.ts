// Which ways cross which: only there does a wire or a sheath need a halo, the gap in what it passes over.
import { type Box, boundsOfPoints, boxesMeet, marksInPlace } from "../drawing/bounds.ts";
import type { Group, RectangleMark, WireMark, XY } from "../drawing/scene.ts";

/** Wires in paint order, in batches of which none crosses another of its batch; order kept. */
export function batchWires(wires: readonly WireMark[]): WireMark[][] {
	const batches: WireMark[][] = [];
	for (const wire of wires) {
		const batch = batches.at(-1);
		if (batch === undefined || batch.some((other) => waysCross(wire.points, other.points))) batches.push([wire]);
		else batch.push(wire);
	}
	return batches;
}

/** Whether a wire passes over one of `under` or over a bar. */
export function passesOver(wire: WireMark, under: readonly WireMark[], bars: readonly RectangleMark[]): boolean {
	if (under.some((other) => waysCross(wire.points, other.points))) return true;
	if (bars.length === 0) return false;
	return wire.points.some((point, index) => {
		const before = wire.points[index - 1];
		return before !== undefined && bars.some((bar) => boxesMeet(boundsOfPoints([before, point]), bar));
	});
}

/** The sheaths that pass over another that is painted before them, anywhere on the sheet. */
export function crossingJackets(groups: readonly Group[]): ReadonlySet<string> {
	const crossing = new Set<string>();
	const before: { readonly points: readonly XY[]; readonly box: Box }[] = [];
	for (const group of groups) {
		if (!group.marks.some((mark) => mark.kind === "jacket")) continue;
		for (const mark of marksInPlace(group)) {
			if (mark.kind !== "jacket") continue;
			const box = boundsOfPoints(mark.points);
			if (before.some((other) => touch(other.box, box) && waysCross(other.points, mark.points))) crossing.add(mark.of);
			before.push({ points: mark.points, box });
		}
	}
	return crossing;
}

/** Whether two ways cross at a point inside a segment of each; meeting at an end is no crossing. */
function waysCross(one: readonly XY[], other: readonly XY[]): boolean {
	for (let index = 1; index < one.length; index++)
		for (let across = 1; across < other.length; across++) {
			const [a, b, c, d] = [one[index - 1], one[index], other[across - 1], other[across]];
			if (a !== undefined && b !== undefined && c !== undefined && d !== undefined && segmentsCross(a, b, c, d))
				return true;
		}
	return false;
}

/** A level and an upright way have boxes without area: sharing an edge counts. */
function touch(one: Box, other: Box): boolean {
	return (
		one.x <= other.x + other.width &&
		other.x <= one.x + one.width &&
		one.y <= other.y + other.height &&
		other.y <= one.y + one.height
	);
}

function segmentsCross(a: XY, b: XY, c: XY, d: XY): boolean {
	return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** Positive where `point` lies to one side of the line, negative to the other, zero on it. */
function side(from: XY, to: XY, point: XY): number {
	return (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x);
}
