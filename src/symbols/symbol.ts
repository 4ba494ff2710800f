// What a symbol is: shapes and ports as plain data on a grid of 10. Knows nothing of how it is written or where it stands.

/** A mark to be placed on a sheet. `box` and `ports` are measured from its origin; its shapes are drawn on a grid of their own. */
export interface SymbolDesign {
	readonly name: string;
	/** What it stands for, in a few words. */
	readonly title: string;
	/** What it occupies, leads included. */
	readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
	readonly ports: readonly SymbolPort[];
	/** Where its origin lies on the grid of its shapes. */
	readonly origin: Place;
	readonly shapes: readonly Shape[];
	/** False where it holds letters or a polarity, which must stay upright. */
	readonly turns: boolean;
}

/** Where a conductor meets a symbol, and the way it leaves. */
export interface SymbolPort {
	readonly name: string;
	readonly x: number;
	readonly y: number;
	readonly direction: "north" | "east" | "south" | "west";
}

interface Place {
	readonly x: number;
	readonly y: number;
}

/** One stroke or surface. Outlines are inked; the look says what else. */
export type Shape = Form & Look;
type Form =
	| { readonly kind: "path"; readonly d: string }
	| { readonly kind: "line"; readonly points: readonly number[] }
	| { readonly kind: "circle"; readonly x: number; readonly y: number; readonly radius: number }
	| {
			readonly kind: "rectangle";
			readonly x: number;
			readonly y: number;
			readonly width: number;
			readonly height: number;
			readonly radius: number;
	  };
interface Look {
	/** `ink` fills it solid; `plate` with the colour of a device; `warning` with that of a caution. Undefined: not filled. */
	readonly fill?: "ink" | "plate" | "joint" | "warning";
	/** Stroke width on the grid; undefined: the ordinary one. */
	readonly weight?: number;
	readonly dashed?: boolean;
}

/** A symbol as its file states it, in coordinates of its own grid from the upper left. */
interface SymbolSpec {
	readonly name: string;
	readonly title: string;
	readonly size: readonly [number, number];
	readonly origin: readonly [number, number];
	/** Name, x, y, direction. */
	readonly ports?: readonly (readonly [string, number, number, SymbolPort["direction"]])[];
	readonly shapes: readonly Shape[];
	readonly upright?: boolean;
}

/** A symbol from its spec: box and ports become relative to the origin. */
export function symbol(spec: SymbolSpec): SymbolDesign {
	const [originX, originY] = spec.origin;
	const [width, height] = spec.size;
	return {
		name: spec.name,
		title: spec.title,
		box: { x: -originX, y: -originY, width, height },
		ports: (spec.ports ?? []).map(([name, x, y, direction]) => ({ name, x: x - originX, y: y - originY, direction })),
		origin: { x: originX, y: originY },
		shapes: spec.shapes,
		turns: spec.upright !== true,
	};
}

/** A one-line mark: the line comes in on top at (20, 0); with `through` it goes on straight below. */
export function oneLineMark(
	name: string,
	title: string,
	shapes: readonly Shape[],
	size: readonly [number, number] = [40, 60],
	through: "through" | "ends" | "starts" = "through",
): SymbolDesign {
	const [, height] = size;
	return symbol({
		name,
		title,
		size,
		origin: [20, 0],
		ports: [
			...(through === "starts" ? [] : [["in", 20, 0, "north"] as const]),
			...(through === "ends" ? [] : [["out", 20, height, "south"] as const]),
		],
		shapes,
	});
}

/** A device as the hand finds it, its middle at (0, 0) of its grid, which is its origin too. */
export function face(
	name: string,
	title: string,
	size: readonly [number, number],
	shapes: readonly Shape[],
	ports: readonly SymbolPort[] = [],
): SymbolDesign {
	const [width, height] = size;
	const box = { x: -width / 2, y: -height / 2, width, height };
	return { name, title, box, ports, origin: { x: 0, y: 0 }, shapes, turns: false };
}

/** The same mark, kept upright: it holds letters. */
export function upright(design: SymbolDesign): SymbolDesign {
	return { ...design, turns: false };
}

/** Strokes through the points x1, y1, x2, y2, ... */
export function line(...points: readonly number[]): Shape {
	return { kind: "line", points };
}

/** A stroke in SVG path syntax, absolute coordinates. */
export function path(d: string): Shape {
	return { kind: "path", d };
}

/** A circle around a centre. */
export function circle(x: number, y: number, radius: number): Shape {
	return { kind: "circle", x, y, radius };
}

/** An upright rectangle from its upper left corner. */
export function rectangle(x: number, y: number, width: number, height: number, radius = 0): Shape {
	return { kind: "rectangle", x, y, width, height, radius };
}

/** The shape filled. */
export function filled(shape: Shape, fill: NonNullable<Look["fill"]> = "ink"): Shape {
	return { ...shape, fill };
}

/** The shape in short dashes: a mechanical link, something left out. */
export function dashed(shape: Shape): Shape {
	return { ...shape, dashed: true };
}

/** The shape in another stroke width. */
export function weighted(weight: number, shape: Shape): Shape {
	return { ...shape, weight };
}
