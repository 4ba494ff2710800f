// Moves the studs of buses along their bars to the height at which what is on them runs on: a way with a step becomes a straight one.
import { certain } from "../../base/certain.ts";
import type { XY } from "../scene.ts";
import { straighten } from "../wiring/places.ts";
import { studInset } from "./bus-box.ts";
import type { Dock } from "./direct-box.ts";
import type { DirectLayout, PlacedBox, PlacedDock, PlacedRun } from "./lay-out-net.ts";

/** The layout with each stud where its run needs no step, as far as the bar and the studs beside it allow. */
export function slideStuds({ boxes, runs }: DirectLayout): DirectLayout {
	const moved = new Map(runs.map((run) => [run.run, run]));
	return {
		boxes: boxes.map((placed) => (placed.box.freeBelow === undefined ? placed : slideOn(placed, moved))),
		runs: runs.map(({ run }) => certain(moved.get(run), "a run")),
	};
}

function slideOn(placed: PlacedBox, moved: Map<PlacedRun["run"], PlacedRun>): PlacedBox {
	const docks: Dock[] = [...placed.docks];
	const [top, bottom] = [(placed.box.freeBelow ?? 0) + studInset / 2, placed.box.height - studInset / 2];
	for (const [index, dock] of docks.entries()) {
		const way = moved.get(dock.meeting.run);
		if (way === undefined) continue;
		const which = way.start === dock.meeting.end ? 0 : 1;
		const points = which === 0 ? way.points : way.points.toReversed();
		const [at, corner, step] = points;
		if (at === undefined || corner === undefined || step === undefined || points.length < 4) continue;
		const by = step.y - at.y;
		const y = dock.at.y + by;
		const isApart = docks.every(
			(other, place) =>
				place === index ||
				other.side !== dock.side ||
				(Math.abs(other.at.y - y) >= leastApart && Math.sign(other.at.y - y) === Math.sign(other.at.y - dock.at.y)),
		);
		// A tag moves with the stretch it stands on, a little; further it might stand on something else.
		const isTagged = way.tag !== undefined && isAbove(way.tag, at, corner);
		if (y < top || y > bottom || !isApart || (isTagged && Math.abs(by) > mostWithTag)) continue;
		const to = { x: at.x, y: at.y + by };
		const straight = straighten([to, { x: corner.x, y: step.y }, ...points.slice(2)]);
		const slid: PlacedDock = {
			...way.docks[which],
			at: to,
			tips: way.docks[which].tips.map(({ x, y: tipY }) => ({ x, y: tipY + by })),
		};
		moved.set(way.run, {
			...way,
			points: which === 0 ? straight : straight.toReversed(),
			docks: which === 0 ? [slid, way.docks[1]] : [way.docks[0], slid],
			...(isTagged && way.tag !== undefined ? { tag: { ...way.tag, y: way.tag.y + by } } : {}),
		});
		docks[index] = { ...dock, at: { x: dock.at.x, y }, tips: dock.tips.map((tip) => ({ x: tip.x, y: tip.y + by })) };
	}
	return { ...placed, docks };
}

/** Whether a tag stands on a level stretch. */
function isAbove(tag: { readonly x: number; readonly width: number }, from: XY, to: XY): boolean {
	const middle = tag.x + tag.width / 2;
	return middle > Math.min(from.x, to.x) && middle < Math.max(from.x, to.x);
}

/** Between studs on one side of a bar: a tag does not fit between them, but a letter code does. */
const leastApart = 26;
const mostWithTag = 12;
