// Chooses how each node of the direct-current net is drawn, by what is in it.
import type { BoxDrawing } from "../wiring/sheet-box.ts";
import { busBox } from "./bus-box.ts";
import { changeoverBox } from "./changeover-box.ts";
import { deviceBox } from "./device-box.ts";
import type { DirectBox, ExtentOf, SidedMeeting } from "./direct-box.ts";
import { fuseBlockBox } from "./fuse-block-box.ts";
import { inLineBox } from "./in-line-box.ts";
import { insideBox } from "./inside-box.ts";
import type { BoxNode, DirectNode } from "./net.ts";
import { flagBox, sheathBox, stubBox } from "./small-boxes.ts";
import { tapBox } from "./tap-box.ts";

/** The box of a node. `sheetOf` names the wiring sheet that also draws a box; empty where none does. */
export function drawNode(
	drawing: BoxDrawing,
	node: DirectNode,
	meetings: readonly SidedMeeting[],
	sheetOf: (box: string) => string,
	extentOf: ExtentOf,
): DirectBox {
	switch (node.kind) {
		case "sheath":
			return sheathBox(node, meetings);
		case "flag":
			return flagBox(node, meetings, sheetOf(node.enclosure));
		case "stub":
			return stubBox(drawing.circuit, node, meetings) ?? insideBox(drawing, node.stock, meetings);
		case "box":
			return drawBox(drawing, node, meetings, sheetOf(node.name), extentOf);
	}
}

function drawBox(
	drawing: BoxDrawing,
	{ stock }: BoxNode,
	meetings: readonly SidedMeeting[],
	elsewhere: string,
	extentOf: ExtentOf,
): DirectBox {
	const { circuit } = drawing;
	const [part, ...others] = stock.parts;
	const inside = (): DirectBox => insideBox(drawing, stock, meetings);
	if (part === undefined) return inside();
	if (stock.enclosure.sort === "panel") return fuseBlockBox(circuit, stock, meetings, extentOf) ?? inside();
	if (others.length > 0) return inside();
	if (part.face.oneLine === "bus") return busBox(circuit, stock, meetings) ?? inside();
	const reference = elsewhere === "" ? undefined : `AC side: sheet ${elsewhere}`;
	return (
		inLineBox(circuit, stock, meetings, reference) ??
		changeoverBox(circuit, stock, meetings, extentOf) ??
		tapBox(circuit, stock, meetings, drawing.lit) ??
		deviceBox(circuit, stock, meetings, reference, extentOf) ??
		inside()
	);
}
