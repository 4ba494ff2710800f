// The furniture set into the free corners of a drawing: between its branches, beside its short rows, wherever a block fits whole.
import { type Box, growBox } from "../bounds.ts";
import { coarseCell, Occupancy } from "../occupancy.ts";
import type { Group, Placement, XY } from "../scene.ts";
import { drawBlock } from "./block.ts";
import type { FurnitureSet } from "./furniture-set.ts";
import { padding } from "./paper.ts";

/** Furniture that found its places. */
export interface Pockets {
	readonly covers: number;
	readonly place: (paper: string) => Group[];
}

/**
 * Places for all furniture inside `inside`, clear of the drawing's `ink` once it is placed, and of the heading.
 * Undefined when a block finds no room.
 */
export function findPockets(
	set: FurnitureSet,
	inside: Box,
	heading: Box,
	ink: readonly Box[],
	drawing: Placement,
): Pockets | undefined {
	const taken = new Occupancy(growBox(inside, -padding), coarseCell);
	taken.take(heading, clearance);
	for (const box of ink) taken.take(box, clearance, drawing);
	const wanted = placeables(set);
	const need = wanted.reduce((sum, [first]) => sum + (first === undefined ? 0 : first.width * first.height), 0);
	if (need > taken.freeShare() * inside.width * inside.height) return undefined;
	for (const width of [inside.width * 0.36, 480, 400]) {
		const title = set.title(width);
		const corner = { x: inside.x + inside.width - title.width, y: inside.y + inside.height - title.height };
		const titleBox = { ...corner, width: title.width, height: title.height };
		if (!taken.isFree(titleBox)) continue;
		const occupancy = taken.copy();
		occupancy.take(titleBox, clearance);
		const places = placeAll(occupancy, inside, wanted);
		if (places === undefined) continue;
		return {
			covers: need + title.width * title.height,
			place: (paper) => [...places.map(({ what, at }) => what.draw(at)), title.groupAt(corner, paper)],
		};
	}
	return undefined;
}

/** The blocks of a sheet, each with the shapes it can take. */
function placeables(set: FurnitureSet): Placeable[][] {
	return [
		...set
			.blocks(300)
			.map((block) => set.settingsOf(block).map((one) => ({ ...one, draw: (at: XY) => drawBlock(one, at) }))),
		[420, 340, 280].map((width) => {
			const caution = set.caution(width);
			return { ...caution, draw: caution.groupAt, low: true };
		}),
	];
}

interface Placeable {
	readonly width: number;
	readonly height: number;
	readonly draw: (at: XY) => Group;
	/** Stands in the lower left corner where that is free, across from the title block. */
	readonly low?: boolean;
}

interface Place {
	readonly what: Placeable;
	readonly at: XY;
}

/** Units kept clear around everything. */
const clearance = 12;

/** Every block in its place, or undefined when one finds none. `occupancy` grows by what is placed. */
function placeAll(
	occupancy: Occupancy,
	inside: Box,
	wanted: readonly (readonly Placeable[])[],
): readonly Place[] | undefined {
	const places: Place[] = [];
	for (const settings of wanted) {
		const place = findPlace(occupancy, inside, settings);
		if (place === undefined) return undefined;
		occupancy.take({ ...place.at, width: place.what.width, height: place.what.height }, clearance);
		places.push(place);
	}
	return places;
}

/** The highest place for one of the settings, the rightmost of these; settings are tried in their order. */
function findPlace(occupancy: Occupancy, inside: Box, wanted: readonly Placeable[]): Place | undefined {
	const left = inside.x + padding;
	for (const what of wanted) {
		const { width, height } = what;
		const corner = { x: left, y: inside.y + inside.height - padding - height };
		if (what.low === true && occupancy.isFree({ ...corner, width, height })) return { at: corner, what };
		const at = occupancy.findPlace(width, height);
		if (at === undefined) continue;
		// In the left half of the sheet, flush with its left edge where that is free too.
		const isLeft = at.x + width / 2 < inside.x + inside.width / 2;
		const flush = isLeft && occupancy.isFree({ x: left, y: at.y, width, height });
		return { at: flush ? { x: left, y: at.y } : at, what };
	}
	return undefined;
}
