// Wires and sheaths: paper halo, dark casing, coloured core. One path for all halos and casings of a batch, one core per conductor.
import { conductorLook, type Hue } from "../drawing/palette.ts";
import type { JacketMark, WireMark } from "../drawing/scene.ts";
import { bandWidth, casingWidth, haloWidth, sheathWidth, tickWidth } from "../drawing/strokes.ts";
import type { Attributes, Canvas } from "./canvas.ts";
import { batchWires } from "./crossings.ts";
import type { InkPot } from "./ink.ts";
import { figure, roundedPolyline } from "./path-data.ts";

/** Writes wires in their order. */
export function writeWires(canvas: Canvas, wires: readonly WireMark[], inks: InkPot): void {
	for (const batch of batchWires(wires)) writeBatch(canvas, batch, inks);
}

/** Writes sheaths in their order: halo, edge, surface. */
export function writeJackets(canvas: Canvas, jackets: readonly JacketMark[], inks: InkPot): void {
	for (const [jacket, same] of bunch(
		jackets,
		(one, other) => one.colour === other.colour && one.width === other.width,
	)) {
		const d = same.map((mark) => roundedPolyline(mark.points, mark.radius)).join("");
		const stroke = (more: number): Attributes => ({ "stroke-width": figure(jacket.width + more) });
		canvas.add("path", { d, ...inks.stroke("paper"), ...stroke(sheathWidth + haloWidth) });
		canvas.add("path", { d, ...inks.jacketEdge(jacket.colour), ...stroke(sheathWidth) });
		canvas.add("path", { d, ...inks.jacketSurface(jacket.colour), ...stroke(0) });
	}
}

function writeBatch(canvas: Canvas, batch: readonly WireMark[], inks: InkPot): void {
	const ways = batch.map((wire) => ({ wire, d: roundedPolyline(wire.points, wire.radius) }));
	const lit = ways.filter(({ wire }) => wire.finding !== undefined);
	const layer = (chosen: readonly Way[], attributes: Attributes, more: number): void => {
		for (const [first, same] of bunch(chosen, (one, other) => one.wire.width === other.wire.width))
			canvas.add("path", {
				d: same.map((way) => way.d).join(""),
				...attributes,
				"stroke-width": figure(first.wire.width + more),
			});
	};
	layer(lit, inks.stroke("fault-soft"), bandWidth);
	layer(lit, { ...inks.stroke("fault"), "stroke-dasharray": "1.5 6.5" }, tickWidth);
	layer(
		ways.filter(({ wire }) => wire.run !== "strand" && wire.finding === undefined),
		inks.stroke("paper"),
		haloWidth,
	);
	layer(ways, inks.stroke("casing"), casingWidth);
	for (const way of ways) writeCore(canvas, way, inks);
}

interface Way {
	readonly wire: WireMark;
	readonly d: string;
}

/** The coloured core, and over it the pattern that tells the colour without colour. */
function writeCore(canvas: Canvas, { wire, d }: Way, inks: InkPot): void {
	const look = conductorLook(wire.colour);
	const width = (share: number): Attributes => ({ "stroke-width": figure(wire.width * share) });
	const over = (hue: Hue): Attributes => inks.hue(hue);
	canvas.add("path", { d, ...over(look.core), ...width(1) });
	switch (look.pattern) {
		case "blocks":
			canvas.add("path", { d, ...over(look.stripe ?? "yellow"), ...width(1), "stroke-dasharray": "5 5" });
			break;
		case "line":
			canvas.add("path", { d, ...over(look.stripe ?? "black"), ...width(0.36) });
			break;
		case "ticks":
			canvas.add("path", { d, ...inks.stroke("casing"), ...width(1), "stroke-dasharray": "1 5" });
			break;
		case undefined:
	}
}

/** Neighbours that are alike, together with the first of them. */
export function bunch<Item>(
	items: readonly Item[],
	alike: (one: Item, other: Item) => boolean,
): [first: Item, same: Item[]][] {
	const bunches: [Item, Item[]][] = [];
	for (const item of items) {
		const last = bunches.at(-1);
		if (last !== undefined && alike(last[0], item)) last[1].push(item);
		else bunches.push([item, [item]]);
	}
	return bunches;
}
