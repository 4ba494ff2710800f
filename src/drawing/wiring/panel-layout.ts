// The inside of a panel: main on top, upright hot bus, breakers beside it, neutral and ground bars as upright rails that
// each circuit passes over straight, what feeds it coming in below.
import { certain } from "../../base/certain.ts";
import { textWidth } from "../text-metrics.ts";
import { type BoxContent, pointOf, type Tie, type Wire } from "./box-content.ts";
import { codeRoom, hasFreeEnd, stubRoom, studAt } from "./box-frame.ts";
import type { BoxPlan, Gland, Joint, Plate } from "./box-plan.ts";
import { fanDepth, headerHeight, innerMargin, type as sizes } from "./dimensions.ts";
import { barStates, placeBars, placeBus } from "./panel-bars.ts";
import { sortPanel } from "./panel-parts.ts";
import { placePole, poleWidth } from "./panel-plates.ts";
import { type Channel, channelsFor, type PanelEnd, type PanelFrame, routePanel } from "./panel-routes.ts";
import { type PanelRows, planPanelRows, type Target } from "./panel-rows.ts";
import { bracketTandems } from "./panel-tandems.ts";

/** Lays out a panel; undefined where it holds something that this shape has no place for. */
export function layOutPanel(content: BoxContent, leastWidth: number): BoxPlan | undefined {
	const parts = sortPanel(content);
	const rows = parts === undefined ? undefined : planPanelRows(content, parts);
	if (parts === undefined || rows === undefined) return undefined;

	const targets = new Map<number, Target>();
	for (const pole of [rows.main, rows.lugs, ...rows.poles])
		for (const target of pole?.targets ?? []) targets.set(target.point, target);
	const barOf = new Map(parts.bars.flatMap((bar, index) => bar.points.map((point) => [point, index] as const)));
	const barX: number[] = [];
	const endOf = (tie: Tie, wire: Wire): PanelEnd => {
		if (tie.at !== "point") return { sort: "free", state: tie.at === "free" ? tie.state : "loose" };
		const target = targets.get(tie.point);
		if (target !== undefined) return { sort: "target", target, y: certain(target.screws.get(wire), "a screw") };
		const bar = barOf.get(tie.point);
		if (bar !== undefined) return { sort: "bar", x: barX[bar] ?? 0 };
		return content.circuit.points[tie.point]?.kind === "splice"
			? { sort: "splice", point: tie.point }
			: { sort: "body" };
	};

	const counts = countColumns(content, rows, endOf);
	const room = codeRoom(content);
	const left = content.left.length === 0 ? innerMargin : fanDepth + room + (hasFreeEnd(content, "left") ? stubRoom : 0);
	const mainX = left + counts.left * columnStep + (counts.left > 0 ? 14 : 0);
	const legs = Math.max(1, parts.bus?.points.length ?? 1);
	const width = poleWidth(parts);
	const busX = mainX + width - 24 - (legs - 1) * busStep;
	const poleX = busX + (legs - 1) * busStep + busWidth / 2 + poleGap;
	const poleEdge = poleX + width;
	const states = barStates(content, parts.bars);
	let x = poleEdge + Math.max(room + 14, 20 + counts.middle * columnStep + 14);
	for (const [index, state] of states.entries()) {
		const half = Math.max(...state.lines.map((line) => textWidth(line, { size: sizes.note, bold: true }))) / 2 + 5;
		x += Math.max(half, barPitch / 2);
		barX[index] = x;
		x += Math.max(half, barPitch / 2);
	}
	const railEdge = x - 6;
	const rightRoom = content.right.length === 0 ? 0 : room + fanDepth + (hasFreeEnd(content, "right") ? stubRoom : 0);
	const total = Math.ceil(
		Math.max(
			leastWidth,
			railEdge + counts.right * columnStep + (counts.right > 0 ? 14 : 0) + rightRoom + innerMargin / 2,
		),
	);

	const next: Record<Channel, number> = { left, middle: poleEdge + 22, right: railEdge + 16 };
	const tracks = { count: 0 };
	const glands = panelGlands(content, rows, total);
	const joints = new Map<number, Joint>();
	for (const [point, y] of rows.spliceY) joints.set(point, { point, columns: [], y });
	const floor = rows.lastRow + 36;
	const frame: PanelFrame = {
		content,
		rows,
		width: total,
		glands,
		edgeOf: (target) => (target.faces === "left" ? mainX : poleEdge),
		endOf,
		column: (channel) => {
			const column = next[channel];
			next[channel] += columnStep;
			return column;
		},
		topTrack: () => headerHeight + 12 + tracks.count++ * 12,
		floor,
		joints,
		stubDepth: fanDepth + room,
	};
	const { routes, stubs, studs } = routePanel(frame);
	for (const { wire, points } of routes)
		for (const [tie, at] of [
			[wire.from, points[0]],
			[wire.to, points.at(-1)],
		] as const) {
			const joint = joints.get(pointOf(tie) ?? -1);
			if (joint !== undefined && at !== undefined)
				joints.set(joint.point, { ...joint, columns: [...joint.columns, at.x].sort((one, other) => one - other) });
		}

	const poles = rows.poles.map((pole) => placePole(content, pole, poleX, width, "right"));
	const heads = [rows.main, rows.lugs].flatMap((pole) =>
		pole === undefined ? [] : [placePole(content, pole, mainX, width, "left")],
	);
	const stud = studPlate(content, studs, floor);
	const bars = placeBars(parts.bars, states, barX, rows, routes);
	const height = Math.ceil(Math.max(floor + (stud === undefined ? 4 : 24 + innerMargin), bars.lowest + 26));
	const bus = placeBus(content, parts, rows, { busX, busWidth, busStep, mainX, mainWidth: width, poleX });
	return {
		content,
		width: total,
		height,
		glands,
		joints: [...joints.values()].filter((joint) => joint.columns.length > 0),
		plates: [...heads, ...poles, ...(stud === undefined ? [] : [stud])],
		routes,
		stubs,
		panel: {
			screws: bars.screws,
			bars: [...bus.bars, ...bars.bars],
			brackets: bracketTandems(parts.poles, poles),
			texts: [...bus.texts, ...bars.texts],
			bonds: bars.bonds.map((bond) => ({ ...bond, to: { x: bond.from.x, y: height } })),
		},
	};
}

function countColumns(content: BoxContent, rows: PanelRows, endOf: PanelFrame["endOf"]): Record<Channel, number> {
	const counts: Record<Channel, number> = { left: 0, middle: 0, right: 0 };
	for (const wire of content.wires) for (const channel of channelsFor({ rows, endOf }, wire)) counts[channel]++;
	return counts;
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

const columnStep = 24;
const barPitch = 54;
const busWidth = 12;
const busStep = 24;
const poleGap = 20;
