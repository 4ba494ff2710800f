// Wires in paint order, cut into batches of which none crosses another of its batch: a batch shares one halo, so every crossing keeps its gap.
import type { WireMark, XY } from "../drawing/scene.ts";

/** The wires in batches, order kept. */
export function batchWires(wires: readonly WireMark[]): WireMark[][] {
	const batches: WireMark[][] = [];
	for (const wire of wires) {
		const batch = batches.at(-1);
		if (batch === undefined || batch.some((other) => wiresCross(wire, other))) batches.push([wire]);
		else batch.push(wire);
	}
	return batches;
}

/** Whether two ways cross at a point inside a segment of each; meeting at an end is no crossing. */
export function wiresCross(one: WireMark, other: WireMark): boolean {
	for (let index = 1; index < one.points.length; index++)
		for (let across = 1; across < other.points.length; across++) {
			const [a, b, c, d] = [one.points[index - 1], one.points[index], other.points[across - 1], other.points[across]];
			if (a !== undefined && b !== undefined && c !== undefined && d !== undefined && segmentsCross(a, b, c, d))
				return true;
		}
	return false;
}

function segmentsCross(a: XY, b: XY, c: XY, d: XY): boolean {
	return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** Positive where `point` lies to one side of the line, negative to the other, zero on it. */
function side(from: XY, to: XY, point: XY): number {
	return (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x);
}
