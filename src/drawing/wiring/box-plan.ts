// What laying out the inside of an enclosure gives: places of everything in it, in its own coordinates. No marks yet.
import type { Box } from "../bounds.ts";
import type { BoxTemplate, XY } from "../scene.ts";
import type { BoxContent, Entry, Wire } from "./box-content.ts";

/** The inside of an enclosure, its upper left corner at the origin. */
export interface BoxPlan {
	readonly content: BoxContent;
	readonly template: BoxTemplate;
	readonly width: number;
	readonly height: number;
	readonly glands: readonly Gland[];
	readonly joints: readonly Joint[];
	readonly plates: readonly Plate[];
	readonly routes: readonly Route[];
	readonly stubs: readonly Stub[];
	/** Only in a panel. */
	readonly panel?: PanelWork;
}
/** Where a cable passes the wall. */
export interface Gland {
	readonly entry: Entry;
	readonly x: number;
	readonly y: number;
}
/** A splice: one or more columns wide, on its row. */
export interface Joint {
	readonly point: number;
	/** Left to right. */
	readonly columns: readonly number[];
	readonly y: number;
}
/** A device, or the stud on a metal box, with its terminals on the edges of its plate. */
export interface Plate {
	/** The part or the point it is. */
	readonly of: string;
	readonly box: Box;
	readonly terminals: readonly TerminalSpot[];
	/** Symbols on it, by their origins. */
	readonly symbols: readonly { readonly symbol: string; readonly at: XY; readonly turn?: 0 | 180 }[];
	/** Thin lines from terminals to contacts. */
	readonly leads: readonly (readonly XY[])[];
	readonly texts: readonly PlateText[];
}
export interface PlateText {
	readonly text: string;
	readonly at: XY;
	readonly anchor: "start" | "middle" | "end";
	readonly bold?: boolean;
	readonly soft?: boolean;
}
/** A terminal's screws, one for each conductor on it, and its letter. */
export interface TerminalSpot {
	readonly point: number;
	readonly screws: readonly XY[];
	readonly letter: string;
	readonly letterAt: XY;
	readonly anchor: "start" | "middle" | "end";
}
/** The way of a wire from its first tie to its second. */
export interface Route {
	readonly wire: Wire;
	readonly points: readonly XY[];
}
/** An end that is on nothing. */
export interface Stub {
	readonly wire: Wire;
	readonly at: XY;
	readonly heading: "left" | "right" | "up" | "down";
	readonly state: "loose" | "capped";
}
/** What only a panel has: its bus, bars and their notes. */
export interface PanelWork {
	/** Screws on the bars, one for each conductor. */
	readonly screws: readonly { readonly point: number; readonly at: XY }[];
	readonly bars: readonly Bar[];
	readonly brackets: readonly { readonly box: Box; readonly text: string; readonly at: XY }[];
	readonly texts: readonly PlateText[];
	/** Bonds of a bar to the case: a stub that ends on the wall. */
	readonly bonds: readonly { readonly from: XY; readonly to: XY; readonly part: string }[];
}
export interface Bar {
	readonly box: Box;
	readonly paint: "hot-bus" | "neutral-bar" | "ground-bar";
	/** Where it passes over other bars without touching them. */
	readonly over?: Box;
	/** The part it is. */
	readonly of: string;
}
