// Draws what stands beside one another closer together: the layout engine makes each layer as wide as what is widest in it.
import { certain } from "../../base/certain.ts";
import { straighten } from "../wiring/places.ts";
import { findShifts, Groups, type Item, type Jog, type Reaches } from "./closeness.ts";
import { bearerOf } from "./draw-up.ts";
import type { LaidNet, Way } from "./lay-out-net.ts";
import { shortestStep, takeOutSteps } from "./level-steps.ts";

/**
 * The layout with everything as far left as what is left of it allows, and what nothing leads to near what it leads to. Nothing moves up
 * or down, and what is left of something else stays so. Parts, as `partOf` tells them by their boxes, do not hold each other.
 */
export function drawLeft({ boxes, ways }: LaidNet, partOf: (name: string) => number): LaidNet {
	const groups = new Groups();
	const boxGroups = new Map(boxes.map(({ node }) => [node.name, groups.add(partOf(node.name))]));
	const groupOfBox = (name: string): number => certain(boxGroups.get(name), "a box's group");
	const stretches = ways.map((way) => stretchesOf(way, groups, groupOfBox));
	// Turned on their sides: what is left is above.
	const items: Item[] = boxes.map(({ node, box, x, y }) => ({
		group: groupOfBox(node.name),
		left: y,
		right: y + box.height,
		top: x,
		bottom: x + box.width,
		sort: box.width > slim ? "box" : "run",
	}));
	const jogs: Jog[] = [];
	const tags = ways.map(({ from, to, tag }) => (tag === undefined ? undefined : groups.add(partOf(from ?? to ?? ""))));
	for (const [index, { run, points, tag }] of ways.entries()) {
		const of = stretches[index] ?? [];
		for (const [place, end] of points.entries()) {
			const from = points[place - 1];
			if (from === undefined) continue;
			const [one, other] = [groups.find(of[place - 1] ?? 0), groups.find(of[place] ?? 0)];
			if (from.y === end.y) {
				if (one !== other) jogs.push({ one, other, by: end.x - from.x });
				continue;
			}
			items.push({
				group: one,
				left: Math.min(from.y, end.y),
				right: Math.max(from.y, end.y),
				top: from.x,
				bottom: from.x,
				sort: "run",
			});
		}
		const own = tags[index];
		if (tag === undefined || own === undefined) continue;
		const level = points[bearerOf(points, tag)]?.y ?? tag.y;
		const more = run.sort === "sheathed" ? besideSheath : 0;
		items.push({
			group: own,
			left: tag.y,
			right: Math.max(tag.y + tag.height, level + 1),
			top: tag.x - more,
			bottom: tag.x + tag.width + more,
			sort: "tag",
		});
	}
	const shifts = takeOutSteps(findShifts(groups, items, jogs, reaches), groups, items, jogs, reaches, shortestStep);
	const shiftOf = (group: number): number => shifts[groups.find(group)] ?? 0;
	return {
		boxes: boxes.map((placed) => ({ ...placed, x: Math.round(placed.x + shiftOf(groupOfBox(placed.node.name))) })),
		ways: ways.map((way, index): Way => {
			const { points, tag } = way;
			const moved = straighten(
				points.map(({ x, y }, place) => ({ x: Math.round(x + shiftOf(stretches[index]?.[place] ?? 0)), y })),
			);
			if (tag === undefined) return { ...way, points: moved };
			return { ...way, points: moved, tag: { ...tag, x: tag.x + shiftOf(tags[index] ?? 0) } };
		}),
	};
}

/** The group that each point of a way moves with; where the way is cut, its end moves with the corner next to it. */
function stretchesOf({ from, to, points }: Way, groups: Groups, groupOfBox: (name: string) => number): number[] {
	const part = groups.parts[groupOfBox(from ?? to ?? "")] ?? 0;
	const of: number[] = [];
	for (const [index, { x }] of points.entries()) {
		const before = of[index - 1];
		const isOpen = (index === 1 && from === undefined) || (index === points.length - 1 && to === undefined);
		if (before !== undefined && (x === points[index - 1]?.x || isOpen)) of.push(before);
		else of.push(index === 0 && from !== undefined ? groupOfBox(from) : groups.add(part));
	}
	const last = of.at(-1);
	if (last !== undefined && to !== undefined) groups.join(last, groupOfBox(to));
	return of;
}

/** The end of a sheath is no wider than this. */
const slim = 10;
/** What a sheath is thicker than a conductor, and its collar. */
const besideSheath = 15;
/** Room beside boxes for fans and letter codes; the words of a tag reach over its room on both sides. */
const reaches: Reaches = {
	apart: { boxes: 48, runs: 22, tags: 44, "box and run": 42, "box and tag": 30, "run and tag": 30 },
	aside: { boxes: 36, runs: 20, tags: 4, "box and run": 24, "box and tag": 8, "run and tag": 8 },
};
