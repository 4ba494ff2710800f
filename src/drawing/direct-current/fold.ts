// Whether a wide net is drawn in two storeys: what a fuse block shares out stands below the bank, and its feed runs back to the left.
import { certain } from "../../base/certain.ts";
import type { NetOrder } from "./columns.ts";
import type { DirectBox } from "./direct-box.ts";
import type { DirectNet, Run } from "./net.ts";
import { tagSize } from "./run-tags.ts";

/** A storey: its nodes, and the runs that come down to it. */
export interface Storey {
	readonly nodes: ReadonlySet<string>;
	readonly feeds: readonly Run[];
	/** Those of its nodes that stand left of the fuse block. */
	readonly turned: ReadonlySet<string>;
}

/** The storeys below the first, from the top; none where one is of a better shape. */
export function planStoreys(net: DirectNet, order: NetOrder, boxOf: ReadonlyMap<string, DirectBox>): Storey[] {
	const storeys = net.nodes.flatMap(({ name }) => {
		const storey = order.columnOf(name) === 5 ? storeyFrom(net, order, name) : undefined;
		return storey === undefined ? [] : [{ panel: name, ...storey }];
	});
	if (storeys.length === 0) return [];
	const below = new Set(storeys.flatMap(({ nodes }) => [...nodes]));
	const names = net.nodes.map(({ name }) => name);
	const measure = (some: Iterable<string>): Size => sizeOf(net, order, boxOf, new Set(some));
	const upper = measure(names.filter((name) => !below.has(name)));
	const oneSided = storeys.map(({ nodes }) => measure(nodes));
	const twoSided = storeys.map(({ panel, nodes }, index) => {
		const none = { turned: new Set<string>(), size: certain(oneSided[index], "a size") };
		const block = certain(boxOf.get(panel), "a node's box");
		// A block that is drawn with glands has them where its inside wants them.
		return block.docks.some(({ hasGland }) => hasGland)
			? none
			: (shareOut(net, panel, nodes, measure, block.width) ?? none);
	});
	const shapes = [
		{ paper: paperFor(measure(names)), storeys: [] },
		{ paper: paperFor(stack([upper, ...oneSided])), storeys },
		{
			paper: paperFor(stack([upper, ...twoSided.map(({ size }) => size)])),
			storeys: storeys.map((storey, index) => ({ ...storey, turned: twoSided[index]?.turned ?? storey.turned })),
		},
	];
	return shapes.reduce((best, shape) => (shape.paper < best.paper ? shape : best)).storeys;
}

function stack(parts: readonly Size[]): Size {
	return {
		width: Math.max(...parts.map(({ width }) => width)),
		height: parts.reduce((sum, { height }) => sum + height, channel * (parts.length - 1)),
	};
}

/** The ways of a fuse block on both its walls, longer ones on the right, about as high on either; undefined where there are too few. */
function shareOut(
	net: DirectNet,
	panel: string,
	nodes: ReadonlySet<string>,
	measure: (names: Iterable<string>) => Size,
	panelWidth: number,
): { readonly turned: ReadonlySet<string>; readonly size: Size } | undefined {
	const ways = waysOf(net, panel, nodes).map((way) => ({ way, size: measure(way) }));
	if (ways.length < fewestShared) return undefined;
	const inOrder = ways.toSorted((one, other) => other.size.width - one.size.width);
	const whole = ways.reduce((sum, { size }) => sum + size.height, 0);
	const left: typeof ways = [];
	const right: typeof ways = [];
	let height = 0;
	for (const one of inOrder) {
		const isRight = right.length === 0 || height + one.size.height / 2 <= whole / 2;
		(isRight ? right : left).push(one);
		if (isRight) height += one.size.height;
	}
	if (left.length === 0) return undefined;
	const widest = (side: typeof ways): number => Math.max(...side.map(({ size }) => size.width));
	return {
		turned: new Set(left.flatMap(({ way }) => [...way])),
		size: {
			width: widest(left) + widest(right) + panelWidth + 2 * besideBlock,
			height: Math.max(height, whole - height) + blockHead,
		},
	};
}

/** What hangs on a fuse block, way by way: all that is joined to one another without it. */
function waysOf({ nodes }: DirectNet, panel: string, inside: ReadonlySet<string>): Set<string>[] {
	const byName = new Map(nodes.map((node) => [node.name, node]));
	const seen = new Set([panel]);
	const ways: Set<string>[] = [];
	for (const start of inside) {
		if (seen.has(start)) continue;
		const way = new Set([start]);
		for (const name of way)
			for (const { run, end } of byName.get(name)?.meetings ?? []) {
				const next = run.ends[end === 0 ? 1 : 0];
				if (next !== panel && inside.has(next)) way.add(next);
			}
		for (const name of way) seen.add(name);
		ways.push(way);
	}
	return ways;
}

/** The ground of a sheet that holds so much: one that is too long or too high for a sheet leaves ground empty. */
function paperFor({ width, height }: Size): number {
	return Math.max(width, height * slimmest) * Math.max(height, width / longest);
}

/** What hangs on a fuse block, where nothing but its feed joins it to the rest. */
function storeyFrom({ nodes, runs }: DirectNet, order: NetOrder, panel: string): Storey | undefined {
	const own = nodes.find(({ name }) => name === panel);
	if (own?.kind !== "box" || own.stock.enclosure.sort !== "panel") return undefined;
	const inside = new Set([panel]);
	for (const name of inside)
		for (const { run, end } of nodes.find((node) => node.name === name)?.meetings ?? [])
			if (order.sourceOf(run) === end) inside.add(run.ends[end === 0 ? 1 : 0]);
	const feeds = runs.filter(({ ends: [from, to] }) => inside.has(from) !== inside.has(to));
	const isFeed = (run: Run): boolean => run.ends[order.sourceOf(run) === 0 ? 1 : 0] === panel && run.sort !== "strap";
	return inside.size > 2 && feeds.length > 0 && feeds.length <= mostFeeds && feeds.every(isFeed)
		? { nodes: inside, feeds, turned: new Set() }
		: undefined;
}

interface Size {
	readonly width: number;
	readonly height: number;
}

/** About how much room some nodes take in layers. */
function sizeOf(
	{ runs }: DirectNet,
	order: NetOrder,
	boxOf: ReadonlyMap<string, DirectBox>,
	names: ReadonlySet<string>,
): Size {
	const own = runs.flatMap((run): Way[] => {
		const start = order.startOf(run);
		const [from, to] = [run.ends[start], run.ends[start === 0 ? 1 : 0]];
		return names.has(from) && names.has(to) && from !== to ? [{ from, to, room: tagSize(run)?.width ?? 0 }] : [];
	});
	const layerOf = findLayers(own, order, names);
	const layers: { width: number; height: number; gap: number }[] = [];
	const at = (layer: number) => (layers[layer] ??= { width: 0, height: 0, gap: 0 });
	for (const name of names) {
		const box = certain(boxOf.get(name), "a node's box");
		const layer = at(layerOf(name));
		layer.width = Math.max(layer.width, box.width);
		layer.height += box.height + between;
	}
	// A run over several layers has its tag in the middle of its way.
	for (const { from, to, room } of own) {
		const layer = at(Math.floor((layerOf(from) + layerOf(to) - 1) / 2));
		layer.gap = Math.max(layer.gap, room + 2 * between);
		layer.width += track;
	}
	return {
		width: layers.reduce((sum, { width, gap }) => sum + width + gap, 0),
		height: Math.max(0, ...layers.map(({ height }) => height)),
	};
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

/** Limits of width to height of a sheet's drawing. */
const slimmest = 1.3;
const longest = 2.1;
/** Between boxes, about; and for the feeds of a storey. */
const between = 40;
const channel = 80;
/** From a fuse block to what is on either side, and what its feed and its name take above the ways of both. */
const besideBlock = 120;
const blockHead = 140;
/** What each run adds where many turn between the same boxes. */
const track = 12;
const mostFeeds = 4;
/** With fewer ways than this all leave on the right, as a sheet is read. */
const fewestShared = 4;
