// Wires and sheaths: paper halo, dark casing, coloured core. One path for all halos and casings of a batch, one core per conductor.
import { conductorLook } from "../drawing/palette.ts";
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
	for (const { wire, d } of ways)
		canvas.add("path", { d, ...inks.hue(conductorLook(wire.colour).core), "stroke-width": figure(wire.width) });
	writePatterns(canvas, ways, inks);
}

interface Way {
	readonly wire: WireMark;
	readonly d: string;
}

/** Over the cores what tells their colours without colour: blocks of a second one, a stripe, the ticks of bare metal. */
function writePatterns(canvas: Canvas, ways: readonly Way[], inks: InkPot): void {
	const patterns = new Map<string, { readonly attributes: Attributes; d: string }>();
	for (const { wire, d } of ways) {
		const attributes = patternOf(wire, inks);
		if (attributes === undefined) continue;
		const key = Object.values(attributes).join(" ");
		const same = patterns.get(key);
		if (same === undefined) patterns.set(key, { attributes, d });
		else same.d += d;
	}
	for (const { attributes, d } of patterns.values()) canvas.add("path", { d, ...attributes });
}

function patternOf(wire: WireMark, inks: InkPot): Attributes | undefined {
	const look = conductorLook(wire.colour);
	switch (look.pattern) {
		case "blocks":
			return { ...inks.hue(look.stripe), "stroke-width": figure(wire.width), "stroke-dasharray": "5 5" };
		case "line":
			return { ...inks.hue(look.stripe), "stroke-width": figure(wire.width * 0.36) };
		case "ticks":
			return { ...inks.stroke("casing"), "stroke-width": figure(wire.width), "stroke-dasharray": "1 5" };
		case undefined:
			return undefined;
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
