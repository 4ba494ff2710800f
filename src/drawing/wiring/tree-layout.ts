// The boxes of a tree around its panel: what it feeds in lanes to the right, what feeds it to the left or in a row below it.
// Of the shapes at hand, the one that can be printed largest.
import { certain } from "../../base/certain.ts";
import { laneGap, returnChannel, trackLead, widestDrawing } from "./dimensions.ts";
import {
	fanOut,
	glandOf,
	layLane,
	type Outward,
	otherEnd,
	type PlacedBox,
	type PlacedCable,
	placeLoops,
} from "./lanes.ts";
import { type Branch, endKey, type SheetBox } from "./sheet-box.ts";

/** Boxes in reading order, and the cables between them. */
export interface LaneLayout {
	readonly boxes: readonly PlacedBox[];
	readonly cables: readonly PlacedCable[];
}
/** Choices for one layout. */
interface Shape {
	readonly feed: "left" | "below";
	/** The width at which lanes wrap. */
	readonly widest: number;
}

/** A tree of boxes around its root, which stands at the origin. */
export function layOutTree(root: SheetBox): LaneLayout {
	let shape: Shape = { feed: "left", widest: Number.POSITIVE_INFINITY };
	let best = layOut(root, shape);
	let size = sizeOf(best);
	const improves = (candidate: Shape): boolean => {
		const layout = layOut(root, candidate);
		const next = sizeOf(layout);
		if (costOf(next) >= costOf(size) * worthIt && !takesRoomLeft(candidate, next, size)) return false;
		[best, size, shape] = [layout, next, candidate];
		return true;
	};
	// Left to right reads best: the feed goes below only where a small sheet would not hold the drawing otherwise.
	const isSmall = size.width <= smallDrawing.width && size.height <= smallDrawing.height;
	if (!isSmall && root.left.length === 1 && isChain(root.left[0])) improves({ ...shape, feed: "below" });
	// A lane is broken only where the sheet would otherwise have to be printed too small. The widths to break at are the same
	// for every plan, so that a device more does not move all others.
	const { width } = size;
	let missed = 0;
	for (let step = breakWidths.length - 1; step >= 0 && width > widestDrawing && missed < 2; step--) {
		const widest = breakWidths[step] ?? width;
		if (widest < width && !improves({ ...shape, widest })) missed++;
	}
	return best;
}

/** Trees below one another. */
export function stackTrees(trees: readonly LaneLayout[]): LaneLayout {
	const boxes: PlacedBox[] = [];
	const cables: PlacedCable[] = [];
	let bottom = 0;
	for (const [index, tree] of trees.entries()) {
		const { top, height } = sizeOf(tree);
		const dy = index === 0 ? 0 : bottom + 2 * laneGap - top;
		boxes.push(...tree.boxes.map((placed) => ({ ...placed, y: placed.y + dy })));
		cables.push(
			...tree.cables.map((placed) => ({ ...placed, points: placed.points.map(({ x, y }) => ({ x, y: y + dy })) })),
		);
		bottom = top + height + dy;
	}
	return { boxes, cables };
}

function layOut(root: SheetBox, shape: Shape): LaneLayout {
	const feeding: PlacedBox[] = [];
	const fed: PlacedBox[] = [];
	const cables: PlacedCable[] = [];
	placeLoops(root, 0, 0, 1, cables);
	const toLeft = { sign: -1, boxes: feeding, cables } as const;
	const [only] = root.left;
	if (shape.feed === "below" && only !== undefined)
		placeBelow({ ...toLeft, origin: root.width - feedInset }, root, only);
	else if (only !== undefined)
		fanOut({ ...toLeft, origin: 0 }, root, root.left, Number.POSITIVE_INFINITY, true).emit(0, 0);
	const toRight: Outward = { sign: 1, origin: 0, boxes: fed, cables };
	fanOut(toRight, root, root.right, shape.widest - root.width, true).emit(root.width, 0);
	return { boxes: [...feeding.reverse(), { box: root, x: 0, y: 0 }, ...fed], cables };
}

/** What feeds the panel in a row below it: out on the row's right, back over the row, and up to the gland on the panel's left. */
function placeBelow(outward: Outward, root: SheetBox, branch: Branch): void {
	const block = layLane(outward, branch, Number.POSITIVE_INFINITY);
	const channel = root.height + returnChannel / 2;
	const y = channel + returnChannel / 2 - block.top;
	block.emit(0, y);
	const { box, links } = branch;
	const inY = glandOf(box, links, box.end).y;
	for (const cable of links) {
		const exit = certain(root.glands.get(endKey(cable, otherEnd(box))), "the gland a feed comes to");
		const entry = certain(box.glands.get(endKey(cable, box.end)), "the gland a feed leaves by");
		const at = y - inY + entry.y;
		const points = [
			{ x: 0, y: exit.y },
			{ x: -feedReach, y: exit.y },
			{ x: -feedReach, y: channel },
			{ x: outward.origin + feedReach, y: channel },
			{ x: outward.origin + feedReach, y: at },
			{ x: outward.origin, y: at },
		];
		outward.cables.push({ cable, points, from: root, to: box });
	}
}

/** One cable from box to box, no branches. */
function isChain(branch: Branch | undefined): boolean {
	for (let next = branch; next !== undefined; next = next.box.right[0])
		if (next.links.length !== 1 || next.box.right.length > 1) return false;
	return branch !== undefined;
}

/** A feed in a row below its panel, in room that would stand empty beside the lanes: the sheet gets narrower and no higher. */
function takesRoomLeft({ feed }: Shape, next: Size, { width, height }: Size): boolean {
	return feed === "below" && next.height <= height && next.width < width && width > leastShape * height;
}

/** How large the paper must be, and with less weight how much of it is used up. */
function costOf({ width, height }: Size): number {
	return Math.max(width / goodShape, height) + 0.2 * (width / goodShape + height);
}

interface Size {
	readonly width: number;
	readonly height: number;
	readonly top: number;
}

function sizeOf({ boxes, cables }: LaneLayout): Size {
	let [left, top, right, bottom] = [0, 0, 0, 0];
	for (const { box, x, y } of boxes) {
		left = Math.min(left, x);
		top = Math.min(top, y);
		right = Math.max(right, x + box.width);
		bottom = Math.max(bottom, y + box.height);
	}
	for (const { points } of cables)
		for (const { x, y } of points) {
			left = Math.min(left, x);
			top = Math.min(top, y);
			right = Math.max(right, x);
			bottom = Math.max(bottom, y);
		}
	return { width: right - left, height: bottom - top, top };
}

/** Width to height of the space for a drawing on a landscape sheet. */
const goodShape = 1.5;
/** No sheet is narrower for its height than this. */
const leastShape = 1.2;
/** A less plain shape must print at least this much larger. */
const worthIt = 0.96;
/** What an A3 sheet holds at full size. */
const smallDrawing = { width: 1540, height: 860 };
/** Widths at which lanes are broken. */
const breakWidths: readonly number[] = Array.from({ length: 18 }, (_, step) => Math.round(1300 * 1.2 ** step));
/** From a row's end, and from the panel's left wall, to the upright stretches of a feed that comes from below. */
const feedReach = 36;
/** The row of a feed ends this much inside the panel's right wall, clear of the tracks of its circuits. */
const feedInset = feedReach + 34 - trackLead;
