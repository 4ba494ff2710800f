// Geometry as SVG path data: rounded polylines, circles, the shapes of symbols. Coordinates have at most two decimals.
import type { XY } from "../drawing/scene.ts";
import type { Shape } from "../symbols/index.ts";

/** A number with at most two decimals, no exponent, no negative zero. */
export function figure(value: number): string {
	if (Number.isInteger(value)) return value === 0 ? "0" : String(value);
	const rounded = Math.round(value * 100) / 100;
	return String(rounded === 0 ? 0 : rounded);
}

/** Straight strokes through points. */
export function polyline(points: readonly XY[]): string {
	let data = "";
	let [lastX, lastY] = [Number.NaN, Number.NaN];
	for (const { x, y } of points) {
		data += data === "" ? `M${figure(x)} ${figure(y)}` : step(lastX, lastY, x, y);
		[lastX, lastY] = [x, y];
	}
	return data;
}

/** Strokes through points with corners rounded to `radius`, less where a segment is too short for it. */
export function roundedPolyline(points: readonly XY[], radius: number): string {
	const first = points[0];
	const last = points.at(-1);
	if (first === undefined || last === undefined) return "";
	let data = `M${figure(first.x)} ${figure(first.y)}`;
	let from = first;
	for (let index = 1; index < points.length - 1; index++) {
		const corner = points[index];
		const [before, after] = [points[index - 1], points[index + 1]];
		if (corner === undefined || before === undefined || after === undefined) continue;
		const round = roundCorner(before, corner, after, radius);
		if (round === undefined) {
			data += step(from.x, from.y, corner.x, corner.y);
			from = corner;
			continue;
		}
		data += step(from.x, from.y, round.start.x, round.start.y);
		const reach = figure(round.radius);
		data += `A${reach} ${reach} 0 0 ${round.clockwise ? 1 : 0} ${figure(round.end.x)} ${figure(round.end.y)}`;
		from = round.end;
	}
	return data + step(from.x, from.y, last.x, last.y);
}

/** A whole circle. */
export function circlePath(x: number, y: number, radius: number): string {
	const [reach, across] = [figure(radius), figure(2 * radius)];
	return `M${figure(x - radius)} ${figure(y)}a${reach} ${reach} 0 1 0 ${across} 0a${reach} ${reach} 0 1 0 -${across} 0Z`;
}

/** A shape of a symbol on its own grid. */
export function shapePath(shape: Shape): string {
	switch (shape.kind) {
		case "path":
			return shape.d;
		case "line":
			return polyline(pairs(shape.points));
		case "circle":
			return circlePath(shape.x, shape.y, shape.radius);
		case "rectangle":
			return rectanglePath(shape.x, shape.y, shape.width, shape.height, shape.radius);
	}
}

/** An upright rectangle with rounded corners. */
export function rectanglePath(x: number, y: number, width: number, height: number, radius: number): string {
	if (radius === 0) return `M${figure(x)} ${figure(y)}h${figure(width)}v${figure(height)}h${figure(-width)}Z`;
	const r = figure(radius);
	const [across, down] = [width - 2 * radius, height - 2 * radius];
	const corner = (dx: number, dy: number): string => `a${r} ${r} 0 0 1 ${figure(dx)} ${figure(dy)}`;
	return [
		`M${figure(x + radius)} ${figure(y)}h${figure(across)}`,
		`${corner(radius, radius)}v${figure(down)}`,
		`${corner(-radius, radius)}h${figure(-across)}`,
		`${corner(-radius, -radius)}v${figure(-down)}${corner(radius, -radius)}Z`,
	].join("");
}

function pairs(numbers: readonly number[]): XY[] {
	const points: XY[] = [];
	for (let index = 0; index + 1 < numbers.length; index += 2)
		points.push({ x: numbers[index] ?? 0, y: numbers[index + 1] ?? 0 });
	return points;
}

/** One straight stroke, in the shortest form; nothing where the point does not move. */
function step(fromX: number, fromY: number, x: number, y: number): string {
	const [atX, atY] = [figure(x), figure(y)];
	const [sameX, sameY] = [figure(fromX) === atX, figure(fromY) === atY];
	if (sameX && sameY) return "";
	if (sameY) return `H${atX}`;
	return sameX ? `V${atY}` : `L${atX} ${atY}`;
}

/** The arc that rounds a corner; undefined where the way goes straight on or turns back. */
function roundCorner(
	before: XY,
	corner: XY,
	after: XY,
	radius: number,
): { start: XY; end: XY; radius: number; clockwise: boolean } | undefined {
	const [inLength, outLength] = [distance(before, corner), distance(corner, after)];
	if (inLength < tiny || outLength < tiny) return undefined;
	const [inX, inY] = [(corner.x - before.x) / inLength, (corner.y - before.y) / inLength];
	const [outX, outY] = [(after.x - corner.x) / outLength, (after.y - corner.y) / outLength];
	const cross = inX * outY - inY * outX;
	const turn = Math.atan2(Math.abs(cross), inX * outX + inY * outY);
	if (turn < tiny || turn > Math.PI - tiny) return undefined;
	// The arc touches both segments at `cut` from the corner; a segment is shared by two corners.
	const cut = Math.min(radius * Math.tan(turn / 2), inLength / 2, outLength / 2);
	return {
		start: { x: corner.x - inX * cut, y: corner.y - inY * cut },
		end: { x: corner.x + outX * cut, y: corner.y + outY * cut },
		radius: cut / Math.tan(turn / 2),
		clockwise: cross > 0,
	};
}

function distance(one: XY, other: XY): number {
	return Math.hypot(other.x - one.x, other.y - one.y);
}

const tiny = 1e-6;
