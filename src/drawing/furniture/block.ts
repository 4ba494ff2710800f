// Blocks of furniture: a heading and items that are set in one column or several. Sizes are known before anything is placed.
import type { Group, Mark, XY } from "../scene.ts";

/** One item of a block: its height, and its marks once its upper left corner is known. */
export interface Item {
	readonly height: number;
	readonly marksAt: (corner: XY) => readonly Mark[];
}

/** A list with a heading, to be set in columns of one width. */
export interface Block {
	readonly name: string;
	readonly label: string;
	readonly width: number;
	readonly heading: string;
	readonly items: readonly Item[];
}

/** A block set in columns. */
export interface SetBlock {
	readonly block: Block;
	readonly width: number;
	readonly height: number;
	readonly columns: readonly (readonly Item[])[];
}

/** Units between two columns, and between two blocks. */
export const gutter = 30;
const headingHeight = 20;

/** The block in as many columns as it needs to stay within `height`; undefined when one item alone is higher. */
export function setBlock(block: Block, height: number): SetBlock | undefined {
	const columns: Item[][] = [[]];
	let used = headingHeight;
	let tallest = used;
	for (const item of block.items) {
		if (used + item.height > height) {
			if ((columns.at(-1) ?? []).length === 0) return undefined;
			columns.push([]);
			used = headingHeight;
			if (used + item.height > height) return undefined;
		}
		columns.at(-1)?.push(item);
		used += item.height;
		tallest = Math.max(tallest, used);
	}
	return { block, columns, height: tallest, width: columns.length * (block.width + gutter) - gutter };
}

/** The group of a set block with its upper left corner at `corner`. */
export function drawBlock(set: SetBlock, corner: XY): Group {
	const marks: Mark[] = [
		{
			kind: "text",
			text: set.block.heading,
			x: corner.x,
			y: corner.y + 11,
			size: 11.5,
			bold: true,
			anchor: "start",
			paint: "ink",
		},
	];
	set.columns.forEach((items, column) => {
		const x = corner.x + column * (set.block.width + gutter);
		let y = corner.y + headingHeight;
		for (const item of items) {
			marks.push(...item.marksAt({ x, y }));
			y += item.height;
		}
	});
	return { name: set.block.name, sort: "furniture", label: set.block.label, marks };
}
