// About how much room some nodes of a net take in layers, before anything is laid out.
import { certain } from "../../base/certain.ts";
import type { NetOrder } from "./columns.ts";
import type { DirectBox } from "./direct-box.ts";
import type { DirectNet } from "./net.ts";
import { tagSize } from "./run-tags.ts";

export interface Size {
	readonly width: number;
	readonly height: number;
}
/** The size of a drawing of some nodes. */
export type Estimate = (names: ReadonlySet<string>) => Size;

/** What estimates sizes for a net whose boxes are drawn. */
export function estimateOf(net: DirectNet, order: NetOrder, boxOf: ReadonlyMap<string, DirectBox>): Estimate {
	return (names) => sizeOf(net, order, boxOf, names);
}

function sizeOf(
	{ runs }: DirectNet,
	order: NetOrder,
	boxOf: ReadonlyMap<string, DirectBox>,
	names: ReadonlySet<string>,
): Size {
	const own = runs.flatMap((run): Way[] => {
		const start = order.startOf(run);
		const [from, to] = [run.ends[start], run.ends[start === 0 ? 1 : 0]];
		const isInside = names.has(from) && names.has(to) && from !== to;
		// What leads back to a coil moves nothing.
		const isBack = (order.columnOf(from) ?? 0) > (order.columnOf(to) ?? 6);
		return isInside && !isBack ? [{ from, to, room: tagSize(run)?.width ?? 0 }] : [];
	});
	const boxAt = (name: string): DirectBox => certain(boxOf.get(name), "a node's box");
	const layerOf = findLayers(own, order, names);
	const heights = new Map<number, number>();
	for (const name of names)
		heights.set(layerOf(name), (heights.get(layerOf(name)) ?? 0) + boxAt(name).height + between);
	const leadingTo = new Map<string, Way[]>();
	for (const way of own) {
		const there = leadingTo.get(way.to);
		if (there === undefined) leadingTo.set(way.to, [way]);
		else there.push(way);
	}
	// Layers are drawn together: a box stands as near to those before it as the tags between them allow.
	const rights = new Map<string, number>();
	for (const name of [...names].toSorted((one, other) => layerOf(one) - layerOf(other))) {
		let left = 0;
		const before = leadingTo.get(name) ?? [];
		for (const { from, room } of before)
			left = Math.max(left, (rights.get(from) ?? 0) + room + 2 * between + track * before.length);
		rights.set(name, left + boxAt(name).width);
	}
	return { width: Math.max(0, ...rights.values()), height: Math.max(0, ...heights.values()) };
}

interface Way {
	readonly from: string;
	readonly to: string;
	/** What its tag takes along it. */
	readonly room: number;
}

/** The layer of each node: behind those that lead to it, and behind all of the columns before its own. */
function findLayers(ways: readonly Way[], order: NetOrder, names: ReadonlySet<string>): (name: string) => number {
	const layers = new Map<string, number>();
	const layerOf = (name: string): number => layers.get(name) ?? 0;
	const columns = [...names].map((name) => ({ name, column: order.columnOf(name) }));
	for (let changed = true, round = 0; changed && round < names.size; round++) {
		changed = false;
		const raise = (name: string, layer: number): void => {
			if (layer <= layerOf(name)) return;
			layers.set(name, layer);
			changed = true;
		};
		for (const { from, to } of ways) raise(to, layerOf(from) + 1);
		for (let column = 1; column <= 6; column++) {
			const before = columns.filter((one) => one.column !== undefined && one.column < column);
			const first = Math.max(-1, ...before.map(({ name }) => layerOf(name))) + 1;
			for (const one of columns) if (one.column === column) raise(one.name, first);
		}
	}
	return layerOf;
}

/** Between boxes, about. */
const between = 30;
/** What each run adds where many lead to the same box. */
const track = 12;
