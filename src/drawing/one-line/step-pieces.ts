// Each step of a one-line diagram as a piece: symbol, line, label and badges, with what they occupy.

import { certain } from "../../base/certain.ts";
import type { NumberedFinding } from "../../base/finding.ts";
import { findSymbol, type SymbolDesign } from "../../symbols/index.ts";
import { type Box, boundsOfMark, moveMark } from "../bounds.ts";
import { badgeMarks, badgeRadius } from "../furniture/badge.ts";
import type { Group, Mark, XY } from "../scene.ts";
import { cableLines, heightOf, labelLines, linesAt } from "./label-lines.ts";
import { cableTexts } from "./labels.ts";
import type { Piece } from "./piece.ts";
import type { CableStep, DeviceStep, FlagStep, JointStep, Label } from "./steps.ts";

/** What steps are drawn with: the findings that mark a name. */
export type FindingsOf = (names: readonly string[]) => readonly NumberedFinding[];

/** Width of a conductor line, the same as of a symbol's own strokes, and of a bus, in units. */
export const conductorWidth = 1.5;
export const busWidth = 5.5;

/** A device on its line, beside it, or at its end. */
export function devicePiece(step: DeviceStep, findingsOf: FindingsOf): Piece {
	const design = certain(findSymbol(step.symbol), `symbol ${step.symbol}`);
	const about = {
		name: `device ${step.parts.join(" ")}${step.label.name === "" ? " outlets" : ""}`,
		label: [step.label.name, ...step.label.lines].filter((text) => text !== "").join(", "),
		span: step.span,
	};
	const badges = findingsOf(step.names);
	switch (step.place) {
		case "tap":
			return piece(about, tapHeight(step, design), (height) => tapMarks(step, design, badges, height));
		case "end":
			return piece(about, 0, () => endMarks(step, design, badges));
		case "start":
		case "through":
			return piece(about, throughHeight(step, design), (height) => throughMarks(step, design, badges, height));
	}
}

/** A device whose way through is that of a further line: its label stands below the line that comes into its side at `level`. */
export function sidePiece(step: DeviceStep, findingsOf: FindingsOf, level: number): Piece {
	const design = certain(findSymbol(step.symbol), `symbol ${step.symbol}`);
	const lines = labelLines(step.label, labelWidth);
	const height = Math.max(design.box.height, level + heightOf(lines) + 14);
	const about = {
		name: `device ${step.parts.join(" ")}`,
		label: [step.label.name, ...step.label.lines].filter((text) => text !== "").join(", "),
		span: step.span,
	};
	return piece(about, height, () => [
		{ kind: "symbol", symbol: step.symbol, of: step.parts[0] ?? "", x: 0, y: 0, scale: 1, paint: "ink" },
		...(design.box.height < height ? [vertical(design.box.height, height)] : []),
		...linesAt(lines, { x: design.box.x + design.box.width, y: level + 6 }, "start"),
		...badgeRow(findingsOf(step.names), { x: design.box.x - 6 - badgeRadius, y: level }, -1),
	]);
}

/** The line between two devices, with its cable to the left. */
export function cablePiece(step: CableStep, findingsOf: FindingsOf): Piece {
	const tags = step.cables.map((cable) => cable.tag);
	const texts = cableTexts(step.cables);
	const { make } = texts;
	const lines = [...texts.lines, ...(step.roughedIn ? ["roughed in"] : [])];
	const span = step.cables[0]?.span;
	const about = {
		name: `cable ${tags.join(" ")}`,
		label: ["cable", make, ...lines].join(" "),
		...(span === undefined ? {} : { span }),
	};
	const middle = cableHeight / 2;
	const slash = [
		{ x: -6, y: middle + 5 },
		{ x: 6, y: middle - 5 },
	];
	const label = cableLines(make, lines);
	return piece(about, cableHeight, () => [
		vertical(0, cableHeight),
		{ kind: "line", as: "leader", points: slash, stroke: "ink", strokeWidth: 1.3 },
		...linesAt(label, { x: -12, y: middle - heightOf(label) / 2 }, "end"),
		...badgeRow(findingsOf(tags), { x: 12 + badgeRadius, y: middle }, 1),
	]);
}

/** A box in which the line is only joined. */
export function jointPiece(step: JointStep, findingsOf: FindingsOf): Piece {
	const about = {
		name: `joint ${step.names.join(" ")}`,
		label: [step.label.name, ...step.label.lines].join(", "),
		span: step.span,
	};
	return piece(about, 40, () => [
		vertical(0, 40),
		{ kind: "circle", as: "dot", x: 0, y: 20, radius: 4, fill: "ink" },
		...labelRight(step.label, { x: 14, y: 20 }),
		...badgeRow(findingsOf(step.names), { x: -12 - badgeRadius, y: 20 }, -1),
	]);
}

/** A reference to what is drawn elsewhere. */
export function flagPiece(step: FlagStep, name: string): Piece {
	if (step.place === "start")
		return piece({ name, label: step.text }, 40, () => [
			...linesAt(labelLines({ name: step.text, lines: [] }, endLabelWidth), { x: 0, y: 1 }, "middle"),
			{ kind: "circle", as: "dot", x: 0, y: 22, radius: 3, stroke: "ink", strokeWidth: 1.3 },
			vertical(25, 40),
		]);
	return piece({ name, label: step.text }, 0, () => [
		vertical(0, 10),
		{ kind: "symbol", symbol: "off-sheet", x: 0, y: 10, scale: 1, paint: "ink" },
		...linesAt(labelLines({ name: step.text, lines: [] }, endLabelWidth), { x: 0, y: 34 }, "middle"),
	]);
}

/** Something drawn below its point, as one group; what it occupies is read off its marks. */
export function piece(
	about: { readonly name: string; readonly label: string; readonly span?: Group["span"] },
	height: number,
	marksFor: (height: number) => readonly Mark[],
): Piece {
	const marks = marksFor(height);
	const { span, ...named } = about;
	return {
		boxes: marks.map(roomOf),
		height,
		draw: (at) => [
			{
				...named,
				...(span === undefined ? {} : { span }),
				sort: "object",
				marks: marks.map((mark) => moveMark(mark, at.x, at.y)),
			},
		],
	};
}

/** A straight line down, from `top` to `bottom`. */
export function vertical(top: number, bottom: number, x = 0): Mark {
	return {
		kind: "line",
		as: "conductor",
		points: [
			{ x, y: top },
			{ x, y: bottom },
		],
		stroke: "ink",
		strokeWidth: conductorWidth,
	};
}

/** Badges in a row that begins at `at` and grows to the right or to the left; either way they read in order. */
export function badgeRow(findings: ReturnType<FindingsOf>, at: XY, direction: 1 | -1): Mark[] {
	const inOrder = direction === 1 ? findings : findings.toReversed();
	return inOrder.flatMap((finding, index) =>
		badgeMarks(
			finding.number,
			{ x: at.x + direction * index * (2 * badgeRadius + 2), y: at.y },
			finding.level,
			finding.accepted !== undefined,
		),
	);
}

const cableHeight = 44;
const labelWidth = 118;
const endLabelWidth = 112;

function labelRight(label: Label, at: XY): Mark[] {
	const lines = labelLines(label, labelWidth);
	return linesAt(lines, { x: at.x, y: at.y - heightOf(lines) / 2 }, "start");
}

function throughHeight(step: DeviceStep, design: SymbolDesign): number {
	return Math.max(design.box.height, heightOf(labelLines(step.label, labelWidth)) + 12);
}

function throughMarks(step: DeviceStep, design: SymbolDesign, badges: ReturnType<FindingsOf>, height: number): Mark[] {
	const top = step.place === "start" ? 0 : (height - design.box.height) / 2;
	const bottom = top + design.box.height;
	const middle = top + design.box.height / 2;
	return [
		...(top > 0 ? [vertical(0, top)] : []),
		...(bottom < height ? [vertical(bottom, height)] : []),
		{ kind: "symbol", symbol: step.symbol, of: step.parts[0] ?? "", x: 0, y: top, scale: 1, paint: "ink" },
		...labelRight(step.label, { x: design.box.x + design.box.width + 7, y: middle }),
		...badgeRow(badges, { x: design.box.x - 6 - badgeRadius, y: middle }, -1),
	];
}

function tapHeight(step: DeviceStep, design: SymbolDesign): number {
	const symbol = design.turns ? design.box.width : design.box.height + 10;
	return Math.max(symbol + 8, heightOf(labelLines(step.label, labelWidth)) + 8);
}

/** Beside the line: turned to face it, or hung from a short arm where it must stay upright. */
function tapMarks(step: DeviceStep, design: SymbolDesign, badges: ReturnType<FindingsOf>, height: number): Mark[] {
	const middle = height / 2;
	const joint = design.turns ? middle : middle - design.box.height / 2;
	const at = design.turns ? { x: 8, y: middle } : { x: 30, y: joint };
	const reach = design.turns ? 8 + design.box.height : 30 + design.box.x + design.box.width;
	return [
		vertical(0, height),
		{
			kind: "line",
			as: "conductor",
			points: [
				{ x: 0, y: joint },
				{ x: at.x, y: joint },
			],
			stroke: "ink",
			strokeWidth: conductorWidth,
		},
		{ kind: "circle", as: "dot", x: 0, y: joint, radius: 3.6, fill: "ink" },
		{
			kind: "symbol",
			symbol: step.symbol,
			of: step.parts[0] ?? "",
			...at,
			scale: 1,
			turn: design.turns ? 270 : 0,
			paint: "ink",
		},
		...labelRight(step.label, { x: reach + 7, y: middle }),
		...badgeRow(badges, { x: -10 - badgeRadius, y: joint }, -1),
	];
}

function endMarks(step: DeviceStep, design: SymbolDesign, badges: ReturnType<FindingsOf>): Mark[] {
	const lines = labelLines(step.label, endLabelWidth);
	return [
		{ kind: "symbol", symbol: step.symbol, of: step.parts[0] ?? "", x: 0, y: 0, scale: 1, paint: "ink" },
		...linesAt(lines, { x: 0, y: design.box.height + 4.5 }, "middle"),
		...badgeRow(badges, { x: design.box.x - 4 - badgeRadius, y: design.box.height / 2 }, -1),
	];
}

/** What a mark keeps others away from: itself and a little air. */
function roomOf(mark: Mark): Box {
	const box = boundsOfMark(mark);
	const air = mark.kind === "text" ? 4 : 2;
	return { x: box.x - air, y: box.y - 2, width: box.width + 2 * air, height: box.height + 4 };
}
