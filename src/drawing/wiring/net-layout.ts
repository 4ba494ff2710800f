// Lays out a sheet that is no tree: by the layout engine, or in plain columns where the net is too large for it or it fails.
import type { SheetShare } from "./feed-graph.ts";
import { drawNet, type Net } from "./net.ts";
import { layOutColumns } from "./net-columns.ts";
import type { BoxDrawing } from "./sheet-box.ts";
import type { LaneLayout } from "./tree-layout.ts";

/** The boxes of a share from left to right, as their cables run. */
export async function layOutNet(drawing: BoxDrawing, share: SheetShare): Promise<LaneLayout> {
	const net = drawNet(drawing, share);
	return (await tryEngine(net)) ?? layOutColumns(net);
}

async function tryEngine(net: Net): Promise<LaneLayout | undefined> {
	if (net.boxes.length > mostBoxes || net.cables.length > mostCables) return undefined;
	// The layout engine takes long to load: only a net that it can lay out needs it.
	const { layOutByEngine } = await import("./layered.ts");
	return await layOutByEngine(net);
}

/** The engine's time grows faster than the net: at this size it takes a few seconds, and it cannot be stopped once it runs. */
export const mostBoxes = 400;
export const mostCables = 800;
