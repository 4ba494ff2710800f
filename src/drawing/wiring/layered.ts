// The one file that knows the layout engine: places the boxes of a net that is no tree, and routes the cables between them.
import elk, { type ElkExtendedEdge, type ElkNode } from "elkjs/lib/elk.bundled.js";
import { certain, InternalFault } from "../../base/certain.ts";
import type { Cable } from "../../circuit/circuit.ts";
import type { XY } from "../scene.ts";
import type { Approach, CableEnd } from "./box-content.ts";
import { fanDepth, laneGap, shortestCable } from "./dimensions.ts";
import type { FeedNode, SheetShare } from "./feed-graph.ts";
import type { PlacedBox, PlacedCable } from "./lanes.ts";
import { slotOrder } from "./panel-parts.ts";
import { straighten } from "./places.ts";
import { type BoxDrawing, drawFlag, drawStock, endKey, type SheetBox } from "./sheet-box.ts";
import { tagRoom } from "./tags.ts";
import type { LaneLayout } from "./tree-layout.ts";

/** The boxes of a share in layers from left to right, as their cables run. Throws an internal fault where the engine fails. */
export async function layOutNet(drawing: BoxDrawing, share: SheetShare): Promise<LaneLayout> {
	const boxes = drawNet(drawing, share);
	const boxOf = new Map<string, SheetBox>();
	for (const box of boxes) for (const key of box.glands.keys()) boxOf.set(key, box);
	const graph = makeGraph(boxes, share.net, boxOf);
	const placed = await runEngine(graph);
	const placedBoxes = boxes.map((box, index): PlacedBox => {
		const node = certain(placed.children?.[index], "a placed box");
		return { box, x: Math.round(node.x ?? 0), y: Math.round(node.y ?? 0) };
	});
	const placeOf = new Map(placedBoxes.map((one) => [one.box, one]));
	const cables = share.net.map((cable, index): PlacedCable => {
		const [from, to] = ([0, 1] as const).map((end) => certain(boxOf.get(endKey(cable, end)), "a cable's box"));
		const [start, end] = [certain(from, "a box"), certain(to, "a box")];
		const ends = (
			[
				[start, 0],
				[end, 1],
			] as const
		).map(([box, which]) => glandAt(certain(placeOf.get(box), "a place"), cable, which));
		const bends = certain(placed.edges?.[index], "a routed cable").sections?.[0]?.bendPoints ?? [];
		return {
			cable,
			points: snap(certain(ends[0], "a gland"), bends, certain(ends[1], "a gland")),
			from: start,
			to: end,
		};
	});
	const inOrder = placedBoxes.toSorted((one, other) => one.x - other.x || one.y - other.y);
	return { boxes: inOrder, cables };
}

/** Every box with what starts there on its right and what ends there on its left; flags for boxes of other sheets. */
function drawNet(drawing: BoxDrawing, share: SheetShare): SheetBox[] {
	const known = new Set(share.roots.flatMap((root) => root.stock?.enclosure.name ?? []));
	const alone = { right: [], left: [], loops: [] };
	const boxes: SheetBox[] = [];
	const flags: SheetBox[] = [];
	for (const { stock } of share.roots) {
		if (stock === undefined) continue;
		const order = (meeting: CableEnd): number => slotOrder(drawing.circuit, stock, meeting);
		const meetings =
			stock.enclosure.sort === "panel"
				? stock.meetings.toSorted((one, other) => order(one) - order(other))
				: stock.meetings;
		const approaches = meetings.map(
			(meeting): Approach => ({ ...meeting, side: meeting.end === 0 ? "right" : "left" }),
		);
		boxes.push({ ...drawStock(drawing, stock, approaches), ...alone, end: 1 });
		for (const { cable, end } of meetings) {
			const other = end === 0 ? cable.to.name : cable.from.name;
			if (known.has(other)) continue;
			const flag: FeedNode = { flagTo: other, links: [cable], end: end === 0 ? 1 : 0, ...alone };
			flags.push({ ...drawFlag(drawing, flag, end === 0 ? "right" : "left"), ...alone, end: flag.end });
		}
	}
	return [...boxes, ...flags];
}

/** The graph as the engine takes it: ids of our own, sizes that are finite, ports where the glands are. */
function makeGraph(boxes: readonly SheetBox[], net: readonly Cable[], boxOf: ReadonlyMap<string, SheetBox>): ElkNode {
	const idOf = new Map(boxes.map((box, index) => [box, `b${index}`]));
	const portOf = (cable: Cable, end: 0 | 1): string =>
		`${certain(idOf.get(certain(boxOf.get(endKey(cable, end)), "a cable's box")), "a box")}:${endKey(cable, end)}`;
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

async function runEngine(graph: ElkNode): Promise<ElkNode> {
	try {
		return await new elk.default().layout(graph);
	} catch (fault) {
		// The engine's own text can be half a megabyte; its first line says enough.
		const reason = fault instanceof Error ? (fault.message.split("\n")[0] ?? "") : "";
		throw new InternalFault(`the layout engine gave up: ${reason.slice(0, 200)}`);
	}
}

function glandAt({ box, x, y }: PlacedBox, cable: Cable, end: 0 | 1): XY {
	const gland = certain(box.glands.get(endKey(cable, end)), "a cable's gland");
	return { x: x + gland.x, y: y + gland.y };
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
