// Finds room for parts of a net that nothing joins to the rest: in a free corner of the drawing, below it where there is none.
import { type Box, boundsOfPoints, growBox, joinBoxes } from "../bounds.ts";
import { coarseCell, Occupancy } from "../occupancy.ts";
import type { LaidNet, PlacedBox, Way } from "./lay-out-net.ts";
import { type Floor, moveWay } from "./storeys.ts";

/** The layout with each part where it makes the drawing least larger. */
export function placeLoose(laid: LaidNet, parts: readonly Floor[]): LaidNet {
	let [boxes, ways]: [readonly PlacedBox[], readonly Way[]] = [laid.boxes, laid.ways];
	for (const part of parts) {
		const ink = inkOf({ boxes, ways });
		const whole = joinBoxes(ink);
		const { width, height } = part.bounds;
		const ground = new Occupancy(whole, coarseCell);
		for (const box of ink) ground.take(box, apart);
		const isWide = whole.width > (whole.height + height) * widest;
		const at =
			ground.findPlace(width, height) ??
			(isWide ? { x: whole.x, y: whole.y + whole.height + apart } : { x: whole.x + whole.width + apart, y: whole.y });
		const by = { x: Math.round(at.x - part.bounds.x), y: Math.round(at.y - part.bounds.y) };
		boxes = [...boxes, ...part.boxes.map((placed) => ({ ...placed, x: placed.x + by.x, y: placed.y + by.y }))];
		ways = [...ways, ...part.ways.map((way) => moveWay(way, by))];
	}
	return { boxes, ways };
}

function inkOf({ boxes, ways }: LaidNet): Box[] {
	return [
		...boxes.map(({ box, x, y }) => ({ x, y, width: box.width, height: box.height })),
		...ways.flatMap(({ points, tag }) => [
			...points.slice(1).map((point, index) => growBox(boundsOfPoints([points[index] ?? point, point]), 1)),
			...(tag === undefined ? [] : [tag]),
		]),
	];
}

/** From what stands beside it. */
const apart = 48;
/** A drawing wider than this for its height grows downwards. */
const widest = 1.5;
