// The ways of a panel's wires between its walls, breakers, bars and joints. Each upright stretch has a column of its own.
import { certain } from "../../base/certain.ts";
import type { XY } from "../scene.ts";
import { type BoxContent, isCore, type Tie, type Wire } from "./box-content.ts";
import type { Gland, Route, Stub } from "./box-plan.ts";
import type { PanelRows, Target } from "./panel-rows.ts";
import { fanPoints, straighten } from "./places.ts";

/** Upright channels of a panel: left of its main, between breakers and bars, and between bars and the right wall. */
export type Channel = "left" | "middle" | "right";

/** What a wire of a panel can end on. */
export type PanelEnd =
	| { readonly sort: "target"; readonly target: Target; readonly y: number }
	| { readonly sort: "bar"; readonly x: number }
	| { readonly sort: "splice"; readonly point: number }
	| { readonly sort: "body" }
	| { readonly sort: "free"; readonly state: "loose" | "capped" };

/** Where the fixed things of a panel stand. */
export interface PanelFrame {
	readonly content: BoxContent;
	readonly rows: PanelRows;
	readonly width: number;
	readonly glands: readonly Gland[];
	/** The edge of a target that wires come to. */
	edgeOf(target: Target): number;
	endOf(tie: Tie, wire: Wire): PanelEnd;
	/** Hands out columns: the next free one of a channel, or the one kept for a wire of a splice. */
	column(need: ColumnNeed): number;
	readonly topTrack: () => number;
	/** How many have been given out. */
	readonly topTracks: () => number;
	readonly floor: number;
	readonly spliceY: ReadonlyMap<number, number>;
	readonly stubDepth: number;
}

/** A column that a wire needs, and the splice it leads to. */
export interface ColumnNeed {
	readonly channel: Channel;
	readonly splice?: number;
}

/** The columns that a wire needs, in the order it takes them. */
export function columnsFor(frame: Pick<PanelFrame, "rows" | "endOf">, wire: Wire): ColumnNeed[] {
	const to = frame.endOf(wire.to, wire);
	if (isCore(wire)) {
		const y = frame.rows.rowOf.get(wire);
		const fromRight = wire.from.at === "wall" && wire.from.side === "right";
		if (to.sort === "target") {
			if (to.target.faces === "left")
				return fromRight ? [{ channel: "middle" }, { channel: "left" }] : [{ channel: "left" }];
			return fromRight && to.y === y ? [] : [{ channel: "middle" }];
		}
		return towardJoint(to);
	}
	const from = frame.endOf(wire.from, wire);
	return [from, to].flatMap((end): ColumnNeed[] => {
		if (end.sort !== "target") return towardJoint(end);
		if (end.target.faces === "left") return [{ channel: "left" }];
		return frame.rows.serviceOf.has(wire) ? [{ channel: "middle" }] : [];
	});
}

function towardJoint(end: PanelEnd): ColumnNeed[] {
	if (end.sort === "splice") return [{ channel: "right", splice: end.point }];
	return end.sort === "body" ? [{ channel: "right" }] : [];
}

/** Every wire's way. */
export function routePanel(frame: PanelFrame): { routes: Route[]; stubs: Stub[]; studs: { wire: Wire; x: number }[] } {
	const routes: Route[] = [];
	const stubs: Stub[] = [];
	const studs: { wire: Wire; x: number }[] = [];
	for (const wire of frame.content.wires) {
		const columns = columnsFor(frame, wire).map((need) => frame.column(need));
		const to = frame.endOf(wire.to, wire);
		const points = isCore(wire)
			? coreWay(frame, wire, to, columns, stubs)
			: innerWay(frame, wire, frame.endOf(wire.from, wire), to, columns, stubs);
		if (to.sort === "body") studs.push({ wire, x: certain(columns.at(-1), "a column") });
		else if (!isCore(wire) && frame.endOf(wire.from, wire).sort === "body")
			studs.push({ wire, x: certain(columns[0], "a column") });
		routes.push({ wire, points: straighten(points) });
	}
	return { routes, stubs, studs };
}

function coreWay(frame: PanelFrame, wire: Wire, to: PanelEnd, columns: readonly number[], stubs: Stub[]): XY[] {
	const y = certain(frame.rows.rowOf.get(wire), "a core's row");
	const fan = fanPoints(frame, wire, y);
	if (to.sort === "free") {
		const fromLeft = wire.from.at === "wall" && wire.from.side === "left";
		const x = fromLeft ? frame.stubDepth : frame.width - frame.stubDepth;
		stubs.push({ wire, at: { x, y }, heading: fromLeft ? "right" : "left", state: to.state });
		return [...fan, { x, y }];
	}
	return [...fan, ...arrive(frame, to, y, columns)];
}

/** From the height `y` to an end, by the columns at hand. */
function arrive(frame: PanelFrame, to: PanelEnd, y: number, columns: readonly number[]): XY[] {
	const [first = 0, second] = columns;
	switch (to.sort) {
		case "bar":
			return [{ x: to.x, y }];
		case "target": {
			const end = { x: frame.edgeOf(to.target), y: to.y };
			if (columns.length === 0) return [end];
			if (second === undefined) return [{ x: first, y }, { x: first, y: to.y }, end];
			const over = frame.topTrack();
			return [{ x: first, y }, { x: first, y: over }, { x: second, y: over }, { x: second, y: to.y }, end];
		}
		case "splice":
			return [
				{ x: first, y },
				{ x: first, y: certain(frame.spliceY.get(to.point), "a splice's height") },
			];
		case "body":
			return [
				{ x: first, y },
				{ x: first, y: frame.floor },
			];
		case "free":
			return [];
	}
}

function innerWay(
	frame: PanelFrame,
	wire: Wire,
	from: PanelEnd,
	to: PanelEnd,
	columns: readonly number[],
	stubs: Stub[],
): XY[] {
	const service = frame.rows.serviceOf.get(wire);
	if (service === undefined) return tailWay(frame, from, to);
	const count = (end: PanelEnd): number =>
		end.sort === "target" || end.sort === "splice" || end.sort === "body" ? 1 : 0;
	const start = arrive(frame, from, service, columns.slice(0, count(from))).reverse();
	const end = arrive(frame, to, service, columns.slice(count(from)));
	const free = from.sort === "free" ? from : to.sort === "free" ? to : undefined;
	if (free === undefined) return [...start, ...end];
	// A free end stops a little way along its row.
	const known = from.sort === "free" ? end : start.toReversed();
	const turn = certain(known[0], "the start of a free wire");
	const tip = { x: turn.x + freeLength, y: service };
	stubs.push({ wire, at: tip, heading: "right", state: free.state });
	return from.sort === "free" ? [tip, ...known] : [...start, tip];
}

/** A breaker's own tail runs straight to its bar. */
function tailWay(frame: PanelFrame, from: PanelEnd, to: PanelEnd): XY[] {
	const target = from.sort === "target" ? from : to;
	const other = from.sort === "target" ? to : from;
	if (target.sort !== "target") return [];
	const start = { x: frame.edgeOf(target.target), y: target.y };
	const x = other.sort === "bar" ? other.x : start.x + freeLength;
	const way = [start, { x, y: target.y }];
	return from.sort === "target" ? way : way.reverse();
}

const freeLength = 40;
