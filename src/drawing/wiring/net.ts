// The boxes and cables of a sheet that is no tree: cables that start in a box leave it on the right, those that end there come in on the left.
import { certain } from "../../base/certain.ts";
import type { Cable } from "../../circuit/circuit.ts";
import type { XY } from "../scene.ts";
import type { Approach, CableEnd } from "./box-content.ts";
import type { FeedNode, SheetShare } from "./feed-graph.ts";
import type { PlacedBox } from "./lanes.ts";
import { slotOrder } from "./panel-parts.ts";
import { type BoxDrawing, drawFlag, drawStock, endKey, type SheetBox } from "./sheet-box.ts";

/** Boxes not yet placed, the cables between them, and which box each cable's end is at. */
export interface Net {
	readonly boxes: readonly SheetBox[];
	readonly cables: readonly Cable[];
	/** By the key of a cable's end. */
	readonly boxOf: ReadonlyMap<string, SheetBox>;
}

/** The net of a share. */
export function drawNet(drawing: BoxDrawing, share: SheetShare): Net {
	const boxes = drawBoxes(drawing, share);
	const boxOf = new Map<string, SheetBox>();
	for (const box of boxes) for (const key of box.glands.keys()) boxOf.set(key, box);
	return { boxes, cables: share.net, boxOf };
}

/** The box that an end of a cable is at. */
export function boxAtEnd(boxOf: Net["boxOf"], cable: Cable, end: 0 | 1): SheetBox {
	return certain(boxOf.get(endKey(cable, end)), "a cable's box");
}

/** Where a cable passes the wall of a placed box. */
export function glandAt({ box, x, y }: PlacedBox, cable: Cable, end: 0 | 1): XY {
	const gland = certain(box.glands.get(endKey(cable, end)), "a cable's gland");
	return { x: x + gland.x, y: y + gland.y };
}

/** From left to right, from top to bottom. */
export function inReadingOrder(boxes: readonly PlacedBox[]): PlacedBox[] {
	return boxes.toSorted((one, other) => one.x - other.x || one.y - other.y);
}

/** Every box with what starts there on its right and what ends there on its left; flags for boxes of other sheets. */
function drawBoxes(drawing: BoxDrawing, share: SheetShare): SheetBox[] {
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
