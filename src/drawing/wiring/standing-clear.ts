// Whether wires keep off each other and off splices that are not theirs.
import type { XY } from "../scene.ts";
import { pointOf } from "./box-content.ts";
import type { Joint, Route } from "./box-plan.ts";
import { spliceReach } from "./dimensions.ts";

/** Whether no two wires lie on one another, and none runs through the splice of others. */
export function standsClear(routes: readonly Route[], joints: readonly Joint[]): boolean {
	const stretches = routes.flatMap(({ wire, points }) =>
		points.slice(1).map((end, index): Stretch => ({ wire, start: points[index] ?? end, end })),
	);
	for (const [index, one] of stretches.entries()) {
		for (const other of stretches.slice(index + 1)) if (one.wire !== other.wire && lieOnOne(one, other)) return false;
		for (const joint of joints) {
			const isOwn = [one.wire.from, one.wire.to].some((tie) => pointOf(tie) === joint.point);
			if (!isOwn && runsThrough(one, joint)) return false;
		}
	}
	return true;
}

interface Stretch {
	readonly wire: Route["wire"];
	readonly start: XY;
	readonly end: XY;
}

/** On one line for longer than where both meet a splice. */
function lieOnOne(one: Stretch, other: Stretch): boolean {
	for (const [along, across] of [["x", "y"] as const, ["y", "x"] as const]) {
		if (one.start[across] !== one.end[across] || other.start[across] !== other.end[across]) continue;
		if (Math.abs(one.start[across] - other.start[across]) >= nearest) continue;
		const from = Math.max(Math.min(one.start[along], one.end[along]), Math.min(other.start[along], other.end[along]));
		const to = Math.min(Math.max(one.start[along], one.end[along]), Math.max(other.start[along], other.end[along]));
		if (to - from > 1) return true;
	}
	return false;
}

function runsThrough({ start, end }: Stretch, { columns, y }: Joint): boolean {
	const [left, right] = [Math.min(...columns) - spliceReach, Math.max(...columns) + spliceReach];
	return (
		Math.max(start.x, end.x) > left &&
		Math.min(start.x, end.x) < right &&
		Math.max(start.y, end.y) > y - spliceReach &&
		Math.min(start.y, end.y) < y + spliceReach
	);
}

/** Wires nearer to each other than this are seen as one; strands at a gland are not. */
const nearest = 4;
