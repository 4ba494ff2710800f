// Where everything upright in a panel stands, from the left wall to the right.
import { textWidth } from "../text-metrics.ts";
import type { BoxContent } from "./box-content.ts";
import { codeRoom, hasFreeEnd, stubRoom } from "./box-frame.ts";
import { busStep, fanDepth, innerMargin, spliceReach, type } from "./dimensions.ts";
import type { BarState } from "./panel-bars.ts";
import type { PanelParts } from "./panel-parts.ts";
import { poleWidth } from "./panel-plates.ts";
import type { Channel } from "./panel-routes.ts";

/** The upright measures of a panel. */
export interface PanelWidths {
	readonly mainX: number;
	readonly poleX: number;
	/** Width of every breaker, and the edge its load screws are on. */
	readonly poleWidth: number;
	readonly poleEdge: number;
	/** Width of the main, in which each leg starts behind a contact of its own. */
	readonly mainWidth: number;
	readonly busX: number;
	/** The middle of each bar. */
	readonly barX: readonly number[];
	/** The first column of each channel. */
	readonly channels: Readonly<Record<Channel, number>>;
	/** From a wall to a splice in line, and to a free end. */
	readonly inlineDepth: number;
	readonly stubDepth: number;
	readonly total: number;
}

/** What the widths follow from. */
export interface PanelNeeds {
	readonly columns: Readonly<Record<Channel, number>>;
	readonly inline: Readonly<Record<"left" | "right", boolean>>;
	readonly states: readonly BarState[];
}

/** The widths of a panel that is at least `leastWidth` wide. */
export function setPanelWidths(
	content: BoxContent,
	parts: PanelParts,
	needs: PanelNeeds,
	leastWidth: number,
): PanelWidths {
	const { columns, inline, states } = needs;
	const room = codeRoom(content);
	const wallRoom = (side: "left" | "right"): number =>
		content[side].length === 0
			? innerMargin
			: fanDepth + room + (hasFreeEnd(content, side) ? stubRoom : 0) + (inline[side] ? 2 * spliceReach + room + 14 : 0);
	const left = wallRoom("left");
	const mainX = left + columns.left * columnStep + (columns.left > 0 ? 14 : 0);
	const legs = Math.max(1, parts.bus?.points.length ?? 1);
	const width = poleWidth(content.circuit, parts);
	const busX = mainX + width - 24;
	const mainWidth = width + (legs - 1) * busStep;
	const poleX = mainX + mainWidth - 24 + busWidth / 2 + poleGap;
	const poleEdge = poleX + width;
	const barX: number[] = [];
	let x = poleEdge + Math.max(room + 14, 34 + columns.middle * columnStep);
	for (const { lines } of states) {
		const words = Math.max(...lines.map((line) => textWidth(line, { size: type.note, bold: true }))) / 2 + 5;
		const half = Math.max(words, barPitch / 2);
		barX.push(x + half);
		x += 2 * half;
	}
	const railEdge = x - 6;
	const right =
		columns.right * columnStep + (columns.right > 0 ? rightLead - 2 : 0) + wallRoom("right") + innerMargin / 2;
	return {
		mainX,
		poleX,
		poleWidth: width,
		poleEdge,
		mainWidth,
		busX,
		barX,
		channels: { left, middle: poleEdge + 22, right: railEdge + rightLead },
		inlineDepth: fanDepth + room + spliceReach,
		stubDepth: fanDepth + room,
		total: Math.ceil(Math.max(leastWidth, railEdge + right)),
	};
}

/** Between upright wires of a channel. */
export const columnStep = 24;
/** Width of a leg of the bus. */
export const busWidth = 12;
/** From the bars to the first column beyond them. */
const rightLead = 26;
const barPitch = 54;
const poleGap = 20;
