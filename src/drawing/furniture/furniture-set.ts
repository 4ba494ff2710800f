// The furniture of one sheet, set for the widths that are asked for; what was set once is not set again.
import { type Block, type SetBlock, setBlock } from "./block.ts";
import { type CautionBlock, cautionBlock } from "./caution.ts";
import { blocksFor } from "./lists.ts";
import type { SheetContent } from "./sheet-content.ts";
import { type TitleBlock, titleBlock } from "./title-block.ts";

/** Furniture by width. */
export class FurnitureSet {
	private readonly content: SheetContent;
	private readonly titles = new Map<number, TitleBlock>();
	private readonly cautions = new Map<number, CautionBlock>();
	private readonly lists = new Map<number, readonly Block[]>();
	private readonly settings = new Map<Block, readonly SetBlock[]>();

	constructor(content: SheetContent) {
		this.content = content;
	}

	/** The title block about `width` wide. */
	title(width: number): TitleBlock {
		return remember(this.titles, Math.round(between(400, width, 600) / 40) * 40, (wide) =>
			titleBlock(this.content, wide),
		);
	}

	/** The caution about `width` wide, no wider than that. */
	caution(width: number): CautionBlock {
		const wide = Math.floor(between(270, width, 640) / 20) * 20;
		return remember(this.cautions, wide, () => cautionBlock(this.content.caution ?? [], wide));
	}

	/** Findings, legend and notes; findings and notes in columns no wider than `width`. */
	blocks(width: number): readonly Block[] {
		const list = Math.floor(between(200, width, 380) / 20) * 20;
		return remember(this.lists, list, () =>
			blocksFor(this.content, { findings: list, legend: Math.min(list, 190), notes: list }),
		);
	}

	/** A block in one column, in two, and so on, as far as its items can be shared out. */
	settingsOf(block: Block): readonly SetBlock[] {
		return remember(this.settings, block, () => shareOut(block));
	}
}

function shareOut(block: Block): SetBlock[] {
	const whole = setBlock(block, Number.MAX_SAFE_INTEGER);
	if (whole === undefined) return [];
	const found = [whole];
	for (let columns = 2; columns <= Math.min(6, block.items.length); columns++)
		// A little more than its share, as items do not break.
		for (const spare of [20, 36, 54]) {
			const set = setBlock(block, whole.height / columns + spare);
			if (set?.columns.length !== columns) continue;
			found.push(set);
			break;
		}
	return found;
}

function remember<Key, Value>(known: Map<Key, Value>, key: Key, make: (key: Key) => Value): Value {
	const there = known.get(key);
	if (there !== undefined) return there;
	const made = make(key);
	known.set(key, made);
	return made;
}

function between(least: number, value: number, most: number): number {
	return Math.max(least, Math.min(value, most));
}
