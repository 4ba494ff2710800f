// Where everything a wire can end on stands, and the way of each wire between two of them.
import { certain } from "../../base/certain.ts";
import type { XY } from "../scene.ts";
import { type BoxContent, type Entry, isCore, pointOf, type Wire } from "./box-content.ts";
import type { Gland, Route, Stub } from "./box-plan.ts";
import { fanDepth, strandPitch } from "./dimensions.ts";

/** How a wire arrives at a place: along a row, or upright from the side of the rows. */
export interface Arrival {
	readonly at: XY;
	readonly along: "row" | "column";
}

/** The places of a box. */
export interface Places {
	readonly content: BoxContent;
	readonly width: number;
	readonly glands: readonly Gland[];
	rowY(wire: Wire): number;
	/** Where `wire` ends on `point`. */
	arrivalOn(point: number, wire: Wire): Arrival;
	/** The height of the track on which a wire between two columns runs; undefined where both are one column. */
	trackOf(wire: Wire): number | undefined;
	/** How far from the wall on each side a free core ends. */
	readonly stubDepth: Readonly<Record<"left" | "right", number>>;
	/** The way a free inner wire points. */
	readonly freeHeading: "up" | "down";
}

/** Every wire's way, and the ends that are on nothing. */
export function routeAll(places: Places): { routes: Route[]; stubs: Stub[] } {
	const routes: Route[] = [];
	const stubs: Stub[] = [];
	for (const wire of places.content.wires) {
		const points = isCore(wire) ? coreWay(places, wire, stubs) : innerWay(places, wire, stubs);
		if (points !== undefined) routes.push({ wire, points: straighten(points) });
	}
	return { routes, stubs };
}

function coreWay(places: Places, wire: Wire, stubs: Stub[]): XY[] {
	const y = places.rowY(wire);
	const fan = fanPoints(places, wire, y);
	const fromLeft = wire.from.at === "wall" && wire.from.side === "left";
	if (wire.to.at === "free") {
		const x = fromLeft ? places.stubDepth.left : places.width - places.stubDepth.right;
		stubs.push({ wire, at: { x, y }, heading: fromLeft ? "right" : "left", state: wire.to.state });
		return [...fan, { x, y }];
	}
	const point = certain(pointOf(wire.to), "a core's point");
	const { at } = places.arrivalOn(point, wire);
	return [...fan, { x: at.x, y }, at];
}

/** From the gland's strand to the row, in a slanted step that the corner radius rounds into an S. */
export function fanPoints(places: Pick<Places, "glands" | "width">, wire: Wire, y: number): XY[] {
	const gland = certain(
		places.glands.find(({ entry }) => entry.wires.includes(wire)),
		"a core's gland",
	);
	const rank = gland.entry.wires.indexOf(wire) - (gland.entry.wires.length - 1) / 2;
	const strandY = gland.y + rank * strandPitch;
	const inward = gland.entry.side === "left" ? 1 : -1;
	const depth = fanReach(Math.abs(y - strandY));
	return [
		{ x: gland.x, y: strandY },
		{ x: gland.x + inward * fanLead, y: strandY },
		{ x: gland.x + inward * depth, y },
	];
}

/** How far in the deepest fan of some entries reaches, with a little straight behind it: the ordinary depth or more. */
export function deepestFan(entries: readonly Entry[], rowY: (wire: Wire) => number): number {
	let deepest = fanDepth;
	for (const { wires } of entries) {
		const ys = wires.map(rowY);
		const middle = (Math.min(...ys) + Math.max(...ys)) / 2;
		for (const [rank, y] of ys.entries()) {
			const strandY = middle + (rank - (wires.length - 1) / 2) * strandPitch;
			deepest = Math.max(deepest, Math.ceil(fanReach(Math.abs(y - strandY))) + 6);
		}
	}
	return deepest;
}

/** A fan that must climb further reaches further in, up to twice the ordinary depth. */
function fanReach(climb: number): number {
	return Math.min(fanDepth - 6 + Math.max(0, climb - 22) * 0.5, 2 * fanDepth);
}

function innerWay(places: Places, wire: Wire, stubs: Stub[]): XY[] | undefined {
	const ends = [pointOf(wire.from), pointOf(wire.to)] as const;
	const [first, second] = ends;
	if (first !== undefined && second !== undefined) return between(places, wire, first, second);
	const landed = first ?? second;
	if (landed === undefined) return undefined;
	const { at } = places.arrivalOn(landed, wire);
	const tip = { x: at.x, y: at.y + (places.freeHeading === "down" ? freeLength : -freeLength) };
	const free = wire.from.at === "free" ? wire.from : wire.to;
	stubs.push({ wire, at: tip, heading: places.freeHeading, state: free.at === "free" ? free.state : "loose" });
	return first === undefined ? [tip, at] : [at, tip];
}

function between(places: Places, wire: Wire, first: number, second: number): XY[] {
	const start = places.arrivalOn(first, wire);
	const end = places.arrivalOn(second, wire);
	// A jumper back to where it starts is shown as a stump: it joins nothing.
	if (first === second && start.at.x === end.at.x)
		return [start.at, { x: start.at.x, y: start.at.y + (places.freeHeading === "down" ? stump : -stump) }];
	if (start.along === "row" && end.along === "row") return [start.at, end.at];
	if (start.along === "row") return [start.at, { x: end.at.x, y: start.at.y }, end.at];
	if (end.along === "row") return [start.at, { x: start.at.x, y: end.at.y }, end.at];
	const track = places.trackOf(wire);
	if (track === undefined) return [start.at, end.at];
	return [start.at, { x: start.at.x, y: track }, { x: end.at.x, y: track }, end.at];
}

/** Takes out points that stand on others or in the middle of a straight line. */
export function straighten(points: readonly XY[]): XY[] {
	const kept: XY[] = [];
	for (const point of points) {
		const last = kept.at(-1);
		if (last !== undefined && last.x === point.x && last.y === point.y) continue;
		const before = kept.at(-2);
		if (
			last !== undefined &&
			before !== undefined &&
			(last.x - before.x) * (point.y - last.y) === (last.y - before.y) * (point.x - last.x)
		)
			kept.pop();
		kept.push(point);
	}
	return kept;
}

/** Straight length of a fan before it slants. */
const fanLead = 7;
const stump = 18;
/** Length of an inner wire that ends on nothing. */
const freeLength = 24;
