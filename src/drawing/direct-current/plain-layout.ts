// The direct-current sheet in plain columns, where the layout engine fails or the net is too large for it.
import { certain } from "../../base/certain.ts";
import type { Cable } from "../../circuit/circuit.ts";
import type { Box } from "../bounds.ts";
import type { XY } from "../scene.ts";
import { layOutColumns } from "../wiring/net-columns.ts";
import { endKey, type SheetBox } from "../wiring/sheet-box.ts";
import type { NetOrder } from "./columns.ts";
import type { DirectBox, Dock } from "./direct-box.ts";
import type { DirectLayout, PlacedDock, PlacedRun } from "./lay-out-net.ts";
import type { DirectNet, Run } from "./net.ts";
import { tagSize } from "./run-tags.ts";

/** The boxes a column for each step from the battery; every run has tracks of its own. */
export function layOutPlainly(
	{ nodes, runs }: DirectNet,
	order: NetOrder,
	boxOf: ReadonlyMap<string, DirectBox>,
): DirectLayout {
	const cableOf = new Map(runs.map((run) => [run, standIn(run, runs)]));
	const nodeOf = new Map<SheetBox, number>();
	const boxAt = new Map<string, SheetBox>();
	for (const [index, { name }] of nodes.entries()) {
		const box = certain(boxOf.get(name), "a node's box");
		const keyOf = ({ meeting: { run, end } }: Dock): string =>
			endKey(certain(cableOf.get(run), "a run's cable"), order.startOf(run) === end ? 0 : 1);
		const glands = new Map(box.docks.map((dock) => [keyOf(dock), dock.at]));
		const { width, height } = box;
		const sheetBox: SheetBox = { name, width, height, marks: [], glands, right: [], left: [], loops: [], end: 1 };
		nodeOf.set(sheetBox, index);
		for (const key of glands.keys()) boxAt.set(key, sheetBox);
	}
	const laid = layOutColumns({ boxes: [...nodeOf.keys()], cables: [...cableOf.values()], boxOf: boxAt });
	const places = new Map(laid.boxes.map(({ box, x, y }) => [nodes[nodeOf.get(box) ?? -1]?.name, { x, y }]));
	return {
		boxes: nodes.map((node) => {
			const box = certain(boxOf.get(node.name), "a node's box");
			return { node, box, ...certain(places.get(node.name), "a place"), docks: box.docks };
		}),
		runs: runs.map((run, index): PlacedRun => {
			const start = order.startOf(run);
			const dockOf = (end: 0 | 1): PlacedDock => {
				const name = run.ends[end];
				const dock = certain(boxOf.get(name), "a box").docks.find(
					({ meeting }) => meeting.run === run && meeting.end === end,
				);
				return placeDock(certain(dock, "a dock"), certain(places.get(name), "a place"));
			};
			const { points } = certain(laid.cables[index], "a way");
			const tag = tagRoom(run, points);
			return {
				run,
				start,
				points,
				docks: [dockOf(start), dockOf(start === 0 ? 1 : 0)],
				...(tag === undefined ? {} : { tag }),
			};
		}),
	};
}

/** A cable by the key of the run, for a layout that knows cables only. */
function standIn(run: Run, runs: readonly Run[]): Cable {
	const cable = run.cable ?? certain(runs.find((one) => one.cable !== undefined)?.cable, "any cable");
	return { ...cable, tag: run.key };
}

function placeDock(dock: Dock, by: XY): PlacedDock {
	const move = ({ x, y }: XY): XY => ({ x: x + by.x, y: y + by.y });
	return { side: dock.side, at: move(dock.at), tips: dock.tips.map(move), hasGland: dock.hasGland === true };
}

/** Above the longest level stretch. */
function tagRoom(run: Run, points: readonly XY[]): Box | undefined {
	const size = tagSize(run);
	if (size === undefined) return undefined;
	let best: { readonly x: number; readonly y: number; readonly length: number } | undefined;
	for (const [index, end] of points.entries()) {
		const start = points[index - 1];
		if (start === undefined || start.y !== end.y) continue;
		const length = Math.abs(end.x - start.x);
		if (best === undefined || length > best.length) best = { x: (start.x + end.x) / 2, y: end.y, length };
	}
	return best === undefined ? undefined : { ...size, x: best.x - size.width / 2, y: best.y - size.height };
}
