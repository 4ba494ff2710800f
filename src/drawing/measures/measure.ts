// What a measure of drawing quality is: a count or a figure, held against its limit, with the places where it was found.
import { marksInPlace } from "../bounds.ts";
import type { Group, Mark, Sheet } from "../scene.ts";

/** One figure of a sheet. */
export interface Measure {
	readonly name: string;
	readonly found: number;
	/** The most (or for a `least` measure the least) that is good. */
	readonly limit: number;
	readonly bound: "most" | "least";
	/** Where: names of groups or marks, at most ten. */
	readonly where: readonly string[];
}

/** A mark with the group it stands in. */
export interface Placed<Kind extends Mark = Mark> {
	readonly mark: Kind;
	readonly group: Group;
}

/** The marks of a sheet that belong to the drawing and its furniture; the frame and its zones are left out. */
export function placedMarks(sheet: Sheet): Placed[] {
	return sheet.groups
		.filter((group) => group.name !== "frame")
		.flatMap((group) => marksInPlace(group).map((mark) => ({ mark, group })));
}

/** A measure that counts faults: none is good unless `limit` says otherwise. */
export function countFaults(name: string, where: readonly string[], limit = 0): Measure {
	return { name, found: where.length, limit, bound: "most", where: where.slice(0, 10) };
}

/** A measure that may not be above its limit. */
export function atMost(name: string, found: number, limit: number, where: readonly string[] = []): Measure {
	return { name, found: round(found), limit, bound: "most", where };
}

/** A measure that may not be below its limit. */
export function atLeast(name: string, found: number, limit: number, where: readonly string[] = []): Measure {
	return { name, found: round(found), limit, bound: "least", where };
}

/** Whether the figure is beyond its limit. */
export function isBroken(measure: Measure): boolean {
	return measure.bound === "most" ? measure.found > measure.limit : measure.found < measure.limit;
}

function round(value: number): number {
	return Math.round(value * 1000) / 1000;
}
