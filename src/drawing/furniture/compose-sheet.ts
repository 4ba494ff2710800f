// A drawing and its furniture as a finished sheet: paper chosen, drawing moved into place, lists where they leave the least empty.
import { type Box, boundsOf, moveGroup } from "../bounds.ts";
import type { Group, Sheet } from "../scene.ts";
import { textWidth } from "../text-metrics.ts";
import { type Arrangement, arrangements } from "./arrangement.ts";
import { frameGroup } from "./frame.ts";
import { margin, type Paper, padding, papersFor } from "./paper.ts";
import type { SheetContent } from "./sheet-content.ts";

export type { Fact, LegendEntry, SheetContent, SheetFinding } from "./sheet-content.ts";

/** The sheet. The drawing is scaled up where there is room, never down: on no paper large enough, the sheet is made to measure. */
export function composeSheet(content: SheetContent): Sheet {
	const drawing = boundsOf(content.groups);
	const choice = chooseLayout(content, drawing);
	const { width, height, scale, arrangement } = choice;
	const inside = insideOf(choice);
	const area = areaInside(inside, arrangement);
	const dx = area.x + (area.width - drawing.width * scale) / 2 - drawing.x * scale;
	const dy = area.y + (area.height - drawing.height * scale) / 2 - drawing.y * scale;
	return {
		name: content.name,
		title: `${content.project}: ${content.title}`,
		description: content.description,
		width,
		height,
		groups: [
			frameGroup(width, height),
			heading(content),
			...content.groups.map((group) => moveGroup(group, dx, dy, scale)),
			...arrangement.place(inside, choice.paper),
		],
	};
}

/** What is left for the drawing on the sheet it would get: a layout may spread itself into it before it asks for the sheet. */
export function drawingArea(
	content: Omit<SheetContent, "groups">,
	size: { readonly width: number; readonly height: number },
): { readonly width: number; readonly height: number } {
	const layout = chooseLayout({ ...content, groups: [] }, { x: 0, y: 0, ...size });
	return areaInside(insideOf(layout), layout.arrangement);
}

interface Layout {
	readonly paper: string;
	readonly width: number;
	readonly height: number;
	readonly scale: number;
	readonly arrangement: Arrangement;
	/** The part of the space inside the frame that drawing and furniture fill. */
	readonly fill: number;
}

/** A drawing may be enlarged this much to fill its sheet. */
const mostScale = 1.3;
/** Below this a sheet of standard size is cut to the drawing. */
const goodFill = 0.62;
/** Limits of width to height of a sheet that is cut to its drawing. */
const aspect = { least: 1.2, most: 2.2 };

function chooseLayout(content: SheetContent, drawing: Box): Layout {
	const papers = papersFor(content.paper, content.region);
	for (const paper of papers) {
		const whole = best(layoutsOn(content, drawing, paper));
		if (whole === undefined) continue;
		if (whole.fill >= goodFill) return whole;
		return best([whole, ...cutLayouts(content, drawing, paper)]) ?? whole;
	}
	return madeToMeasure(content, drawing);
}

function best(layouts: readonly Layout[]): Layout | undefined {
	return layouts.reduce<Layout | undefined>(
		(found, layout) => (found === undefined || layout.fill > found.fill ? layout : found),
		undefined,
	);
}

/** Both arrangements on one sheet, where they fit. */
function layoutsOn(content: SheetContent, drawing: Box, paper: Paper): Layout[] {
	return arrangements(content, insideOf(paper)).flatMap((arrangement) => layoutOn(drawing, paper, arrangement));
}

/** The drawing as large as it can be on a sheet with one arrangement; none where it does not fit. */
function layoutOn(drawing: Box, paper: Paper, arrangement: Arrangement): Layout[] {
	const inside = insideOf(paper);
	const area = areaInside(inside, arrangement);
	const scale = Math.min(mostScale, area.width / drawing.width, area.height / drawing.height);
	if (scale < 1 || area.width <= 0 || area.height <= 0) return [];
	const drawn = (drawing.width * scale + padding) * (drawing.height * scale + padding);
	const fill = (drawn + arrangement.covers) / (inside.width * inside.height);
	return [{ paper: paper.name, width: paper.width, height: paper.height, scale, arrangement, fill }];
}

/** The same paper with a strip cut off its height or its width, as far as the limits of the shape allow. */
function cutLayouts(content: SheetContent, drawing: Box, paper: Paper): Layout[] {
	return layoutsOn(content, drawing, paper).flatMap(({ arrangement, scale }) => {
		const inside = insideOf(paper);
		const area = areaInside(inside, arrangement);
		const cut = (spare: number): number => Math.max(0, Math.floor(spare / step) * step);
		const lower = Math.min(
			cut(area.height - drawing.height * scale),
			paper.height - paper.width / aspect.most,
			inside.height - arrangement.leastHeight,
		);
		const narrower = Math.min(cut(area.width - drawing.width * scale), paper.width - paper.height * aspect.least);
		const name = `${paper.name} cut`;
		return [
			...layoutOn(drawing, { name, width: paper.width, height: paper.height - Math.max(0, lower) }, arrangement),
			// A strip along the foot is set for its width and cannot be made narrower.
			...(arrangement.takes.width === 0
				? []
				: layoutOn(drawing, { name, width: paper.width - Math.max(0, narrower), height: paper.height }, arrangement)),
		];
	});
}

/** Ten millimetres. */
const step = 40;

function insideOf(paper: { readonly width: number; readonly height: number }): Box {
	return { x: margin, y: margin, width: paper.width - 2 * margin, height: paper.height - 2 * margin };
}

/** A sheet around a drawing that no paper holds. */
function madeToMeasure(content: SheetContent, drawing: Box): Layout {
	for (let growth = 0; ; growth += 4 * step) {
		const height = drawing.height + 2 * (margin + padding) + headingHeight + 160 + growth;
		const width = Math.max(drawing.width + 2 * (margin + padding), height * aspect.least, 1600) + growth;
		const size = {
			name: "made to measure",
			width: Math.ceil(width),
			height: Math.ceil(Math.max(height, width / aspect.most)),
		};
		const found = best(layoutsOn(content, drawing, size));
		if (found !== undefined) return found;
	}
}

function areaInside(inside: Box, arrangement: Arrangement): Box {
	return {
		x: inside.x + padding,
		y: inside.y + headingHeight + padding,
		width: inside.width - 2 * padding - arrangement.takes.width,
		height: inside.height - headingHeight - 2 * padding - arrangement.takes.height,
	};
}

const headingHeight = 34;

function heading(content: SheetContent): Group {
	const at = { x: margin + padding, y: margin + padding };
	const title = { size: 20, bold: true };
	return {
		name: "heading",
		sort: "furniture",
		label: content.title,
		marks: [
			{ kind: "text", text: content.title, x: at.x, y: at.y + 15, ...title, anchor: "start", paint: "ink" },
			...(content.subtitle === undefined
				? []
				: [
						{
							kind: "text" as const,
							text: content.subtitle,
							x: at.x + Math.ceil(textWidth(content.title, title)) + 18,
							y: at.y + 15,
							size: 12,
							anchor: "start" as const,
							paint: "soft" as const,
						},
					]),
		],
	};
}
