// Moves the studs of buses along their bars to the height at which what is on them runs on: a way with a step becomes a straight one.
import type { XY } from "../scene.ts";
import { straighten } from "../wiring/places.ts";
import { studInset } from "./bus-box.ts";
import type { Dock } from "./direct-box.ts";
import type { LaidNet, PlacedBox, Way } from "./lay-out-net.ts";

/** The layout with each stud where its run needs no step, as far as the bar and the studs beside it allow. */
export function slideStuds({ boxes, ways }: LaidNet): LaidNet {
	const moved = [...ways];
	const byEnd = new Map<string, number>();
	for (const [index, { run, start, from, to }] of ways.entries()) {
		if (from !== undefined) byEnd.set(`${start} ${run.key}`, index);
		if (to !== undefined) byEnd.set(`${start === 0 ? 1 : 0} ${run.key}`, index);
	}
	return {
		boxes: boxes.map((placed) => (placed.box.freeBelow === undefined ? placed : slideOn(placed, moved, byEnd))),
		ways: moved,
	};
}

function slideOn(placed: PlacedBox, moved: Way[], byEnd: ReadonlyMap<string, number>): PlacedBox {
	const docks: Dock[] = [...placed.docks];
	const [top, bottom] = [(placed.box.freeBelow ?? 0) + studInset / 2, placed.box.height - studInset / 2];
	for (const [index, dock] of docks.entries()) {
		const place = byEnd.get(`${dock.meeting.end} ${dock.meeting.run.key}`);
		const way = place === undefined ? undefined : moved[place];
		if (place === undefined || way === undefined) continue;
		const which = way.start === dock.meeting.end ? 0 : 1;
		const points = which === 0 ? way.points : way.points.toReversed();
		const [at, corner, step] = points;
		if (at === undefined || corner === undefined || step === undefined || points.length < 4) continue;
		const by = step.y - at.y;
		const y = dock.at.y + by;
		const isApart = docks.every(
			(other, rank) =>
				rank === index ||
				other.side !== dock.side ||
				(Math.abs(other.at.y - y) >= leastApart && Math.sign(other.at.y - y) === Math.sign(other.at.y - dock.at.y)),
		);
		// A tag moves with the stretch it stands on, a little; further it might stand on something else.
		const isTagged = way.tag !== undefined && isAbove(way.tag, at, corner);
		if (y < top || y > bottom || !isApart || (isTagged && Math.abs(by) > mostWithTag)) continue;
		const to = { x: at.x, y: at.y + by };
		const straight = straighten([to, { x: corner.x, y: step.y }, ...points.slice(2)]);
		moved[place] = {
			...way,
			points: which === 0 ? straight : straight.toReversed(),
			...(isTagged && way.tag !== undefined ? { tag: { ...way.tag, y: way.tag.y + by } } : {}),
		};
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
