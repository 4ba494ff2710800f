// The rows at the walls of a box: one for each conductor that ends there, those of one sheath and those on one terminal together.
import type { Circuit } from "../../circuit/circuit.ts";
import type { XY } from "../scene.ts";
import { type Dock, type ExtentOf, onGrid, type SidedMeeting, terminalPitch } from "./direct-box.ts";

/** The end of one conductor, or of a strap, at a wall. */
export interface Row {
	readonly meeting: SidedMeeting;
	readonly point: number;
}

/**
 * The rows of each side in the order of `points`, for a box whose conductors all end on these; undefined where one ends elsewhere,
 * where a terminal's conductors would not stand together, or a sheath's.
 */
export function rowsOf(
	circuit: Circuit,
	box: string,
	meetings: readonly SidedMeeting[],
	points: readonly number[],
): { readonly left: readonly Row[]; readonly right: readonly Row[] } | undefined {
	const places = new Map(points.map((point, place) => [point, place]));
	const sides: Record<"left" | "right", Row[]> = { left: [], right: [] };
	const inOrder: { meeting: SidedMeeting; rows: Row[]; place: number }[] = [];
	for (const meeting of meetings) {
		const found = pointsAt(circuit, box, meeting);
		const rows: Row[] = [];
		for (const point of found) {
			if (point === undefined || !places.has(point)) return undefined;
			rows.push({ meeting, point });
		}
		inOrder.push({ meeting, rows, place: Math.min(...rows.map(({ point }) => places.get(point) ?? 0)) });
	}
	inOrder.sort((one, other) => one.place - other.place);
	for (const { meeting, rows } of inOrder) sides[meeting.side].push(...rows);
	const isWhole = (rows: readonly Row[]): boolean => {
		const ended = new Set<number>();
		return rows.every(({ point }, index) => {
			const isNew = rows[index - 1]?.point !== point;
			if (isNew && ended.has(point)) return false;
			ended.add(point);
			return true;
		});
	};
	return isWhole(sides.left) && isWhole(sides.right) ? sides : undefined;
}

/** The points at which a meeting's conductors end in a box, or the stud of a strap. */
export function pointsAt(circuit: Circuit, box: string, { run, end }: SidedMeeting): (number | undefined)[] {
	if (run.link !== undefined) return run.link.between.filter((index) => circuit.points[index]?.enclosure.name === box);
	return run.conductors.map(({ ends }) => ends[end].point);
}

/** A dock for each meeting of some rows, whose tips stand at their heights; `tipX` moves one in from the wall. */
export function docksOf(
	rows: readonly Row[],
	wall: number,
	yOf: (row: Row, index: number) => number,
	tipX: (row: Row) => number = () => wall,
): Dock[] {
	const docks = new Map<SidedMeeting, XY[]>();
	for (const [index, row] of rows.entries()) {
		const tips = docks.get(row.meeting) ?? [];
		docks.set(row.meeting, [...tips, { x: tipX(row), y: yOf(row, index) }]);
	}
	return [...docks].map(([meeting, tips]) => {
		const ys = tips.map(({ y }) => y);
		return { meeting, side: meeting.side, at: { x: wall, y: (Math.min(...ys) + Math.max(...ys)) / 2 }, tips };
	});
}

/** Heights of rows, the first at `top`: those of one sheath close together, others so far apart that what hangs on them fits between. */
export function rowHeights(rows: readonly Row[], top: number, extentOf: ExtentOf): number[] {
	let y = top;
	return rows.map((row, index) => {
		const before = rows[index - 1];
		if (before === undefined) return y;
		y += before.meeting === row.meeting ? terminalPitch : roomBetween(before, row, rows, extentOf);
		return y;
	});
}

/** From the last row of one sheath or conductor to the first of the next. */
export function roomBetween(before: Row, row: Row, rows: readonly Row[], extentOf: ExtentOf): number {
	const half = ({ meeting }: Row): number =>
		((rows.filter((one) => one.meeting === meeting).length - 1) * terminalPitch) / 2;
	const [upper, lower] = [extentOf(before.meeting), extentOf(row.meeting)];
	// Where both lead to one box in the end, only what is on the way needs room.
	const isShared = [...upper.reaches].some((name) => lower.reaches.has(name));
	const below = isShared ? upper.near.below : upper.below;
	const above = isShared ? lower.near.above : lower.above;
	const room = below - half(before) + gapBetween + above - half(row);
	return onGrid(Math.max(row.point === before.point ? terminalPitch : leastApart, room));
}

/** Between boxes above one another. */
export const gapBetween = 36;
/** Between terminals whose conductors are not in one sheath: room for a tag along each. */
const leastApart = 48;
