// Puts stretches on as few parallel tracks as they need, so that none on one track touch.

/** A stretch along the tracks. */
export interface Stretch<Item> {
	readonly item: Item;
	readonly from: number;
	readonly to: number;
}

/** The track of each item, counted from 0: the left-edge rule, shortest first among equals. */
export function packTracks<Item>(stretches: readonly Stretch<Item>[]): Map<Item, number> {
	const ends: number[] = [];
	const tracks = new Map<Item, number>();
	for (const { item, from, to } of stretches.toSorted((one, other) => one.from - other.from || one.to - other.to)) {
		const free = ends.findIndex((end) => end + clearance <= from);
		const track = free < 0 ? ends.length : free;
		ends[track] = to;
		tracks.set(item, track);
	}
	return tracks;
}

/** Free length between two stretches on one track. */
const clearance = 16;
