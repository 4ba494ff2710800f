// The plate of a device that stands clear of the rows: screws on the edge that faces them, letters behind, then its face.
import type { Part } from "../../circuit/circuit.ts";
import { textWidth, wrapText } from "../text-metrics.ts";
import type { BoxContent } from "./box-content.ts";
import type { Plate, PlateText, TerminalSpot } from "./box-plan.ts";
import { type } from "./dimensions.ts";
import { type FaceSymbol, faceOf } from "./face-symbols.ts";
import { sideOf, sideText, terminalLetter } from "./terminal-letters.ts";

/** What a plate will take, before its columns are known. */
export interface FreePlateSize {
	readonly device: Part;
	readonly face?: FaceSymbol;
	readonly sided: boolean;
	/** Lines behind the plate that name the device; empty where the box's own header does. */
	readonly caption: readonly string[];
	/** The least width, caption included. */
	readonly width: number;
	/** From the screws to the far edge of the plate. */
	readonly depth: number;
	/** From its outermost screws to its edges. */
	readonly margin: number;
}
/** A screw on its column; several of one terminal stand side by side. */
export interface Screw {
	readonly terminal: number;
	readonly x: number;
}

/** The size of a device's plate; `named` when it needs a caption of its own. */
export function sizeFreePlate(content: BoxContent, device: Part, named: boolean): FreePlateSize {
	const face = faceOf(device, false);
	const sided = sideText(content.circuit, device, "line") !== undefined;
	const faceWidth = face?.width ?? 20;
	const caption = named ? captionLines(device, Math.max(faceWidth + 40, 110)) : [];
	const captionWidth = Math.max(
		0,
		...caption.map((line, index) => textWidth(line, { size: type.note, bold: index === 0 })),
	);
	return {
		device,
		...(face === undefined ? {} : { face }),
		sided,
		caption,
		width: Math.max(faceWidth + 16, captionWidth),
		margin: Math.max(screwMargin, widestName(content, device) / 2 + 5),
		depth: letterDepth + (sided ? sideDepth : 0) + (face === undefined ? 0 : face.height + 8),
	};
}

/** The room that the names of a part's own terminals ask for from screw to screw; nothing for plain letters. */
export function namesPitch(content: BoxContent): number {
	const widths = content.devices.map((device) => widestName(content, device));
	return Math.max(...widths) > 0 ? Math.max(...widths) + nameGap : 0;
}

function widestName({ circuit }: BoxContent, device: Part): number {
	if (device.face.named !== true) return 0;
	const widths = device.points.map((point) => {
		const terminal = circuit.points[point];
		const name = terminal?.kind === "terminal" ? terminalLetter(circuit, device, terminal) : "";
		return textWidth(name, { size: type.letter, bold: true });
	});
	return Math.max(...widths);
}

/** Height of the caption's lines. */
export function captionHeight(size: FreePlateSize): number {
	return size.caption.length * captionPitch;
}

/** The plate between `left` and `right`, its screws at `y`; `away` points from the rows to the device. */
export function placeFreePlate(
	content: BoxContent,
	size: FreePlateSize,
	screws: readonly Screw[],
	[left, right]: readonly [number, number],
	y: number,
	away: 1 | -1,
): Plate {
	const { circuit } = content;
	const box = { x: left, y: away === 1 ? y : y - size.depth, width: right - left, height: size.depth };
	const mid = (left + right) / 2;
	const terminals = [...new Set(screws.map((screw) => screw.terminal))].map((point): TerminalSpot => {
		const columns = screws.filter((screw) => screw.terminal === point).map((screw) => screw.x);
		const terminal = circuit.points[point];
		const middle = (Math.min(...columns) + Math.max(...columns)) / 2;
		return {
			point,
			screws: columns.map((x) => ({ x, y })),
			letter: terminal?.kind === "terminal" ? terminalLetter(circuit, size.device, terminal) : "",
			letterAt: { x: middle, y: y + (away === 1 ? letterDown : letterUp) },
			anchor: "middle",
		};
	});
	const faceY = y + away * (size.depth - 8 - (size.face?.height ?? 0) / 2);
	return {
		of: size.device.name,
		box,
		terminals,
		symbols: size.face === undefined ? [] : [{ symbol: size.face.symbol, at: { x: mid, y: faceY } }],
		leads: [],
		texts: [
			...(size.sided ? sideTexts(content, size.device, screws, y, away) : []),
			...captionTexts(size, mid, box, away),
		],
	};
}

/** LINE and LOAD behind the letters of their terminals. */
function sideTexts(content: BoxContent, device: Part, screws: readonly Screw[], y: number, away: 1 | -1): PlateText[] {
	return (["line", "load"] as const).flatMap((side): PlateText[] => {
		const columns = screws.filter((screw) => sideOf(content.circuit, screw.terminal) === side).map((screw) => screw.x);
		const text = sideText(content.circuit, device, side);
		if (text === undefined || columns.length === 0) return [];
		const x = (Math.min(...columns) + Math.max(...columns)) / 2;
		const at = { x, y: y + (away === 1 ? letterDown + sideDepth - 1 : letterUp - sideDepth + 1) };
		return [{ text, at, anchor: "middle", bold: true }];
	});
}

function captionTexts(size: FreePlateSize, x: number, box: Plate["box"], away: 1 | -1): PlateText[] {
	const first = away === 1 ? box.y + box.height + captionPitch : box.y - 5 - (size.caption.length - 1) * captionPitch;
	return size.caption.map((text, index) => ({
		text,
		at: { x, y: first + index * captionPitch },
		anchor: "middle",
		...(index === 0 ? { bold: true } : { soft: true }),
	}));
}

function captionLines(device: Part, width: number): string[] {
	return [
		...wrapText(
			device.label === device.name ? device.name : `${device.name} ${device.label}`,
			{ size: type.note, bold: true },
			width,
		).slice(0, 1),
		...wrapText(device.face.text, { size: type.note }, width).slice(0, 2),
	];
}

/** From the outermost screws of a plate to its edges. */
export const screwMargin = 18;
const nameGap = 8;
const letterDepth = 26;
const letterDown = 18;
const letterUp = -10.5;
const sideDepth = 13;
const captionPitch = 14;
