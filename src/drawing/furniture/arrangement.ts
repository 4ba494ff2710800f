// Where the furniture goes: in a strip along the foot of the sheet, or in a column down its right side.
import type { Group } from "../scene.ts";
import { type Block, drawBlock, gutter, type SetBlock, setBlock } from "./block.ts";
import { type CautionBlock, cautionBlock } from "./caution.ts";
import { blocksFor } from "./lists.ts";
import { padding } from "./paper.ts";
import type { SheetContent } from "./sheet-content.ts";
import { type TitleBlock, titleBlock } from "./title-block.ts";

/** Furniture set for one width or height of the space inside the frame. */
export interface Arrangement {
	/** What it takes away from the space inside the frame, to the right and below. */
	readonly takes: { readonly width: number; readonly height: number };
	/** The least space inside the frame that it can stand in. */
	readonly least: { readonly width: number; readonly height: number };
	/** Its groups; `inside` is the space inside the frame. */
	readonly place: (inside: Inside, paper: string) => Group[];
}
interface Inside {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

/** The furniture along the foot of a space `width` wide; undefined when it cannot stand there. */
export function footArrangement(content: SheetContent, width: number): Arrangement | undefined {
	const title = titleBlock(content, Math.min(600, Math.max(400, width * 0.36)));
	const room = width - title.width - 2 * padding;
	const cautionWidth = Math.min(400, Math.max(250, room * 0.4));
	const caution = cautionBlock(content.caution ?? [], cautionWidth);
	const list = Math.min(330, Math.max(200, room * 0.32));
	const blocks = blocksFor(content, { findings: list, legend: 190, notes: list });
	const least = Math.max(title.height, caution.height);
	for (let height = least; height < least + 900; height += 15) {
		const sets = blocks.map((block) => setBlock(block, height));
		if (sets.some((set) => set === undefined)) continue;
		const placed = sets.filter((set) => set !== undefined);
		const used = placed.reduce((sum, set) => sum + set.width + gutter, 0) + caution.width;
		if (used > room) continue;
		// The strip is as high as its highest block, not as high as it was allowed to be.
		const tallest = Math.max(least, ...placed.map((set) => set.height));
		return foot(title, caution, placed, tallest, room - used);
	}
	return undefined;
}

function foot(
	title: TitleBlock,
	caution: CautionBlock,
	sets: readonly SetBlock[],
	height: number,
	spare: number,
): Arrangement {
	const gap = gutter + Math.min(40, spare / (sets.length + 1));
	return {
		takes: { width: 0, height: height + padding },
		least: { width: 0, height: height + padding },
		place: (inside, paper) => {
			const bottom = inside.y + inside.height;
			const top = bottom - padding - height;
			let x = inside.x + padding;
			const groups: Group[] = [];
			for (const set of sets) {
				groups.push(drawBlock(set, { x, y: top }));
				x += set.width + gap;
			}
			groups.push(caution.groupAt({ x, y: top }));
			groups.push(title.groupAt({ x: inside.x + inside.width - title.width, y: bottom - title.height }, paper));
			return groups;
		},
	};
}

/** The furniture down the right side of a space `height` high; undefined when it cannot stand there. */
export function sideArrangement(content: SheetContent, height: number): Arrangement | undefined {
	const width = 400;
	const inner = width - padding;
	const title = titleBlock(content, width);
	const caution = cautionBlock(content.caution ?? [], inner);
	const blocks = blocksFor(content, { findings: inner, legend: inner, notes: inner });
	const sets = blocks
		.map((block: Block) => setBlock(block, Number.MAX_SAFE_INTEGER))
		.filter((set) => set !== undefined);
	const need = sets.reduce((sum, set) => sum + set.height + padding, padding) + caution.height + padding + title.height;
	if (need > height) return undefined;
	return {
		takes: { width: width + padding, height: 0 },
		least: { width: width + padding, height: need },
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
