// The furniture set into the free corners of a drawing: between its branches, beside its short rows, wherever a block fits whole.
import { type Box, boxesMeet, growBox } from "../bounds.ts";
import { coarseCell, Occupancy } from "../occupancy.ts";
import type { Group } from "../scene.ts";
import { drawBlock } from "./block.ts";
import type { FurnitureSet } from "./furniture-set.ts";
import { padding } from "./paper.ts";

/** Furniture that found its places. */
export interface Pockets {
	readonly covers: number;
	readonly place: (paper: string) => Group[];
}

/**
 * Places for all furniture inside `inside`, clear of `taken`: the boxes of the drawing and the heading where they will stand.
 * Undefined when a block finds no room.
 */
export function findPockets(set: FurnitureSet, inside: Box, taken: readonly Box[]): Pockets | undefined {
	const occupancy = new Occupancy(inside, coarseCell);
	for (const box of taken) occupancy.take(growBox(box, clearance));
	const wanted: Placeable[][] = [
		...set
			.blocks(300)
			.map((block) => set.settingsOf(block).map((one) => ({ ...one, draw: (at: Corner) => drawBlock(one, at) }))),
		[420, 340, 280].map((width) => {
			const caution = set.caution(width);
			return { ...caution, draw: caution.groupAt };
		}),
	];
	const need = wanted.reduce((sum, [first]) => sum + (first === undefined ? 0 : first.width * first.height), 0);
	if (need > occupancy.freeShare() * inside.width * inside.height) return undefined;
	for (const width of [inside.width * 0.36, 480, 400]) {
		const title = set.title(width);
		const corner = { x: inside.x + inside.width - title.width, y: inside.y + inside.height - title.height };
		// The outermost squares reach over the frame, where nothing else can stand.
		if (!occupancy.isFree({ ...corner, width: title.width - coarseCell, height: title.height - coarseCell })) continue;
		const placed = [growBox({ ...corner, width: title.width, height: title.height }, clearance)];
		const groups = placeAll(occupancy, inside, wanted, placed);
		if (groups === undefined) continue;
		return {
			covers: need + title.width * title.height,
			place: (paper) => [...groups, title.groupAt(corner, paper)],
		};
	}
	return undefined;
}

/** Every block in its place, or undefined when one finds none. `placed` grows by what is placed. */
function placeAll(
	occupancy: Occupancy,
	inside: Box,
	wanted: readonly (readonly Placeable[])[],
	placed: Box[],
): Group[] | undefined {
	const groups: Group[] = [];
	for (const settings of wanted) {
		const found = findPlace(occupancy, inside, settings, placed);
		if (found === undefined) return undefined;
		const { at, what } = found;
		placed.push(growBox({ ...at, width: what.width, height: what.height }, clearance));
		groups.push(what.draw(at));
	}
	return groups;
}

interface Corner {
	readonly x: number;
	readonly y: number;
}
interface Placeable {
	readonly width: number;
	readonly height: number;
	readonly draw: (at: Corner) => Group;
}

/** Units kept clear around everything. */
const clearance = 12;

/** The highest place for one of the settings, the rightmost of these; settings are tried in their order. */
function findPlace(
	occupancy: Occupancy,
	inside: Box,
	wanted: readonly Placeable[],
	placed: readonly Box[],
): { readonly at: Corner; readonly what: Placeable } | undefined {
	const right = inside.x + inside.width - padding;
	const bottom = inside.y + inside.height - padding;
	const left = inside.x + padding;
	for (const what of wanted) {
		const { width, height } = what;
		const isFree = (x: number, y: number): boolean => {
			const box = { x, y, width, height };
			return occupancy.isFree(box) && !placed.some((other) => boxesMeet(box, other));
		};
		for (let y = inside.y + padding; y + height <= bottom; y += 2 * coarseCell)
			for (let x = right - width; x >= left; x -= 2 * coarseCell) {
				if (!isFree(x, y)) continue;
				// In the left half of the sheet, flush with its left edge where that is free too.
				const flush = x + width / 2 < inside.x + inside.width / 2 && isFree(left, y);
				return { at: { x: flush ? left : x, y }, what };
			}
	}
	return undefined;
}
