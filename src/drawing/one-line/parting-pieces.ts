// Where one line becomes several: a panel's bus with what hangs from it, and a joint with its branches.
import type { NumberedFinding } from "../../base/finding.ts";
import { type Box, boundsOfMark, joinBoxes, moveMark } from "../bounds.ts";
import { badgeRadius } from "../furniture/badge.ts";
import type { Mark } from "../scene.ts";
import { heightOf, labelLines, linesAt, widthOf } from "./label-lines.ts";
import { hang, moveBoxes, type Piece, pack } from "./piece.ts";
import { badgeRow, busWidth, conductorWidth, vertical } from "./step-pieces.ts";
import type { PartingStep } from "./steps.ts";

const branchGap = 10;

const busLabelWidth = 300;

/** From where a line comes in down to the bar. */
export function busHead(step: PartingStep): number {
	return heightOf(labelLines(step.label, busLabelWidth)) + 14;
}

/**
 * The bar lies over the lines that hang from it, its label above on the left; several bars are tied by a riser on their left.
 * It goes at least as far right as `reach`, where a further line comes down on it.
 */
export function busPiece(
	step: PartingStep,
	branches: readonly Piece[],
	findings: readonly NumberedFinding[],
	mostRows: number,
	slack: number,
	reach: number,
): Piece {
	const lines = labelLines(step.label, busLabelWidth);
	const label = widthOf(lines);
	const head = busHead(step);
	const rows = hangRows(branches, mostRows, head, slack);
	const lowest = Math.max(...rows.map((row) => row.right), 0);
	// Far enough left that the label ends before the line that comes in, and that a riser passes all that hangs.
	const room = label + 18 + findings.length * (2 * badgeRadius + 2);
	const riser = rows.length > 1 ? Math.min(...rows.map((row) => joinBoxes(row.boxes).x)) - 16 : 0;
	const left = Math.min(...rows.map((row) => row.left - 18), -room, riser);
	const right = Math.max(lowest + 18, reach + 18, 30);
	const marks: Mark[] = [
		vertical(0, head),
		...linesAt(lines, { x: left, y: 2.5 }, "start"),
		...badgeRow(findings, { x: left + label + 8 + badgeRadius, y: 12 }, 1),
		...rows.map((row) => bar(left - busWidth / 2, row.top, right, row.top)),
		...(rows.length > 1 ? [bar(left, head, left, rows.at(-1)?.top ?? head)] : []),
	];
	const about = {
		name: `bus ${step.label.name}`,
		label: [step.label.name, ...step.label.lines].join(", "),
		sort: "object" as const,
		...(step.span === undefined ? {} : { span: step.span }),
	};
	const hung = rows.flatMap((row) => row.hung);
	return {
		boxes: [...marks.map(boundsOfMark), ...rows.flatMap((row) => row.boxes)],
		height: head,
		draw: (at) => [
			{ ...about, marks: marks.map((mark) => moveMark(mark, at.x, at.y)) },
			...hung.flatMap(({ branch, x, y }) => branch.draw({ x: at.x + x, y: at.y + y })),
		],
	};
}

/** One bar with what hangs from it, around the line that comes in. */
interface HungRow {
	readonly top: number;
	/** The first and the last line that hangs. */
	readonly left: number;
	readonly right: number;
	readonly hung: readonly { readonly branch: Piece; readonly x: number; readonly y: number }[];
	readonly boxes: readonly Box[];
}

/** The branches in rows of about the same number, the first at `head`; a single row stands in the middle under its line. */
function hangRows(branches: readonly Piece[], most: number, head: number, slack: number): HungRow[] {
	const each = Math.max(1, Math.ceil(branches.length / most));
	const rows: HungRow[] = [];
	let top = head;
	for (let from = 0; from < Math.max(1, branches.length); from += each) {
		const row = branches.slice(from, from + each);
		const side = hang(row, branchGap, slack);
		const last = side.at(-1)?.x ?? 0;
		const start = rows[0]?.left ?? -last / 2;
		const y = top;
		const hung = side.map(({ piece, x }) => ({ branch: piece, x: start + x, y }));
		const boxes = hung.flatMap(({ branch, x }) => moveBoxes(branch.boxes, x, y));
		rows.push({ top, left: start, right: start + last, hung, boxes });
		const box = joinBoxes(boxes);
		top = box.y + box.height + 34;
	}
	return rows;
}

function bar(fromX: number, fromY: number, toX: number, toY: number): Mark {
	return {
		kind: "line",
		as: "bus",
		points: [
			{ x: fromX, y: fromY },
			{ x: toX, y: toY },
		],
		stroke: "ink",
		strokeWidth: busWidth,
	};
}

/** The first branch goes straight on, the others leave to the right; a dot where three lines meet. A box it happens in is named. */
export function splitPiece(
	step: PartingStep,
	branches: readonly Piece[],
	findings: readonly NumberedFinding[],
	name: string,
): Piece {
	const lines = labelLines(step.label, 110);
	const labelHeight = heightOf(lines);
	const top = Math.max(16, 8 + labelHeight);
	const axes = pack(branches, branchGap);
	const across = [
		{ x: 0, y: top },
		{ x: axes.at(-1) ?? 0, y: top },
	];
	const marks: Mark[] = [
		vertical(0, top),
		{ kind: "line", as: "conductor", points: across, stroke: "ink", strokeWidth: conductorWidth },
		...axes.slice(0, -1).map(jointAt(top)),
		...linesAt(lines, { x: -12, y: top - labelHeight - 4.5 }, "end"),
		...badgeRow(findings, { x: 12 + badgeRadius, y: top - badgeRadius - 5 }, 1),
	];
	const label = step.label.name === "" ? "" : [step.label.name, ...step.label.lines].join(", ");
	const about = { name, ...(step.span === undefined ? {} : { span: step.span }) };
	return {
		boxes: [
			...marks.map(boundsOfMark),
			...branches.flatMap((branch, index) => moveBoxes(branch.boxes, axes[index] ?? 0, top)),
		],
		height: top,
		draw: (at) => [
			{
				...about,
				...(label === "" ? { sort: "decoration" } : { sort: "object", label }),
				marks: marks.map((mark) => moveMark(mark, at.x, at.y)),
			},
			...branches.flatMap((branch, index) => branch.draw({ x: at.x + (axes[index] ?? 0), y: at.y + top })),
		],
	};
}

function jointAt(y: number): (x: number) => Mark {
	return (x) => ({ kind: "circle", as: "dot", x, y, radius: 3.6, fill: "ink" });
}
