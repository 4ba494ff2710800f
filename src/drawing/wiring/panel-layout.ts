// The inside of a panel: main on top, upright hot bus, breakers beside it, neutral and ground bars as upright rails that
// each circuit passes over straight, what feeds it coming in below.
import { certain } from "../../base/certain.ts";
import { type BoxContent, pointOf, type Tie, type Wire } from "./box-content.ts";
import { studAt } from "./box-frame.ts";
import type { BoxPlan, Gland, Joint, Plate, Route } from "./box-plan.ts";
import { headerHeight, innerMargin } from "./dimensions.ts";
import { barStates, placeBars, placeBus } from "./panel-bars.ts";
import { placeCombs } from "./panel-groups.ts";
import { cutInline, mergeInline } from "./panel-inline.ts";
import { type PanelParts, sortPanel } from "./panel-parts.ts";
import { placePole } from "./panel-plates.ts";
import { type Channel, columnsFor, type PanelEnd, type PanelFrame, routePanel } from "./panel-routes.ts";
import { type PanelRows, planPanelRows, type Target } from "./panel-rows.ts";
import { bracketBreakers } from "./panel-tandems.ts";
import { columnStep, type PanelWidths, setPanelWidths } from "./panel-widths.ts";

/** Lays out a panel; undefined where it holds something that this shape has no place for. */
export function layOutPanel(original: BoxContent, leastWidth: number): BoxPlan | undefined {
	const { content, inlines } = mergeInline(original);
	const parts = sortPanel(content);
	const rows = parts === undefined ? undefined : planPanelRows(content, parts);
	if (parts === undefined || rows === undefined) return undefined;

	const barX: number[] = [];
	const endOf = endFinder(content, parts, rows, barX);
	const states = barStates(content, parts.bars);
	const inlineSides = new Set([...inlines.keys()].map(({ from }) => (from.at === "wall" ? from.side : "left")));
	const widths = setPanelWidths(
		content,
		parts,
		{
			columns: countColumns(content, rows, endOf),
			inline: { left: inlineSides.has("left"), right: inlineSides.has("right") },
			states,
		},
		leastWidth,
	);
	barX.push(...widths.barX);
	const { total, mainX, mainWidth, poleX, poleWidth } = widths;
	const glands = panelGlands(content, rows, total);
	const floor = rows.lastRow + 36;
	const frame = makeFrame(content, rows, widths, glands, endOf, floor);
	const { routes, stubs, studs } = routePanel(frame);
	const joints = jointsOf(rows, routes);
	const cut = cutInline(routes, inlines, rows.rowOf, (side) =>
		side === "left" ? widths.inlineDepth : total - widths.inlineDepth,
	);

	const poles = rows.poles.map((pole) => placePole(content, pole, poleX, poleWidth, "right"));
	const heads = [rows.main, rows.lugs].flatMap((pole) =>
		pole === undefined ? [] : [placePole(content, pole, mainX, mainWidth, "left")],
	);
	const stud = studPlate(content, studs, floor);
	const bars = placeBars(content, parts.bars, states, barX, rows, routes);
	const height = Math.ceil(Math.max(floor + (stud === undefined ? 4 : 24 + innerMargin), bars.lowest + 26));
	const bus = placeBus(content, parts, rows, widths);
	return {
		content: original,
		template: frame.topTracks() > 0 || sharesScrews(rows) ? "fallback" : "panel",
		width: total,
		height,
		glands,
		joints: [...joints, ...cut.joints],
		plates: [...heads, ...poles, ...(stud === undefined ? [] : [stud])],
		routes: cut.routes,
		stubs,
		panel: {
			screws: bars.screws,
			bars: [...bus.bars, ...placeCombs(content.circuit, content.links, rows.poles, poleX), ...bars.bars],
			brackets: bracketBreakers(content.circuit, parts.poles, poles),
			texts: [...bus.texts, ...bars.texts],
			bonds: bars.bonds.map((bond) => ({ ...bond, to: { x: bond.from.x, y: height } })),
		},
	};
}

/** Whether two wires are on one terminal of a breaker or the lugs: the template has one row for each. */
function sharesScrews({ main, lugs, poles }: PanelRows): boolean {
	return [main, lugs, ...poles].some((pole) => pole?.targets.some(({ screws }) => screws.size > 1) === true);
}

/** What each tie of a wire is in the panel. `barX` is filled when the widths are known. */
function endFinder(
	content: BoxContent,
	parts: PanelParts,
	rows: PanelRows,
	barX: readonly number[],
): PanelFrame["endOf"] {
	const targets = new Map<number, Target>();
	for (const pole of [rows.main, rows.lugs, ...rows.poles])
		for (const target of pole?.targets ?? []) targets.set(target.point, target);
	const barOf = new Map(parts.bars.flatMap((bar, index) => bar.points.map((point) => [point, index] as const)));
	return (tie: Tie, wire: Wire): PanelEnd => {
		if (tie.at !== "point") return { sort: "free", state: tie.at === "free" ? tie.state : "loose" };
		const target = targets.get(tie.point);
		if (target !== undefined) return { sort: "target", target, y: certain(target.screws.get(wire), "a screw") };
		const bar = barOf.get(tie.point);
		if (bar !== undefined) return { sort: "bar", x: barX[bar] ?? 0 };
		return content.circuit.points[tie.point]?.kind === "splice"
			? { sort: "splice", point: tie.point }
			: { sort: "body" };
	};
}

function countColumns(content: BoxContent, rows: PanelRows, endOf: PanelFrame["endOf"]): Record<Channel, number> {
	const counts: Record<Channel, number> = { left: 0, middle: 0, right: 0 };
	for (const wire of content.wires) for (const { channel } of columnsFor({ rows, endOf }, wire)) counts[channel]++;
	return counts;
}

function makeFrame(
	content: BoxContent,
	rows: PanelRows,
	widths: PanelWidths,
	glands: readonly Gland[],
	endOf: PanelFrame["endOf"],
	floor: number,
): PanelFrame {
	const next = { ...widths.channels };
	const hand = (channel: Channel): number => {
		const column = next[channel];
		next[channel] += columnStep;
		return column;
	};
	// The wires of one splice stand side by side, so that no other runs through it.
	const kept = new Map<number, number[]>();
	for (const splice of rows.spliceY.keys())
		kept.set(
			splice,
			(content.landings.get(splice) ?? []).map(() => hand("right")),
		);
	let overhead = 0;
	return {
		content,
		rows,
		width: widths.total,
		glands,
		edgeOf: (target) => (target.faces === "left" ? widths.mainX : widths.poleEdge),
		endOf,
		column: ({ channel, splice }) => (splice === undefined ? undefined : kept.get(splice)?.shift()) ?? hand(channel),
		topTrack: () => headerHeight + 9 + overhead++ * 10,
		topTracks: () => overhead,
		floor,
		spliceY: rows.spliceY,
		stubDepth: widths.stubDepth,
	};
}

/** A splice reaches over the columns of all its wires. */
function jointsOf(rows: PanelRows, routes: readonly Route[]): Joint[] {
	const columns = new Map<number, number[]>();
	for (const { wire, points } of routes)
		for (const [tie, at] of [
			[wire.from, points[0]],
			[wire.to, points.at(-1)],
		] as const) {
			const point = pointOf(tie);
			if (point === undefined || at === undefined || !rows.spliceY.has(point)) continue;
			columns.set(point, [...(columns.get(point) ?? []), at.x]);
		}
	return [...columns].map(([point, xs]) => ({
		point,
		columns: xs.sort((one, other) => one - other),
		y: certain(rows.spliceY.get(point), "a splice's height"),
	}));
}

function panelGlands(content: BoxContent, rows: PanelRows, width: number): Gland[] {
	return [...content.left, ...content.right].map((entry) => {
		const ys = entry.wires.map((wire) => certain(rows.rowOf.get(wire), "a core's row"));
		return { entry, x: entry.side === "left" ? 0 : width, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
	});
}

/** The stud on the case, where wires land on it. */
function studPlate(content: BoxContent, studs: readonly { readonly x: number }[], y: number): Plate | undefined {
	const body = content.enclosure.body;
	const xs = studs.map(({ x }) => x);
	if (body === undefined || xs.length === 0) return undefined;
	const [first, last] = [Math.min(...xs), Math.max(...xs)];
	const stud = studAt(content, body, (first + last) / 2, y);
	const terminals = stud.terminals.map((spot) => ({ ...spot, screws: xs.map((x) => ({ x, y })) }));
	return { ...stud, terminals, box: { ...stud.box, x: first - 20, width: last - first + 40 } };
}
