// Wires and sheaths: a paper halo where they cross, dark casing, coloured core. One path for all casings of a batch, one core per conductor.
import { conductorLook } from "../drawing/palette.ts";
import type { JacketMark, RectangleMark, WireMark } from "../drawing/scene.ts";
import { bandWidth, casingWidth, haloWidth, sheathWidth, tickWidth } from "../drawing/strokes.ts";
import type { Attributes, Canvas } from "./canvas.ts";
import { batchWires, passesOver } from "./crossings.ts";
import type { InkPot } from "./ink.ts";
import { figure, roundedPolyline } from "./path-data.ts";

/** Writes wires in their order. A wire that passes over an earlier one or over one of `bars` leaves a gap in it. */
export function writeWires(
	canvas: Canvas,
	wires: readonly WireMark[],
	bars: readonly RectangleMark[],
	inks: InkPot,
): void {
	const under: WireMark[] = [];
	for (const batch of batchWires(wires)) {
		const over = new Set(batch.filter((wire) => wire.run !== "strand" && passesOver(wire, under, bars)));
		writeBatch(canvas, batch, over, inks);
		under.push(...batch);
	}
}

/** Writes sheaths in their order: edge and surface, and under them the gap in what those of `crossing` pass over. */
export function writeJackets(
	canvas: Canvas,
	jackets: readonly JacketMark[],
	crossing: ReadonlySet<string>,
	inks: InkPot,
): void {
	for (const [jacket, same] of bunch(
		jackets,
		(one, other) => one.colour === other.colour && one.width === other.width,
	)) {
		const ways = same.map((mark) => ({ mark, d: roundedPolyline(mark.points, mark.radius) }));
		const layer = (chosen: readonly { readonly d: string }[], attributes: Attributes, more: number): void => {
			if (chosen.length === 0) return;
			const d = chosen.map((way) => way.d).join("");
			canvas.add("path", { d, ...attributes, "stroke-width": figure(jacket.width + more) });
		};
		layer(
			ways.filter(({ mark }) => crossing.has(mark.of)),
			inks.stroke("paper"),
			sheathWidth + haloWidth,
		);
		layer(ways, inks.jacketEdge(jacket.colour), sheathWidth);
		layer(ways, inks.jacketSurface(jacket.colour), 0);
	}
}

function writeBatch(canvas: Canvas, batch: readonly WireMark[], over: ReadonlySet<WireMark>, inks: InkPot): void {
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
		ways.filter(({ wire }) => over.has(wire) && wire.finding === undefined),
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
