// A box of the direct-current sheet before it is placed, and the parts that all its forms share: case, words, screws.
import type { Span } from "../../base/span.ts";
import type { Circuit, Enclosure, Terminal } from "../../circuit/circuit.ts";
import type { Mark, Paint, TextMark, XY } from "../scene.ts";
import { textWidth } from "../text-metrics.ts";
import { screwRadius, type } from "../wiring/dimensions.ts";
import type { Anchor } from "../wiring/place-badges.ts";
import { coilEnds, type Meeting } from "./net.ts";

/** A box, its upper left corner at the origin. */
export interface DirectBox {
	/** Of its group on the sheet. */
	readonly name: string;
	readonly label: string;
	readonly span?: Span;
	readonly width: number;
	readonly height: number;
	readonly docks: readonly Dock[];
	/** Set where the docks may stand in any order on their sides, this far below the upper edge: the layout decides. */
	readonly freeBelow?: number;
	/** What it looks like once the heights of its docks are known; the same list, in the same order. */
	readonly draw: (docks: readonly Dock[]) => BoxInk;
}
/** A box's marks, and where the numbers of findings go that mark a name. */
export interface BoxInk {
	readonly marks: readonly Mark[];
	/** What lies over the conductors: screws, splices. */
	readonly over: readonly Mark[];
	readonly anchors: readonly (readonly [string, Anchor])[];
}
/** Where a run meets a box. */
export interface Dock {
	readonly meeting: SidedMeeting;
	readonly side: "left" | "right";
	/** On the wall. */
	readonly at: XY;
	/** Where each conductor ends, in the order of the run's conductors: on its own height, at the wall or further in. */
	readonly tips: readonly XY[];
	/** A gland stands in the wall: the sheath runs up to it, and letter codes are within. */
	readonly hasGland?: boolean;
}

/** How far what hangs on a run reaches above and below the run: terminals stand so far apart that runs go straight. */
export interface Extent {
	readonly above: number;
	readonly below: number;
	/** The same of the first box alone. */
	readonly near: { readonly above: number; readonly below: number };
	/** Names of all that hangs there. */
	readonly reaches: ReadonlySet<string>;
}
export type ExtentOf = (meeting: SidedMeeting) => Extent;

/** A meeting, and the side of the box it is drawn on. */
export interface SidedMeeting extends Meeting {
	readonly side: "left" | "right";
	/** Power goes on from the box there. */
	readonly isOnward: boolean;
}

/** The point that a conductor of a meeting is on; undefined for an end on nothing, or in another box. */
export function pointAt({ run, end }: Meeting, index: number): number | undefined {
	return run.conductors[index]?.ends[end].point;
}

/** The case of a box. */
export function caseMark(enclosure: Enclosure, width: number, height: number): Mark {
	return {
		kind: "rectangle",
		as: "enclosure",
		of: enclosure.name,
		x: 0,
		y: 0,
		width,
		height,
		radius: enclosure.sort === "panel" ? 4 : 8,
		fill: enclosure.sort === "panel" ? "panel" : "enclosure",
		stroke: "ink",
		strokeWidth: enclosure.sort === "panel" ? 2.2 : 1.6,
	};
}

/** A screw or stud. */
export function screwMark(circuit: Circuit, point: number, at: XY): Mark {
	const found = circuit.points[point];
	return {
		kind: "circle",
		as: "terminal",
		of: found?.name ?? "",
		...at,
		radius: screwRadius,
		fill: screwPaint(found?.role),
		stroke: "ink",
		strokeWidth: 1.2,
	};
}

function screwPaint(role: Terminal["role"] | undefined): Paint {
	if (role === "ground") return "green";
	return role === "negative" || role === "neutral" ? "silver" : "brass";
}

/** A line of words in or at a box. */
export function words(
	text: string,
	at: XY,
	of: string,
	look: Partial<Pick<TextMark, "bold" | "anchor" | "paint" | "size">>,
): TextMark {
	return { kind: "text", text, ...at, size: type.note, anchor: "start", paint: "soft", of, ...look };
}

/** A thin line inside a box, from a terminal to what it belongs to. */
export function leadMark(of: string, points: readonly XY[]): Mark {
	return { kind: "line", as: "rule", of, points, stroke: "ink", strokeWidth: 1.3 };
}

/** The letters of a terminal: `+`, `−`, with the side where a device has several: `BAT +`. */
export function terminalLetters(terminal: Terminal): string {
	if (terminal.terminal === "lug") return "CASE";
	if (coilEnds.has(terminal.terminal)) return terminal.terminal;
	const sign = signs[terminal.role];
	const parts = terminal.terminal.split(".");
	const side = parts.length > 1 ? `${parts.slice(0, -1).join(" ").toUpperCase()} ` : "";
	if (sign !== undefined) return `${side}${sign}`;
	return terminal.role === "ground" ? `${side}G` : terminal.terminal.toUpperCase();
}

const signs: Partial<Record<Terminal["role"], string>> = { positive: "+", negative: "−" };

/** The width that a line of words needs, with a little reserve. */
export function wordsWidth(text: string, look: { readonly size: number; readonly bold?: boolean }): number {
	return Math.ceil(textWidth(text, look) * 1.06);
}

/** A length on the sheet's grid: everything stands on it, so that a run is straight or turns by a step that can be seen. */
export function onGrid(length: number): number {
	return Math.ceil(length / grid) * grid;
}

/** The height of the grid's squares, in units. */
export const grid = 12;
/** Between neighbouring terminals of a box. */
export const terminalPitch = 24;
export const nameStyle = { size: type.title, bold: true } as const;
export const noteStyle = { size: type.note } as const;
