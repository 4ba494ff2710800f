// A relay with one contact and two throws: the feed on one wall, what each throw feeds on the other, the coil below.
import type { Circuit, Part, Splice } from "../../circuit/circuit.ts";
import type { Mark, XY } from "../scene.ts";
import type { Stock } from "../wiring/box-content.ts";
import { contactSymbol } from "../wiring/face-symbols.ts";
import { wordsOf } from "./device-box.ts";
import {
	caseMark,
	type DirectBox,
	type Dock,
	type ExtentOf,
	leadMark,
	nameStyle,
	noteStyle,
	onGrid,
	type SidedMeeting,
	screwMark,
	terminalPitch,
	words,
	wordsWidth,
} from "./direct-box.ts";
import { coilMarks } from "./in-line-box.ts";
import { pointsAt, roomBetween } from "./rows.ts";

/** What arrives at a wall: conductors on the contact or the coil, and what is spliced through. */
interface Entry {
	readonly meeting: SidedMeeting;
	readonly points: readonly number[];
}

/** The box of such a relay, its one splice at most the return of all three cables; undefined for anything else. */
export function changeoverBox(
	circuit: Circuit,
	{ enclosure, parts, splices, inner }: Stock,
	meetings: readonly SidedMeeting[],
	extentOf: ExtentOf,
): DirectBox | undefined {
	const [device, ...others] = parts;
	const [splice, ...moreSplices] = splices;
	if (device === undefined || others.length > 0 || inner.length > 0 || moreSplices.length > 0) return undefined;
	const at = new Map(device.points.map((index) => [nameOf(circuit, index), index]));
	const [common, closed, open] = ["common", "normally-closed", "normally-open"].map((name) => at.get(name));
	const coil = [at.get("A1"), at.get("A2")];
	if (common === undefined || closed === undefined || open === undefined || device.points.length !== 5)
		return undefined;
	const entries: Entry[] = [];
	for (const meeting of meetings) {
		const points = pointsAt(circuit, enclosure.name, meeting).flatMap((point) => point ?? []);
		if (points.length !== Math.max(1, meeting.run.conductors.length)) return undefined;
		entries.push({ meeting, points });
	}
	const entryOf = (point: number): Entry | undefined => entries.find(({ points }) => points[0] === point);
	const feed = entryOf(common);
	// Turned round, the symbol has the throw that is closed at rest below.
	const [upper, lower] = (feed?.meeting.side === "right" ? [open, closed] : [closed, open]).map(entryOf);
	const isCoil = ({ points }: Entry): boolean => points.every((point) => coil.includes(point));
	const works = entries.filter(isCoil);
	if (feed === undefined || upper === undefined || lower === undefined) return undefined;
	const through = [feed, upper, lower];
	// Each of the three is one conductor, or a pair whose other core is spliced.
	const isPlain = ({ points: [, second, ...more] }: Entry): boolean =>
		more.length === 0 && (second === undefined || second === splice?.index);
	if (entries.length !== 3 + works.length || !through.every(isPlain) || !isCoilPlain(works, coil)) return undefined;
	if (feed.meeting.side === upper.meeting.side || upper.meeting.side !== lower.meeting.side) return undefined;
	const drawing = { circuit, device, splice, feed, upper, lower, works, coil, extentOf };
	return drawChangeover(drawing, wordsOf(enclosure, device, undefined), enclosure);
}

/** Both ends of the coil on one sheath, or each on a conductor of its own, or on nothing. */
function isCoilPlain(works: readonly Entry[], [first, second]: readonly (number | undefined)[]): boolean {
	const points = works.flatMap((entry) => entry.points);
	return (
		new Set(points).size === points.length &&
		new Set(works.map(({ meeting }) => meeting.side)).size <= 1 &&
		works.every(({ points: [one, other] }) => other === undefined || (one === first && other === second))
	);
}

interface Drawing {
	readonly circuit: Circuit;
	readonly device: Part;
	readonly splice: Splice | undefined;
	readonly feed: Entry;
	readonly upper: Entry;
	readonly lower: Entry;
	readonly works: readonly Entry[];
	readonly coil: readonly (number | undefined)[];
	readonly extentOf: ExtentOf;
}

function drawChangeover(drawing: Drawing, lines: readonly string[], enclosure: Stock["enclosure"]): DirectBox {
	const { circuit, device, splice, feed, upper, lower, works, coil } = drawing;
	const [name = "", ...details] = lines;
	const isTurned = feed.meeting.side === "right";
	const width = Math.max(
		leastWidth,
		wordsWidth(name, nameStyle) + 24,
		...details.map((text) => wordsWidth(text, noteStyle) + 24),
	);
	// Measured from the wall of the feed.
	const xOf = (x: number): number => (isTurned ? width - x : x);
	const rows = [upper, lower].flatMap(({ meeting, points }) => points.map((point) => ({ meeting, point })));
	const [last, next] = [rows[upper.points.length - 1], rows[upper.points.length]];
	const room = last === undefined || next === undefined ? 0 : roomBetween(last, next, rows, drawing.extentOf);
	const upperEnd = firstRow + (upper.points.length - 1) * terminalPitch;
	const lowerRow = Math.max(upperEnd + room, firstRow + 2 * terminalPitch);
	const lowerEnd = lowerRow + (lower.points.length - 1) * terminalPitch;
	const coilRow = onGrid(lowerEnd + coilDrop - firstRow) + firstRow;
	const coilSide = works[0]?.meeting.side ?? feed.meeting.side;
	const height = onGrid(coilRow + terminalPitch + 24 + details.length * 14);
	const heights = new Map<Entry, number>([
		[feed, firstRow],
		[upper, firstRow],
		[lower, lowerRow],
		...works.map((entry): [Entry, number] => [
			entry,
			coilRow + Math.max(0, coil.indexOf(entry.points[0])) * terminalPitch,
		]),
	]);
	const wallOf = ({ side }: SidedMeeting): number => (side === "left" ? 0 : width);
	const barX = xOf(spliceIn);
	const docks = [...heights].map(([{ meeting, points }, top]): Dock => {
		const wall = wallOf(meeting);
		const tips = points.map(
			(point, index): XY => ({
				x: point === splice?.index ? barX : wall,
				y: top + index * terminalPitch,
			}),
		);
		return { meeting, side: meeting.side, at: { x: wall, y: top + ((points.length - 1) * terminalPitch) / 2 }, tips };
	});
	const onBar = docks.flatMap(({ tips }) => tips.filter(({ x }) => x === barX).map(({ y }) => y));
	const middle = xOf(contactIn);
	const reach = isTurned ? -30 : 30;
	const far = wallOf(upper.meeting);
	const aside = middle + reach + (isTurned ? -8 : 8);
	const of = device.name;
	const ends = coil.flatMap((point, index) =>
		point === undefined
			? []
			: [{ point, side: coilSide, at: { x: coilSide === "left" ? 0 : width, y: coilRow + index * terminalPitch } }],
	);
	const letter = (text: string, x: number, y: number, isFar: boolean): Mark =>
		words(text, { x, y: y - 5 }, of, { bold: true, paint: "ink", anchor: isFar === isTurned ? "start" : "end" });
	const marks: Mark[] = [
		caseMark(enclosure, width, height),
		words(name, { x: width / 2, y: 17 }, enclosure.name, { ...nameStyle, anchor: "middle", paint: "ink" }),
		leadMark(of, [
			{ x: wallOf(feed.meeting), y: firstRow },
			{ x: middle - reach, y: firstRow },
		]),
		leadMark(of, [
			{ x: middle + reach, y: firstRow - throwReach },
			{ x: aside, y: firstRow - throwReach },
			{ x: aside, y: firstRow },
			{ x: far, y: firstRow },
		]),
		leadMark(of, [
			{ x: middle + reach, y: firstRow + throwReach },
			{ x: aside, y: firstRow + throwReach },
			{ x: aside, y: lowerRow },
			{ x: far, y: lowerRow },
		]),
		{
			kind: "symbol",
			symbol: contactSymbol("contact-switch-3way")?.symbol ?? "",
			of,
			x: middle,
			y: firstRow,
			scale: 1,
			...(isTurned ? { turn: 180 as const } : {}),
			paint: "ink",
		},
		letter("C", xOf(11), firstRow, false),
		letter(isTurned ? "NO" : "NC", xOf(width - 11), firstRow, true),
		letter(isTurned ? "NC" : "NO", xOf(width - 11), lowerRow, true),
		...coilMarks(circuit, device, width / 2, ends),
		...details.map((text, index) =>
			words(text, { x: width / 2, y: coilRow + terminalPitch + 24 + index * 14 }, enclosure.name, { anchor: "middle" }),
		),
	];
	const over: Mark[] = [
		...[feed, upper, lower].map((entry) =>
			screwMark(circuit, entry.points[0] ?? -1, { x: wallOf(entry.meeting), y: heights.get(entry) ?? firstRow }),
		),
		...ends.map(({ point, at }) => screwMark(circuit, point, at)),
		...(splice === undefined ? [] : barMarks(splice, barX, onBar)),
	];
	const within = { x: 0, y: 0, width, height };
	return {
		name: `box ${enclosure.name}`,
		label: lines.join(": "),
		span: enclosure.span,
		width,
		height,
		docks,
		draw: () => ({
			marks,
			over,
			anchors: [
				...docks.flatMap(({ meeting, tips }) =>
					pointsAt(circuit, enclosure.name, meeting).map(
						(point, index) =>
							[circuit.points[point ?? -1]?.name ?? "", { at: tips[index] ?? { x: 0, y: 0 }, within }] as const,
					),
				),
				[device.name, { at: { x: width - 8, y: 10 }, within }],
				[enclosure.name, { at: { x: width - 8, y: 10 }, within }],
			],
		}),
	};
}

/** A splice on several rows: a bar with a dot for each conductor. */
function barMarks({ name }: Splice, x: number, ys: readonly number[]): Mark[] {
	const top = Math.min(...ys);
	return [
		{
			kind: "rectangle",
			as: "item",
			of: name,
			x: x - 8,
			y: top - 9,
			width: 16,
			height: Math.max(...ys) - top + 18,
			radius: 4,
			fill: "gland",
			stroke: "ink",
			strokeWidth: 1.3,
		},
		...[...new Set(ys)].map((y): Mark => ({ kind: "circle", as: "dot", of: name, x, y, radius: 2.2, fill: "ink" })),
	];
}

function nameOf(circuit: Circuit, index: number): string {
	const point = circuit.points[index];
	return point?.kind === "terminal" ? point.terminal : "";
}

/** The row of the contact, and how far its throws stand above and below it. */
const firstRow = 48;
const throwReach = 12;
/** From the wall of the feed to the splice, and to the middle of the contact; the least from wall to wall. */
const spliceIn = 40;
const contactIn = 96;
const leastWidth = 176;
/** From the last row to the coil. */
const coilDrop = 48;
