// A device that taps a feed which goes on: both poles spliced through, a pigtail from each splice down to the device.
import type { Circuit, Part, Splice } from "../../circuit/circuit.ts";
import type { Mark, WireMark, XY } from "../scene.ts";
import type { Stock } from "../wiring/box-content.ts";
import { codeOf } from "../wiring/codes.ts";
import { screwRadius, spliceReach, type, wireRadius, wireWidth } from "../wiring/dimensions.ts";
import { contactSymbol, faceOf } from "../wiring/face-symbols.ts";
import { wordsOf } from "./device-box.ts";
import {
	caseMark,
	type DirectBox,
	type Dock,
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

/** One pole of it: where the feed is spliced, and the pigtail from there to the device. */
interface Pole {
	readonly splice: Splice;
	readonly terminal: number;
	readonly pigtail: WireMark;
	readonly x: number;
	readonly y: number;
}

/** The box of such a device; undefined for anything else. */
export function tapBox(
	circuit: Circuit,
	stock: Stock,
	meetings: readonly SidedMeeting[],
	lit: ReadonlyMap<string, number>,
): DirectBox | undefined {
	const { enclosure, parts } = stock;
	const [device, ...others] = parts;
	if (device === undefined || others.length > 0 || device.points.length !== 2) return undefined;
	const poles = findPoles(stock, device, lit);
	if (poles === undefined) return undefined;
	const taken = new Set<string>();
	const docks: { meeting: SidedMeeting; own: readonly Pole[] }[] = [];
	for (const meeting of meetings) {
		const own = pointsAt(circuit, enclosure.name, meeting).flatMap(
			(point) => poles.find(({ splice }) => splice.index === point) ?? [],
		);
		// Each splice has one conductor on each wall at most; a sheath's stand in the order of the poles.
		const places = own.map((pole) => `${meeting.side} ${poles.indexOf(pole)}`);
		const inOrder = own.every(
			(pole, index) => index === 0 || poles.indexOf(pole) > poles.indexOf(own[index - 1] ?? pole),
		);
		if (own.length !== Math.max(1, meeting.run.conductors.length) || !inOrder) return undefined;
		if (places.some((place) => taken.has(place))) return undefined;
		for (const place of places) taken.add(place);
		docks.push({ meeting, own });
	}
	return drawTap(circuit, stock, device, poles, docks);
}

function findPoles({ splices, inner }: Stock, device: Part, lit: ReadonlyMap<string, number>): Pole[] | undefined {
	if (splices.length !== 2 || inner.length !== 2) return undefined;
	const poles = device.points.flatMap((terminal, index): Pole[] => {
		const conductor = inner.find(({ ends }) => ends.some(({ point }) => point === terminal));
		const splice = splices.find((one) => conductor?.ends.some(({ point }) => point === one.index));
		if (conductor === undefined || splice === undefined) return [];
		const [x, y] = [firstPole + index * polePitch, firstRow + index * terminalPitch];
		const finding = lit.get(conductor.name);
		const pigtail: WireMark = {
			kind: "wire",
			of: conductor.name,
			points: [
				{ x, y },
				{ x, y: plateTop },
			],
			colour: conductor.colour,
			width: wireWidth,
			radius: wireRadius,
			run: "pigtail",
			...(finding === undefined ? {} : { finding }),
		};
		return [{ splice, terminal, pigtail, x, y }];
	});
	const [first, second] = poles;
	return first !== undefined && second !== undefined && first.splice !== second.splice ? poles : undefined;
}

function drawTap(
	circuit: Circuit,
	{ enclosure }: Stock,
	device: Part,
	poles: readonly Pole[],
	ends: readonly { readonly meeting: SidedMeeting; readonly own: readonly Pole[] }[],
): DirectBox {
	const face = faceOf(device, false);
	const faceWidth = face?.width ?? 0;
	const lines = wordsOf(enclosure, device, undefined);
	const plateWidth = firstPole + polePitch + faceWidth + 14;
	const plateHeight = Math.max(30, (face?.height ?? 0) + 6);
	const wordsX = plateLeft + plateWidth + 10;
	const width =
		wordsX + Math.max(...lines.map((line, row) => wordsWidth(line, row === 0 ? nameStyle : noteStyle))) + 12;
	const height = onGrid(Math.max(plateTop + plateHeight + 8, plateTop + lines.length * linePitch + 4));
	const wordsTop = plateTop + Math.max(10, (plateHeight - lines.length * linePitch) / 2 + 10);
	const nameOf = (point: number): string => circuit.points[point]?.name ?? "";
	const marks: Mark[] = [
		caseMark(enclosure, width, height),
		{
			kind: "rectangle",
			as: "item",
			of: device.name,
			x: plateLeft,
			y: plateTop,
			width: plateWidth,
			height: plateHeight,
			radius: 4,
			fill: "item",
			stroke: "ink",
			strokeWidth: 1.3,
		},
		...(face === undefined
			? []
			: [
					{
						kind: "symbol" as const,
						symbol: face.symbol,
						of: device.name,
						x: plateLeft + plateWidth - faceWidth / 2 - 4,
						y: plateTop + plateHeight / 2,
						scale: 1,
						paint: "ink" as const,
					},
				]),
		...poles.flatMap(({ terminal, x }): Mark[] => {
			const point = circuit.points[terminal];
			const letters = point?.kind === "terminal" ? terminalLetters(point) : "";
			return [words(letters, { x, y: plateTop + 19 }, device.name, { bold: true, paint: "ink", anchor: "middle" })];
		}),
		...lines.map((line, row) =>
			words(
				line,
				{ x: wordsX, y: wordsTop + row * linePitch },
				enclosure.name,
				row === 0 ? { ...nameStyle, paint: "ink" } : {},
			),
		),
		...poles.map(({ pigtail }, index) => codeBeside(circuit, pigtail, index === 0 ? -1 : 1)),
	];
	// The conductor that a pigtail leaps over is drawn before it.
	const over: Mark[] = [
		...poles.map(({ pigtail }) => pigtail),
		...poles.map(({ splice, x, y }): Mark => {
			const symbol = contactSymbol(`splice-${splice.connector}`)?.symbol ?? "splice-lever";
			return { kind: "symbol", symbol, of: splice.name, x, y, scale: 1, paint: "ink" };
		}),
		...poles.map(({ terminal, x }) => screwMark(circuit, terminal, { x, y: plateTop })),
	];
	const within = { x: 0, y: 0, width, height };
	return {
		name: `box ${enclosure.name}`,
		label: lines.join(": "),
		span: enclosure.span,
		width,
		height,
		docks: ends.map(({ meeting, own }): Dock => {
			const x = meeting.side === "left" ? 0 : width;
			const ys = own.map(({ y }) => y);
			return {
				meeting,
				side: meeting.side,
				at: { x, y: (Math.min(...ys) + Math.max(...ys)) / 2 },
				tips: own.map((pole): XY => ({ x: pole.x, y: pole.y })),
			};
		}),
		draw: () => ({
			marks,
			over,
			anchors: [
				...poles.flatMap(({ splice, terminal, pigtail, x, y }) => [
					[nameOf(terminal), { at: { x, y: plateTop }, within }] as const,
					[splice.name, { at: { x, y }, within }] as const,
					[pigtail.of, { at: { x, y: (y + plateTop) / 2 }, within }] as const,
				]),
				[device.name, { at: { x: width - 12, y: plateTop - 8 }, within }],
				[enclosure.name, { at: { x: width - 12, y: plateTop - 8 }, within }],
			],
		}),
	};
}

/** The letter code of a pigtail, just above its screw. */
function codeBeside(circuit: Circuit, { of, points: [at], finding }: WireMark, side: 1 | -1): Mark {
	const conductor = circuit.conductors[circuit.conductorByName.get(of) ?? -1];
	const clear = wireWidth / 2 + 3 + (finding === undefined ? 0 : 3);
	return {
		kind: "text",
		text: conductor === undefined ? "" : codeOf(conductor),
		x: (at?.x ?? 0) + side * clear,
		y: plateTop - screwRadius - 1.5,
		size: type.letter,
		anchor: side === 1 ? "start" : "end",
		paint: "ink",
		of,
	};
}

const linePitch = 14;
const firstRow = 24;
const firstPole = 40;
const polePitch = 30;
const plateLeft = 18;
/** Below the second row: room for its splice and for the codes of the pigtails. */
const plateTop = firstRow + terminalPitch + 2 * spliceReach + 12;
