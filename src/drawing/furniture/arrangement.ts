// Where the furniture goes: in a strip along the foot of the sheet, in two rows there, or in a column down its right side.
import type { Group } from "../scene.ts";
import { type Block, drawBlock, gutter, type SetBlock, setBlock } from "./block.ts";
import { type CautionBlock, cautionBlock } from "./caution.ts";
import { blocksFor } from "./lists.ts";
import { padding } from "./paper.ts";
import type { SheetContent } from "./sheet-content.ts";
import { type TitleBlock, titleBlock } from "./title-block.ts";

/** Furniture set for one width or height of the space inside the frame. */
export interface Arrangement {
	/** What it takes away from the space inside the frame, on the right and below. */
	readonly takes: { readonly width: number; readonly height: number };
	/** The least height inside the frame that it can stand in. */
	readonly leastHeight: number;
	/** What it really covers, in square units. */
	readonly covers: number;
	/** Its groups; `inside` is the space inside the frame. */
	readonly place: (inside: Inside, paper: string) => Group[];
}
interface Inside {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

/** Every way to place the furniture of a sheet with that much space inside its frame. */
export function arrangements(content: SheetContent, inside: Inside): Arrangement[] {
	return [oneRow(content, inside.width), twoRows(content, inside.width), column(content, inside.height)].filter(
		(arrangement) => arrangement !== undefined,
	);
}

/** Lists, caution and title block side by side along the foot. */
function oneRow(content: SheetContent, width: number): Arrangement | undefined {
	const title = titleBlock(content, between(400, width * 0.36, 600));
	const room = width - title.width - 2 * padding;
	const caution = cautionBlock(content.caution ?? [], between(270, room * 0.4, 400));
	const list = between(200, room * 0.32, 330);
	const row = setRow(blocksFor(content, { findings: list, legend: 190, notes: list }), room - caution.width, [
		title.height - padding,
		caution.height,
	]);
	if (row === undefined) return undefined;
	const height = Math.max(row.height, caution.height, title.height - padding) + padding;
	return {
		takes: { width: 0, height },
		leastHeight: height,
		covers: row.covers + areaOf(caution) + areaOf(title),
		place: (inside, paper) => {
			const bottom = inside.y + inside.height;
			const corner = { x: inside.x + padding, y: bottom - height };
			const { groups, end } = drawRow(row, corner, room - caution.width);
			return [
				...groups,
				caution.groupAt({ x: end, y: corner.y }),
				title.groupAt({ x: inside.x + inside.width - title.width, y: bottom - title.height }, paper),
			];
		},
	};
}

/** The lists in one row across the sheet, caution and title block in a second one below. */
function twoRows(content: SheetContent, width: number): Arrangement | undefined {
	const title = titleBlock(content, between(400, width * 0.45, 600));
	const room = width - 2 * padding;
	const caution = cautionBlock(content.caution ?? [], Math.min(640, width - title.width - 2 * padding));
	const list = between(200, room * 0.36, 360);
	const row = setRow(blocksFor(content, { findings: list, legend: 200, notes: list }), room, [0]);
	if (row === undefined) return undefined;
	const second = Math.max(caution.height + padding, title.height);
	const height = row.height + padding + second;
	return {
		takes: { width: 0, height },
		leastHeight: height,
		covers: row.covers + areaOf(caution) + areaOf(title),
		place: (inside, paper) => {
			const bottom = inside.y + inside.height;
			const x = inside.x + padding;
			return [
				...drawRow(row, { x, y: bottom - height }, room).groups,
				caution.groupAt({ x, y: bottom - second + (second - padding - caution.height) / 2 }),
				title.groupAt({ x: inside.x + inside.width - title.width, y: bottom - title.height }, paper),
			];
		},
	};
}

/** Everything in one column on the right, the title block at its foot. */
function column(content: SheetContent, height: number): Arrangement | undefined {
	const width = 400;
	const inner = width - padding;
	const title = titleBlock(content, width);
	const caution = cautionBlock(content.caution ?? [], inner);
	const sets = blocksFor(content, { findings: inner, legend: inner, notes: inner })
		.map((block) => setBlock(block, Number.MAX_SAFE_INTEGER))
		.filter((set) => set !== undefined);
	const need = sets.reduce((sum, set) => sum + set.height + padding, padding) + caution.height + padding + title.height;
	if (need > height) return undefined;
	return {
		takes: { width: width + padding, height: 0 },
		leastHeight: need,
		covers: width * need,
		place: (inside, paper) => {
			const x = inside.x + inside.width - width;
			const bottom = inside.y + inside.height;
			const gap = Math.min(60, (inside.height - need) / (sets.length + 1));
			let y = inside.y + padding;
			const groups: Group[] = [];
			for (const set of sets) {
				groups.push(drawBlock(set, { x, y }));
				y += set.height + padding + gap;
			}
			groups.push(caution.groupAt({ x, y: bottom - title.height - padding - caution.height }));
			groups.push(title.groupAt({ x, y: bottom - title.height }, paper));
			return groups;
		},
	};
}

interface Row {
	readonly sets: readonly SetBlock[];
	readonly width: number;
	readonly height: number;
	readonly covers: number;
}

/** Blocks side by side in the lowest row that is no wider than `room`; `heights` are there anyway. Undefined when none is. */
function setRow(blocks: readonly Block[], room: number, heights: readonly number[]): Row | undefined {
	const least = Math.max(40, ...heights);
	for (let allowed = least; allowed < least + highest; allowed += 15) {
		const sets = blocks.map((block) => setBlock(block, allowed)).filter((set) => set !== undefined);
		const width = sets.reduce((sum, set) => sum + set.width + gutter, 0);
		if (sets.length < blocks.length || width > room + gutter) continue;
		return {
			sets,
			width,
			// As high as its highest block, not as high as it was allowed to be.
			height: Math.max(0, ...sets.map((set) => set.height)),
			covers: sets.reduce((sum, set) => sum + set.width * set.height, 0),
		};
	}
	return undefined;
}

/** A row higher than this leaves no room for a drawing. */
const highest = 900;

function drawRow(row: Row, corner: { x: number; y: number }, room: number): { groups: Group[]; end: number } {
	const more = between(0, (room - row.width) / Math.max(1, row.sets.length), 50);
	let x = corner.x;
	const groups = row.sets.map((set) => {
		const group = drawBlock(set, { x, y: corner.y });
		x += set.width + gutter + more;
		return group;
	});
	return { groups, end: x };
}

function areaOf(block: CautionBlock | TitleBlock): number {
	return block.width * block.height;
}

function between(least: number, value: number, most: number): number {
	return Math.max(least, Math.min(value, most));
}
