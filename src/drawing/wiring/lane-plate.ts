// The plate of a device that sits on the rows: its size, and once its place is known its face, contact, screws and letters.
import type { Circuit } from "../../circuit/circuit.ts";
import type { XY } from "../scene.ts";
import { textWidth } from "../text-metrics.ts";
import type { BoxContent } from "./box-content.ts";
import type { LanePlan, LanePort } from "./box-lane.ts";
import type { Plate, PlateText, TerminalSpot } from "./box-plan.ts";
import { columnPitch, rowPitch, screwRadius, type } from "./dimensions.ts";
import { type FaceSymbol, faceOf } from "./face-symbols.ts";
import { type LaneContact, laneContact } from "./lane-contact.ts";
import { sideOf, sideText, terminalLetter } from "./terminal-letters.ts";

/** What a lane plate will take. */
export interface LanePlateSize {
	readonly width: number;
	/** From the first row up to its upper edge, and from the last row down to its lower. */
	readonly above: number;
	readonly below: number;
	readonly face?: FaceSymbol;
	readonly contact?: LaneContact;
	/** Width of the letters at each edge. */
	readonly letters: number;
	/** From one terminal on its lower edge to the next. */
	readonly bottomPitch: number;
	readonly sided: boolean;
	/** Whether the face stands above the rows, not between the letters. */
	readonly raised: boolean;
	/** What the row below the plate stands lower than usual. */
	readonly drop: number;
}

/** The size of the plate of a device on the rows. */
export function sizeLanePlate(content: BoxContent, plan: LanePlan): LanePlateSize {
	const { circuit } = content;
	const rows = plan.last - plan.first + 1;
	const span = (rows - 1) * rowPitch;
	const both = plan.ports.some((port) => port.side === "left") && plan.ports.some((port) => port.side === "right");
	const passes = plan.ports.some((port) => port.side === "right" && content.landings.has(port.point)) && both;
	const contact = passes ? laneContact(content, plan) : undefined;
	const letters = Math.max(
		...plan.device.points.map((point) => textWidth(letterOf(circuit, plan, point), { size: type.letter, bold: true })),
	);
	const sided = both && sideText(circuit, plan.device, "line") !== undefined && !sidesAreMixed(circuit, plan);
	const passing = plan.rows.rows.length - 1 > plan.last;
	const hasBottom = plan.bottom.length > 0;
	const raised = contact !== undefined || hasBottom || (sided && rows < 3);
	const face = faceOf(plan.device, !raised && rows >= 3 && !passes);
	const bottomPitch = Math.max(columnPitch, letters + 2 * (screwRadius + 3));
	const least = Math.max(plan.bottom.length * bottomPitch + 2 * letters, sided ? 2 * (sideRoom + 6) : 0);
	const shared = {
		...(face === undefined ? {} : { face }),
		...(contact === undefined ? {} : { contact }),
		letters,
		bottomPitch,
		sided,
		raised,
		drop: hasBottom && passing ? stripDrop : 0,
	};
	const room = hasBottom ? letterStrip : passing ? 12 : 18;
	// The contact of a switch with travellers reaches above its rows.
	const reach = contact?.common === undefined ? 0 : 4;
	if (raised)
		return {
			...shared,
			width: Math.max(
				(face?.width ?? 0) + 20,
				(contact?.width ?? 0) + 2 * (letters + (contact?.common === undefined ? 20 : 32)),
				least,
			),
			above: letterRise + (sided ? sideHeight + sideLift : 0) + (face === undefined ? 8 : face.height + 12 + reach),
			below: room,
		};
	const edges = (letters + 14) * (both ? 2 : 1) + (both ? 8 : 18);
	const height = Math.max((face?.height ?? 0) + 14, span + 18 + room);
	const below = Math.max(room, passing ? 0 : (height - span) / 2);
	const sideExtra = sided ? sideHeight + sideLift + letterRise + 4 : 0;
	return {
		...shared,
		width: Math.max((face?.width ?? 24) + edges, least),
		above: Math.max(height - span - below, 18, sideExtra),
		below,
	};
}

/** The plate at its place. `rowY` gives the height of a row; `bottom` the columns of the terminals on the lower edge. */
export function placeLanePlate(
	content: BoxContent,
	plan: LanePlan,
	size: LanePlateSize,
	x: number,
	rowY: (row: number) => number,
	bottom: readonly number[],
): Plate {
	const { circuit } = content;
	const top = rowY(plan.first) - size.above;
	const box = { x, y: top, width: size.width, height: rowY(plan.last) + size.below - top };
	const spot = (port: LanePort): TerminalSpot => {
		const left = port.side === "left";
		const y = rowY(port.row);
		const edge = left ? x : x + size.width;
		return {
			point: port.point,
			screws: [{ x: edge, y }],
			letter: letterOf(circuit, plan, port.point),
			letterAt: { x: edge + (left ? 1 : -1) * (screwRadius + 4), y: y + letterDrop },
			anchor: left ? "start" : "end",
		};
	};
	const under = plan.bottom.map((point, index): TerminalSpot => {
		const column = bottom[index] ?? x;
		return {
			point,
			screws: [{ x: column, y: box.y + box.height }],
			letter: letterOf(circuit, plan, point),
			letterAt: { x: column + screwRadius + 3, y: box.y + box.height - 3.5 },
			anchor: "start",
		};
	});
	const mid = x + size.width / 2;
	const rowsMid = (rowY(plan.first) + rowY(plan.last)) / 2;
	return {
		of: plan.device.name,
		box,
		terminals: [...plan.ports.map(spot), ...under],
		symbols: symbolsOn(plan, size, { mid, rowsMid, top }),
		leads: size.contact === undefined ? [] : leadsTo(plan, size, x, rowY),
		texts: sideTexts(circuit, plan, size, x, rowY(plan.first)),
	};
}

function symbolsOn(
	plan: LanePlan,
	size: LanePlateSize,
	{ mid, rowsMid, top }: { mid: number; rowsMid: number; top: number },
) {
	const symbols: Plate["symbols"][number][] = [];
	const { contact } = size;
	if (contact !== undefined) symbols.push({ symbol: contact.symbol, at: { x: mid, y: rowsMid }, turn: contact.turn });
	if (size.face === undefined) return symbols;
	if (size.raised) symbols.push({ symbol: size.face.symbol, at: { x: mid, y: top + 8 + size.face.height / 2 } });
	else {
		// A face between letters stands in the middle of what is left of the plate.
		const lefts = plan.ports.some((port) => port.side === "left");
		const rights = plan.ports.some((port) => port.side === "right");
		const shift = lefts && !rights ? (size.letters + 6) / 2 : rights && !lefts ? -(size.letters + 6) / 2 : 0;
		const height = size.above + size.below + (plan.last - plan.first) * rowPitch;
		symbols.push({ symbol: size.face.symbol, at: { x: mid + shift, y: top + height / 2 } });
	}
	return symbols;
}

/** Thin lines from the letters to the contact between them. */
function leadsTo(plan: LanePlan, size: LanePlateSize, x: number, rowY: (row: number) => number): XY[][] {
	const from = screwRadius + 4 + size.letters + 4;
	const gap = (size.width - (size.contact?.width ?? 0)) / 2;
	if (gap <= from) return [];
	return plan.ports.map((port) => {
		const y = rowY(port.row);
		const [outer, inner] = port.side === "left" ? [x + from, x + gap] : [x + size.width - from, x + size.width - gap];
		if (port.point !== size.contact?.common)
			return [
				{ x: outer, y },
				{ x: inner, y },
			];
		const step = (outer + inner) / 2;
		const middle = (rowY(plan.first) + rowY(plan.last)) / 2;
		return [
			{ x: outer, y },
			{ x: step, y },
			{ x: step, y: middle },
			{ x: inner, y: middle },
		];
	});
}

function sideTexts(circuit: Circuit, plan: LanePlan, size: LanePlateSize, x: number, firstY: number): PlateText[] {
	if (!size.sided) return [];
	const y = firstY - letterRise - sideLift;
	return (["left", "right"] as const).flatMap((side): PlateText[] => {
		const port = plan.ports.find(
			(candidate) => candidate.side === side && sideOf(circuit, candidate.point) !== undefined,
		);
		const known = port === undefined ? undefined : sideOf(circuit, port.point);
		const text = known === undefined ? undefined : sideText(circuit, plan.device, known);
		if (text === undefined) return [];
		return side === "left"
			? [{ text, at: { x: x + 7, y }, anchor: "start", bold: true }]
			: [{ text, at: { x: x + size.width - 7, y }, anchor: "end", bold: true }];
	});
}

/** The letter of a terminal, with its side where the edge it is on holds both. */
function letterOf(circuit: Circuit, plan: LanePlan, point: number): string {
	const terminal = circuit.points[point];
	if (terminal?.kind !== "terminal") return "";
	const letter = terminalLetter(circuit, plan.device, terminal);
	const side = terminal.side === undefined || !sidesAreMixed(circuit, plan) ? undefined : terminal.side;
	return side === undefined ? letter : `${sideText(circuit, plan.device, side) ?? ""} ${letter}`.trimStart();
}

/** Whether line and load terminals stand on one edge: wired any old way. */
function sidesAreMixed(circuit: Circuit, { ports }: LanePlan): boolean {
	return (["left", "right"] as const).some((edge) => {
		const sides = ports.flatMap(({ point, side }) => (side === edge ? (sideOf(circuit, point) ?? []) : []));
		return new Set(sides).size > 1;
	});
}

/** How far a letter stands above and below its row. */
const letterRise = 6;
const letterDrop = 3.8;
/** Height of a line with LINE and LOAD, how far it stands clear of the contact, and the width of one of them. */
const sideHeight = 10;
const sideLift = 9;
const sideRoom = 36;
/** From the last row to the lower edge where terminals with letters stand on it. */
const letterStrip = 25;
/** What rows below such an edge stand lower, so that a code fits beside the conductor between. */
const stripDrop = 20;
