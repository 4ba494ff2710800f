// Letter codes along the wires of a box: one at each end that the box holds, beside the wire, on free ground.
import type { TextMark, XY } from "../scene.ts";
import { textBox } from "../text-metrics.ts";
import { isCore } from "./box-content.ts";
import type { Route } from "./box-plan.ts";
import { codeAtEnd } from "./codes.ts";
import { type } from "./dimensions.ts";
import type { TakenBoxes } from "./taken-boxes.ts";

/**
 * The codes of all wires of a box that find room, each added to `taken` as it is placed: first one for each wire, those with the
 * least room first, then a second at the other end of the long ones.
 */
export function placeCodes(routes: readonly Route[], lit: ReadonlyMap<string, number>, taken: TakenBoxes): TextMark[] {
	const marks: TextMark[] = [];
	const put = (points: readonly XY[], { wire: { conductor, end } }: Route): boolean => {
		const mark = codeAlong(points, {
			text: codeAtEnd(conductor, end),
			name: conductor.name,
			clear: lit.has(conductor.name) ? litClearance : 0,
			taken,
		});
		if (mark === undefined) return false;
		taken.take(textBox(mark));
		marks.push(mark);
		return true;
	};
	const cores = routes.filter(({ wire }) => isCore(wire));
	const inner = routes
		.filter(({ wire }) => !isCore(wire))
		.map((route) => ({ route, length: lengthOf(route.points) }))
		.sort((one, other) => one.length - other.length);
	for (const route of cores) if (!put(route.points, route)) put(route.points.toReversed(), route);
	const seconds: Route[] = [];
	for (const { route, length } of inner) {
		const named = put(route.points.toReversed(), route);
		if (!named) put(route.points, route);
		else if (length > shortRun) seconds.push(route);
	}
	for (const route of seconds) put(route.points, route);
	for (const route of cores) if (lengthOf(route.points) > longRun) put(route.points.toReversed(), route);
	return marks;
}

interface CodeToPlace {
	readonly text: string;
	readonly name: string;
	/** More room than usual beside the wire. */
	readonly clear: number;
	readonly taken: TakenBoxes;
}

/** A code as near to the start of a way as there is room. */
function codeAlong(points: readonly XY[], { text, name, clear, taken }: CodeToPlace): TextMark | undefined {
	const codeAt = (x: number, y: number, anchor: "start" | "end"): TextMark => {
		return { kind: "text", text, x, y, size: type.letter, anchor, paint: "ink", of: name };
	};
	const { y: rise, width, height } = textBox(codeAt(0, 0, "start"));
	const fits = (x: number, y: number, anchor: "start" | "end"): TextMark | undefined => {
		const box = { x: anchor === "start" ? x : x - width, y: y + rise, width, height };
		return taken.isFree(box) ? codeAt(x, y, anchor) : undefined;
	};
	for (const [index, end] of points.entries()) {
		const start = points[index - 1];
		if (start === undefined) continue;
		const found =
			start.y === end.y
				? alongLevel(start, end, width, clear, fits)
				: start.x === end.x
					? alongUpright(start, end, clear, fits)
					: undefined;
		if (found !== undefined) return found;
	}
	return undefined;
}

type Fits = (x: number, y: number, anchor: "start" | "end") => TextMark | undefined;

/** Above the wire, else below it, from its start onward. */
function alongLevel(start: XY, end: XY, width: number, clear: number, fits: Fits): TextMark | undefined {
	const way = end.x > start.x ? 1 : -1;
	const length = Math.abs(end.x - start.x);
	const anchor = way === 1 ? "start" : "end";
	for (let offset = clearance; offset + width + clearance / 2 <= length; offset += step) {
		const x = start.x + way * offset;
		const found = fits(x, start.y - above - clear, anchor) ?? fits(x, start.y + below + clear, anchor);
		if (found !== undefined) return found;
	}
	return undefined;
}

/** To the right of the wire, else to the left, from its start onward. */
function alongUpright(start: XY, end: XY, clear: number, fits: Fits): TextMark | undefined {
	const way = end.y > start.y ? 1 : -1;
	const length = Math.abs(end.y - start.y);
	for (let offset = clearance; offset + 2 <= length; offset += step / 2) {
		const y = start.y + way * offset + (way === 1 ? 7.8 : -2.4);
		const found =
			fits(start.x + beside + clear, y, "start") ??
			fits(start.x - beside - clear, y, "end") ??
			fits(start.x + farBeside + clear, y, "start") ??
			fits(start.x - farBeside - clear, y, "end");
		if (found !== undefined) return found;
	}
	return undefined;
}

function lengthOf(points: readonly XY[]): number {
	let sum = 0;
	for (const [index, end] of points.entries()) {
		const start = points[index - 1];
		if (start !== undefined) sum += Math.abs(end.x - start.x) + Math.abs(end.y - start.y);
	}
	return sum;
}

/** Baselines above and below a level wire, and how far a code stands beside an upright one. */
const above = 6;
const below = 12.5;
const beside = 6;
const farBeside = 10.5;
/** A wire that a finding lights up has a band with ticks. */
const litClearance = 3.2;
const clearance = 4;
const step = 6;
/** A core longer than this is named again near its terminal; a pigtail shorter than that once for both ends. */
const longRun = 190;
const shortRun = 70;
