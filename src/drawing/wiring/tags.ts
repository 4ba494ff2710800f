// The tag of a cable: what it is made of above its jacket, its number and length below.
import type { Cable } from "../../circuit/circuit.ts";
import { type Box, growBox } from "../bounds.ts";
import type { TextMark, XY } from "../scene.ts";
import { textBox, textWidth } from "../text-metrics.ts";
import { jacketRadius, shortestCable, strandPitch, type } from "./dimensions.ts";
import type { TakenBoxes } from "./taken-boxes.ts";

/** The length of cable that a tag needs to stand along. */
export function tagRoom(cable: Cable): number {
	return Math.max(shortestCable, Math.ceil(tagWidth(cable)) + jacketRadius + 18);
}

/** Width of a cable's jacket. */
export function jacketWidth(strands: number): number {
	return (strands - 1) * strandPitch + 12;
}

/** The tag at the free stretch of the cable nearest its far end; undefined where nothing is free. */
export function placeTag(
	cable: Cable,
	points: readonly XY[],
	taken: TakenBoxes,
): { marks: TextMark[]; at: XY } | undefined {
	const half = jacketWidth(cable.conductors.length) / 2;
	const width = tagWidth(cable);
	const texts = tagTexts(cable);
	const boxes = texts.map(tagBox);
	for (let index = points.length - 1; index > 0; index--) {
		const [start, end] = [points[index - 1], points[index]];
		if (start === undefined || end === undefined || start.y !== end.y) continue;
		const room = Math.abs(end.x - start.x) - width;
		if (room < 4) continue;
		// In the middle of a straight stretch, and away from the corner of one that turns.
		const corner = index > 1 ? jacketRadius / 2 : 0;
		const middle = (start.x + end.x) / 2 + (end.x > start.x ? corner : -corner);
		for (const shift of [0, -0.25, 0.25, -0.4, 0.4]) {
			const at = { x: middle + shift * room, y: start.y };
			const lines = [at.y - half - 6, at.y + half + 14];
			const isFree = boxes.every((box, line) =>
				taken.isFree({ ...box, x: box.x + at.x, y: box.y + (lines[line] ?? at.y) }),
			);
			if (isFree)
				return {
					marks: texts.map((text, line) => ({ ...text, x: at.x, y: lines[line] ?? at.y })),
					at: { x: middle + shift * room - width / 2 - 16, y: start.y - half - 10 },
				};
		}
	}
	return undefined;
}

/** A tag beside an upright stretch, where no level one has room. */
export function placeTagBeside(
	cable: Cable,
	points: readonly XY[],
	taken: TakenBoxes,
): { marks: TextMark[]; at: XY } | undefined {
	const half = jacketWidth(cable.conductors.length) / 2;
	for (const [index, end] of points.entries()) {
		const start = points[index - 1];
		if (start === undefined || start.x !== end.x) continue;
		for (const side of [1, -1] as const)
			for (let share = 0.5; share < 0.95; share += 0.1) {
				const at = { x: end.x + side * (half + 8), y: start.y + (end.y - start.y) * share };
				const marks = tagTexts(cable).map(
					(text, line): TextMark => ({ ...text, x: at.x, y: at.y + line * 14, anchor: side === 1 ? "start" : "end" }),
				);
				if (marks.every((mark) => taken.isFree(tagBox(mark)))) return { marks, at: { x: at.x, y: at.y - 24 } };
			}
	}
	return undefined;
}

function tagTexts(cable: Cable): TextMark[] {
	const shared = { kind: "text", x: 0, y: 0, anchor: "middle", of: cable.tag } as const;
	return [
		{ ...shared, text: cable.make, size: type.tag, bold: true, paint: "ink" },
		{ ...shared, text: numberText(cable), size: type.note, paint: "ink" },
	];
}

function tagWidth(cable: Cable): number {
	return Math.max(
		textWidth(cable.make, { size: type.tag, bold: true }),
		textWidth(numberText(cable), { size: type.note }),
	);
}

function numberText(cable: Cable): string {
	return cable.lengthText === "" ? cable.tag : `${cable.tag} · ${cable.lengthText}`;
}

function tagBox(mark: TextMark): Box {
	return growBox(textBox(mark), 1.5);
}
