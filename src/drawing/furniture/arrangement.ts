// Where the furniture goes: in a strip along the foot of the sheet, in two rows there, or in a column down its right side.
import type { Box } from "../bounds.ts";
import type { Group } from "../scene.ts";
import { drawBlock, gutter, type SetBlock } from "./block.ts";
import type { FurnitureSet } from "./furniture-set.ts";
import { padding } from "./paper.ts";

/** Furniture set for one width or height of the space inside the frame. */
export interface Arrangement {
	/** What it takes away from the space inside the frame, on the right and below. */
	readonly takes: { readonly width: number; readonly height: number };
	/** What it really covers, in square units. */
	readonly covers: number;
	/** Its groups; `inside` is the space inside the frame. */
	readonly place: (inside: Box, paper: string) => Group[];
}

/** Every way to place the furniture of a sheet with that much space inside its frame. */
export function arrangements(set: FurnitureSet, inside: Box): Arrangement[] {
	return [column(set, inside.height), oneRow(set, inside.width), twoRows(set, inside.width)].filter(
		(arrangement) => arrangement !== undefined,
	);
}

/** Lists, caution and title block side by side along the foot. */
function oneRow(set: FurnitureSet, width: number): Arrangement | undefined {
	const title = set.title(width * 0.36);
	const room = width - title.width - 2 * padding;
	const caution = set.caution(Math.min(400, room * 0.4));
	const row = setRow(set, room * 0.32, room - caution.width);
	if (row === undefined || caution.width > room) return undefined;
	const height = Math.max(row.height, caution.height, title.height - padding) + padding;
	return {
		takes: { width: 0, height },
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
function twoRows(set: FurnitureSet, width: number): Arrangement | undefined {
	const title = set.title(width * 0.45);
	const room = width - 2 * padding;
	const caution = set.caution(width - title.width - 2 * padding);
	const row = setRow(set, room * 0.36, room);
	if (row === undefined || caution.width > width - title.width - 2 * padding) return undefined;
	const second = Math.max(caution.height + padding, title.height);
	const height = row.height + padding + second;
	return {
		takes: { width: 0, height },
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
function column(set: FurnitureSet, height: number): Arrangement | undefined {
	const title = set.title(400);
	const inner = title.width - padding;
	const caution = set.caution(inner);
	const sets = set.blocks(inner).flatMap((block) => set.settingsOf(block).slice(0, 1));
	const lists = sets.reduce((sum, list) => sum + list.height + padding, padding);
	const need = lists + caution.height + padding + title.height;
	if (need > height) return undefined;
	return {
		takes: { width: title.width + padding, height: 0 },
		covers: sets.reduce((sum, list) => sum + areaOf(list), areaOf(caution) + areaOf(title)),
		place: (inside, paper) => {
			const x = inside.x + inside.width - title.width;
			const bottom = inside.y + inside.height;
			const gap = (inside.height - need) / Math.max(1, sets.length);
			let y = inside.y + padding;
			const groups: Group[] = [];
			for (const list of sets) {
				groups.push(drawBlock(list, { x, y }));
				y += list.height + padding + gap;
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

/** The lists side by side within `room`: the highest is shared out among one more column as long as that fits. */
function setRow(set: FurnitureSet, list: number, room: number): Row | undefined {
	const settings = set.blocks(list).map((block) => set.settingsOf(block));
	const chosen = settings.map(() => 0);
	const widthOf = (places: readonly number[]): number =>
		places.reduce((sum, place, index) => sum + (settings[index]?.[place]?.width ?? 0) + gutter, 0);
	if (widthOf(chosen) > room + gutter) return undefined;
	for (;;) {
		const heights = chosen.map((place, index) => settings[index]?.[place]?.height ?? 0);
		const highest = heights.indexOf(Math.max(...heights));
		const next = chosen.map((place, index) => (index === highest ? place + 1 : place));
		if (settings[highest]?.[next[highest] ?? 0] === undefined || widthOf(next) > room + gutter) break;
		chosen.splice(0, chosen.length, ...next);
	}
	const sets = chosen.flatMap((place, index) => settings[index]?.slice(place, place + 1) ?? []);
	return {
		sets,
		width: widthOf(chosen),
		height: Math.max(0, ...sets.map((one) => one.height)),
		covers: sets.reduce((sum, one) => sum + areaOf(one), 0),
	};
}

function drawRow(row: Row, corner: { x: number; y: number }, room: number): { groups: Group[]; end: number } {
	const more = Math.max(0, Math.min(50, (room - row.width) / Math.max(1, row.sets.length)));
	let x = corner.x;
	const groups = row.sets.map((set) => {
		const group = drawBlock(set, { x, y: corner.y });
		x += set.width + gutter + more;
		return group;
	});
	return { groups, end: x };
}

function areaOf(block: { readonly width: number; readonly height: number }): number {
	return block.width * block.height;
}
