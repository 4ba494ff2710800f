// Sets the storeys of a folded net below its first, and leads the runs between them round: out on the right, back below, in on the left.
import { certain } from "../../base/certain.ts";
import { type Box, boundsOfPoints, joinBoxes } from "../bounds.ts";
import type { XY } from "../scene.ts";
import { straighten } from "../wiring/places.ts";
import type { Storey } from "./fold.ts";
import type { LaidNet, PlacedBox, Way } from "./lay-out-net.ts";
import { placeLoose } from "./loose-parts.ts";
import { besideEachOther, channel, shelve } from "./shelves.ts";

/** A storey that is laid out, wherever it stands so far. */
export interface Floor extends LaidNet {
	readonly bounds: Box;
	/** The runs that join it to the first, the lowest there first: it is the innermost on the way round. */
	readonly crossings: readonly Crossing[];
	/** What these take on its left. */
	readonly entry: number;
}

/** A run between the first storey and another. */
interface Crossing {
	readonly above: Way;
	/** Its way in the other; undefined where it enters its fuse block straight. */
	readonly below: Way | undefined;
	readonly isReturn: boolean;
	/** Where it enters the other, which has not been moved. */
	readonly entry: XY;
}

/** The layout with the storeys in rows below the first, and every run whole. What nothing joins to the rest stands where there is room. */
export function stackStoreys(laid: LaidNet, storeys: readonly Storey[]): LaidNet {
	const partOf = new Map(storeys.flatMap(({ nodes }, part) => [...nodes].map((name) => [name, part] as const)));
	const first = takePart(laid, -1, partOf);
	const floors = storeys.map((storey, index) => floorOf(takePart(laid, index, partOf), storey, first));
	const joined = floors.filter(({ crossings }) => crossings.length > 0);
	joined.sort(
		(one, other) => levelOf(certain(other.crossings[0], "a run")) - levelOf(certain(one.crossings[0], "a run")),
	);
	const whole: { boxes: PlacedBox[]; ways: Way[] } = { boxes: [...first.boxes], ways: first.ways.filter(isWhole) };
	let floor = first.bounds.y + first.bounds.height;
	let right = Number.NEGATIVE_INFINITY;
	let track = Number.NEGATIVE_INFINITY;
	const sizes = joined.map(({ bounds, entry, crossings }) => ({
		width: bounds.width + entry,
		height: bounds.height,
		isLast: crossings.some(({ isReturn }) => isReturn),
	}));
	const shelves = shelve(first.bounds, sizes);
	for (const row of shelves.rows) {
		const inRow = row.map((index) => ({ ...certain(joined[index], "a storey"), ...certain(sizes[index], "a size") }));
		const width = inRow.reduce((sum, one) => sum + one.width + besideEachOther, -besideEachOther);
		const feeds = inRow.flatMap(({ crossings }) => crossings.filter(({ isReturn }) => !isReturn));
		const top = floor + 2 * gap + Math.max(0, feeds.length - 1) * pitch;
		// A narrow row stands in the middle: the words of the sheet find room on both its sides.
		let x =
			first.bounds.x + Math.max(0, first.bounds.width - width > wordsBeside ? (first.bounds.width - width) / 2 : 0);
		let across = right;
		for (const { bounds, entry, crossings, boxes, ways, width: own } of inRow) {
			const by = { x: Math.round(x + entry - bounds.x), y: Math.round(top - bounds.y) };
			x += own + besideEachOther;
			across = Math.max(across, bounds.x + by.x + bounds.width);
			whole.boxes.push(...boxes.map((placed) => ({ ...placed, x: placed.x + by.x, y: placed.y + by.y })));
			whole.ways.push(...ways.filter(isWhole).map((way) => moveWay(way, by)));
			const entering = crossings.filter(({ isReturn }) => !isReturn);
			for (const crossing of crossings) {
				const clear = Math.max(clearRight(crossing.above, first), crossing.isReturn ? across : right) + gap;
				track = Math.round(Math.max(clear, track + pitch));
				const rank = entering.indexOf(crossing);
				whole.ways.push(
					crossing.isReturn
						? joinReturn(crossing, by, track)
						: joinFeed(crossing, by, {
								x: track,
								y: floor + gap + feeds.indexOf(crossing) * pitch,
								into:
									(crossing.below === undefined ? crossing.entry.x : bounds.x) -
									lead +
									by.x -
									(entering.length - 1 - rank) * pitch,
							}),
				);
			}
		}
		right = across;
		floor = top + Math.max(...inRow.map(({ height }) => height));
	}
	const onRight = shelves.right.map((index) => certain(joined[index], "a storey"));
	const from = Math.max(first.bounds.x + first.bounds.width, right, track) + gap;
	standOnRight(whole, onRight.toReversed(), first, from, floor);
	return placeLoose(
		whole,
		floors.filter(({ crossings }) => crossings.length === 0),
	);
}

/** Adds storeys one below the other, right of all that is there: the uppermost is the one whose feed leaves the first highest. */
function standOnRight(
	whole: { readonly boxes: PlacedBox[]; readonly ways: Way[] },
	floors: readonly Floor[],
	first: Floor,
	from: number,
	foot: number,
): void {
	const tracks = floors.reduce((sum, { crossings }) => sum + crossings.length, 0);
	const x = from + tracks * pitch + lead;
	let track = from + tracks * pitch;
	let head = first.bounds.y;
	let spare = foot - floors.reduce((sum, { bounds }) => sum + bounds.height + channel, head - channel);
	for (const { bounds, crossings, boxes, ways } of floors) {
		// Down as far as its feed runs straight in, where that makes nothing longer.
		const feed = crossings.find(({ isReturn }) => !isReturn);
		const straight = feed === undefined ? 0 : levelOf(feed) - feed.entry.y - (head - bounds.y);
		const lower = Math.max(0, Math.min(straight, spare));
		const by = { x: Math.round(x - bounds.x), y: Math.round(head + lower - bounds.y) };
		whole.boxes.push(...boxes.map((placed) => ({ ...placed, x: placed.x + by.x, y: placed.y + by.y })));
		whole.ways.push(...ways.filter(isWhole).map((way) => moveWay(way, by)));
		const behind = Math.round(bounds.x + by.x + bounds.width + gap);
		for (const [rank, crossing] of crossings.entries()) {
			track -= pitch;
			whole.ways.push(
				crossing.isReturn
					? joinReturn(crossing, by, behind + rank * pitch, {
							x: Math.round(track),
							y: Math.round(head - gap - rank * pitch),
						})
					: joinFeed(crossing, by, { x: Math.round(track), y: crossing.entry.y + by.y, into: Math.round(track) }),
			);
		}
		head += lower + bounds.height + channel;
		spare -= lower;
	}
}

/** What of a layout belongs to a storey; -1 is the first. */
function takePart({ boxes, ways }: LaidNet, part: number, partOf: ReadonlyMap<string, number>): Floor {
	const isIn = (name: string): boolean => (partOf.get(name) ?? -1) === part;
	const own = {
		boxes: boxes.filter(({ node }) => isIn(node.name)),
		ways: ways.filter(({ from, to }) => isIn(from ?? to ?? "")),
	};
	return { ...own, bounds: boundsOf(own), crossings: [], entry: 0 };
}

function floorOf(part: Floor, { feeds, returns, turned }: Storey, first: Floor): Floor {
	const crossings = first.ways.flatMap((above): Crossing[] => {
		const isReturn = returns.includes(above.run);
		if (!isReturn && !feeds.includes(above.run)) return [];
		const below = part.ways.find(({ run }) => run === above.run);
		return [{ above, below, isReturn, entry: below?.points[0] ?? dockIn(part, above) }];
	});
	crossings.sort((one, other) => levelOf(other) - levelOf(one));
	// A feed comes down beside what it enters: left of all in its storey, or above what stands left of the fuse block.
	const isBeside = feeds.length > 0 && turned.size === 0;
	const entry = isBeside ? lead + (feeds.length - 1) * pitch : 0;
	return { ...part, crossings, entry };
}

/** Where the run of a way that leaves the first storey ends in another. */
function dockIn({ boxes }: Floor, { run, start }: Way): XY {
	const end = start === 0 ? 1 : 0;
	const placed = certain(
		boxes.find(({ node }) => node.name === run.ends[end]),
		"a box",
	);
	const dock = placed.docks.find(({ meeting }) => meeting.run === run && meeting.end === end);
	const { x, y } = certain(dock, "a dock").at;
	return { x: x + placed.x, y: y + placed.y };
}

/** What a part covers; where its runs are cut they go on, however far. */
function boundsOf({ boxes, ways }: LaidNet): Box {
	return joinBoxes([
		...boxes.map(({ box, x, y }) => ({ x, y, width: box.width, height: box.height })),
		...ways.flatMap(({ points, tag, from, to }) => {
			const kept = points.slice(from === undefined ? 1 : 0, to === undefined ? -1 : points.length);
			const open = from === undefined ? points[1] : to === undefined ? points.at(-2) : undefined;
			return [boundsOfPoints(open === undefined ? kept : [...kept, open]), ...(tag === undefined ? [] : [tag])];
		}),
	]);
}

function isWhole({ from, to }: Way): boolean {
	return from !== undefined && to !== undefined;
}

/** The height at which a run leaves the first storey. */
function levelOf({ above }: Crossing): number {
	return above.points.at(-1)?.y ?? 0;
}

/** How far right a run must go before nothing of the first storey is below it. */
function clearRight(way: Way, { boxes, ways }: Floor): number {
	const [corner, exit] = way.points.slice(-2);
	if (corner === undefined || exit === undefined) return 0;
	const level = exit.y - 2 * gap;
	let right = corner.x + gap;
	if (way.tag !== undefined) right = Math.max(right, way.tag.x + way.tag.width + gap);
	for (const { box, x, y } of boxes) if (y + box.height > level) right = Math.max(right, x + box.width);
	for (const { points, tag, to } of ways) {
		for (const [index, end] of points.entries()) {
			const start = points[index - 1];
			const isOpen = to === undefined && index === points.length - 1;
			if (start === undefined || Math.max(start.y, end.y) <= level) continue;
			right = Math.max(right, start.x, isOpen ? start.x : end.x);
		}
		if (tag !== undefined && tag.y + tag.height > level) right = Math.max(right, tag.x + tag.width);
	}
	return right;
}

/** Round the first storey, and in on the left of its own. */
function joinFeed(
	{ above, below, entry }: Crossing,
	by: XY,
	channel: { readonly x: number; readonly y: number; readonly into: number },
): Way {
	const level = above.points.at(-1)?.y ?? 0;
	const into = { x: entry.x + by.x, y: entry.y + by.y };
	const { run, start, from, tag } = above;
	return {
		run,
		start,
		...(from === undefined ? {} : { from }),
		to: run.ends[start === 0 ? 1 : 0],
		points: straighten([
			...above.points.slice(0, -1),
			{ x: channel.x, y: level },
			{ x: channel.x, y: channel.y },
			{ x: channel.into, y: channel.y },
			{ x: channel.into, y: into.y },
			into,
			...(below === undefined ? [] : moveWay(below, by).points.slice(1)),
		]),
		...(tag === undefined ? {} : { tag }),
	};
}

/** Out on the right of its own storey, up and back into the first; `over` its storey and down before it, where that stands on the right. */
function joinReturn({ above, below }: Crossing, by: XY, x: number, over?: XY): Way {
	const way = moveWay(certain(below, "the way of a return"), by);
	const level = above.points.at(-1)?.y ?? 0;
	const tag = way.tag ?? above.tag;
	return {
		run: way.run,
		start: way.start,
		...(way.from === undefined ? {} : { from: way.from }),
		to: way.run.ends[way.start === 0 ? 1 : 0],
		points: straighten([
			...way.points.slice(0, -1),
			{ x, y: way.points.at(-1)?.y ?? 0 },
			...(over === undefined ? [{ x, y: level }] : [{ x, y: over.y }, over, { x: over.x, y: level }]),
			...above.points.toReversed().slice(1),
		]),
		...(tag === undefined ? {} : { tag }),
	};
}

/** A way moved as a whole. */
export function moveWay(way: Way, { x: dx, y: dy }: XY): Way {
	const { points, tag } = way;
	return {
		...way,
		points: points.map(({ x, y }) => ({ x: x + dx, y: y + dy })),
		...(tag === undefined ? {} : { tag: { ...tag, x: tag.x + dx, y: tag.y + dy } }),
	};
}

/** Beside a storey, where the lists of a sheet fit left of it and the title block right of it. */
const wordsBeside = 900;
/** From where feeds come down to the boxes they enter, from the drawing to the nearest run round it, and between such runs. */
const lead = 54;
const gap = 30;
const pitch = 30;
