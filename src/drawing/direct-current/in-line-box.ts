// What sits in one conductor: a fuse, a breaker, a shunt, a disconnect, a switch; whatever else is in the sheath is spliced through below it.
import type { Circuit, Part } from "../../circuit/circuit.ts";
import type { Mark, XY } from "../scene.ts";
import type { Stock } from "../wiring/box-content.ts";
import { spliceReach } from "../wiring/dimensions.ts";
import { contactOf, contactSymbol, type FaceSymbol, faceOf } from "../wiring/face-symbols.ts";
import { wordsOf } from "./device-box.ts";
import {
	caseMark,
	type DirectBox,
	type Dock,
	leadMark,
	nameStyle,
	noteStyle,
	onGrid,
	type SidedMeeting,
	screwMark,
	terminalLetters,
	terminalPitch,
	words,
	wordsWidth,
} from "./direct-box.ts";
import { pointsAt } from "./rows.ts";

/** The box of such a device, its line side on one wall and its load side on the other; undefined where more is in it. */
export function inLineBox(
	circuit: Circuit,
	stock: Stock,
	meetings: readonly SidedMeeting[],
	reference: string | undefined,
): DirectBox | undefined {
	const { enclosure, parts, splices, inner } = stock;
	const [device, ...others] = parts;
	if (device === undefined || others.length > 0 || inner.length > 0) return undefined;
	const contact = contactIn(circuit, device);
	const [line, load] = [terminalOn(circuit, device, "line"), terminalOn(circuit, device, "load")];
	if (contact === undefined || line === undefined || load === undefined) return undefined;
	// The coil of a relay has its ends on rows of their own, below what passes.
	const coil = device.points.filter((point) => point !== line && point !== load);
	if (coil.length !== 0 && coil.length !== 2) return undefined;
	// It stands on the row of the core that it is in: a device in the negative below the positive.
	const [before, after] = splicesAround(circuit, stock, meetings, [line, load]);
	const own = before.length;
	const rows = [...before, [line, load], ...after, ...coil.map((point) => [point])];
	const firstOfCoil = splices.length + 1;
	if (own > 0 && contact.height / 2 + spliceReach > terminalPitch) return undefined;
	const ends = meetings.map((meeting) => {
		const points = pointsAt(circuit, enclosure.name, meeting);
		return {
			meeting,
			rows: points.map((point) => rows.findIndex((row) => point !== undefined && row.includes(point))),
		};
	});
	// Each row has one conductor on each wall at most, and a sheath's rows follow one another.
	const taken = new Set<string>();
	const sideOf = new Map<number, "left" | "right">();
	for (const { meeting, rows: met } of ends)
		for (const [index, row] of met.entries()) {
			const place = `${meeting.side} ${row}`;
			if (row < 0 || taken.has(place) || (index > 0 && row !== (met[index - 1] ?? 0) + 1)) return undefined;
			taken.add(place);
			const point = pointsAt(circuit, enclosure.name, meeting)[index] ?? -1;
			if (row === own || row >= firstOfCoil) sideOf.set(point, meeting.side);
		}
	const [lineSide, loadSide] = [sideOf.get(line), sideOf.get(load)];
	if (lineSide !== undefined && lineSide === loadSide) return undefined;
	const isTurned = lineSide === "right" || loadSide === "left";
	const [name = "", ...details] = wordsOf(enclosure, device, reference);
	const width = Math.max(
		contact.width + 40,
		wordsWidth(name, nameStyle) + 24,
		...details.map((text) => wordsWidth(text, noteStyle) + 24),
	);
	const middle = Math.round(width / 2);
	const heightOf = (row: number): number => firstRow + (row + (row >= firstOfCoil ? 1 : 0)) * terminalPitch;
	const spliceAt = (index: number): XY => ({ x: middle, y: heightOf(rows.findIndex(([point]) => point === index)) });
	const last = heightOf(rows.length - 1);
	const height = onGrid(last + contact.height / 2 + 8 + details.length * 14 + 2);
	const level = heightOf(own);
	const docks = ends.map(({ meeting, rows: met }): Dock => {
		const wall = meeting.side === "left" ? 0 : width;
		const ys = met.map(heightOf);
		return {
			meeting,
			side: meeting.side,
			at: { x: wall, y: (Math.min(...ys) + Math.max(...ys)) / 2 },
			tips: met.map((row): XY => ({ x: row === own || row >= firstOfCoil ? wall : middle, y: heightOf(row) })),
		};
	});
	const leftPoint = isTurned ? load : line;
	const rightPoint = isTurned ? line : load;
	const coilEnds = coil.map((point, index): CoilEnd => {
		const side = sideOf.get(point) ?? "left";
		return { point, side, at: { x: side === "left" ? 0 : width, y: heightOf(firstOfCoil + index) } };
	});
	const marks: Mark[] = [
		caseMark(enclosure, width, height),
		...coilMarks(circuit, device, middle, coilEnds),
		words(name, { x: middle, y: 17 }, enclosure.name, { ...nameStyle, anchor: "middle", paint: "ink" }),
		leadMark(device.name, [
			{ x: 0, y: level },
			{ x: middle - contact.width / 2, y: level },
		]),
		leadMark(device.name, [
			{ x: middle + contact.width / 2, y: level },
			{ x: width, y: level },
		]),
		{
			kind: "symbol",
			symbol: contact.symbol,
			of: device.name,
			x: middle,
			y: level,
			scale: 1,
			...(isTurned ? { turn: 180 } : {}),
			paint: "ink",
		},
		...details.map((text, index) =>
			words(text, { x: middle, y: last + contact.height / 2 + 16 + index * 14 }, enclosure.name, { anchor: "middle" }),
		),
	];
	const over: Mark[] = [
		screwMark(circuit, leftPoint, { x: 0, y: level }),
		screwMark(circuit, rightPoint, { x: width, y: level }),
		...coilEnds.map(({ point, at }) => screwMark(circuit, point, at)),
		...splices.map(({ index, name: of, connector }): Mark => {
			const symbol = contactSymbol(`splice-${connector}`)?.symbol ?? "splice-lever";
			return { kind: "symbol", symbol, of, ...spliceAt(index), scale: 1, paint: "ink" };
		}),
	];
	const within = { x: 0, y: 0, width, height };
	const nameOf = (point: number): string => circuit.points[point]?.name ?? "";
	return {
		name: `box ${enclosure.name}`,
		label: [name, ...details].join(": "),
		span: enclosure.span,
		width,
		height,
		docks,
		draw: () => ({
			marks,
			over,
			anchors: [
				[nameOf(leftPoint), { at: { x: 0, y: level }, within }],
				[nameOf(rightPoint), { at: { x: width, y: level }, within }],
				...coilEnds.map(({ point, at }) => [nameOf(point), { at, within }] as const),
				...splices.map(({ index, name: of }) => [of, { at: spliceAt(index), within }] as const),
				[device.name, { at: { x: width - 8, y: 10 }, within }],
				[enclosure.name, { at: { x: width - 8, y: 10 }, within }],
			],
		}),
	};
}

/** The splices of cores above that of the device in a sheath, and those below; by themselves they are all below. */
function splicesAround(
	circuit: Circuit,
	{ enclosure, splices }: Stock,
	meetings: readonly SidedMeeting[],
	device: readonly number[],
): readonly [before: number[][], after: number[][]] {
	const all = splices.map(({ index }) => [index]);
	for (const meeting of meetings) {
		const points = pointsAt(circuit, enclosure.name, meeting);
		const place = points.findIndex((point) => point !== undefined && device.includes(point));
		if (place <= 0) continue;
		const isBefore = ([splice]: readonly number[]): boolean => points.slice(0, place).includes(splice);
		return [all.filter(isBefore), all.filter((row) => !isBefore(row))];
	}
	return [[], all];
}

/** An end of a coil at a wall. */
export interface CoilEnd {
	readonly point: number;
	readonly side: "left" | "right";
	readonly at: XY;
}

/** The coil of a relay between its two ends, their letters at the wall. */
export function coilMarks(circuit: Circuit, device: Part, middle: number, ends: readonly CoilEnd[]): Mark[] {
	const [first, last] = ends;
	if (first === undefined || last === undefined) return [];
	const of = device.name;
	return [
		{
			kind: "rectangle",
			as: "plate",
			of,
			x: middle - 14,
			y: first.at.y - 4,
			width: 28,
			height: last.at.y - first.at.y + 8,
			fill: "item",
			stroke: "ink",
			strokeWidth: 1.3,
		},
		...ends.flatMap(({ point, side, at }): Mark[] => {
			const found = circuit.points[point];
			const isLeft = side === "left";
			return [
				leadMark(of, [at, { x: middle + (isLeft ? -14 : 14), y: at.y }]),
				words(
					found?.kind === "terminal" ? terminalLetters(found) : "",
					{ x: at.x + (isLeft ? 9 : -9), y: at.y - 4 },
					of,
					{
						bold: true,
						paint: "ink",
						anchor: isLeft ? "start" : "end",
					},
				),
			];
		}),
	];
}

/** What opens, or what is measured at. */
function contactIn(circuit: Circuit, device: Part): FaceSymbol | undefined {
	const { oneLine } = device.face;
	if (oneLine === "fuse") return contactSymbol("contact-fuse");
	if (oneLine === "shunt") return faceOf(device, false);
	return contactOf(device, 1, circuit.plan.settings.region);
}

function terminalOn(circuit: Circuit, device: Part, side: "line" | "load"): number | undefined {
	return device.points.find((index) => {
		const point = circuit.points[index];
		return point?.kind === "terminal" && point.side === side;
	});
}

/** The height of the device's own row. */
const firstRow = 36;
