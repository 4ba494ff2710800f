// The one file that knows the layout engine: places boxes that hang together as no tree does, and routes what runs between them.
import elk, { type ElkExtendedEdge, type ElkNode } from "elkjs/lib/elk.bundled.js";
import { certain } from "../../base/certain.ts";
import type { Cable } from "../../circuit/circuit.ts";
import type { XY } from "../scene.ts";
import { fanDepth, laneGap, shortestCable } from "./dimensions.ts";
import type { EngineGraph, EngineLayout } from "./engine-graph.ts";
import type { PlacedBox, PlacedCable } from "./lanes.ts";
import { boxAtEnd, glandAt, inReadingOrder, type Net } from "./net.ts";
import { straighten } from "./places.ts";
import { endKey, type SheetBox } from "./sheet-box.ts";
import { tagRoom } from "./tags.ts";
import type { LaneLayout } from "./tree-layout.ts";

/** The boxes of a net in layers from left to right, as their cables run; undefined where the engine fails. */
export async function layOutByEngine({ boxes, cables, boxOf }: Net): Promise<LaneLayout | undefined> {
	const placed = await runEngine(makeGraph(boxes, cables, boxOf));
	if (placed === undefined) return undefined;
	const placedBoxes = boxes.map((box, index): PlacedBox => {
		const node = certain(placed.children?.[index], "a placed box");
		return { box, x: Math.round(node.x ?? 0), y: Math.round(node.y ?? 0) };
	});
	const placeOf = new Map(placedBoxes.map((one) => [one.box, one]));
	const ways = cables.map((cable, index): PlacedCable => {
		const [from, to] = [boxAtEnd(boxOf, cable, 0), boxAtEnd(boxOf, cable, 1)];
		const start = glandAt(certain(placeOf.get(from), "a place"), cable, 0);
		const end = glandAt(certain(placeOf.get(to), "a place"), cable, 1);
		const bends = certain(placed.edges?.[index], "a routed cable").sections?.[0]?.bendPoints ?? [];
		return { cable, points: snap(start, bends, end), from, to };
	});
	return { boxes: inReadingOrder(placedBoxes), cables: ways };
}

/** The graph as the engine takes it: ids of our own, sizes that are finite, ports where the glands are. */
function makeGraph(boxes: readonly SheetBox[], net: readonly Cable[], boxOf: ReadonlyMap<string, SheetBox>): ElkNode {
	const idOf = new Map(boxes.map((box, index) => [box, `b${index}`]));
	const portOf = (cable: Cable, end: 0 | 1): string =>
		`${certain(idOf.get(boxAtEnd(boxOf, cable, end)), "a box")}:${endKey(cable, end)}`;
	return {
		id: "sheet",
		layoutOptions: {
			...engineOptions,
			"elk.layered.spacing.nodeNodeBetweenLayers": String(Math.max(shortestCable, ...net.map(tagRoom)) + 20),
		},
		children: boxes.map((box, index) => ({
			id: `b${index}`,
			width: box.width,
			height: box.height,
			layoutOptions: { "elk.portConstraints": "FIXED_POS" },
			ports: [...box.glands].map(([key, { x, y }]) => ({
				id: `b${index}:${key}`,
				x,
				y,
				width: 0,
				height: 0,
				layoutOptions: { "elk.port.side": x === 0 ? "WEST" : "EAST" },
			})),
		})),
		edges: net.map(
			(cable, index): ElkExtendedEdge => ({
				id: `c${index}`,
				sources: [portOf(cable, 0)],
				targets: [portOf(cable, 1)],
			}),
		),
	};
}

/** Lays out a graph in layers; undefined where the engine fails. */
export async function layOutGraph({ options, nodes, edges }: EngineGraph): Promise<EngineLayout | undefined> {
	const portId = ({ node, port }: { readonly node: number; readonly port: number }): string => `n${node}:${port}`;
	const placed = await runEngine({
		id: "sheet",
		layoutOptions: { ...options },
		children: nodes.map(({ width, height, options: own, ports }, node) => ({
			id: `n${node}`,
			width,
			height,
			layoutOptions: { ...own },
			ports: ports.map(({ side, at }, port) => ({
				id: portId({ node, port }),
				...at,
				width: 0,
				height: 0,
				layoutOptions: { "elk.port.side": side === "left" ? "WEST" : "EAST" },
			})),
		})),
		edges: edges.map(
			({ from, to, label }, index): ElkExtendedEdge => ({
				id: `e${index}`,
				sources: [portId(from)],
				targets: [portId(to)],
				...(label === undefined
					? {}
					: { labels: [{ id: `l${index}`, text: "tag", ...label, layoutOptions: { ...labelOptions } }] }),
			}),
		),
	});
	if (placed === undefined) return undefined;
	return {
		nodes: nodes.map(({ ports }, node) => {
			const found = certain(placed.children?.[node], "a placed box");
			return {
				x: found.x ?? 0,
				y: found.y ?? 0,
				ports: ports.map(({ at }, port) => {
					const moved = found.ports?.[port];
					return { x: moved?.x ?? at.x, y: moved?.y ?? at.y };
				}),
			};
		}),
		edges: edges.map(({ label }, index) => {
			const found = certain(placed.edges?.[index], "a routed way");
			const room = found.labels?.[0];
			return {
				bends: (found.sections?.[0]?.bendPoints ?? []).map(({ x, y }) => ({ x, y })),
				...(label === undefined || room === undefined ? {} : { label: { x: room.x ?? 0, y: room.y ?? 0, ...label } }),
			};
		}),
	};
}

/** The engine says what it cannot do by throwing, at times out of its depths: there is always a plainer layout. */
async function runEngine(graph: ElkNode): Promise<ElkNode | undefined> {
	try {
		return await new elk.default().layout(graph);
	} catch {
		return undefined;
	}
}

/** A way of whole units whose ends lie exactly at the glands; a jog too short to be seen as one is taken out. */
function snap(start: XY, bends: readonly XY[], end: XY): XY[] {
	const middle = bends.map(({ x, y }) => ({ x: Math.round(x), y: Math.round(y) }));
	const first = middle[0];
	const last = middle.at(-1);
	if (first === undefined || last === undefined)
		return start.y === end.y
			? [start, end]
			: straighten([
					start,
					{ x: Math.round((start.x + end.x) / 2), y: start.y },
					{ x: Math.round((start.x + end.x) / 2), y: end.y },
					end,
				]);
	const way = [start, { ...first, y: start.y }, ...middle.slice(1, -1), { ...last, y: end.y }, end];
	return straighten(way);
}

/** A label stands over the middle of its way. */
const labelOptions = { "elk.edgeLabels.placement": "CENTER" };

/** What is asked of the engine: the first four name its defaults and its seed, each of the others changes the layout. */
export const engineOptions: Readonly<Record<string, string>> = {
	"elk.algorithm": "layered",
	"elk.direction": "RIGHT",
	"elk.edgeRouting": "ORTHOGONAL",
	"elk.randomSeed": "1",
	"elk.spacing.nodeNode": String(laneGap + 16),
	"elk.spacing.edgeNode": String(fanDepth),
	"elk.layered.spacing.edgeNodeBetweenLayers": String(fanDepth),
	"elk.layered.spacing.edgeEdgeBetweenLayers": String(fanDepth),
};
