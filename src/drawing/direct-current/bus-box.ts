// A bus: a bar with a stud for each conductor, what comes in on its left and what goes on from its right, in the order that crosses least.
import type { Circuit } from "../../circuit/circuit.ts";
import type { Mark } from "../scene.ts";
import type { Stock } from "../wiring/box-content.ts";
import { wordsOf } from "./device-box.ts";
import {
	type DirectBox,
	type Dock,
	nameStyle,
	noteStyle,
	type SidedMeeting,
	screwMark,
	words,
	wordsWidth,
} from "./direct-box.ts";
import { pointsAt } from "./rows.ts";

/** The box of a bus whose conductors all end on its studs; undefined for anything else. */
export function busBox(circuit: Circuit, stock: Stock, meetings: readonly SidedMeeting[]): DirectBox | undefined {
	const { enclosure, parts, splices, inner } = stock;
	const [bus, ...others] = parts;
	if (bus === undefined || others.length > 0 || splices.length > 0 || inner.length > 0) return undefined;
	const ends: { meeting: SidedMeeting; point: number }[] = [];
	for (const meeting of meetings) {
		const [point, ...more] = pointsAt(circuit, enclosure.name, meeting);
		if (point === undefined || more.length > 0 || !bus.points.includes(point)) return undefined;
		ends.push({ meeting, point });
	}
	const [name = "", ...all] = wordsOf(enclosure, bus, undefined);
	const details = all.slice(0, 2);
	const head = busHead;
	const width =
		Math.max(barWidth, wordsWidth(name, nameStyle), ...details.map((text) => wordsWidth(text, noteStyle))) + 8;
	const most = Math.max(
		2,
		...(["left", "right"] as const).map((side) => ends.filter(({ meeting }) => meeting.side === side).length),
	);
	const barHeight = (most - 1) * studPitch + 2 * studInset;
	const height = head + barHeight;
	const counts = { left: 0, right: 0 };
	const docks = ends.map(({ meeting }): Dock => {
		const y = head + studInset + counts[meeting.side]++ * studPitch;
		return dockAt(meeting, width, y);
	});
	const bar: Mark = {
		kind: "rectangle",
		as: "enclosure",
		of: enclosure.name,
		x: (width - barWidth) / 2,
		y: head,
		width: barWidth,
		height: barHeight,
		radius: 3,
		fill: paintOf(circuit, bus.points),
		stroke: "ink",
		strokeWidth: 1.6,
	};
	const lines = [name, ...details].map((text, index) =>
		words(text, { x: width / 2, y: head - 6 - (details.length - index) * linePitch }, enclosure.name, {
			anchor: "middle",
			...(index === 0 ? { ...nameStyle, paint: "ink" as const } : {}),
		}),
	);
	return {
		name: `box ${enclosure.name}`,
		label: [name, ...details].join(": "),
		span: enclosure.span,
		width,
		height,
		docks,
		freeBelow: head,
		draw: (placed) => {
			const studs = placed.flatMap(({ meeting, tips: [tip] }) => {
				const point = pointsAt(circuit, enclosure.name, meeting)[0];
				return tip === undefined || point === undefined ? [] : [{ point, tip, side: meeting.side }];
			});
			return {
				marks: [
					bar,
					...lines,
					...studs.map(({ point, tip, side }) =>
						words(
							numberOf(circuit, point),
							{ x: tip.x + (side === "left" ? 10 : -10), y: tip.y + 3.8 },
							enclosure.name,
							{
								anchor: side === "left" ? "start" : "end",
								paint: "ink",
							},
						),
					),
				],
				over: studs.map(({ point, tip }) => screwMark(circuit, point, tip)),
				anchors: [
					...studs.map(({ point, tip }) => [circuit.points[point]?.name ?? "", { at: tip }] as const),
					[enclosure.name, { at: { x: width / 2 + barWidth / 2, y: head } }],
					[bus.name, { at: { x: width / 2 + barWidth / 2, y: head } }],
				],
			};
		},
	};
}

function dockAt(meeting: SidedMeeting, width: number, y: number): Dock {
	const isLeft = meeting.side === "left";
	const reach = barWidth / 2 - studDepth;
	return {
		meeting,
		side: meeting.side,
		at: { x: isLeft ? 0 : width, y },
		tips: [{ x: width / 2 + (isLeft ? -reach : reach), y }],
	};
}

/** Positive as a hot bus is painted, negative as a neutral bar, ground as a ground bar: by what its first studs are for. */
function paintOf(circuit: Circuit, points: readonly number[]): "hot-bus" | "neutral-bar" | "ground-bar" {
	const role = circuit.points[points[0] ?? -1]?.role;
	return role === "negative" ? "neutral-bar" : role === "ground" ? "ground-bar" : "hot-bus";
}

/** The number of a stud, as the plan names it. */
function numberOf(circuit: Circuit, index: number): string {
	const point = circuit.points[index];
	return point?.kind === "terminal" ? point.terminal : "";
}

const linePitch = 14;
/** Above the bar: its name and two lines more. */
export const busHead = 48;
const barWidth = 68;
/** From an edge of the bar to the studs on that side. */
const studDepth = 12;
/** Between studs above one another, and from the ends of the bar. */
export const studPitch = 48;
export const studInset = 24;
