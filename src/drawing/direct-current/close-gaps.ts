// Moves up what stands below an empty band of the first storey: the layout engine left it for a storey that stands elsewhere now.
import type { XY } from "../scene.ts";
import type { DirectLayout, PlacedDock, PlacedRun } from "./lay-out-net.ts";

/** The layout with no empty band across its first storey; what `isUpper` does not name stays. */
export function closeGaps({ boxes, runs }: DirectLayout, isUpper: (name: string) => boolean): DirectLayout {
	const isMoved = ({ run, start }: PlacedRun): boolean => isUpper(run.ends[start]);
	const bands = [
		...boxes.filter(({ node }) => isUpper(node.name)).map(({ box, y }) => ({ top: y, bottom: y + box.height })),
		...runs.filter(isMoved).map((run) => ({ top: topOf(run), bottom: Math.max(...run.points.map(({ y }) => y)) })),
	].toSorted((one, other) => one.top - other.top);
	const lifts: { readonly from: number; readonly by: number }[] = [];
	let floor = bands[0]?.top ?? 0;
	let by = 0;
	for (const { top, bottom } of bands) {
		if (top - floor > between) {
			by += top - floor - between;
			lifts.push({ from: top, by });
		}
		floor = Math.max(floor, bottom);
	}
	if (lifts.length === 0) return { boxes, runs };
	const liftAt = (y: number): number => lifts.findLast(({ from }) => from <= y)?.by ?? 0;
	return {
		boxes: boxes.map((placed) => (isUpper(placed.node.name) ? { ...placed, y: placed.y - liftAt(placed.y) } : placed)),
		runs: runs.map((placed) => (isMoved(placed) ? liftRun(placed, liftAt(topOf(placed)), isUpper) : placed)),
	};
}

/** Its tag stands on its way. */
function topOf({ points, tag }: PlacedRun): number {
	return Math.min(...points.map(({ y }) => y), ...(tag === undefined ? [] : [tag.y]));
}

/** A feed of another storey ends, so far, in that storey. */
function liftRun(placed: PlacedRun, by: number, isUpper: (name: string) => boolean): PlacedRun {
	const { run, start, points, docks, tag } = placed;
	const lift = (at: XY): XY => ({ x: at.x, y: at.y - by });
	const liftDock = (dock: PlacedDock): PlacedDock => ({ ...dock, at: lift(dock.at), tips: dock.tips.map(lift) });
	return {
		...placed,
		points: points.map(lift),
		docks: [liftDock(docks[0]), isUpper(run.ends[start === 0 ? 1 : 0]) ? liftDock(docks[1]) : docks[1]],
		...(tag === undefined ? {} : { tag: { ...tag, y: tag.y - by } }),
	};
}

/** From one part of the storey to the next. */
const between = 72;
