// A sheet as the text of an SVG file: self-contained, light and dark, readable as text. Same sheet, same bytes.
import { paintTone } from "../drawing/palette.ts";
import type { Group, Placement, Sheet } from "../drawing/scene.ts";
import { findSymbol, type Shape, type SymbolDesign } from "../symbols/index.ts";
import { type Attributes, type Canvas, drawDocument } from "./canvas.ts";
import { checkSvg } from "./contract.ts";
import { crossingJackets } from "./crossings.ts";
import { type InkPot, openInkPot } from "./ink.ts";
import { writeMarks } from "./marks.ts";
import { idFrom } from "./names.ts";
import { figure, shapePath } from "./path-data.ts";

/**
 * The SVG text of a sheet. `plan` names the plan: ids begin with it, so that drawings of two plans can share a page.
 * The text has passed the contract; a text that would not is an InternalFault.
 */
export async function writeSvg(sheet: Sheet, plan: string): Promise<string> {
	const id = (...names: readonly string[]): string => idFrom(plan, sheet.name, ...names);
	const inks = openInkPot();
	const symbolIds = symbolsIn(sheet, id);
	const context = { inks, crossing: crossingJackets(sheet.groups), symbolId: (name: string) => symbolIds.get(name) };
	const text = drawDocument(
		() => rootAttributes(sheet, id),
		(root) => {
			root.add("title", { id: id("title") }, sheet.title);
			root.add("desc", { id: id("desc") }, sheet.description);
			const style = root.add("style", {});
			const definitions = root.add("defs", {});
			for (const [name, symbolId] of symbolIds) {
				const design = findSymbol(name);
				if (design !== undefined) defineSymbol(definitions, design, symbolId, inks);
			}
			root.add("path", { d: `M0 0H${figure(sheet.width)}V${figure(sheet.height)}H0Z`, ...inks.fill("paper") });
			style.write(inks.styleSheet());
		},
		sheet.groups.map((group) => ({
			attributes: groupAttributes(group, id),
			paint: (canvas) => writeMarks(canvas, group.marks, context),
		})),
	);
	checkSvg(text);
	return text;
}

type Naming = (...names: readonly string[]) => string;

/** One unit prints as a quarter of a millimetre. */
const millimetres = 0.25;
const family = "Arial, Helvetica, 'Liberation Sans', Arimo, sans-serif";

function rootAttributes(sheet: Sheet, id: Naming): Attributes {
	return {
		xmlns: "http://www.w3.org/2000/svg",
		viewBox: `0 0 ${figure(sheet.width)} ${figure(sheet.height)}`,
		width: `${figure(sheet.width * millimetres)}mm`,
		height: `${figure(sheet.height * millimetres)}mm`,
		role: "graphics-document",
		"aria-labelledby": `${id("title")} ${id("desc")}`,
		lang: "en",
		"font-family": family,
		// What is filled says so; all else is strokes.
		fill: "none",
		"stroke-linejoin": "round",
		class: "fe-sheet",
		// What symbols are drawn in; the style sheet names its dark value for the root itself.
		color: paintTone("ink")[0],
	};
}

function groupAttributes(group: Group, id: Naming): Attributes {
	const transform = group.at === undefined ? undefined : placeText(group.at);
	if (group.sort === "decoration") return { "aria-hidden": "true", transform };
	return {
		id: id("group", group.name),
		role: "graphics-object",
		"aria-label": group.label,
		"data-line": group.span === undefined ? undefined : String(group.span.line),
		"data-column": group.span === undefined ? undefined : String(group.span.column),
		transform,
	};
}

function placeText({ x, y, scale }: Placement): string {
	const move = `translate(${figure(x)} ${figure(y)})`;
	// A scale has more decimals than a length: over a sheet's width two would be off by millimetres.
	return scale === 1 ? move : `${move}scale(${Math.round(scale * 100_000) / 100_000})`;
}

/** The symbols of a sheet with the ids they are defined under, in order of first use. */
function symbolsIn(sheet: Sheet, id: Naming): ReadonlyMap<string, string> {
	const ids = new Map<string, string>();
	for (const group of sheet.groups)
		for (const mark of group.marks)
			if (mark.kind === "symbol" && !ids.has(mark.symbol) && findSymbol(mark.symbol) !== undefined)
				ids.set(mark.symbol, id("symbol", mark.symbol));
	return ids;
}

/** A symbol's shapes: surfaces below, strokes over them, solid ink on top; shapes of one look are one path. */
function defineSymbol(definitions: Canvas, design: SymbolDesign, id: string, inks: InkPot): void {
	const { x, y } = design.origin;
	const group = definitions.add("g", {
		id,
		class: "fe-symbol",
		stroke: "currentColor",
		"stroke-width": "1.5",
		"stroke-linecap": "round",
		transform: x === 0 && y === 0 ? undefined : `translate(${figure(-x)} ${figure(-y)})`,
	});
	for (const same of looksOf(design.shapes)) {
		const first = same[0];
		if (first === undefined) continue;
		group.add("path", {
			d: same.map(shapePath).join(""),
			...shapeFill(first, inks),
			"stroke-width": first.weight === undefined ? undefined : figure(first.weight),
			"stroke-dasharray": first.dashed ? "3 2.5" : undefined,
		});
	}
}

function looksOf(shapes: readonly Shape[]): Shape[][] {
	const looks = new Map<string, Shape[]>();
	for (const layer of [isSurface, isStroke, isSolid])
		for (const shape of shapes.filter(layer)) {
			const key = `${shape.fill} ${shape.weight} ${shape.dashed === true}`;
			const same = looks.get(key);
			if (same === undefined) looks.set(key, [shape]);
			else same.push(shape);
		}
	return [...looks.values()];
}

function isSurface(shape: Shape): boolean {
	return shape.fill !== undefined && shape.fill !== "ink";
}

function isStroke(shape: Shape): boolean {
	return shape.fill === undefined;
}

function isSolid(shape: Shape): boolean {
	return shape.fill === "ink";
}

function shapeFill(shape: Shape, inks: InkPot): Attributes {
	if (shape.fill === undefined) return {};
	if (shape.fill === "ink") return { fill: "currentColor", stroke: shape.weight === undefined ? "none" : undefined };
	return inks.symbolFill(shape.fill === "plate" ? "item" : shape.fill);
}
