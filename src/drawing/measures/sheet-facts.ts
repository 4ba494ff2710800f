// A sheet read for measuring: its texts, rectangles and straight pieces of wire, each with what it belongs to.

import { type Box, boundsOfMark, boundsOfPoints, growBox } from "../bounds.ts";
import type { JacketMark, LineMark, RectangleMark, Sheet, SymbolMark, TextMark, WireMark, XY } from "../scene.ts";
import { casingWidth, sheathWidth, tickWidth } from "../strokes.ts";
import { textBox } from "../text-metrics.ts";
import { type Placed, placedMarks } from "./measure.ts";

/** One straight piece of a wire, a sheath or a line. */
export interface Segment {
	readonly from: XY;
	readonly to: XY;
	readonly of: Placed<WireMark | JacketMark | LineMark>;
	/** Its place in the way: 0 is the first piece. */
	readonly index: number;
	/** What its ink covers. */
	readonly box: Box;
}
export interface PlacedText {
	readonly of: Placed<TextMark>;
	readonly box: Box;
}

/** Everything of a sheet by kind. */
export interface SheetFacts {
	readonly sheet: Sheet;
	/** All that is measured, in paint order, in its place on the sheet. */
	readonly marks: readonly Placed[];
	readonly texts: readonly PlacedText[];
	readonly rectangles: readonly Placed<RectangleMark>[];
	readonly symbols: readonly { readonly of: Placed<SymbolMark>; readonly box: Box }[];
	readonly wires: readonly Placed<WireMark>[];
	readonly jackets: readonly Placed<JacketMark>[];
	readonly lines: readonly Placed<LineMark>[];
	readonly segments: readonly Segment[];
	readonly enclosures: readonly Placed<RectangleMark>[];
	readonly glands: readonly Box[];
	/** The frame; the whole sheet where there is none. */
	readonly frame: Box;
}

/** Reads a sheet. */
export function readSheet(sheet: Sheet): SheetFacts {
	const texts: PlacedText[] = [];
	const rectangles: Placed<RectangleMark>[] = [];
	const symbols: { of: Placed<SymbolMark>; box: Box }[] = [];
	const wires: Placed<WireMark>[] = [];
	const jackets: Placed<JacketMark>[] = [];
	const lines: Placed<LineMark>[] = [];
	const marks = placedMarks(sheet);
	for (const { mark, group } of marks) {
		switch (mark.kind) {
			case "text":
				if (mark.text !== "") texts.push({ of: { mark, group }, box: textBox(mark) });
				break;
			case "rectangle":
				rectangles.push({ mark, group });
				break;
			case "symbol":
				symbols.push({ of: { mark, group }, box: boundsOfMark(mark) });
				break;
			case "wire":
				wires.push({ mark, group });
				break;
			case "jacket":
				jackets.push({ mark, group });
				break;
			case "line":
				lines.push({ mark, group });
				break;
			case "circle":
		}
	}
	const enclosures = rectangles.filter(({ mark }) => mark.as === "enclosure");
	const glands = rectangles.filter(({ mark }) => mark.as === "gland").map(({ mark }) => mark);
	const frame = sheet.groups
		.flatMap((group) => group.marks)
		.find((mark) => mark.kind === "rectangle" && mark.as === "frame");
	return {
		sheet,
		marks,
		texts,
		rectangles,
		symbols,
		wires,
		jackets,
		lines,
		segments: [...wires, ...jackets, ...lines].flatMap(segmentsOf),
		enclosures,
		glands,
		frame: frame?.kind === "rectangle" ? frame : { x: 0, y: 0, width: sheet.width, height: sheet.height },
	};
}

/** A mark's straight pieces. */
export function segmentsOf(of: Placed<WireMark | JacketMark | LineMark>): Segment[] {
	const { mark } = of;
	const width = paintedWidth(mark);
	return mark.points.slice(1).map((to, index) => {
		const from = mark.points[index] ?? to;
		return { from, to, of, index, box: growBox(boundsOfPoints([from, to]), width / 2) };
	});
}

/** How wide a way is painted, its casing or edge included. */
function paintedWidth(mark: WireMark | JacketMark | LineMark): number {
	if (mark.kind === "line") return mark.strokeWidth;
	if (mark.kind === "jacket") return mark.width + sheathWidth;
	return mark.width + (mark.finding === undefined ? casingWidth : tickWidth);
}

/** Length of a piece. */
export function lengthOf({ from, to }: Segment): number {
	return Math.hypot(to.x - from.x, to.y - from.y);
}

/** Whether a piece runs level or upright. */
export function isStraight({ from, to }: Segment): boolean {
	return Math.abs(from.x - to.x) < 0.01 || Math.abs(from.y - to.y) < 0.01;
}

/** Whether a point is within `reach` of a wall's gland, where conductors fan out. */
export function isNearGland(facts: SheetFacts, point: XY, reach: number): boolean {
	return facts.glands.some(
		(gland) =>
			point.x > gland.x - reach &&
			point.x < gland.x + gland.width + reach &&
			point.y > gland.y - reach &&
			point.y < gland.y + gland.height + reach,
	);
}

/** How a place is told: the mark's name and its group's. */
export function tell(placed: Placed): string {
	const { mark, group } = placed;
	const what = mark.kind === "text" ? `"${mark.text}"` : (mark.of ?? mark.kind);
	return `${what} in ${group.name}`;
}
