// Letter codes along the wires of a box: one at each end that the box holds, beside the wire, on free ground.
import type { TextMark, XY } from "../scene.ts";
import { textBox } from "../text-metrics.ts";
import { isCore } from "./box-content.ts";
import type { Route } from "./box-plan.ts";
import { codeAtEnd, codeOf } from "./codes.ts";
import { type } from "./dimensions.ts";
import type { TakenBoxes } from "./taken-boxes.ts";

/** The codes of all wires of a box that find room, each added to `taken` as it is placed. */
export function placeCodes(routes: readonly Route[], lit: ReadonlyMap<string, number>, taken: TakenBoxes): TextMark[] {
	const marks: TextMark[] = [];
	const put = (mark: TextMark | undefined): void => {
		if (mark === undefined) return;
		taken.take(textBox(mark));
		marks.push(mark);
	};
	for (const route of routes) {
		const { conductor } = route.wire;
		const reversed = route.points.toReversed();
		const clear = lit.has(conductor.name) ? litClearance : 0;
		if (isCore(route.wire)) {
			const here = conductor.ends[0].enclosure === conductor.ends[1].enclosure || endHere(route) === 0 ? 0 : 1;
			const code = codeAtEnd(conductor, here);
			put(
				codeAlong(route.points, code, conductor.name, clear, taken) ??
					codeAlong(reversed, code, conductor.name, clear, taken),
			);
			if (lengthOf(route.points) > longRun) put(codeAlong(reversed, code, conductor.name, clear, taken));
			continue;
		}
		const first = codeAlong(reversed, codeOf(conductor), conductor.name, clear, taken);
		put(first);
		if (first === undefined || lengthOf(route.points) > shortRun)
			put(codeAlong(route.points, codeOf(conductor), conductor.name, clear, taken));
	}
	return marks;
}

/** Which end of a core its point is on. */
function endHere({ wire }: Route): 0 | 1 {
	const [first] = wire.conductor.ends;
	return wire.to.at === "point" ? (first.point === wire.to.point ? 0 : 1) : first.point === undefined ? 0 : 1;
}

/** A code as near to the start of a way as there is room. */
function codeAlong(
	points: readonly XY[],
	text: string,
	name: string,
	clear: number,
	taken: TakenBoxes,
): TextMark | undefined {
	const shared = { kind: "text", text, size: type.letter, paint: "ink", of: name } as const;
	const { y: rise, width, height } = textBox({ ...shared, x: 0, y: 0, anchor: "start" });
	const fits = (x: number, y: number, anchor: "start" | "end"): TextMark | undefined => {
		const box = { x: anchor === "start" ? x : x - width, y: y + rise, width, height };
		return taken.isFree(box) ? { ...shared, x, y, anchor } : undefined;
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
		const found = fits(start.x + beside + clear, y, "start") ?? fits(start.x - beside - clear, y, "end");
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
/** A wire that a finding lights up has a band with ticks. */
const litClearance = 3.2;
const clearance = 4;
const step = 6;
/** A core longer than this is named again near its terminal; a pigtail shorter than that once for both ends. */
const longRun = 190;
const shortRun = 70;
