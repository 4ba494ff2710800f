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
}

/** The storeys below the first, from the top; none where one is of a better shape. */
export function planStoreys(net: DirectNet, order: NetOrder, boxOf: ReadonlyMap<string, DirectBox>): Storey[] {
	const storeys = net.nodes.flatMap(({ name }): Storey[] => {
		const storey = order.columnOf(name) === 5 ? storeyFrom(net, order, name) : undefined;
		return storey === undefined ? [] : [storey];
	});
	const below = new Set(storeys.flatMap(({ nodes }) => [...nodes]));
	const names = net.nodes.map(({ name }) => name);
	const whole = sizeOf(net, order, boxOf, new Set(names));
	const parts = [
		sizeOf(net, order, boxOf, new Set(names.filter((name) => !below.has(name)))),
		...storeys.map(({ nodes }) => sizeOf(net, order, boxOf, nodes)),
	];
	const folded = {
		width: Math.max(...parts.map(({ width }) => width)),
		height: parts.reduce((sum, { height }) => sum + height + channel, 0),
	};
	const off = ({ width, height }: Size): number => Math.abs(Math.log(width / Math.max(1, height) / goodShape));
	return storeys.length > 0 && off(folded) < off(whole) ? storeys : [];
}

/** What hangs on a fuse block, where nothing but its feed joins it to the rest. */
function storeyFrom({ nodes, runs }: DirectNet, order: NetOrder, panel: string): Storey | undefined {
	const own = nodes.find(({ name }) => name === panel);
	if (own?.kind !== "box" || own.stock.enclosure.sort !== "panel") return undefined;
	const inside = new Set([panel]);
	for (const name of inside)
		for (const { run, end } of nodes.find((node) => node.name === name)?.meetings ?? [])
			if (order.startOf(run) === end) inside.add(run.ends[end === 0 ? 1 : 0]);
	const feeds = runs.filter(({ ends: [from, to] }) => inside.has(from) !== inside.has(to));
	const isFeed = (run: Run): boolean => run.ends[order.startOf(run) === 0 ? 1 : 0] === panel && run.sort !== "strap";
	return inside.size > 2 && feeds.length > 0 && feeds.length <= mostFeeds && feeds.every(isFeed)
		? { nodes: inside, feeds }
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
	const startOf = (run: Run): string => run.ends[order.startOf(run)];
	const endOf = (run: Run): string => run.ends[order.startOf(run) === 0 ? 1 : 0];
	const own = runs.filter((run) => names.has(startOf(run)) && names.has(endOf(run)) && startOf(run) !== endOf(run));
	const onward = new Map<string, Run[]>();
	const waits = new Map<string, number>();
	for (const run of own) {
		onward.set(startOf(run), [...(onward.get(startOf(run)) ?? []), run]);
		waits.set(endOf(run), (waits.get(endOf(run)) ?? 0) + 1);
	}
	const left = new Map<string, number>();
	const layer = new Map<string, number>();
	const heights: number[] = [];
	let width = 0;
	const waiting = [...names].filter((name) => !waits.has(name));
	for (const name of waiting) {
		const box = certain(boxOf.get(name), "a node's box");
		const [x, at] = [left.get(name) ?? 0, layer.get(name) ?? 0];
		width = Math.max(width, x + box.width);
		heights[at] = (heights[at] ?? 0) + box.height + between;
		for (const run of onward.get(name) ?? []) {
			const next = endOf(run);
			left.set(next, Math.max(left.get(next) ?? 0, x + box.width + 2 * between + (tagSize(run)?.width ?? 0)));
			layer.set(next, Math.max(layer.get(next) ?? 0, at + 1));
			waits.set(next, (waits.get(next) ?? 1) - 1);
			if (waits.get(next) === 0) waiting.push(next);
		}
	}
	return { width, height: Math.max(0, ...heights) };
}

/** Width to height of the room for a drawing on a landscape sheet. */
const goodShape = 1.7;
/** Between boxes, about; and for the feeds of a storey. */
const between = 40;
const channel = 80;
const mostFeeds = 4;
