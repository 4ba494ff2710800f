// How often wires cross: the measure by which one layout is preferred to another.
import type { XY } from "../scene.ts";

/** Crossings between upright and level stretches of different wires. */
export function countCrossings(routes: readonly { readonly points: readonly XY[] }[]): number {
	const level: { wire: number; y: number; from: number; to: number }[] = [];
	const upright: { wire: number; x: number; from: number; to: number }[] = [];
	for (const [wire, { points }] of routes.entries())
		for (const [index, end] of points.entries()) {
			const start = points[index - 1];
			if (start === undefined) continue;
			if (start.y === end.y)
				level.push({ wire, y: end.y, from: Math.min(start.x, end.x), to: Math.max(start.x, end.x) });
			else if (start.x === end.x)
				upright.push({ wire, x: end.x, from: Math.min(start.y, end.y), to: Math.max(start.y, end.y) });
		}
	let count = 0;
	for (const one of level)
		for (const other of upright)
			if (one.wire !== other.wire && other.x > one.from && other.x < one.to && one.y > other.from && one.y < other.to)
				count++;
	return count;
}
