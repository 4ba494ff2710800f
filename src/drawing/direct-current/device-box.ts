// A device by itself in its case: a load with its words beside its mark, or a machine, a battery, a converter with terminals on both walls.
import type { Circuit, Enclosure, Part } from "../../circuit/circuit.ts";
import type { Mark } from "../scene.ts";
import type { Stock } from "../wiring/box-content.ts";
import { faceOf } from "../wiring/face-symbols.ts";
import {
	type BoxInk,
	caseMark,
	type DirectBox,
	type ExtentOf,
	leadMark,
	nameStyle,
	noteStyle,
	onGrid,
	type SidedMeeting,
	screwMark,
	terminalLetters,
	words,
	wordsWidth,
} from "./direct-box.ts";
import { docksOf, type Row, rowHeights, rowsOf } from "./rows.ts";

/** The box of a device that all conductors end on; undefined where more is in it. `reference`: where its other side is drawn. */
export function deviceBox(
	circuit: Circuit,
	{ enclosure, parts, splices, inner }: Stock,
	meetings: readonly SidedMeeting[],
	reference: string | undefined,
	extentOf: ExtentOf,
): DirectBox | undefined {
	const [device, ...others] = parts.filter((part) => part.points.length > 0);
	if (device === undefined || others.length > 0 || splices.length > 0 || inner.length > 0) return undefined;
	const rows = rowsOf(circuit, enclosure.name, meetings, device.points);
	if (rows === undefined) return undefined;
	const lines = wordsOf(enclosure, device, reference);
	const isCard =
		(rows.right.length === 0 || rows.left.length === 0) &&
		rows.left.length + rows.right.length <= 3 &&
		!device.face.traits.includes("source");
	const drawing: DeviceDrawing = { circuit, enclosure, device, lines, extentOf, left: rows.left, right: rows.right };
	return isCard ? drawCard(drawing) : drawMachine(drawing);
}

interface DeviceDrawing {
	readonly circuit: Circuit;
	readonly enclosure: Enclosure;
	readonly device: Part;
	readonly lines: readonly string[];
	readonly extentOf: ExtentOf;
	readonly left: readonly Row[];
	readonly right: readonly Row[];
}

/** What a device is, in lines: its name, the builder's words, what it is, where it is. */
export function wordsOf(enclosure: Enclosure, device: Part, reference: string | undefined): string[] {
	const label = [enclosure.label, device.label].find(
		(text) => text !== "" && text !== enclosure.name && text !== device.name,
	);
	const planned = device.coming ? " · roughed in" : "";
	const name = device.name === enclosure.name ? enclosure.name : `${enclosure.name} · ${device.name}`;
	return [name, label ?? "", `${device.face.text}${planned}`, enclosure.place?.label ?? "", reference ?? ""].filter(
		(text) => text !== "",
	);
}

/** Terminals on one wall, then the mark, then the words. */
function drawCard(drawing: DeviceDrawing): DirectBox {
	const { enclosure, device, lines, left, right } = drawing;
	const isTurned = left.length === 0;
	const rows = isTurned ? right : left;
	const face = faceOf(device, false);
	const markIn = 10 + lettersWidth(drawing, rows) + (face?.width ?? 0) / 2;
	const wordsIn = markIn + (face?.width ?? 0) / 2 + 10;
	const heights = rowHeights(rows, 0, drawing.extentOf);
	const span = heights.at(-1) ?? 0;
	// The middle of its terminals stands on the grid.
	const height = 2 * onGrid(Math.max(span + 36, lines.length * linePitch + 18, (face?.height ?? 0) + 16) / 2);
	const middle = height / 2;
	const ys = heights.map((y) => y + middle - span / 2);
	const width = wordsIn + widest(lines) + 12;
	const wall = isTurned ? width : 0;
	const textTop = middle - (lines.length * linePitch) / 2 + 10.5;
	const docks = docksOf(rows, wall, (_row, index) => ys[index] ?? middle);
	const marks: Mark[] = [
		caseMark(enclosure, width, height),
		...(face === undefined ? [] : [faceMark(device, face.symbol, isTurned ? width - markIn : markIn, middle)]),
		...lineMarks(drawing, isTurned ? 12 : wordsIn, textTop),
	];
	const spots = rows.map(
		(row, index): Spot => ({
			row,
			x: wall,
			y: ys[index] ?? middle,
			inward: isTurned ? -1 : 1,
			before: rows[index - 1],
			aboveY: ys[index - 1] ?? middle,
		}),
	);
	return boxOf(drawing, width, height, docks, marks, spots);
}

/** Words above, terminals on both walls, the mark between them. */
function drawMachine(drawing: DeviceDrawing): DirectBox {
	const { enclosure, device, lines, left, right } = drawing;
	const face = device.face.oneLine === "battery" ? undefined : faceOf(device, false);
	const head = 14 + lines.length * linePitch;
	const [leftLetters, rightLetters] = [lettersWidth(drawing, left), lettersWidth(drawing, right)];
	const faceRoom = (face?.width ?? 84) + 16;
	const width = Math.max(widest(lines) + 24, leftLetters + rightLetters + faceRoom + 16, 132);
	const top = onGrid(head + 20);
	const ysOf = (rows: readonly Row[]): number[] => rowHeights(rows, top, drawing.extentOf);
	const [leftYs, rightYs] = [ysOf(left), ysOf(right)];
	const bottom = Math.max(top + (face?.height ?? 36) - 8, ...leftYs, ...rightYs);
	const height = onGrid(bottom + 22);
	const docks = [
		...docksOf(left, 0, (_row, index) => leftYs[index] ?? top),
		...docksOf(right, width, (_row, index) => rightYs[index] ?? top),
	];
	const middle = (top + bottom) / 2;
	const centre = (leftLetters + width - rightLetters) / 2;
	const marks: Mark[] = [
		caseMark(enclosure, width, height),
		...lineMarks(drawing, 12, 20),
		...(face === undefined
			? batteryMarks(drawing, leftYs, rightYs, width)
			: [faceMark(device, face.symbol, centre, middle)]),
	];
	const spots = [
		...left.map(
			(row, index): Spot => ({
				row,
				x: 0,
				y: leftYs[index] ?? top,
				inward: 1,
				before: left[index - 1],
				aboveY: leftYs[index - 1] ?? top,
			}),
		),
		...right.map(
			(row, index): Spot => ({
				row,
				x: width,
				y: rightYs[index] ?? top,
				inward: -1,
				before: right[index - 1],
				aboveY: rightYs[index - 1] ?? top,
			}),
		),
	];
	return boxOf(drawing, width, height, docks, marks, spots);
}

/** A cell with its poles led to the posts, its letters beside them. */
function batteryMarks(
	{ circuit, device, left, right }: DeviceDrawing,
	leftYs: readonly number[],
	rightYs: readonly number[],
	width: number,
): Mark[] {
	const of = device.name;
	const middle = width / 2;
	const sides = [
		...left.map((row, index) => ({ row, x: 0, y: leftYs[index] ?? 0 })),
		...right.map((row, index) => ({ row, x: width, y: rightYs[index] ?? 0 })),
	];
	const ysOf = (role: "positive" | "negative"): number[] =>
		sides.filter(({ row }) => circuit.points[row.point]?.role === role).map(({ y }) => y);
	const [plus, minus] = [Math.min(...ysOf("positive")), Math.max(...ysOf("negative"))];
	const marks: Mark[] = sides.map(({ x, y, row }) => {
		const pole = circuit.points[row.point]?.role === "positive" ? plus : minus;
		return leadMark(of, [{ x, y }, { x: middle, y }, ...(y === pole ? [] : [{ x: middle, y: pole }])]);
	});
	if (!Number.isFinite(plus) || !Number.isFinite(minus) || minus - plus < 24) return marks;
	const centre = (plus + minus) / 2;
	for (const [y, half, weight] of [
		[centre - 3.5, 15, 1.6],
		[centre + 3.5, 8, 3.2],
	] as const)
		marks.push({
			kind: "line",
			as: "rule",
			of,
			points: [
				{ x: middle - half, y },
				{ x: middle + half, y },
			],
			stroke: "ink",
			strokeWidth: weight,
		});
	marks.push(
		leadMark(of, [
			{ x: middle, y: plus },
			{ x: middle, y: centre - 3.5 },
		]),
		leadMark(of, [
			{ x: middle, y: centre + 3.5 },
			{ x: middle, y: minus },
		]),
	);
	return marks;
}

/** A terminal's screw on a wall; `inward` points into the box. */
interface Spot {
	readonly row: Row;
	readonly x: number;
	readonly y: number;
	readonly inward: 1 | -1;
	/** The row above it, and its height. */
	readonly before: Row | undefined;
	readonly aboveY: number;
}

/** The letters of a terminal, once for all its screws. */
function letterMarks({ circuit, device }: DeviceDrawing, { row, x, y, inward, before }: Spot): Mark[] {
	const point = circuit.points[row.point];
	if (point?.kind !== "terminal" || before?.point === row.point) return [];
	return [
		words(terminalLetters(point), { x: x + inward * letterIn, y: y + letterDrop(device) }, device.name, {
			bold: true,
			paint: "ink",
			anchor: inward === 1 ? "start" : "end",
		}),
	];
}

/** A plate joins the screws of one terminal. */
function screwMarks({ circuit }: DeviceDrawing, { row, x, y, before, aboveY }: Spot): Mark[] {
	const screw = screwMark(circuit, row.point, { x, y });
	if (before?.point !== row.point) return [screw];
	const plate: Mark = {
		kind: "rectangle",
		as: "plate",
		of: circuit.points[row.point]?.name ?? "",
		x: x - 3,
		y: aboveY,
		width: 6,
		height: y - aboveY,
		fill: "gland",
		stroke: "ink",
		strokeWidth: 1,
	};
	return [plate, screwMark(circuit, row.point, { x, y: aboveY }), screw];
}

/** The letters of a battery stand above the leads of its posts. */
function letterDrop(device: Part): number {
	return device.face.oneLine === "battery" ? -5 : 3.8;
}

function faceMark(device: Part, symbol: string, x: number, y: number): Mark {
	return { kind: "symbol", symbol, of: device.name, x, y, scale: 1, paint: "ink" };
}

function lineMarks({ enclosure, lines }: DeviceDrawing, x: number, top: number): Mark[] {
	return lines.map((line, index) =>
		index === 0
			? words(line, { x, y: top }, enclosure.name, { ...nameStyle, paint: "ink" })
			: words(line, { x, y: top + index * linePitch }, enclosure.name, {}),
	);
}

function lettersWidth({ circuit }: DeviceDrawing, rows: readonly Row[]): number {
	const widths = rows.map(({ point }) => {
		const found = circuit.points[point];
		return found?.kind === "terminal" ? wordsWidth(terminalLetters(found), { ...noteStyle, bold: true }) : 0;
	});
	return Math.max(0, ...widths) + (rows.length === 0 ? 0 : letterIn + 8);
}

function widest(lines: readonly string[]): number {
	return Math.max(0, ...lines.map((line, index) => wordsWidth(line, index === 0 ? nameStyle : noteStyle)));
}

function boxOf(
	drawing: DeviceDrawing,
	width: number,
	height: number,
	docks: DirectBox["docks"],
	inside: readonly Mark[],
	spots: readonly Spot[],
): DirectBox {
	const { circuit, enclosure, device, lines, left, right } = drawing;
	const marks = [...inside, ...spots.flatMap((spot) => letterMarks(drawing, spot))];
	const over = spots.flatMap((spot) => screwMarks(drawing, spot));
	const rows = [...left, ...right];
	const within = { x: 0, y: 0, width, height };
	const anchors: BoxInk["anchors"] = [
		...rows.map((row, index) => {
			const dock = docks.find(({ meeting }) => meeting === row.meeting);
			const nth = rows.slice(0, index).filter(({ meeting }) => meeting === row.meeting).length;
			return [circuit.points[row.point]?.name ?? "", { at: dock?.tips[nth] ?? { x: 0, y: 0 }, within }] as const;
		}),
		[device.name, { at: { x: width - 14, y: 14 }, within }],
		[enclosure.name, { at: { x: width - 14, y: 14 }, within }],
	];
	return {
		name: `box ${enclosure.name}`,
		label: lines.join(": "),
		span: enclosure.span,
		width,
		height,
		docks,
		draw: () => ({ marks, over, anchors }),
	};
}

const linePitch = 14;
/** From a wall to the letters of its terminals. */
const letterIn = 11;
