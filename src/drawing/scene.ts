// A sheet as plain data: marks with places and meanings. Knows neither SVG nor the circuit; one unit prints as 0.25 mm.
import type { Span } from "../base/span.ts";

/** A sheet ready to be written: its groups stand in paint order, which is also the order they are read in. */
export interface Sheet {
	/** `wiring`, `one-line`; with a suffix where a plan needs several of one sort: `wiring-LC2`. */
	readonly name: string;
	readonly title: string;
	/** What the drawing shows, in words: sources, panels and circuits. */
	readonly description: string;
	readonly width: number;
	readonly height: number;
	readonly groups: readonly Group[];
}

/** Marks that belong together: an enclosure with what is in it, a cable, the legend. */
export interface Group {
	/** From the circuit's names, unique on the sheet: `box b1`, `cable bunks-1`. */
	readonly name: string;
	/** `object` can be visited and has a label; `furniture` is the sheet's own; `decoration` is skipped by a reader. */
	readonly sort: "object" | "furniture" | "decoration";
	readonly label?: string;
	/** The source line it stands for. */
	readonly span?: Span;
	/** Where its marks are measured from, and the size of their unit; undefined: from the sheet's corner, in its units. */
	readonly at?: Placement;
	readonly marks: readonly Mark[];
}

/** Marks as a whole, scaled about their origin, then moved. */
export interface Placement {
	readonly x: number;
	readonly y: number;
	readonly scale: number;
}

export interface XY {
	readonly x: number;
	readonly y: number;
}

/** What the inside of an enclosure is laid out as; `fallback` where no template fits. */
export type BoxTemplate = "panel" | "tap" | "series" | "end" | "fallback";

/** Something painted. `of` names what it shows (a conductor, a point, an enclosure) for measures and for readers. */
export type Mark = RectangleMark | CircleMark | LineMark | WireMark | JacketMark | TextMark | SymbolMark;

export interface RectangleMark {
	readonly kind: "rectangle";
	/** What the measures take it for: wires may not pass a foreign `enclosure` or `item`; a `bar` may be passed. */
	readonly as: "enclosure" | "item" | "bar" | "gland" | "frame" | "plate";
	/** Of an enclosure of a wiring sheet. */
	readonly template?: BoxTemplate;
	readonly of?: string;
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
	readonly radius?: number;
	readonly fill?: Paint;
	readonly stroke?: Paint;
	readonly strokeWidth?: number;
	readonly dashed?: boolean;
}
export interface CircleMark {
	readonly kind: "circle";
	readonly as: "terminal" | "dot" | "badge";
	readonly of?: string;
	readonly x: number;
	readonly y: number;
	readonly radius: number;
	readonly fill?: Paint;
	readonly stroke?: Paint;
	readonly strokeWidth?: number;
	readonly dashed?: boolean;
}
/** A line of the drawing itself: a leader, a frame division, a one-line conductor or bus. */
export interface LineMark {
	readonly kind: "line";
	readonly as: "rule" | "leader" | "conductor" | "bus";
	readonly of?: string;
	readonly points: readonly XY[];
	readonly stroke: Paint;
	readonly strokeWidth: number;
	readonly dashed?: boolean;
}
/** One conductor's way, in its insulation colour. Fans may be curved: `fan` counts the leading and trailing segments that are. */
export interface WireMark {
	readonly kind: "wire";
	/** The conductor's name. */
	readonly of: string;
	readonly points: readonly XY[];
	/** A colour name of the handbook: `black`, `green-yellow`. */
	readonly colour: string;
	/** Width of the coloured core, in units. */
	readonly width: number;
	/** Corner radius, in units. */
	readonly radius: number;
	readonly run: "run" | "pigtail" | "bond" | "strand";
	/** Set where a finding's path lights it up: its number. */
	readonly finding?: number | undefined;
}
/** A cable's sheath around its strands. */
export interface JacketMark {
	readonly kind: "jacket";
	/** The cable's tag. */
	readonly of: string;
	readonly points: readonly XY[];
	readonly width: number;
	readonly radius: number;
	/** Colour by the size inside, as the trade sells it: `yellow`, `white`, `orange`, `grey`, `black`. */
	readonly colour: string;
}
export interface TextMark {
	readonly kind: "text";
	readonly x: number;
	/** The baseline. */
	readonly y: number;
	readonly text: string;
	/** Font size in units. */
	readonly size: number;
	readonly bold?: boolean;
	readonly anchor: "start" | "middle" | "end";
	readonly paint: Paint;
	/** What it names: it may stand on that thing and nowhere else. */
	readonly of?: string;
}
/** A mark of the symbols room, its origin at `x`, `y`, scaled by `scale` about its origin. */
export interface SymbolMark {
	readonly kind: "symbol";
	readonly symbol: string;
	readonly of?: string;
	readonly x: number;
	readonly y: number;
	readonly scale: number;
	readonly turn?: 0 | 90 | 180 | 270 | undefined;
	/** Its accessible name. */
	readonly label?: string;
	readonly paint: Paint;
}

/** A named paint; the SVG room holds its light and dark value. Conductor colours are painted by their own names. */
export type Paint =
	| "ink"
	| "soft"
	| "faint"
	| "paper"
	| "enclosure"
	| "panel"
	| "item"
	| "gland"
	| "brass"
	| "silver"
	| "green"
	| "dark"
	| "engraving"
	| "hot-bus"
	| "neutral-bar"
	| "ground-bar"
	| "caution"
	| "caution-line"
	| "fault"
	| "fault-soft";
