// Which paper, how large the drawing, and where the furniture: the smallest sheet that holds all, filled best.
import type { Region } from "../../kinds/kind.ts";
import type { Box } from "../bounds.ts";
import type { Group, Placement } from "../scene.ts";
import { type Arrangement, arrangements } from "./arrangement.ts";
import { FurnitureSet } from "./furniture-set.ts";
import { customPaper, margin, type Paper, padding, paperNamed, papersAbove, papersOf } from "./paper.ts";
import { findPockets } from "./pockets.ts";
import type { SheetContent } from "./sheet-content.ts";

/** A sheet with everything in its place. */
export interface Layout {
	readonly paper: string;
	readonly width: number;
	readonly height: number;
	/** How the drawing is scaled and where it is moved to. */
	readonly drawing: Placement;
	/** The space that the drawing could have spread into. */
	readonly area: Box;
	readonly furniture: () => Group[];
	/** About which part of the space inside the frame is filled. */
	readonly fill: number;
}

/** What is known of a drawing before it is placed. */
export interface Drawing {
	readonly box: Box;
	/** Boxes that hold all its ink. */
	readonly ink: readonly Box[];
	/** About how many square units it covers, the air around its ink included. */
	readonly covers: number;
}

/** What the heading at the upper left takes: with what stands beside its title, and the title alone. */
export interface HeadingWidth {
	readonly whole: number;
	readonly title: number;
}

/** The layout of a sheet: on the paper asked for, or on the next larger one with a note; with none asked for, cut where that fills it better. */
export function chooseLayout(content: SheetContent, drawing: Drawing, heading: HeadingWidth): Layout {
	const wish = paperNamed(content.paper);
	if (wish !== undefined) return layoutAsked(content, drawing, heading, wish);
	const wanted: Wanted = { set: new FurnitureSet(content), drawing, heading, mostScale: mostToFill };
	for (const paper of papersOf(content.region)) {
		const whole = layoutOn(wanted, paper);
		if (whole === undefined) continue;
		if (whole.fill >= goodFill) return whole;
		for (const cut of cutPapers(wanted, paper, whole, content.region)) {
			const layout = layoutOn(wanted, cut);
			if (layout !== undefined && layout.fill > whole.fill) return cutCloser(wanted, layout, content.region);
		}
		return whole;
	}
	return madeToMeasure(wanted, content.region);
}

/** A builder who names a paper has it in the printer: it is never cut. */
function layoutAsked(content: SheetContent, drawing: Drawing, heading: HeadingWidth, wish: Paper): Layout {
	const asked: Wanted = { set: new FurnitureSet(content), drawing, heading, mostScale: mostToFillAsked };
	const layout = layoutOn(asked, wish);
	if (layout !== undefined) return layout;
	const told: Wanted = { ...asked, set: new FurnitureSet({ ...content, notes: [...content.notes, tooSmall(wish)] }) };
	for (const paper of papersAbove(wish)) {
		const larger = layoutOn(told, paper);
		if (larger !== undefined) return larger;
	}
	return madeToMeasure(told, content.region);
}

function tooSmall({ name }: Paper): string {
	return `This sheet needs larger paper than the ${name} asked for: on ${name} its smallest letters could not be read.`;
}

/** Height of the title line at the top. */
export const headingHeight = 34;

interface Wanted {
	readonly set: FurnitureSet;
	readonly drawing: Drawing;
	readonly heading: HeadingWidth;
	readonly mostScale: number;
}

/** A drawing may be enlarged this much to fill its sheet, and one whose paper is asked for. */
const mostToFill = 1.3;
const mostToFillAsked = 2;
/** Below this a sheet of standard size is cut to the drawing. */
const goodFill = 0.62;
/** Limits of width to height of the space inside the frame of a sheet that is cut to its drawing. */
const aspect = { least: 1.22, most: 2.15 };
/** Ten millimetres. */
const step = 40;

/** The best filled layout on one sheet of paper; undefined when nothing fits. */
function layoutOn(wanted: Wanted, paper: Paper): Layout | undefined {
	const inside = insideOf(paper);
	const { box } = wanted.drawing;
	const whole = areaOf(inside, 0, 0);
	if (box.width > whole.width || box.height > whole.height) return undefined;
	const layouts = arrangements(wanted.set, inside).flatMap((arrangement) => arranged(wanted, paper, arrangement));
	const pockets = pocketed(wanted, paper);
	return [...layouts, ...pockets].reduce<Layout | undefined>(
		(found, layout) => (found === undefined || layout.fill > found.fill ? layout : found),
		undefined,
	);
}

/** The drawing in the middle of what an arrangement leaves; none where it does not fit. */
function arranged({ drawing, heading, mostScale }: Wanted, paper: Paper, arrangement: Arrangement): Layout[] {
	const inside = insideOf(paper);
	const area = areaOf(inside, arrangement.takes.width, arrangement.takes.height);
	const scale = Math.min(mostScale, area.width / drawing.box.width, area.height / drawing.box.height);
	if (scale < 1 || area.width < heading.title || area.height < 0) return [];
	const furniture = (): Group[] => arrangement.place(inside, paper.name);
	return [layoutAt(drawing, paper, area, scale, middle, arrangement.covers, furniture)];
}

/** The drawing over the whole sheet and the furniture in its free corners; none where a block finds no room. */
function pocketed({ set, drawing, heading, mostScale }: Wanted, paper: Paper): Layout[] {
	const inside = insideOf(paper);
	const area = areaOf(inside, 0, 0);
	const most = Math.min(mostScale, area.width / drawing.box.width, area.height / drawing.box.height);
	const title = { x: inside.x, y: inside.y, width: heading.whole, height: headingHeight + padding };
	const less = most > 1.12 ? 1 + (most - 1) / 2 : most;
	for (const { scale, share } of [
		{ scale: most, share: middle },
		{ scale: less, share: { x: 0, y: 0 } },
	]) {
		const pockets = findPockets(set, inside, title, drawing.ink, moved(drawing.box, area, scale, share));
		if (pockets !== undefined)
			return [layoutAt(drawing, paper, area, scale, share, pockets.covers, () => pockets.place(paper.name))];
	}
	return [];
}

const middle = { x: 0.5, y: 0.5 };

function layoutAt(
	drawing: Drawing,
	paper: Paper,
	area: Box,
	scale: number,
	share: { readonly x: number; readonly y: number },
	covers: number,
	furniture: () => Group[],
): Layout {
	const inside = insideOf(paper);
	return {
		paper: paper.name,
		width: paper.width,
		height: paper.height,
		drawing: moved(drawing.box, area, scale, share),
		area,
		furniture,
		fill: (drawing.covers * scale * scale + covers) / (inside.width * inside.height),
	};
}

/** What moves a scaled drawing to its share of the spare room: 0 is the left or upper edge, 0.5 the middle. */
function moved(box: Box, area: Box, scale: number, share: { x: number; y: number }): Placement {
	return {
		x: area.x + (area.width - box.width * scale) * share.x - box.x * scale,
		y: area.y + (area.height - box.height * scale) * share.y - box.y * scale,
		scale,
	};
}

/** The sheets that can be cut from a paper, smallest first; none so small that the furniture and the drawing cannot fit by area. */
function cutPapers({ drawing }: Wanted, paper: Paper, whole: Layout, region: Region): Paper[] {
	const around = 2 * (margin + padding);
	const least = { width: drawing.box.width + around, height: drawing.box.height + around + headingHeight };
	const inside = insideOf(paper);
	const filled = (whole.fill * inside.width * inside.height) / (whole.drawing.scale * whole.drawing.scale);
	const papers: Paper[] = [];
	for (let width = paper.width; width >= least.width; width -= 2 * step)
		for (let height = paper.height; height >= least.height; height -= 2 * step) {
			const space = insideOf({ width, height });
			const shape = space.width / space.height;
			if (shape < aspect.least || shape > aspect.most || space.width * space.height < tightest * filled) continue;
			papers.push(customPaper(width, height, region));
		}
	return papers.sort((one, other) => one.width * one.height - other.width * other.height).slice(0, mostCuts);
}

/** The same layout on a sheet narrower and lower by a step more, where that holds everything too. */
function cutCloser(wanted: Wanted, layout: Layout, region: Region): Layout {
	let best = layout;
	for (const [narrower, lower] of closerSteps) {
		const [width, height] = [best.width - narrower * step, best.height - lower * step];
		const space = insideOf({ width, height });
		const shape = space.width / space.height;
		if (shape < aspect.least || shape > aspect.most) continue;
		const closer = layoutOn(wanted, customPaper(width, height, region));
		if (closer !== undefined && closer.fill > best.fill) best = closer;
	}
	return best;
}

/** Steps narrower and lower, each tried after the one before. */
const closerSteps = [
	[1, 0],
	[0, 1],
	[0.5, 0],
	[0, 0.5],
] as const;

/** Nothing can be packed closer than this: smaller sheets need not be tried. */
const tightest = 1.1;

/** Enough to reach from the smallest that could hold everything to one that does. */
const mostCuts = 40;

/** A sheet around a drawing that no paper holds. */
function madeToMeasure(wanted: Wanted, region: Region): Layout {
	const { box } = wanted.drawing;
	for (let growth = 0; ; growth += 4 * step) {
		const height = box.height + 2 * (margin + padding) + headingHeight + 160 + growth;
		const width = Math.max(box.width + 2 * (margin + padding), height * aspect.least, 1600) + growth;
		const whole = (side: number): number => Math.ceil(side / 4) * 4;
		const paper = customPaper(whole(width), whole(Math.max(height, width / aspect.most)), region);
		const found = layoutOn(wanted, paper);
		if (found !== undefined) return found;
	}
}

function insideOf(paper: { readonly width: number; readonly height: number }): Box {
	return { x: margin, y: margin, width: paper.width - 2 * margin, height: paper.height - 2 * margin };
}

function areaOf(inside: Box, takenWidth: number, takenHeight: number): Box {
	return {
		x: inside.x + padding,
		y: inside.y + headingHeight + padding,
		width: inside.width - 2 * padding - takenWidth,
		height: inside.height - headingHeight - 2 * padding - takenHeight,
	};
}
