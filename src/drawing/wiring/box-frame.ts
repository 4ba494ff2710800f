// What every box has, whatever is in it: row heights, glands at its walls, room for letter codes, the stud on its metal.
import { certain } from "../../base/certain.ts";
import { textWidth } from "../text-metrics.ts";
import { type BoxContent, isCore, pointOf } from "./box-content.ts";
import type { Gland, Joint, Plate } from "./box-plan.ts";
import type { Row, RowPlan } from "./box-rows.ts";
import { codeAtEnd } from "./codes.ts";
import { rowPitch, type } from "./dimensions.ts";
import type { SplicePorts } from "./splice-ports.ts";

/** Room that a free end and its word take along a row. */
export const stubRoom = 64;

/** The height of each row; between the rows of different cables is room for their glands. */
export function rowHeights(rows: readonly Row[], first: number): number[] {
	let y = first;
	return rows.map((row, index) => {
		const before = rows[index - 1];
		if (before !== undefined) y += before.group === row.group ? rowPitch : 2 * rowPitch;
		return y;
	});
}

/** The glands of all entries, each at the middle of its rows. */
export function glandsOf(content: BoxContent, rows: RowPlan, heights: readonly number[], width: number): Gland[] {
	return [...content.left, ...content.right].map((entry) => {
		const ys = entry.wires.map((wire) => certain(heights[rows.rowOf.get(wire) ?? -1], "the row of a core"));
		return { entry, x: entry.side === "left" ? 0 : width, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
	});
}

/** Room for a letter code beside a wire. */
export function codeRoom(content: BoxContent): number {
	let widest = 14;
	for (const wire of content.wires)
		widest = Math.max(widest, textWidth(codeAtEnd(wire.conductor, wire.end), { size: type.letter }));
	return Math.ceil(widest) + 8;
}

/** Whether a core that comes through that wall ends on nothing. */
export function hasFreeEnd(content: BoxContent, side: "left" | "right"): boolean {
	return content[side].some((entry) => entry.wires.some((wire) => wire.to.at === "free"));
}

/** The stud on a metal box, under the splice that is joined to it; undefined where none is. */
export function studBelow(
	content: BoxContent,
	joints: ReadonlyMap<number, Joint>,
	ports: ReadonlyMap<number, SplicePorts>,
	floor: number,
): Plate | undefined {
	const body = content.enclosure.body;
	const wire = body === undefined ? undefined : content.landings.get(body)?.find((landed) => !isCore(landed));
	if (body === undefined || wire === undefined) return undefined;
	const splice = [pointOf(wire.from), pointOf(wire.to)].find((point) => point !== undefined && joints.has(point));
	const joint = splice === undefined ? undefined : joints.get(splice);
	const down = splice === undefined ? undefined : ports.get(splice)?.down;
	if (joint === undefined || down === undefined) return undefined;
	const x = certain(joint.columns[joint.columns.length - down.length + down.indexOf(wire)], "the column to the stud");
	return studAt(content, body, x, floor + studDrop);
}

/** A stud with its screw at the given place, the plate hanging below it. */
export function studAt(content: BoxContent, body: number, x: number, y: number): Plate {
	const text = content.enclosure.sort === "box" ? "box" : "case";
	return {
		of: certain(content.circuit.points[body], "the metal of the box").name,
		box: { x: x - studWidth / 2, y, width: studWidth, height: studHeight },
		terminals: [{ point: body, screws: [{ x, y }], letter: "", letterAt: { x, y }, anchor: "middle" }],
		symbols: [],
		leads: [],
		texts: [{ text, at: { x, y: y + studHeight - 6 }, anchor: "middle", soft: true }],
	};
}

const studWidth = 40;
const studHeight = 24;
const studDrop = 34;
