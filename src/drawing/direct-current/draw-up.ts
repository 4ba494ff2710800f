// Draws what stands above one another closer together: the layout engine leaves bands empty, and does not know that a feed was cut.
import { certain } from "../../base/certain.ts";
import type { Box } from "../bounds.ts";
import type { XY } from "../scene.ts";
import { straighten } from "../wiring/places.ts";
import { findShifts, Groups, type Item, type Jog, type Reaches } from "./closeness.ts";
import type { LaidNet, Way } from "./lay-out-net.ts";
import { takeOutSteps } from "./level-steps.ts";

/**
 * The layout with everything as high as what is above it allows. Nothing moves sideways, and what is above something else stays above it:
 * no run turns or crosses more often than before. Parts, as `partOf` tells them by their boxes, do not hold each other.
 */
export function drawUp({ boxes, ways }: LaidNet, partOf: (name: string) => number): LaidNet {
	const groups = new Groups();
	const boxGroups = new Map(boxes.map(({ node }) => [node.name, groups.add(partOf(node.name))]));
	const groupOfBox = (name: string): number => certain(boxGroups.get(name), "a box's group");
	const stretches = ways.map((way) => stretchesOf(way, groups, groupOfBox));
	const items: Item[] = boxes.map(({ node, box, x, y }) => ({
		group: groups.find(groupOfBox(node.name)),
		left: x,
		right: x + box.width,
		top: y,
		bottom: y + box.height,
		sort: "box",
	}));
	const jogs: Jog[] = [];
	for (const [index, { run, points, tag, from: first, to: last }] of ways.entries()) {
		const of = stretches[index] ?? [];
		for (const [place, end] of points.entries()) {
			const from = points[place - 1];
			if (from === undefined) continue;
			const [one, other] = [groups.find(of[place - 1] ?? 0), groups.find(of[place] ?? 0)];
			if (from.y !== end.y) {
				if (one !== other) jogs.push({ one, other, by: end.y - from.y });
				continue;
			}
			// Where a run leaves its storey nothing may come in its way further on.
			const left = first === undefined && place === 1 ? Number.NEGATIVE_INFINITY : Math.min(from.x, end.x);
			const right =
				last === undefined && place === points.length - 1 ? Number.POSITIVE_INFINITY : Math.max(from.x, end.x);
			items.push({ group: one, left, right, top: from.y, bottom: from.y, sort: "run", of: run.key });
		}
		if (tag === undefined) continue;
		const bearer = bearerOf(points, tag);
		items.push({
			group: groups.find(of[bearer] ?? 0),
			left: tag.x,
			right: tag.x + tag.width,
			top: tag.y,
			bottom: tag.y + tag.height,
			sort: "tag",
		});
	}
	const shifts = takeOutSteps(findShifts(groups, items, jogs, reaches), groups, items, jogs, reaches, mostLevelled);
	const shiftOf = (group: number): number => shifts[groups.find(group)] ?? 0;
	return {
		boxes: boxes.map((placed) => ({ ...placed, y: placed.y + shiftOf(groupOfBox(placed.node.name)) })),
		ways: ways.map((way, index) => moveWay(way, stretches[index] ?? [], shiftOf)),
	};
}

/** The group that each point of a way moves with. */
function stretchesOf({ from, to, points }: Way, groups: Groups, groupOfBox: (name: string) => number): number[] {
	const part = groups.parts[groupOfBox(from ?? to ?? "")] ?? 0;
	const of: number[] = [];
	for (const [index, { y }] of points.entries()) {
		const before = of[index - 1];
		if (before !== undefined && y === points[index - 1]?.y) of.push(before);
		else of.push(index === 0 && from !== undefined ? groupOfBox(from) : groups.add(part));
	}
	const last = of.at(-1);
	if (last !== undefined && to !== undefined) groups.join(last, groupOfBox(to));
	return of;
}

/** The stretch that a tag stands on, by the place of the point where it begins; the first where it stands on none. */
export function bearerOf(points: readonly XY[], tag: Box): number {
	const middle = tag.x + tag.width / 2;
	let best = { place: 0, away: Number.POSITIVE_INFINITY };
	for (const [place, end] of points.entries()) {
		const from = points[place - 1];
		if (from === undefined || from.y !== end.y) continue;
		if (middle < Math.min(from.x, end.x) || middle > Math.max(from.x, end.x)) continue;
		const away = Math.abs(from.y - tag.y - tag.height);
		if (away < best.away) best = { place: place - 1, away };
	}
	return best.place;
}

function moveWay(way: Way, of: readonly number[], shiftOf: (group: number) => number): Way {
	const { points, tag } = way;
	const move = ({ x, y }: XY, place: number): XY => ({ x, y: y + shiftOf(of[place] ?? 0) });
	return {
		...way,
		points: straighten(points.map(move)),
		...(tag === undefined ? {} : { tag: { ...tag, y: tag.y + shiftOf(of[bearerOf(points, tag)] ?? 0) } }),
	};
}

/** What stands further up or down than this from what it is joined to stays. */
const mostLevelled = 144;
/** Multiples of the grid's squares, so that steps of runs can be seen. */
const reaches: Reaches = {
	apart: { boxes: 36, runs: 24, tags: 12, "box and run": 24, "box and tag": 12, "run and tag": 12 },
	aside: { boxes: 36, runs: 14, tags: 20, "box and run": 20, "box and tag": 20, "run and tag": 20 },
};
