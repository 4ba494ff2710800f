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
import { drawLeft } from "./draw-left.ts";
import { drawUp } from "./draw-up.ts";
import type { Storey } from "./fold.ts";
import { shortestStep } from "./level-steps.ts";
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
/** What is laid out, so far: a run that is cut between storeys has a way in each, that is open where it was cut. */
export interface LaidNet {
	readonly boxes: readonly PlacedBox[];
	readonly ways: readonly Way[];
}
export interface Way {
	readonly run: Run;
	/** The end of the run that it starts at. */
	readonly start: 0 | 1;
	/** The boxes at its ends. */
	readonly from?: string;
	readonly to?: string;
	readonly points: readonly XY[];
	readonly tag?: Box;
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
	const { graph, boxes, cuts } = makeGraph(net, order, boxOf, storeys);
	// The layout engine takes long to load: only a sheet that it lays out needs it.
	const { layOutGraph } = await import("../wiring/layered.ts");
	// With columns the engine at times finds no layers; without them it always does.
	const laid = (await layOutGraph(graph)) ?? (await layOutGraph({ ...graph, options: withoutColumns }));
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
	const spotOf = ({ node, port }: EngineEnd): { readonly at: XY; readonly box?: string } => {
		const box = placed[node];
		if (box !== undefined) return { at: dockOn(box, certain(box.docks[port], "a dock")).at, box: box.node.name };
		const { x, y } = certain(laid.nodes[node], "a cut's place");
		return { at: { x: Math.round(x), y: Math.round(y) } };
	};
	const ways = graph.edges.map((edge, index): Way => {
		const [from, to] = [spotOf(edge.from), spotOf(edge.to)];
		const way = certain(laid.edges[index], "a way");
		const run = certain(runs[index] ?? cuts[index - runs.length], "a run");
		const start = order.startOf(run);
		return {
			run,
			start: from.box === undefined || from.box === run.ends[start] ? start : start === 0 ? 1 : 0,
			...(from.box === undefined ? {} : { from: from.box }),
			...(to.box === undefined ? {} : { to: to.box }),
			points: snap(from.at, way.bends, to.at),
			...(way.label === undefined ? {} : { tag: way.label }),
		};
	});
	const partOf = new Map(storeys.flatMap(({ nodes: names }, part) => [...names].map((name) => [name, part] as const)));
	const partAt = (name: string): number => partOf.get(name) ?? -1;
	const close = drawUp(drawLeft(slideStuds({ boxes: placed, ways }), partAt), partAt);
	return finish(storeys.length === 0 ? close : stackStoreys(close, storeys));
}

/** Every run with its docks in their places. */
function finish({ boxes, ways }: LaidNet): DirectLayout {
	const byName = new Map(boxes.map((placed) => [placed.node.name, placed]));
	const runs = ways.map(({ run, start, points, tag }): PlacedRun => {
		const dockOf = (end: 0 | 1): PlacedDock => {
			const placed = certain(byName.get(run.ends[end]), "a placed box");
			const dock = placed.docks.find(({ meeting }) => meeting.run === run && meeting.end === end);
			return dockOn(placed, certain(dock, "a dock"));
		};
		const docks = [dockOf(start), dockOf(start === 0 ? 1 : 0)] as const;
		return { run, start, points, docks, ...(tag === undefined ? {} : { tag }) };
	});
	return { boxes, runs };
}

/** The graph of a net as the engine takes it: an edge for each run, then another for each of `cuts`, which arrives in another storey. */
export function makeGraph(
	net: DirectNet,
	order: NetOrder,
	boxOf: ReadonlyMap<string, DirectBox>,
	storeys: readonly Storey[],
): { readonly graph: EngineGraph; readonly boxes: readonly DirectBox[]; readonly cuts: readonly Run[] } {
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
	const engineNodes = boxes.map((box, index) => engineNode(box, order.columnOf(nodes[index]?.name ?? "")));
	const cutAt = (node: EngineNode): EngineEnd => ({ node: engineNodes.push(node) - 1, port: 0 });
	const far = (run: Run): 0 | 1 => (order.startOf(run) === 0 ? 1 : 0);
	const feeds = new Set(storeys.flatMap((storey) => storey.feeds));
	const returns = new Set(storeys.flatMap((storey) => storey.returns));
	const edges = runs.map((run) => {
		const label = tagSize(run);
		const isCut = feeds.has(run) || returns.has(run);
		return {
			from: endOf(run, order.startOf(run)),
			to: isCut ? cutAt(exitNode) : endOf(run, far(run)),
			...(label === undefined ? {} : { label }),
		};
	});
	// A feed of a fuse block enters that itself, wherever it stands.
	const entering = storeys.flatMap((storey) => (storey.panel === undefined ? storey.feeds : []));
	const arrivals = [
		...entering.map((run) => ({ from: cutAt(entryNode), to: endOf(run, far(run)) })),
		...[...returns].map((run) => ({ from: endOf(run, far(run)), to: cutAt(exitNode) })),
	];
	return {
		graph: { options: directOptions, nodes: engineNodes, edges: [...edges, ...arrivals] },
		boxes,
		cuts: [...entering, ...returns],
	};
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

/** Where a run leaves its storey, behind all boxes of that; and where it enters another, before them. */
const exitNode: EngineNode = cutNode("left", "7");
const entryNode: EngineNode = cutNode("right", "0");

function cutNode(side: "left" | "right", partition: string): EngineNode {
	return {
		width: 2,
		height: 0,
		options: { "elk.portConstraints": "FIXED_POS", "elk.partitioning.partition": partition },
		ports: [{ side, at: { x: side === "left" ? 0 : 2, y: 0 } }],
	};
}

function dockOn({ x, y }: PlacedBox, dock: Dock): PlacedDock {
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
	const way = [start, { ...first, y: start.y }, ...middle.slice(1, -1), { ...last, y: end.y }, end];
	// Too short a step to be seen as one is taken out: what follows it stands straight below.
	for (let index = 2; index + 2 < way.length; index++) {
		const [before, at, next] = [way[index - 1], way[index], way[index + 1]];
		if (before === undefined || at === undefined || next === undefined || before.y !== at.y) continue;
		if (Math.abs(at.x - before.x) >= shortestStep || next.x !== at.x) continue;
		way[index] = { x: before.x, y: at.y };
		way[index + 1] = { x: before.x, y: next.y };
	}
	for (let index = 1; index + 2 < way.length; index++) {
		const [start, end] = [way[index], way[index + 1]];
		if (start === undefined || end === undefined || start.x !== end.x) continue;
		if (start.y === end.y || Math.abs(start.y - end.y) >= shortestStep) continue;
		// The stretch that ends at no dock is the one to move.
		const [place, y] = index + 3 < way.length ? [index + 1, start.y] : [index - 1, end.y];
		if (place === 0) continue;
		for (const moved of [place, place + 1]) way[moved] = { x: way[moved]?.x ?? start.x, y };
	}
	return straighten(way);
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
const withoutColumns = { ...directOptions, "elk.partitioning.activate": "false" };
