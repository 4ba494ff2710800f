// One group's marks as elements: surfaces and lines in their order, alike neighbours as one path, all texts last.
import type { CircleMark, LineMark, Mark, RectangleMark, SymbolMark, TextMark } from "../drawing/scene.ts";
import type { Attributes, Canvas } from "./canvas.ts";
import type { InkPot } from "./ink.ts";
import { circlePath, figure, polyline, rectanglePath } from "./path-data.ts";
import { bunch, writeJackets, writeWires } from "./wires.ts";

/** What writing marks needs to know of the document. */
export interface Context {
	readonly inks: InkPot;
	/** The sheaths that pass over others. */
	readonly crossing: ReadonlySet<string>;
	/** The id under which a symbol's shapes are defined; undefined for an unknown symbol. */
	symbolId(name: string): string | undefined;
}

/** Writes `marks` into `canvas`. */
export function writeMarks(canvas: Canvas, marks: readonly Mark[], context: Context): void {
	const { inks } = context;
	const bars = marks.filter((mark) => mark.kind === "rectangle").filter((mark) => mark.as === "bar");
	for (const [first, same] of bunch(marks.filter(isNoText), (one, other) => one.kind === other.kind)) {
		switch (first.kind) {
			case "rectangle":
				writeRectangles(
					canvas,
					same.filter((mark) => mark.kind === "rectangle"),
					inks,
				);
				break;
			case "circle":
				writeCircles(
					canvas,
					same.filter((mark) => mark.kind === "circle"),
					inks,
				);
				break;
			case "line":
				writeLines(
					canvas,
					same.filter((mark) => mark.kind === "line"),
					inks,
				);
				break;
			case "wire":
				writeWires(
					canvas,
					same.filter((mark) => mark.kind === "wire"),
					bars,
					inks,
				);
				break;
			case "jacket":
				writeJackets(
					canvas,
					same.filter((mark) => mark.kind === "jacket"),
					context.crossing,
					inks,
				);
				break;
			case "symbol":
				for (const mark of same) if (mark.kind === "symbol") writeSymbol(canvas, mark, context);
		}
	}
	writeTexts(
		canvas,
		marks.filter((mark) => mark.kind === "text"),
		inks,
	);
}

function isNoText(mark: Mark): boolean {
	return mark.kind !== "text";
}

/** Neighbours of one look are one path. */
function writeRectangles(canvas: Canvas, marks: readonly RectangleMark[], inks: InkPot): void {
	for (const [first, same] of bunch(marks, (one, other) => surfaceOf(one) === surfaceOf(other)))
		canvas.add("path", {
			d: same.map((mark) => rectanglePath(mark.x, mark.y, mark.width, mark.height, mark.radius ?? 0)).join(""),
			...inks.fillAndStroke(first.fill, first.stroke),
			"stroke-width": first.stroke === undefined ? undefined : figure(first.strokeWidth ?? 1),
			"stroke-dasharray": first.dashed ? dashes : undefined,
		});
}

/** Circles of one look are one path, as none lies on another; terminals get the slot of their screw. */
function writeCircles(canvas: Canvas, marks: readonly CircleMark[], inks: InkPot): void {
	for (const same of sort(marks, surfaceOf)) {
		const first = same[0];
		if (first === undefined) continue;
		canvas.add("path", {
			d: same.map((mark) => circlePath(mark.x, mark.y, mark.radius)).join(""),
			...inks.fillAndStroke(first.fill, first.stroke),
			"stroke-width": first.stroke === undefined ? undefined : figure(first.strokeWidth ?? 1),
			"stroke-dasharray": first.dashed ? shortDashes : undefined,
		});
	}
	const screws = marks.filter((mark) => mark.as === "terminal");
	for (const same of sort(screws, slotPaint)) {
		const first = same[0];
		if (first === undefined) continue;
		canvas.add("path", { d: same.map(slot).join(""), ...inks.stroke(slotPaint(first)), "stroke-width": "1.2" });
	}
}

/** What two surfaces must share to be painted as one. */
function surfaceOf(mark: RectangleMark | CircleMark): string {
	return `${mark.fill} ${mark.stroke} ${mark.strokeWidth} ${mark.dashed === true}`;
}

/** Marks by a property, in the order in which each value of it first occurs. */
function sort<Item>(marks: readonly Item[], by: (mark: Item) => string): Item[][] {
	const sorted = new Map<string, Item[]>();
	for (const mark of marks) {
		const key = by(mark);
		const same = sorted.get(key);
		if (same === undefined) sorted.set(key, [mark]);
		else same.push(mark);
	}
	return [...sorted.values()];
}

function slotPaint(mark: CircleMark): "engraving" | "paper" {
	return mark.fill === "dark" ? "paper" : "engraving";
}

function slot(mark: CircleMark): string {
	const reach = mark.radius * 0.55;
	return polyline([
		{ x: mark.x - reach, y: mark.y + reach },
		{ x: mark.x + reach, y: mark.y - reach },
	]);
}

function writeLines(canvas: Canvas, marks: readonly LineMark[], inks: InkPot): void {
	for (const [first, same] of bunch(marks, linesAlike))
		canvas.add("path", {
			d: same.map((mark) => polyline(mark.points)).join(""),
			...inks.stroke(first.stroke),
			"stroke-width": figure(first.strokeWidth),
			"stroke-dasharray": first.dashed ? dashes : undefined,
		});
}

function linesAlike(one: LineMark, other: LineMark): boolean {
	return one.stroke === other.stroke && one.strokeWidth === other.strokeWidth && one.dashed === other.dashed;
}

function writeSymbol(canvas: Canvas, mark: SymbolMark, context: Context): void {
	const id = context.symbolId(mark.symbol);
	if (id === undefined) return;
	const turn = mark.turn === undefined || mark.turn === 0 ? "" : `rotate(${mark.turn})`;
	const scale = mark.scale === 1 ? "" : `scale(${figure(mark.scale)})`;
	canvas.add("use", {
		href: `#${id}`,
		transform: `translate(${figure(mark.x)} ${figure(mark.y)})${turn}${scale}`,
		...(mark.paint === "ink" ? {} : context.inks.colour(mark.paint)),
		...(mark.label === undefined ? {} : { role: "graphics-symbol", "aria-label": mark.label }),
	});
}

/** Texts that look alike share a group from three on: fewer bytes, and no more elements than their number and one. */
function writeTexts(canvas: Canvas, marks: readonly TextMark[], inks: InkPot): void {
	for (const same of sort(marks, (mark) => `${mark.size} ${mark.bold === true} ${mark.anchor} ${mark.paint}`)) {
		const first = same[0];
		if (first === undefined) continue;
		const shared = same.length > 2;
		const parent = shared ? canvas.add("g", textLook(first, inks)) : canvas;
		for (const mark of same)
			parent.add("text", { x: figure(mark.x), y: figure(mark.y), ...(shared ? {} : textLook(mark, inks)) }, mark.text);
	}
}

function textLook(mark: TextMark, inks: InkPot): Attributes {
	return {
		"font-size": figure(mark.size),
		"font-weight": mark.bold ? "700" : undefined,
		"text-anchor": mark.anchor === "start" ? undefined : mark.anchor,
		...inks.fill(mark.paint),
	};
}

const dashes = "7 4";
/** Around the ring of a badge, where long ones would leave three strokes. */
const shortDashes = "3 3";
