// The inside of a transfer switch: its inputs on the left edge, its output on the right, each core straight on its own row, and
// the contacts between them as one blade a pole, standing toward the first input.
import { certain } from "../../base/certain.ts";
import type { Part } from "../../circuit/circuit.ts";
import { textWidth } from "../text-metrics.ts";
import { type BoxContent, type Entry, isCore, pointOf, type Wire } from "./box-content.ts";
import { codeRoom } from "./box-frame.ts";
import type { BoxPlan, Gland, Plate, TerminalSpot } from "./box-plan.ts";
import { headerHeight, innerMargin, rowPitch, screwRadius, type } from "./dimensions.ts";
import { deepestFan, fanPoints } from "./places.ts";
import { terminalLetter } from "./terminal-letters.ts";

/** Lays out a transfer switch; undefined where a core of it does not simply end on a terminal of its own. */
export function layOutTransfer(content: BoxContent, leastWidth: number): BoxPlan | undefined {
	const [device, ...others] = content.devices;
	if (device === undefined || others.length > 0 || !device.face.traits.includes("transfer")) return undefined;
	const isOwn = (wire: Wire): boolean => {
		const point = pointOf(wire.to);
		return isCore(wire) && point !== undefined && device.points.includes(point);
	};
	if (content.splices.length > 0 || !content.wires.every(isOwn)) return undefined;
	if ([...content.landings.values()].some((wires) => wires.length > 1)) return undefined;

	const rowOf = new Map<number, Row>();
	const heights = { left: layRows(content, content.left, "left", rowOf), right: 0 };
	heights.right = layRows(content, content.right, "right", rowOf);
	addEmpty(content, device, heights, rowOf);
	const yOf = (wire: Wire): number => certain(rowOf.get(pointOf(wire.to) ?? -1), "a core's row").y;
	const room = codeRoom(content);
	const margin = (entries: readonly Entry[]): number =>
		entries.length === 0 ? innerMargin : deepestFan(entries, yOf) + room;
	const plateX = margin(content.left);
	const plateWidth = plateLeast + 2 * widestLetter(content, device);
	const width = Math.max(Math.ceil(plateX + plateWidth + margin(content.right)), leastWidth);
	const plate = placePlate(content, device, rowOf, plateX, plateWidth);
	const glands = [...content.left, ...content.right].map((entry): Gland => {
		const ys = entry.wires.map(yOf);
		return { entry, x: entry.side === "left" ? 0 : width, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
	});
	return {
		content,
		template: "series",
		width,
		height: Math.ceil(plate.box.y + plate.box.height + innerMargin),
		glands,
		joints: [],
		plates: [plate],
		routes: content.wires.map((wire) => {
			const { side, y } = certain(rowOf.get(pointOf(wire.to) ?? -1), "a core's row");
			const x = side === "left" ? plateX : plateX + plateWidth;
			return { wire, points: [...fanPoints({ glands, width }, wire, y), { x, y }] };
		}),
		stubs: [],
	};
}

/** The edge and the height of a terminal. */
interface Row {
	readonly side: "left" | "right";
	readonly y: number;
}

/** A row for each core of the cables on one side, a gap between two cables; gives the next free height. */
function layRows(content: BoxContent, entries: readonly Entry[], side: Row["side"], rowOf: Map<number, Row>): number {
	const count = (all: readonly Entry[]): number => all.reduce((sum, { wires }) => sum + wires.length + 1, -1);
	// The fewer rows stand at the middle of the others.
	const lack = Math.max(0, count(side === "left" ? content.right : content.left) - count(entries));
	let y = firstRow + Math.floor(lack / 2) * rowPitch;
	for (const { wires } of entries) {
		for (const wire of wires) {
			rowOf.set(pointOf(wire.to) ?? -1, { side, y });
			y += rowPitch;
		}
		y += rowPitch;
	}
	return y;
}

/** Terminals with nothing on them, below the others of their edge. */
function addEmpty(
	{ circuit }: BoxContent,
	device: Part,
	heights: { left: number; right: number },
	rowOf: Map<number, Row>,
): void {
	for (const index of device.points) {
		const point = circuit.points[index];
		if (rowOf.has(index) || point?.kind !== "terminal") continue;
		const side = point.side === "load" ? "right" : "left";
		rowOf.set(index, { side, y: heights[side] });
		heights[side] += rowPitch;
	}
}

function placePlate(
	content: BoxContent,
	device: Part,
	rowOf: ReadonlyMap<number, Row>,
	x: number,
	width: number,
): Plate {
	const { circuit } = content;
	const edgeOf = ({ side }: Row): number => (side === "left" ? x : x + width);
	const ys = [...rowOf.values()].map(({ y }) => y);
	const terminals = [...rowOf].flatMap(([index, row]): TerminalSpot[] => {
		const point = circuit.points[index];
		if (point?.kind !== "terminal") return [];
		const inward = row.side === "left" ? 1 : -1;
		return [
			{
				point: index,
				screws: [{ x: edgeOf(row), y: row.y }],
				letter: terminalLetter(circuit, device, point),
				letterAt: { x: edgeOf(row) + inward * (screwRadius + 4), y: row.y + 3.5 },
				anchor: row.side === "left" ? "start" : "end",
			},
		];
	});
	return {
		of: device.name,
		box: { x, y: Math.min(...ys) - plateRise, width, height: Math.max(...ys) - Math.min(...ys) + 2 * plateRise },
		terminals,
		symbols: [],
		leads: contactLeads(content, device, rowOf, x, width),
		texts: [],
	};
}

/** For each pole: a lead from either input, one from the output, and the blade between the output and the first input. */
function contactLeads(
	{ circuit, links }: BoxContent,
	device: Part,
	rowOf: ReadonlyMap<number, Row>,
	x: number,
	width: number,
): Plate["leads"] {
	const inset = widestLetter({ circuit }, device) + screwRadius + 8;
	const [contactX, pivotX] = [x + inset + leadLength, x + width - inset - leadLength];
	return links.flatMap(({ contact, between: [input, output] }) => {
		const [from, to] = [rowOf.get(input), rowOf.get(output)];
		if (contact === undefined || from?.side !== "left" || to?.side !== "right") return [];
		const isFirst = contact.closed.includes(0);
		const lead = [
			{ x: x + inset, y: from.y },
			{ x: contactX, y: from.y },
		];
		const pivot = { x: pivotX, y: to.y };
		const blade = [{ x: x + width - inset, y: to.y }, pivot, { x: contactX + bladeGap, y: from.y + bladeGap }];
		return isFirst ? [lead, blade] : [lead];
	});
}

function widestLetter({ circuit }: Pick<BoxContent, "circuit">, device: Part): number {
	const widths = device.points.map((index) => {
		const point = circuit.points[index];
		return point?.kind === "terminal"
			? textWidth(terminalLetter(circuit, device, point), { size: type.letter, bold: true })
			: 0;
	});
	return Math.ceil(Math.max(0, ...widths));
}

const firstRow = headerHeight + 36;
const plateRise = 20;
const plateLeast = 150;
const leadLength = 22;
const bladeGap = 3;
