// What is no box of the plan: the stud of a chassis where its conductor ends, a flag to another sheet, the end of a sheath.
import type { Circuit } from "../../circuit/circuit.ts";
import type { Mark } from "../scene.ts";
import { type DirectBox, noteStyle, type SidedMeeting, screwMark, words, wordsWidth } from "./direct-box.ts";
import type { FlagNode, SheathNode, StubNode } from "./net.ts";
import { pointsAt } from "./rows.ts";

/** A stud of a chassis: the mark of a bond, the name of the stud beside it. */
export function stubBox(
	circuit: Circuit,
	{ name, stock }: StubNode,
	meetings: readonly SidedMeeting[],
): DirectBox | undefined {
	const [meeting, ...others] = meetings;
	const index = meeting === undefined ? undefined : pointsAt(circuit, stock.enclosure.name, meeting)[0];
	if (meeting === undefined || index === undefined || others.length > 0) return undefined;
	const point = circuit.points[index];
	const of = stock.enclosure.name;
	const stud = point?.kind === "terminal" ? ` · stud ${point.terminal}` : "";
	const lines = [`${of}${stud}`, stock.parts[0]?.face.text ?? ""].filter((line) => line !== "");
	const width = 34 + Math.max(...lines.map((line, at) => wordsWidth(line, { ...noteStyle, bold: at === 0 })));
	const isLeft = meeting.side === "left";
	const x = isLeft ? 6 : width - 6;
	const markX = isLeft ? 17 : width - 17;
	const at = { x, y: rowY };
	const marks: Mark[] = [
		{
			kind: "line",
			as: "rule",
			of,
			points: [at, { x: markX, y: rowY }],
			stroke: "ink",
			strokeWidth: 1.5,
		},
		{ kind: "symbol", symbol: "chassis-bond", of, x: markX, y: rowY, scale: 0.8, paint: "ink" },
		...lines.map((line, row) =>
			words(line, { x: isLeft ? 34 : width - 34, y: rowY + (row === 0 ? 16 : 29) }, of, {
				anchor: isLeft ? "start" : "end",
				...(row === 0 ? { bold: true, paint: "ink" as const } : {}),
			}),
		),
	];
	return {
		name: `box ${name}`,
		label: lines.join(": "),
		span: stock.enclosure.span,
		width,
		height: 48,
		docks: [{ meeting, side: meeting.side, at: { x: isLeft ? 0 : width, y: rowY }, tips: [at] }],
		draw: () => ({
			marks,
			over: [screwMark(circuit, index, at)],
			anchors: [
				[point?.name ?? "", { at }],
				[of, { at }],
			],
		}),
	};
}

/** A flag: which box a conductor leads to, and the sheet that one is on. */
export function flagBox({ name, enclosure }: FlagNode, meetings: readonly SidedMeeting[], sheet: string): DirectBox {
	const lines = [`to ${enclosure}`, `sheet ${sheet}`];
	const width = 40 + Math.max(...lines.map((line, row) => wordsWidth(line, { ...noteStyle, bold: row === 0 })));
	const [meeting] = meetings;
	const isLeft = meeting?.side !== "right";
	const [back, front, tip] = isLeft ? [0, width - 14, width] : [width, 14, 0];
	const marks: Mark[] = [
		{
			kind: "line",
			as: "rule",
			of: name,
			points: [
				{ x: back, y: 0 },
				{ x: front, y: 0 },
				{ x: tip, y: 24 },
				{ x: front, y: 48 },
				{ x: back, y: 48 },
				{ x: back, y: 0 },
			],
			stroke: "ink",
			strokeWidth: 1.3,
		},
		...lines.map((line, row) =>
			words(line, { x: isLeft ? 14 : width - 14, y: row === 0 ? 21 : 35 }, name, {
				anchor: isLeft ? "start" : "end",
				...(row === 0 ? { bold: true, paint: "ink" as const } : {}),
			}),
		),
	];
	return {
		name: `flag ${name}`,
		label: `${enclosure} is on another sheet`,
		width,
		height: 48,
		docks: meetings.map((own) => ({
			meeting: own,
			side: own.side,
			at: { x: back, y: 24 },
			tips: own.run.conductors.map(() => ({ x: back, y: 24 })),
		})),
		draw: () => ({ marks, over: [], anchors: [] }),
	};
}

/** Where the cores of a sheath part: a collar, the cores on one side of it and the sheath on the other. */
export function sheathBox({ name }: SheathNode, meetings: readonly SidedMeeting[]): DirectBox {
	const tails = meetings.filter(({ run }) => run.sort === "tail");
	const height = tails.length * tailPitch;
	const middle = height / 2;
	const whole = meetings.find(({ run }) => run.sort !== "tail");
	const order = new Map(whole?.run.conductors.map((conductor, index) => [conductor.index, index]));
	const rankOf = ({ run }: SidedMeeting): number => order.get(run.conductors[0]?.index ?? -1) ?? 0;
	const inOrder = tails.toSorted((one, other) => rankOf(one) - rankOf(other));
	const yOf = (index: number): number => middle + (index - (tails.length - 1) / 2) * tailPitch;
	return {
		name,
		label: "",
		width: sheathWidth,
		height,
		docks: meetings.map((meeting) => {
			const x = meeting.side === "left" ? 0 : sheathWidth;
			const index = inOrder.indexOf(meeting);
			const y = index < 0 ? middle : yOf(index);
			return {
				meeting,
				side: meeting.side,
				at: { x, y },
				tips:
					index < 0
						? inOrder.map((_, row) => ({ x: meeting.side === "left" ? sheathWidth : 0, y: yOf(row) }))
						: [{ x, y }],
			};
		}),
		draw: () => ({ marks: [], over: [], anchors: [] }),
	};
}

const rowY = 12;
const tailPitch = 24;
const sheathWidth = 4;
