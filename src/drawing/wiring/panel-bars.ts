// The conducting bars of a panel: the hot bus with a stub to each breaker, neutral and ground rails, and how they are bonded.
import type { Part } from "../../circuit/circuit.ts";
import { growBox } from "../bounds.ts";
import type { XY } from "../scene.ts";
import { type BoxContent, pointOf } from "./box-content.ts";
import type { Bar, PlateText, Route } from "./box-plan.ts";
import { busStep } from "./dimensions.ts";
import type { PanelParts } from "./panel-parts.ts";
import type { PanelRows, PoleRows } from "./panel-rows.ts";
import { busWidth, type PanelWidths } from "./panel-widths.ts";

/** What is written over a bar, and whether it is joined to the case. */
export interface BarState {
	readonly lines: readonly string[];
	readonly bonded: boolean;
	readonly neutral: boolean;
}

/** How each bar stands to the case, by the links of the circuit and by nothing else. */
export function barStates(content: BoxContent, bars: readonly Part[]): BarState[] {
	const body = content.enclosure.body;
	const atCase = new Set<number>();
	for (const { between } of content.links)
		if (between.some((point) => point === body)) for (const point of between) atCase.add(point);
	return bars.map((bar) => {
		const bonded = bar.points.some((point) => atCase.has(point));
		const neutral = bar.face.traits.includes("neutral-bar");
		const state = bonded ? "bonded" : body === undefined && !neutral ? "case not metal" : "isolated";
		const ground = content.circuit.plan.settings.region === "us" ? "GROUND" : "EARTH";
		const head = bar.owner === content.enclosure.name ? undefined : bar.owner;
		return {
			lines: [neutral ? nameOf(content, bar) : ground, head === undefined ? state : `of ${head}`],
			bonded,
			neutral,
		};
	});
}

/** What a bar for returning conductors is called: negative on direct current. */
function nameOf({ circuit }: BoxContent, { points: [point] }: Part): string {
	return circuit.points[point ?? -1]?.role === "negative" ? "NEGATIVE" : "NEUTRAL";
}

/** The rails, long enough for all that lands on them, with their words and the start of each bond to the case. */
export function placeBars(
	content: BoxContent,
	parts: readonly Part[],
	states: readonly BarState[],
	xs: readonly number[],
	rows: PanelRows,
	routes: readonly Route[],
): {
	bars: Bar[];
	screws: { point: number; at: XY }[];
	texts: PlateText[];
	bonds: { from: XY; part: string }[];
	lowest: number;
} {
	const bars: Bar[] = [];
	const screws: { point: number; at: XY }[] = [];
	const texts: PlateText[] = [];
	const bonds: { from: XY; part: string }[] = [];
	const straps = strapsOf(content, parts);
	const top = rows.firstRow - 22;
	let lowest = 0;
	for (const [index, part] of parts.entries()) {
		const state = states[index];
		const x = xs[index];
		if (state === undefined || x === undefined) continue;
		let last = rows.firstRow + 24;
		const own = new Set(part.points);
		for (const { wire, points } of routes)
			for (const [tie, at] of [
				[wire.from, points[0]],
				[wire.to, points.at(-1)],
			] as const) {
				const point = pointOf(tie);
				if (point === undefined || !own.has(point) || at === undefined) continue;
				last = Math.max(last, at.y);
				screws.push({ point, at });
			}
		// A bond leaves from below every row, so that it crosses none.
		const bottom = state.bonded ? Math.max(last, rows.lastRow) + 14 : last + 14;
		lowest = Math.max(lowest, bottom);
		bars.push({
			box: { x: x - railWidth / 2, y: top, width: railWidth, height: bottom - top },
			paint: state.neutral ? "neutral-bar" : "ground-bar",
			of: part.name,
		});
		texts.push({ text: state.lines[0] ?? "", at: { x, y: top - 19 }, anchor: "middle", bold: true });
		texts.push({ text: state.lines[1] ?? "", at: { x, y: top - 7 }, anchor: "middle", soft: true });
		if (state.bonded) bonds.push({ from: { x, y: bottom }, part: part.name });
		const [before, left] = [parts[index - 1], xs[index - 1]];
		if (before !== undefined && left !== undefined && straps.get(before)?.has(part) === true)
			bars.push({
				box: { x: left, y: top + strapDrop, width: x - left, height: strapWidth },
				paint: state.neutral ? "neutral-bar" : "ground-bar",
				of: part.name,
			});
	}
	return { bars, screws, texts, bonds, lowest };
}

/** Which other bars each bar is joined with by straps; only those that have one. */
export function strapsOf({ links }: BoxContent, bars: readonly Part[]): ReadonlyMap<Part, ReadonlySet<Part>> {
	const barAt = new Map(bars.flatMap((bar) => bar.points.map((point) => [point, bar])));
	const straps = new Map<Part, Set<Part>>();
	for (const { nature, between } of links) {
		if (nature !== "solid") continue;
		const [one, other] = between.map((point) => barAt.get(point));
		if (one === undefined || other === undefined || one === other) continue;
		straps.set(one, (straps.get(one) ?? new Set()).add(other));
		straps.set(other, (straps.get(other) ?? new Set()).add(one));
	}
	return straps;
}

/** One upright bar for each leg, fed by the main or its lugs, with a stub to every breaker that is plugged on to it. */
export function placeBus(
	content: BoxContent,
	parts: PanelParts,
	rows: PanelRows,
	frame: PanelWidths,
): { bars: Bar[]; texts: PlateText[] } {
	const { bus } = parts;
	if (bus === undefined) return { bars: [], texts: [] };
	const bars: Bar[] = [];
	const head = rows.main ?? rows.lugs;
	const legs = bus.points.length;
	// The first leg stands nearest the breakers and starts highest, so that no feed crosses a leg.
	const legX = (leg: number): number => frame.busX + (legs - 1 - leg) * busStep;
	const bottoms = bus.points.map((_, leg) => (head?.targets[leg]?.y ?? rows.firstRow) + 20);
	const stubs: Bar[] = [];
	const plugged = legsOf(content, bus);
	for (const pole of rows.poles)
		for (const { leg, y } of stabsOf(content, plugged.get(pole.part.name) ?? [], pole)) {
			bottoms[leg] = Math.max(bottoms[leg] ?? 0, y + stubReach);
			const from = legX(leg) + busWidth / 2 - 1;
			const box = { x: from, y: y - stubReach, width: frame.poleX - from, height: 2 * stubReach };
			const nearer = legX(leg - 1) - busWidth / 2 - stubGap;
			const over = { ...growBox(box, stubGap), x: nearer, width: legX(0) + busWidth / 2 + stubGap - nearer };
			stubs.push({ box, paint: "hot-bus", of: bus.name, ...(leg === 0 ? {} : { over }) });
		}
	const isBridged = areBridged(content, bus);
	// The piece that joins two legs lies below all that is plugged on to them.
	if (isBridged) {
		const lowest = Math.max(...bottoms);
		bottoms.fill(lowest + bridgeDrop + busWidth);
		const x = legX(legs - 1) - busWidth / 2;
		const width = legX(0) + busWidth / 2 - x;
		stubs.push({ box: { x, y: lowest + bridgeDrop, width, height: busWidth }, paint: "hot-bus", of: bus.name });
	}
	for (const [leg] of bus.points.entries()) {
		const feed = head?.targets[leg]?.y ?? rows.firstRow - 20;
		const x = legX(leg);
		const top = feed - stubReach;
		if (head !== undefined) {
			const from = head.part === bus ? frame.mainX : x - 10;
			if (from < x)
				bars.push({ box: { x: from, y: top, width: x - from, height: 2 * stubReach }, paint: "hot-bus", of: bus.name });
		}
		bars.push({
			box: { x: x - busWidth / 2, y: top, width: busWidth, height: (bottoms[leg] ?? feed) - top },
			paint: "hot-bus",
			of: bus.name,
		});
	}
	const isPositive = content.circuit.points[bus.points[0] ?? -1]?.role === "positive";
	const text = isPositive ? "POSITIVE BUS" : legs > 1 ? "HOT BUS A · B" : "HOT BUS";
	const lowest = Math.max(...bottoms);
	return {
		bars: [...stubs, ...bars],
		texts: [{ text, at: { x: frame.poleX - 8, y: lowest + 15 }, anchor: "end", soft: true }],
	};
}

/** Whether the legs of a bus are joined with each other. */
export function areBridged({ links }: BoxContent, bus: Part): boolean {
	return links.some(
		({ nature, between }) => nature === "solid" && between.every((point) => bus.points.includes(point)),
	);
}

/** Which legs each breaker is plugged on to, by its name, in the order of its stabs. */
function legsOf({ circuit, links }: BoxContent, bus: Part): ReadonlyMap<string, readonly number[]> {
	const legAt = new Map(bus.points.map((point, leg) => [point, leg]));
	const legs = new Map<string, number[]>();
	for (const { between, nature } of links) {
		if (nature !== "solid") continue;
		const [one, other] = between;
		for (const [stab, at] of [
			[one, other],
			[other, one],
		] as const) {
			const leg = legAt.get(at);
			const owner = circuit.points[stab];
			if (leg === undefined || owner?.kind !== "terminal") continue;
			const found = legs.get(owner.part);
			if (found === undefined) legs.set(owner.part, [leg]);
			else found.push(leg);
		}
	}
	return legs;
}

/** At what height each pole of a breaker is plugged on to its leg. */
function stabsOf({ circuit }: BoxContent, legs: readonly number[], pole: PoleRows): { leg: number; y: number }[] {
	const hots = pole.targets.filter(({ point }) => {
		const role = circuit.points[point]?.role;
		return role === "hot" || role === "hot2" || role === "hot3";
	});
	return legs.map((leg, rank) => ({ leg, y: hots[rank]?.y ?? pole.top + 16 }));
}

const railWidth = 20;
const stubReach = 4;
/** The piece between bridged legs, below the lowest stub; the strap between two bars, below their upper ends. */
const bridgeDrop = 6;
const strapDrop = 4;
const strapWidth = 6;
/** Between a stub and a leg that it passes over. */
const stubGap = 2.5;
