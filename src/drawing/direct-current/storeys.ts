// Sets the storeys of a folded net below one another, and leads their feeds round: out on the right, back below, in on the left.
import { type Box, boundsOfPoints, joinBoxes } from "../bounds.ts";
import type { XY } from "../scene.ts";
import { straighten } from "../wiring/places.ts";
import { closeGaps } from "./close-gaps.ts";
import type { Storey } from "./fold.ts";
import type { DirectLayout, PlacedBox, PlacedDock, PlacedRun } from "./lay-out-net.ts";

/** The layout with each storey below the one before. Feeds end, so far, where they leave the first storey. */
export function stackStoreys(layout: DirectLayout, storeys: readonly Storey[]): DirectLayout {
	const storeyOf = (name: string): number => storeys.findIndex(({ nodes }) => nodes.has(name));
	const isUpper = (name: string): boolean => storeyOf(name) < 0;
	const { boxes, runs } = closeGaps(layout, isUpper);
	const feeds = new Set(storeys.flatMap((storey) => storey.feeds));
	const isIn = (storey: number, { run }: PlacedRun): boolean =>
		storeyOf(run.ends[0]) === storey && (feeds.has(run) || storeyOf(run.ends[1]) === storey);
	const boundsOf = (storey: number): Box =>
		joinBoxes([
			...boxes.filter(({ node }) => storeyOf(node.name) === storey).map(({ box, x, y }) => ({ ...box, x, y })),
			...runs
				.filter((run) => isIn(storey, run) || (storey < 0 && feeds.has(run.run)))
				.flatMap(({ points, tag }) => [boundsOfPoints(points), ...(tag === undefined ? [] : [tag])]),
		]);
	const upper = boundsOf(-1);
	// Feeds that leave higher run round those that leave lower, so that none crosses another.
	const inOrder = runs
		.filter(({ run }) => feeds.has(run))
		.toSorted((one, other) => (other.points.at(-1)?.y ?? 0) - (one.points.at(-1)?.y ?? 0));
	const shifts: XY[] = [];
	let floor = upper.y + upper.height;
	const channelOf = new Map<PlacedRun, { readonly x: number; readonly y: number; readonly into: number }>();
	for (const [index, storey] of storeys.entries()) {
		const own = inOrder.filter(({ run }) => storey.feeds.includes(run));
		const bounds = boundsOf(index);
		// A feed comes down beside the fuse block: left of all in its storey, or above what stands left of the block.
		const entry = storey.turned.size > 0 ? 0 : lead + (own.length - 1) * pitch;
		// A narrow storey stands in the middle: the words of the sheet find room on both its sides.
		const spare = upper.width - bounds.width - entry;
		const left = upper.x + entry + (spare > wordsBeside ? spare / 2 : 0);
		const shiftX = Math.round(left - bounds.x);
		for (const [rank, feed] of own.entries())
			channelOf.set(feed, {
				x: clearRight(feed, boxes, runs, isUpper) + gap + inOrder.indexOf(feed) * pitch,
				y: floor + gap + rank * pitch,
				into: feed.docks[1].at.x + shiftX - lead + rank * pitch,
			});
		const top = floor + 2 * gap + (own.length - 1) * pitch;
		shifts.push({ x: shiftX, y: Math.round(top - bounds.y) });
		floor = top + bounds.height;
	}
	const shiftOf = (name: string): XY => shifts[storeyOf(name)] ?? unmoved;
	return {
		boxes: boxes.map((placed) => {
			const by = shiftOf(placed.node.name);
			return { ...placed, x: placed.x + by.x, y: placed.y + by.y };
		}),
		runs: runs.map((placed) => moveRun(placed, shiftOf, channelOf.get(placed))),
	};
}

/** How far right a feed must run before nothing of the first storey is below it. */
function clearRight(
	feed: PlacedRun,
	boxes: readonly PlacedBox[],
	runs: readonly PlacedRun[],
	isUpper: (name: string) => boolean,
): number {
	const [corner, exit] = feed.points.slice(-2);
	if (corner === undefined || exit === undefined) return 0;
	const level = exit.y - 2 * gap;
	let right = corner.x + gap;
	if (feed.tag !== undefined) right = Math.max(right, feed.tag.x + feed.tag.width + gap);
	for (const { node, box, x, y } of boxes)
		if (isUpper(node.name) && y + box.height > level) right = Math.max(right, x + box.width);
	for (const { run, points, tag } of runs) {
		if (run === feed.run || !isUpper(run.ends[0])) continue;
		for (const [index, end] of points.entries()) {
			const start = points[index - 1] ?? end;
			if (Math.max(start.y, end.y) > level) right = Math.max(right, start.x, end.x);
		}
		if (tag !== undefined && tag.y + tag.height > level) right = Math.max(right, tag.x + tag.width);
	}
	return right;
}

function moveRun(
	placed: PlacedRun,
	shiftOf: (name: string) => XY,
	channel: { readonly x: number; readonly y: number; readonly into: number } | undefined,
): PlacedRun {
	const { run, start, points, docks, tag } = placed;
	const by = shiftOf(run.ends[start]);
	const to = moveDock(docks[1], shiftOf(run.ends[start === 0 ? 1 : 0]));
	const moved = points.map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));
	const last = moved.at(-1);
	const around =
		channel === undefined || last === undefined
			? []
			: [
					{ x: channel.x, y: last.y },
					{ x: channel.x, y: channel.y },
					{ x: channel.into, y: channel.y },
					{ x: channel.into, y: to.at.y },
					to.at,
				];
	return {
		...placed,
		points: around.length === 0 ? moved : straighten([...moved.slice(0, -1), ...around]),
		docks: [moveDock(docks[0], by), to],
		...(tag === undefined ? {} : { tag: { ...tag, x: tag.x + by.x, y: tag.y + by.y } }),
	};
}

function moveDock(dock: PlacedDock, by: XY): PlacedDock {
	const move = ({ x, y }: XY): XY => ({ x: x + by.x, y: y + by.y });
	return { ...dock, at: move(dock.at), tips: dock.tips.map(move) };
}

/** Beside a storey, where the lists of a sheet fit left of it and the title block right of it. */
const wordsBeside = 900;
const unmoved: XY = { x: 0, y: 0 };
/** From where feeds come down to the boxes they enter, from the drawing to the nearest feed that runs round it, and between feeds. */
const lead = 60;
const gap = 40;
const pitch = 34;
