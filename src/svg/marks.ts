// One group's marks as elements: surfaces and lines in their order, alike neighbours as one path, all texts last.
import { paintTone } from "../drawing/palette.ts";
import type { CircleMark, LineMark, Mark, RectangleMark, SymbolMark, TextMark } from "../drawing/scene.ts";
import type { Attributes, Canvas } from "./canvas.ts";
import type { InkPot } from "./ink.ts";
import { circlePath, figure, polyline } from "./path-data.ts";
import { bunch, writeJackets, writeWires } from "./wires.ts";

/** What writing marks needs to know of the document. */
export interface Context {
	readonly inks: InkPot;
	/** The id under which a symbol's shapes are defined; undefined for an unknown symbol. */
	symbolId(name: string): string | undefined;
}

/** Writes `marks` into `canvas`. */
export function writeMarks(canvas: Canvas, marks: readonly Mark[], context: Context): void {
	const { inks } = context;
	for (const [first, same] of bunch(marks.filter(isNoText), (one, other) => one.kind === other.kind)) {
		switch (first.kind) {
			case "rectangle":
				for (const mark of same) if (mark.kind === "rectangle") writeRectangle(canvas, mark, inks);
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
					inks,
				);
				break;
			case "jacket":
				writeJackets(
					canvas,
					same.filter((mark) => mark.kind === "jacket"),
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

function writeRectangle(canvas: Canvas, mark: RectangleMark, inks: InkPot): void {
	canvas.add("rect", {
		x: figure(mark.x),
		y: figure(mark.y),
		width: figure(mark.width),
		height: figure(mark.height),
		rx: mark.radius === undefined ? undefined : figure(mark.radius),
		...inks.fillAndStroke(mark.fill, mark.stroke),
		"stroke-width": mark.stroke === undefined ? undefined : figure(mark.strokeWidth ?? 1),
		"stroke-dasharray": mark.dashed ? dashes : undefined,
	});
}

/** Circles of one look are one path; terminals get the slot of their screw. */
function writeCircles(canvas: Canvas, marks: readonly CircleMark[], inks: InkPot): void {
	for (const [first, same] of bunch(marks, circlesAlike)) {
		canvas.add("path", {
			d: same.map((mark) => circlePath(mark.x, mark.y, mark.radius)).join(""),
			...inks.fillAndStroke(first.fill, first.stroke),
			"stroke-width": first.stroke === undefined ? undefined : figure(first.strokeWidth ?? 1),
		});
	}
	const screws = marks.filter((mark) => mark.as === "terminal");
	for (const [first, same] of bunch(screws, (one, other) => slotPaint(one) === slotPaint(other)))
		canvas.add("path", {
			d: same.map(slot).join(""),
			...inks.stroke(slotPaint(first)),
			"stroke-width": "1.2",
		});
}

function circlesAlike(one: CircleMark, other: CircleMark): boolean {
	return one.fill === other.fill && one.stroke === other.stroke && one.strokeWidth === other.strokeWidth;
}

function slotPaint(mark: CircleMark): "ink" | "paper" {
	return mark.fill === "dark" ? "paper" : "ink";
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
			fill: "none",
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
	const looks = new Map<string, TextMark[]>();
	for (const mark of marks) {
		const key = `${mark.size} ${mark.bold === true} ${mark.anchor} ${mark.paint}`;
		const same = looks.get(key);
		if (same === undefined) looks.set(key, [mark]);
		else same.push(mark);
	}
	for (const same of looks.values()) {
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
		...(mark.paint === "ink" ? {} : inks.fill(mark.paint)),
	};
}

/** What the root sets, and texts and symbols inherit. */
export function inheritedInk(inks: InkPot): Attributes {
	const fill = inks.fill("ink");
	const colour = inks.colour("ink");
	return { ...fill, color: paintTone("ink")[0], class: `fe-sheet ${fill.class} ${colour.class}` };
}

const dashes = "7 4";
