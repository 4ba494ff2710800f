// Places the boxes of the direct-current sheet and routes its runs: one call of the layout engine for the sheet.
import { certain } from "../../base/certain.ts";
import type { Box } from "../bounds.ts";
import type { XY } from "../scene.ts";
import type { EngineEnd, EngineGraph, EngineNode } from "../wiring/engine-graph.ts";
import { mostBoxes, mostCables } from "../wiring/net-layout.ts";
import { straighten } from "../wiring/places.ts";
import { busHead, studInset, studPitch } from "./bus-box.ts";
import type { NetOrder } from "./columns.ts";
import type { DirectBox, Dock } from "./direct-box.ts";
import type { Storey } from "./fold.ts";
import type { DirectNet, DirectNode, Run } from "./net.ts";
import { layOutPlainly } from "./plain-layout.ts";
import { tagSize } from "./run-tags.ts";
import { slideStuds } from "./slide-studs.ts";
import { stackStoreys } from "./storeys.ts";

/** A box in its place, its docks at their final heights, still measured from its corner. */
export interface PlacedBox {
	readonly node: DirectNode;
	readonly box: DirectBox;
	readonly x: number;
	readonly y: number;
	readonly docks: readonly Dock[];
}
/** A run's way from wall to wall, from its drawn start, and the room of its tag. */
export interface PlacedRun {
	readonly run: Run;
	/** The end of the run that its way starts at. */
	readonly start: 0 | 1;
	readonly points: readonly XY[];
	readonly docks: readonly [PlacedDock, PlacedDock];
	readonly tag?: Box;
}
/** A dock on the sheet, with its tips there. */
export interface PlacedDock {
	readonly side: Dock["side"];
	readonly at: XY;
	readonly tips: readonly XY[];
	readonly hasGland: boolean;
}
export interface DirectLayout {
	readonly boxes: readonly PlacedBox[];
	readonly runs: readonly PlacedRun[];
}

/** The layout: by the engine, or in plain columns where the net is too large for it or it fails. */
export async function layOutNet(
	net: DirectNet,
	order: NetOrder,
	boxOf: ReadonlyMap<string, DirectBox>,
	storeys: readonly Storey[],
): Promise<DirectLayout> {
	return (await layOutInLayers(net, order, boxOf, storeys)) ?? layOutPlainly(net, order, boxOf);
}

async function layOutInLayers(
	net: DirectNet,
	order: NetOrder,
	boxOf: ReadonlyMap<string, DirectBox>,
	storeys: readonly Storey[],
): Promise<DirectLayout | undefined> {
	const { nodes, runs } = net;
	if (nodes.length > mostBoxes || runs.length > mostCables) return undefined;
	const { graph, boxes, endOf } = makeGraph(net, order, boxOf, storeys);
	const feeds = storeys.flatMap((storey) => storey.feeds);
	// The layout engine takes long to load: only a sheet that it lays out needs it.
	const { layOutGraph } = await import("../wiring/layered.ts");
	const laid = await layOutGraph(graph);
	if (laid === undefined) return undefined;
	const placed = nodes.map((node, index): PlacedBox => {
		const box = certain(boxes[index], "a box");
		const spot = certain(laid.nodes[index], "a place");
		const docks = box.docks.map((dock, port) => {
			const y = Math.round(spot.ports[port]?.y ?? dock.at.y);
			return box.freeBelow === undefined
				? dock
				: { ...dock, at: { ...dock.at, y }, tips: dock.tips.map((tip) => ({ ...tip, y })) };
		});
		return { node, box, x: Math.round(spot.x), y: Math.round(spot.y), docks };
	});
	const ways = runs.map((run, index): PlacedRun => {
		const start = order.startOf(run);
		const way = certain(laid.edges[index], "a way");
		const from = dockOf(placed, endOf(run, start));
		const to = dockOf(placed, endOf(run, start === 0 ? 1 : 0));
		const exit = laid.nodes[boxes.length + feeds.indexOf(run)];
		const end = exit === undefined || !feeds.includes(run) ? to.at : { x: Math.round(exit.x), y: Math.round(exit.y) };
		return {
			run,
			start,
			points: snap(from.at, way.bends, end),
			docks: [from, to],
			...(way.label === undefined ? {} : { tag: way.label }),
		};
	});
	const straight = slideStuds({ boxes: placed, runs: ways });
	return storeys.length === 0 ? straight : stackStoreys(straight, storeys);
}

/** The graph of a net as the engine takes it, and what leads from what comes back to the net. */
export function makeGraph(
	net: DirectNet,
	order: NetOrder,
	boxOf: ReadonlyMap<string, DirectBox>,
	storeys: readonly Storey[],
): {
	readonly graph: EngineGraph;
	readonly boxes: readonly DirectBox[];
	readonly endOf: (run: Run, end: 0 | 1) => EngineEnd;
} {
	const { nodes, runs } = net;
	const boxes = nodes.map(({ name }) => certain(boxOf.get(name), "a node's box"));
	const place = new Map(nodes.map(({ name }, index) => [name, index]));
	const endOf = (run: Run, end: 0 | 1): EngineEnd => {
		const node = certain(place.get(run.ends[end]), "a run's node");
		const port = certain(boxes[node], "a box").docks.findIndex(
			({ meeting }) => meeting.run === run && meeting.end === end,
		);
		return { node, port };
	};
	const feeds = storeys.flatMap((storey) => storey.feeds);
	const graph: EngineGraph = {
		options: directOptions,
		nodes: [
			...boxes.map((box, index) => engineNode(box, order.columnOf(nodes[index]?.name ?? ""))),
			...feeds.map(() => exitNode),
		],
		edges: runs.map((run) => {
			const start = order.startOf(run);
			const label = tagSize(run);
			const exit = feeds.indexOf(run);
			return {
				from: endOf(run, start),
				to: exit < 0 ? endOf(run, start === 0 ? 1 : 0) : { node: boxes.length + exit, port: 0 },
				...(label === undefined ? {} : { label }),
			};
		}),
	};
	return { graph, boxes, endOf };
}

function engineNode(box: DirectBox, column: number | undefined): EngineNode {
	const isFree = box.freeBelow !== undefined;
	return {
		width: box.width,
		height: box.height,
		options: {
			"elk.portConstraints": isFree ? "FIXED_SIDE" : "FIXED_POS",
			...(isFree ? { "elk.portAlignment.default": "BEGIN" } : {}),
			...(column === undefined ? {} : { "elk.partitioning.partition": String(column) }),
		},
		ports: box.docks.map(({ side, at }) => ({ side, at })),
	};
}

/** Where a feed leaves the first storey: behind all its boxes. */
const exitNode: EngineNode = {
	width: 2,
	height: 0,
	options: { "elk.portConstraints": "FIXED_POS", "elk.partitioning.partition": "7" },
	ports: [{ side: "left", at: { x: 0, y: 0 } }],
};

function dockOf(placed: readonly PlacedBox[], { node, port }: EngineEnd): PlacedDock {
	const { x, y, docks } = certain(placed[node], "a placed box");
	const dock = certain(docks[port], "a dock");
	const move = (at: XY): XY => ({ x: at.x + x, y: at.y + y });
	return { side: dock.side, at: move(dock.at), tips: dock.tips.map(move), hasGland: dock.hasGland === true };
}

/** A way of whole units whose ends lie exactly at the docks. */
function snap(start: XY, bends: readonly XY[], end: XY): XY[] {
	const middle = bends.map(({ x, y }) => ({ x: Math.round(x), y: Math.round(y) }));
	const first = middle[0];
	const last = middle.at(-1);
	if (first === undefined || last === undefined) {
		if (start.y === end.y) return [start, end];
		const x = Math.round((start.x + end.x) / 2);
		return [start, { x, y: start.y }, { x, y: end.y }, end];
	}
	return straighten([start, { ...first, y: start.y }, ...middle.slice(1, -1), { ...last, y: end.y }, end]);
}

/** What is asked of the engine for this sheet; each changes the layout, but for its defaults and its seed. */
export const directOptions: Readonly<Record<string, string>> = {
	"elk.algorithm": "layered",
	"elk.direction": "RIGHT",
	"elk.edgeRouting": "ORTHOGONAL",
	"elk.randomSeed": "1",
	"elk.partitioning.activate": "true",
	"elk.spacing.nodeNode": "36",
	"elk.spacing.edgeNode": "36",
	"elk.spacing.edgeEdge": "24",
	"elk.spacing.edgeLabel": "0",
	"elk.spacing.portPort": String(studPitch),
	// The engine starts one unit above what it is told.
	"elk.spacing.portsSurrounding": `[top=${busHead + studInset + 1},left=0,bottom=0,right=0]`,
	"elk.spacing.componentComponent": "48",
	"elk.aspectRatio": "1.7",
	"elk.layered.edgeLabels.sideSelection": "ALWAYS_UP",
	"elk.layered.spacing.nodeNodeBetweenLayers": "30",
	"elk.layered.spacing.edgeNodeBetweenLayers": "42",
	"elk.layered.spacing.edgeEdgeBetweenLayers": "22",
	"elk.layered.nodePlacement.strategy": "NETWORK_SIMPLEX",
	"elk.layered.thoroughness": "7",
};
