// A box with more in it than one device: its inside as on every wiring sheet, its cables through glands.

import { moveMark } from "../bounds.ts";
import type { Approach, Stock } from "../wiring/box-content.ts";
import { headerHeight } from "../wiring/dimensions.ts";
import { type BoxDrawing, drawStock, endKey } from "../wiring/sheet-box.ts";
import { type DirectBox, type Dock, onGrid, type SidedMeeting } from "./direct-box.ts";

/** The box, whatever is in it. */
export function insideBox(drawing: BoxDrawing, stock: Stock, meetings: readonly SidedMeeting[]): DirectBox {
	const approaches = meetings.flatMap(({ run: { cable }, end, side }): Approach[] =>
		cable === undefined ? [] : [{ cable, end, side }],
	);
	const box = drawStock(drawing, stock, approaches);
	const straps = meetings.filter(({ run }) => run.cable === undefined);
	// Down to the grid, as far as the glands let it.
	const [gland] = [...box.glands.values()];
	const drop = gland === undefined ? 0 : onGrid(gland.y) - gland.y;
	const docks = meetings.map((meeting): Dock => {
		const { run, end, side } = meeting;
		const wall = side === "left" ? 0 : box.width;
		const own = run.cable === undefined ? undefined : box.glands.get(endKey(run.cable, end));
		const at =
			own !== undefined
				? { x: own.x, y: own.y + drop }
				: { x: wall, y: Math.min(box.height - 8, headerHeight - 10 + 12 * straps.indexOf(meeting)) };
		const count = run.conductors.length;
		return {
			meeting,
			side,
			at,
			tips: run.conductors.map((_, index) => ({ x: at.x, y: at.y + index - (count - 1) / 2 })),
			...(own === undefined ? {} : { hasGland: true }),
		};
	});
	const within = { x: 0, y: headerHeight + drop, width: box.width, height: box.height - headerHeight };
	return {
		name: `box ${box.name}`,
		label: box.interior?.words ?? box.name,
		span: stock.enclosure.span,
		width: box.width,
		height: onGrid(box.height + drop),
		docks,
		draw: () => ({
			marks: box.marks.map((mark) => moveMark(mark, 0, drop)),
			over: [],
			anchors: [...(box.interior?.anchors() ?? [])].map(([name, { x, y }]) => [
				name,
				{ at: { x, y: y + drop }, ...(y < headerHeight ? {} : { within }) },
			]),
		}),
	};
}
