// What a laid-out box consists of, mark by mark: case, bars, plates, wires, screws, splices, free ends, glands.
import type { Circuit } from "../../circuit/circuit.ts";
import { findSymbol } from "../../symbols/index.ts";
import type { Mark, TextMark, WireMark, XY } from "../scene.ts";
import { type BoxContent, isCore } from "./box-content.ts";
import type { Bar, BoxPlan, Gland, Joint, PanelWork, Plate, PlateText, Route, Stub } from "./box-plan.ts";
import { headerHeight, screwRadius, spliceReach, strandPitch, type, wireRadius, wireWidth } from "./dimensions.ts";

/** Everything of a box but its words above and its letter codes, in paint order. */
export function boxMarks(content: BoxContent, plan: BoxPlan, lit: ReadonlyMap<string, number>): Mark[] {
	const { circuit } = content;
	return [
		...caseMarks(content, plan),
		...plan.plates.map((plate) => plateMark(circuit, plate)),
		...(plan.panel === undefined ? [] : panelMarks(content, plan.panel)),
		...wireMarks(plan.routes, lit),
		...plan.plates.flatMap((plate) => plateDetails(circuit, plate)),
		...(plan.panel?.screws ?? []).map(({ point, at }) => screwMark(circuit, point, at)),
		...plan.joints.flatMap((joint) => jointMarks(circuit, joint)),
		...plan.stubs.flatMap(stubMarks),
		...plan.glands.map(glandMark),
	];
}

function caseMarks(content: BoxContent, plan: BoxPlan): Mark[] {
	const { enclosure } = content;
	const open = enclosure.sort === "open";
	return [
		{
			kind: "rectangle",
			as: "enclosure",
			of: enclosure.name,
			template: plan.template,
			x: 0,
			y: 0,
			width: plan.width,
			height: plan.height,
			radius: enclosure.sort === "panel" ? 4 : 10,
			fill: enclosure.sort === "panel" ? "panel" : "enclosure",
			stroke: "ink",
			strokeWidth: enclosure.sort === "panel" ? 2.2 : 1.6,
			...(open ? { dashed: true } : {}),
		},
		{
			kind: "line",
			as: "rule",
			of: enclosure.name,
			points: [
				{ x: 1, y: headerHeight },
				{ x: plan.width - 1, y: headerHeight },
			],
			stroke: "faint",
			strokeWidth: 1,
		},
	];
}

function panelMarks(content: BoxContent, panel: PanelWork): Mark[] {
	const of = content.enclosure.name;
	return [
		...panel.brackets.flatMap(({ box, text, at }): Mark[] => [
			{ kind: "rectangle", as: "plate", of, ...box, radius: 4, stroke: "soft", strokeWidth: 1, dashed: true },
			textMark({ text, at, anchor: "middle", soft: true }, of),
		]),
		...panel.bonds.flatMap(({ from, to, part }): Mark[] => [
			{ kind: "line", as: "bus", of: part, points: [from, to], stroke: "green", strokeWidth: 5 },
			{
				kind: "circle",
				as: "dot",
				of: part,
				x: to.x,
				y: to.y,
				radius: 4.5,
				fill: "green",
				stroke: "ink",
				strokeWidth: 1,
			},
		]),
		...panel.bars.filter(({ over }) => over === undefined).map(barMark),
		// A gap in what is passed over, as wires leave one.
		...panel.bars.flatMap(({ over }): Mark[] =>
			over === undefined ? [] : [{ kind: "rectangle", as: "plate", of, ...over, fill: "panel" }],
		),
		...panel.bars.filter(({ over }) => over !== undefined).map(barMark),
		...panel.texts.map((text) => textMark(text, of)),
	];
}

function barMark({ box, paint, of }: Bar): Mark {
	return { kind: "rectangle", as: "bar", of, ...box, radius: 2, fill: paint, stroke: "ink", strokeWidth: 1 };
}

/** A device that is yet to come has a broken, lighter edge. */
function plateMark(circuit: Circuit, plate: Plate): Mark {
	const planned = circuit.partByName.get(plate.of)?.coming === true;
	return {
		kind: "rectangle",
		as: "item",
		of: plate.of,
		...plate.box,
		radius: 4,
		fill: "item",
		stroke: planned ? "soft" : "ink",
		strokeWidth: 1.3,
		...(planned ? { dashed: true } : {}),
	};
}

/** Cores first, pigtails over what they cross; a sleeve of another colour where an end is re-marked. */
function wireMarks(routes: readonly Route[], lit: ReadonlyMap<string, number>): Mark[] {
	const rank = (route: Route): number => (isCore(route.wire) ? 0 : 1);
	return routes
		.toSorted((one, other) => rank(one) - rank(other))
		.flatMap(({ wire: { conductor, end }, points }): Mark[] => {
			const finding = lit.get(conductor.name);
			const mark: WireMark = {
				kind: "wire",
				of: conductor.name,
				points,
				colour: conductor.colour,
				width: wireWidth,
				radius: wireRadius,
				run: conductor.sort === "core" ? "run" : "pigtail",
				finding,
			};
			const { marked } = conductor.ends[end];
			return marked === undefined ? [mark] : [mark, { ...mark, points: sleeve(points), colour: marked, run: "strand" }];
		});
}

/** A short piece of a way, just before its end. Painted as a strand is, without a halo that would cut its wire. */
function sleeve(points: readonly XY[]): XY[] {
	const [last, before] = [points.at(-1), points.at(-2)];
	if (last === undefined || before === undefined) return [];
	const length = Math.hypot(last.x - before.x, last.y - before.y);
	const at = (back: number): XY => ({
		x: last.x + ((before.x - last.x) * back) / length,
		y: last.y + ((before.y - last.y) * back) / length,
	});
	return [at(Math.min(length, screwRadius + 10)), at(Math.min(length, screwRadius + 2))];
}

function plateDetails(circuit: Circuit, plate: Plate): Mark[] {
	const marks: Mark[] = [];
	const paint = circuit.partByName.get(plate.of)?.coming === true ? "soft" : "ink";
	for (const points of plate.leads)
		marks.push({ kind: "line", as: "rule", of: plate.of, points, stroke: paint, strokeWidth: contactWidth });
	for (const { symbol, at, turn } of plate.symbols)
		marks.push({
			kind: "symbol",
			symbol,
			of: plate.of,
			x: at.x,
			y: at.y,
			scale: 1,
			turn,
			paint,
		});
	for (const { point, screws, letter, letterAt, anchor } of plate.terminals) {
		const name = circuit.points[point]?.name ?? "";
		const fill = screwPaint(circuit, point);
		const [first] = screws;
		const last = screws.at(-1);
		if (first !== undefined && last !== undefined && screws.length > 1)
			marks.push({
				kind: "rectangle",
				as: "plate",
				of: name,
				x: Math.min(first.x, last.x) - 3,
				y: Math.min(first.y, last.y) - 3,
				width: Math.abs(last.x - first.x) + 6,
				height: Math.abs(last.y - first.y) + 6,
				radius: 3,
				fill,
				stroke: "ink",
				strokeWidth: 1,
			});
		for (const at of screws) marks.push(screwMark(circuit, point, at));
		if (letter !== "")
			marks.push({
				kind: "text",
				...letterAt,
				text: letter,
				size: type.letter,
				bold: true,
				anchor,
				paint: "ink",
				of: plate.of,
			});
	}
	for (const text of plate.texts) marks.push(textMark(text, plate.of));
	return marks;
}

function screwMark(circuit: Circuit, point: number, at: XY): Mark {
	return {
		kind: "circle",
		as: "terminal",
		of: circuit.points[point]?.name ?? "",
		...at,
		radius: screwRadius,
		fill: screwPaint(circuit, point),
		stroke: "ink",
		strokeWidth: 1.2,
	};
}

function screwPaint(circuit: Circuit, point: number): "brass" | "silver" | "green" | "dark" {
	const found = circuit.points[point];
	const screw = found?.kind === "terminal" ? found.screw : undefined;
	if (screw === "brass" || screw === "silver" || screw === "green" || screw === "dark") return screw;
	if (found?.role === "ground") return "green";
	return found?.role === "neutral" || found?.role === "negative" ? "silver" : "brass";
}

/** A splice is plain and grey, whatever it joins: its connector for one column, else a bar with a mark or a connector at each port. */
function jointMarks(circuit: Circuit, { point, columns, y }: Joint): Mark[] {
	const splice = circuit.points[point];
	const of = splice?.name ?? "";
	const [first = 0] = columns;
	const last = columns.at(-1) ?? first;
	const named = splice?.kind === "splice" ? `splice-${splice.connector}` : lever;
	const symbol = findSymbol(named) === undefined ? lever : named;
	const connectorAt = (x: number): Mark => ({ kind: "symbol", symbol, of, x, y, scale: 1, paint: "ink" });
	if (last === first) return [connectorAt(first)];
	const isLever = symbol === lever;
	const reach = isLever ? spliceReach - 1 : 4;
	return [
		{
			kind: "rectangle",
			as: "item",
			of,
			x: first - spliceReach + 1,
			y: y - reach,
			width: last - first + 2 * spliceReach - 2,
			height: 2 * reach,
			radius: 4,
			fill: "gland",
			stroke: "ink",
			strokeWidth: 1.2,
		},
		...columns.map(
			(x): Mark => (isLever ? { kind: "circle", as: "dot", of, x, y, radius: 2.4, fill: "ink" } : connectorAt(x)),
		),
	];
}

function stubMarks({ wire, at, heading, state }: Stub): Mark[] {
	const turn = { right: 0, down: 90, left: 180, up: 270 } as const;
	const step = { right: [1, 0], down: [0, 1], left: [-1, 0], up: [0, -1] } as const;
	const [dx, dy] = step[heading];
	const level = dy === 0;
	const text: TextMark = {
		kind: "text",
		text: state,
		x: at.x + dx * 18 + (level ? 0 : 12),
		y: at.y + dy * 8 + 3.8,
		size: type.note,
		anchor: heading === "left" ? "end" : "start",
		paint: "ink",
		of: wire.conductor.name,
	};
	return [
		{
			kind: "symbol",
			symbol: state === "capped" ? "conductor-capped" : "conductor-loose",
			of: wire.conductor.name,
			x: at.x + dx * 7,
			y: at.y + dy * 7,
			scale: 1,
			turn: turn[heading],
			paint: "ink",
			label: `${wire.conductor.name} ${state}`,
		},
		text,
	];
}

function glandMark({ entry, x, y }: Gland): Mark {
	const height = entry.wires.length * strandPitch + 16;
	return {
		kind: "rectangle",
		as: "gland",
		of: entry.cable.tag,
		x: x - glandReach,
		y: y - height / 2,
		width: 2 * glandReach,
		height,
		radius: 2,
		fill: "gland",
		stroke: "ink",
		strokeWidth: 1.1,
	};
}

function textMark(text: PlateText, of: string): TextMark {
	return {
		kind: "text",
		...text.at,
		text: text.text,
		size: type.note,
		...(text.bold === true ? { bold: true } : {}),
		anchor: text.anchor,
		paint: text.soft === true ? "soft" : "ink",
		of,
	};
}

const lever = "splice-lever";
/** What contacts are drawn with. */
const contactWidth = 1.5;
/** Half the width of a gland: how far it stands out of the wall. */
export const glandReach = 5;
