// The inside of a box whose devices stand between its rows: some rows run above them, the others below, so that far fewer wires cross.
import { certain } from "../../base/certain.ts";
import { type BetweenColumns, type DeviceSpan, faceGap, placeBetween, sizeBetween } from "./between-columns.ts";
import { type Meeting, readBetween } from "./between-rows.ts";
import { type BoxContent, isCore } from "./box-content.ts";
import { codeRoom, glandsOf, rowHeights, studAt } from "./box-frame.ts";
import type { BoxPlan, Joint, Plate } from "./box-plan.ts";
import type { RowPlan } from "./box-rows.ts";
import { countCrossings } from "./crossings.ts";
import { headerHeight, innerMargin } from "./dimensions.ts";
import { deepestFan, type Places, routeAll } from "./places.ts";
import { standsClear } from "./standing-clear.ts";
import { terminalLetter } from "./terminal-letters.ts";

/** The box with its devices between the rows where that is possible, parted where the fewest wires cross. */
export function layOutBetween(
	content: BoxContent,
	leastWidth: number,
): { readonly plan: Omit<BoxPlan, "template">; readonly crossings: number } | undefined {
	const read = readBetween(content);
	if (read === undefined) return undefined;
	let best: { readonly plan: Omit<BoxPlan, "template">; readonly crossings: number } | undefined;
	for (let split = 1; split < read.mainRows; split++) {
		const plan = layOutAt(content, read.rows, read.meetings, split, leastWidth);
		if (plan === undefined) continue;
		const crossings = countCrossings(plan.routes);
		if (best === undefined || crossings < best.crossings) best = { plan, crossings };
	}
	return best;
}

function layOutAt(
	content: BoxContent,
	rows: RowPlan,
	meetings: readonly Meeting[],
	split: number,
	leastWidth: number,
): Omit<BoxPlan, "template"> | undefined {
	const sizes = content.devices.map((device) => sizeBetween(content, device));
	const depth = Math.max(...sizes.map((size) => size.depth));
	const room = codeRoom(content);
	const relative = rowHeights(rows.rows, 0);
	const isJogged = content.devices.length > 2;
	const band = bandDepth + (isJogged ? trackStep : 0);
	const parted = bandDepth + depth + band - (certain(relative[split], "a row") - certain(relative[split - 1], "a row"));
	const top = headerHeight + 26;
	const heights = relative.map((y, row) => top + y + (row < split ? 0 : parted));
	const yOf = (row: number | undefined): number => certain(heights[row ?? -1], "a row's height");
	const plateTop = yOf(split - 1) + bandDepth;
	const plateBottom = plateTop + depth;
	const rowY: Places["rowY"] = (wire) => yOf(rows.rowOf.get(wire));
	const fans = { left: deepestFan(content.left, rowY), right: deepestFan(content.right, rowY) };
	const placed = placeBetween(content, rows, meetings, split, sizes, { edge: fans.left, column: fans.left + room + 8 });
	if (placed === undefined) return undefined;
	const right = content.right.length === 0 ? innerMargin + 12 : 8 + room + fans.right;
	// The fans climb from the gland past the edges of the plates.
	const edges = placed.spans.map(({ right: edge }) => edge + (content.right.length === 0 ? innerMargin : fans.right));
	const width = Math.ceil(Math.max(placed.last + right, leastWidth, ...edges));
	const joints = jointsOf(rows, placed, yOf);
	const glands = glandsOf(content, rows, heights, width);
	const places: Places = {
		content,
		width,
		glands,
		rowY,
		arrivalOn: (point, wire) => {
			const joint = joints.get(point);
			if (joint === undefined)
				return {
					at: { x: placed.columnOf(point, wire), y: placed.isAbove(point) ? plateTop : plateBottom },
					along: "column",
				};
			if (isCore(wire) && rows.rowOf.get(wire) === rows.homeOf.get(point)) {
				const end = wire.from.at === "wall" && wire.from.side === "left" ? joint.columns[0] : joint.columns.at(-1);
				return { at: { x: certain(end, "a column"), y: joint.y }, along: "row" };
			}
			return { at: { x: placed.columnOf(point, wire), y: joint.y }, along: "column" };
		},
		trackOf: (wire) => (placed.jogged.has(wire) ? plateBottom + bandDepth - trackStep : undefined),
		stubDepth: { left: fans.left + room, right: fans.right + room },
		freeHeading: "down",
	};
	const { routes, stubs } = routeAll(places);
	const all = [...joints.values()];
	if (!standsClear(routes, all)) return undefined;
	const plates = placed.spans.map((span) => plateOf(content, span, placed, plateTop, plateBottom));
	return { content, width, height: yOf(rows.rows.length - 1) + 26, glands, joints: all, plates, routes, stubs };
}

function jointsOf(rows: RowPlan, placed: BetweenColumns, yOf: (row: number | undefined) => number): Map<number, Joint> {
	return new Map(
		[...placed.splices].map(([point, columns]) => [point, { point, columns, y: yOf(rows.homeOf.get(point)) }]),
	);
}

/** A device's plate with screws on its upper and its lower edge; the stud on the metal of the box, with its screw below. */
function plateOf(
	content: BoxContent,
	{ size, left, right, screws }: DeviceSpan,
	placed: BetweenColumns,
	top: number,
	bottom: number,
): Plate {
	const { circuit } = content;
	if (size === undefined) {
		const { point, x } = certain(screws[0], "the stud's screw");
		const stud = studAt(content, point, x, bottom);
		const y = bottom - stud.box.height;
		return { ...stud, box: { ...stud.box, y }, texts: stud.texts.map((text) => ({ ...text, at: { x, y: y + 14 } })) };
	}
	const middle = (top + bottom) / 2;
	const start = (left + right - size.inside) / 2;
	const captionX = start + (size.face === undefined ? 0 : size.face.width + faceGap);
	const firstLine = middle + 4 - ((size.caption.length - 1) * captionPitch) / 2;
	return {
		of: size.device.name,
		box: { x: left, y: top, width: right - left, height: bottom - top },
		terminals: screws.map(({ point, x }) => {
			const isAbove = placed.isAbove(point);
			const y = isAbove ? top : bottom;
			const terminal = circuit.points[point];
			return {
				point,
				screws: [{ x, y }],
				letter: terminal?.kind === "terminal" ? terminalLetter(circuit, size.device, terminal) : "",
				letterAt: { x, y: y + (isAbove ? 18 : -10.5) },
				anchor: "middle",
			};
		}),
		symbols:
			size.face === undefined ? [] : [{ symbol: size.face.symbol, at: { x: start + size.face.width / 2, y: middle } }],
		leads: [],
		texts: size.caption.map((text, index) => ({
			text,
			at: { x: captionX, y: firstLine + index * captionPitch },
			anchor: "start",
			...(index === 0 ? { bold: true } : { soft: true }),
		})),
	};
}

/** From the rows to the screws. */
const bandDepth = 44;
const trackStep = 20;
const captionPitch = 14;
