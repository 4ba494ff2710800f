// The columns of a box whose devices stand between its rows: what leads to an outer row never stands under the splice of an inner one.
import { certain } from "../../base/certain.ts";
import type { Part } from "../../circuit/circuit.ts";
import { textWidth } from "../text-metrics.ts";
import type { Meeting } from "./between-rows.ts";
import { type BoxContent, farTie, isCore, pointOf, type Wire } from "./box-content.ts";
import { codeRoom } from "./box-frame.ts";
import type { RowPlan } from "./box-rows.ts";
import { columnPitch, rowPitch, type } from "./dimensions.ts";
import type { FaceSymbol } from "./face-symbols.ts";
import { sizeFreePlate } from "./free-plate.ts";
import { planSplicePorts } from "./splice-ports.ts";

/** What a device's plate takes: its face in the middle, the lines that name it beside that. */
export interface BetweenSize {
	readonly device: Part;
	readonly face?: FaceSymbol;
	readonly caption: readonly string[];
	/** The width of face and lines. */
	readonly inside: number;
	readonly width: number;
	readonly depth: number;
	readonly margin: number;
}
/** A plate from edge to edge with its screws; the stud on the metal of the box has no size. */
export interface DeviceSpan {
	readonly size?: BetweenSize;
	readonly left: number;
	readonly right: number;
	readonly screws: readonly { readonly point: number; readonly x: number }[];
}
/** Where everything stands from left to right. */
export interface BetweenColumns {
	readonly spans: readonly DeviceSpan[];
	/** The columns of each splice, from left to right. */
	readonly splices: ReadonlyMap<number, readonly number[]>;
	/** Wires that arrive on another column than they leave from. */
	readonly jogged: ReadonlySet<Wire>;
	readonly last: number;
	readonly isAbove: (point: number) => boolean;
	readonly columnOf: (point: number, wire: Wire) => number;
}

/** Where the first plate and the first column may stand. */
interface Start {
	readonly edge: number;
	readonly column: number;
}

/** The size of a device's plate. */
export function sizeBetween(content: BoxContent, device: Part): BetweenSize {
	const { face, caption, margin } = sizeFreePlate(content, device, content.devices.length > 1);
	const words = caption.map((line, index) => textWidth(line, { size: type.note, bold: index === 0 }));
	const beside = words.length === 0 ? 0 : Math.ceil(Math.max(...words)) + faceGap;
	const inside = (face?.width ?? 0) + beside;
	return {
		device,
		...(face === undefined ? {} : { face }),
		caption,
		inside,
		width: inside + 20,
		depth: 2 * letterDepth + (face?.height ?? 24) + 4,
		margin,
	};
}

/** The columns where the rows from `split` on run below the devices; undefined where a wire would have to pass a splice. */
export function placeBetween(
	content: BoxContent,
	rows: RowPlan,
	meetings: readonly Meeting[],
	split: number,
	sizes: readonly BetweenSize[],
	start: Start,
): BetweenColumns | undefined {
	const placing = new Placing(content, rows, split, start);
	const count = sizes.length;
	const stud = meetings.find(({ device }) => device === count);
	if (stud?.row !== undefined && stud.row < split) return undefined;
	placing.addPassing(meetings);
	// With a stud behind it, the only device has its outermost row on the right.
	const isOuterFirst = (device: number): boolean => (count === 1 ? stud === undefined : device === 0);
	if (!placing.addLeading(meetings, isOuterFirst(0))) return undefined;
	for (const [device, size] of sizes.entries()) {
		const own = meetings.filter((meeting) => meeting.device === device);
		const isMiddle = count === 3 && device === 1;
		if (!placing.addDevice(size, own, isOuterFirst(device), isMiddle, device === count - 1)) return undefined;
	}
	if (stud !== undefined) placing.addStud(stud);
	placing.addTrailing();
	return placing.finish(meetings);
}

class Placing {
	private readonly rows: RowPlan;
	private readonly split: number;
	private readonly pitch: number;
	private readonly ports: ReturnType<typeof planSplicePorts>;
	private readonly columns = new Map<number, Map<Wire | undefined, number>>();
	private readonly splices = new Map<number, number[]>();
	private readonly spans: DeviceSpan[] = [];
	private readonly jogged = new Set<Wire>();
	/** Splices whose further columns follow behind all devices. */
	private readonly trailing: number[] = [];
	private waiting: { readonly wire: Wire; readonly splice: number } | undefined;
	private next: number;
	private edge: number;
	private lastBelow = 0;

	constructor(content: BoxContent, rows: RowPlan, split: number, start: Start) {
		this.rows = rows;
		this.split = split;
		this.next = start.column;
		this.edge = start.edge;
		this.pitch = Math.max(columnPitch, codeRoom(content) + 8);
		this.ports = planSplicePorts(content, rows, () => undefined);
	}

	/** Splices that serve no terminal and no further cable, in front of all else. */
	addPassing(meetings: readonly Meeting[]): void {
		const serving = new Set(meetings.map((meeting) => spliceOf(meeting)));
		const passing = [...this.rows.homeOf.keys()].filter(
			(splice) => !serving.has(splice) && this.leavingOf(splice).length === 0,
		);
		for (const splice of passing) this.put(splice, undefined, this.next);
		if (passing.length > 0) this.next += this.pitch;
	}

	/** Room for further cables' wires on the first of the rows below; false where others would have them in their midst. */
	addLeading(meetings: readonly Meeting[], outerFirst: boolean): boolean {
		if ([...this.ports.values()].some(({ up }) => up.length > 0)) return false;
		const leaving = [...this.rows.homeOf.keys()].filter((splice) => this.leavingOf(splice).length > 0);
		const above = leaving.filter((splice) => this.rankOf(this.rows.homeOf.get(splice)) < 0);
		const below = [...this.rows.homeOf.entries()]
			.filter(([, row]) => row >= this.split)
			.toSorted(([, one], [, other]) => (outerFirst ? other - one : one - other))
			.map(([splice]) => splice);
		const serving = new Set(meetings.map((meeting) => spliceOf(meeting)));
		for (const [index, splice] of below.entries()) {
			const wires = this.leavingOf(splice);
			const more = wires.length - (serving.has(splice) ? 1 : 0);
			if (wires.length === 0) continue;
			const isFirst = index === 0 && below.length > 1;
			if (!isFirst && index < below.length - 1 && more > 0) return false;
			if (!isFirst) {
				this.trailing.push(splice);
				continue;
			}
			for (const wire of wires.slice(0, more)) {
				this.put(splice, wire, this.next);
				this.next += rowPitch;
			}
		}
		// Those above go down behind everything: the innermost first.
		above.sort((one, other) => (this.rows.homeOf.get(other) ?? 0) - (this.rows.homeOf.get(one) ?? 0));
		this.trailing.push(...above);
		return true;
	}

	/** A device with its terminals on both edges; of the middle one of three, what hangs on an outer row is led round. */
	addDevice(
		size: BetweenSize,
		own: readonly Meeting[],
		outerFirst: boolean,
		isMiddle: boolean,
		isLast: boolean,
	): boolean {
		const inOrder = (list: readonly Meeting[]): Meeting[] =>
			list.toSorted((one, other) => (outerFirst ? -1 : 1) * (this.outness(one) - this.outness(other)));
		const above = inOrder(own.filter(({ row }) => this.rankOf(row) < 0));
		const below: (Meeting | "jog")[] = inOrder(own.filter(({ row }) => this.rankOf(row) >= 0));
		if (isMiddle) {
			const outer = own.filter((meeting) => this.outness(meeting) > 0);
			const [jogging] = outer;
			const splice = jogging === undefined ? undefined : spliceOf(jogging);
			if (outer.length > 1 || (jogging !== undefined && this.rankOf(jogging.row) < 0)) return false;
			if (jogging?.wire !== undefined && splice !== undefined) this.waiting = { wire: jogging.wire, splice };
		}
		if (isLast && this.waiting !== undefined) below.splice(1, 0, "jog");
		const widest = Math.max(above.length, below.length, 1);
		const width = Math.max(size.width, (widest - 1) * this.pitch + 2 * size.margin);
		const firstIn = (width - (widest - 1) * this.pitch) / 2;
		const left = Math.max(this.edge, this.next - firstIn);
		const screws: { point: number; x: number }[] = [];
		for (const list of [above, below]) {
			const first = left + (width - (list.length - 1) * this.pitch) / 2;
			for (const [index, meeting] of list.entries()) {
				const x = first + index * this.pitch;
				if (list === below) this.lastBelow = x;
				if (meeting === "jog") this.putJog(x);
				else {
					screws.push({ point: meeting.point, x });
					this.putMeeting(meeting, x);
				}
			}
		}
		this.spans.push({ size, left, right: left + width, screws });
		this.edge = left + width + plateGap;
		this.next = this.edge;
		return true;
	}

	addStud(meeting: Meeting): void {
		const x = Math.max(this.edge + studWidth / 2, this.lastBelow + this.pitch);
		this.putMeeting(meeting, x);
		this.lastBelow = x;
		this.spans.push({
			left: x - studWidth / 2,
			right: x + studWidth / 2,
			screws: [{ point: meeting.point, x }],
		});
		this.edge = x + studWidth / 2 + plateGap;
	}

	/** Further columns of splices, from which wires go down to further cables. */
	addTrailing(): void {
		let x = this.lastBelow;
		for (const splice of this.trailing) {
			const isAbove = this.rankOf(this.rows.homeOf.get(splice)) < 0;
			const wires = this.leavingOf(splice);
			const own = this.splices.get(splice) ?? [];
			// Below, what goes down may stand under what comes up.
			const shared = isAbove || own.length === 0 ? 0 : 1;
			if (isAbove) x = Math.max(x + this.pitch - rowPitch, this.edge - rowPitch);
			for (const [index, wire] of wires.entries()) {
				const at = index < shared ? own.at(-1) : undefined;
				x = at ?? x + (own.length === 0 && index === 0 ? this.pitch : rowPitch);
				this.put(splice, wire, x);
			}
			this.lastBelow = Math.max(this.lastBelow, x);
		}
	}

	finish(meetings: readonly Meeting[]): BetweenColumns | undefined {
		// Wires that leave the first of the rows below stand in front, but the last of them under what comes up.
		for (const [splice, wires] of [...this.rows.homeOf.keys()].map((one) => [one, this.leavingOf(one)] as const))
			for (const wire of wires)
				if (this.columns.get(splice)?.has(wire) !== true) {
					const own = this.splices
						.get(splice)
						?.toSorted((one, other) => one - other)
						.at(-1);
					if (own === undefined) return undefined;
					this.put(splice, wire, own);
				}
		const above = new Set(meetings.filter(({ row }) => this.rankOf(row) < 0).map(({ point }) => point));
		const splices = new Map(
			[...this.splices].map(([point, xs]) => [point, [...new Set(xs)].toSorted((one, other) => one - other)]),
		);
		return {
			spans: this.spans,
			splices,
			jogged: this.jogged,
			last: Math.max(
				0,
				...[...splices.values()].flat(),
				...this.spans.flatMap(({ screws }) => screws.map(({ x }) => x)),
			),
			isAbove: (point) => above.has(point),
			columnOf: (point, wire) => certain(this.columns.get(point)?.get(wire), `the column of ${wire.conductor.name}`),
		};
	}

	private putMeeting(meeting: Meeting, x: number): void {
		const { wire, point } = meeting;
		if (wire === undefined) return;
		this.columnsOf(point).set(wire, x);
		const splice = spliceOf(meeting);
		if (splice === undefined || this.waiting?.wire === wire) return;
		this.put(splice, wire, x);
	}

	private putJog(x: number): void {
		if (this.waiting === undefined) return;
		this.put(this.waiting.splice, this.waiting.wire, x);
		this.jogged.add(this.waiting.wire);
	}

	private put(splice: number, wire: Wire | undefined, x: number): void {
		this.columnsOf(splice).set(wire, x);
		const there = this.splices.get(splice);
		if (there === undefined) this.splices.set(splice, [x]);
		else there.push(x);
	}

	private columnsOf(point: number): Map<Wire | undefined, number> {
		const there = this.columns.get(point) ?? new Map<Wire | undefined, number>();
		this.columns.set(point, there);
		return there;
	}

	/** The wires of further cables on a splice, that which goes furthest first. */
	private leavingOf(splice: number): readonly Wire[] {
		return this.ports.get(splice)?.down ?? [];
	}

	/** How far below the devices a row is; less than 0 above them. */
	private rankOf(row: number | undefined): number {
		return (row ?? this.split) - this.split;
	}

	/** How many rows of its side are nearer to the devices. */
	private outness({ row }: Meeting): number {
		const rank = this.rankOf(row);
		return rank < 0 ? -1 - rank : rank;
	}
}

/** The splice at the other end of the wire on a terminal. */
function spliceOf({ wire, point }: Meeting): number | undefined {
	return wire === undefined || isCore(wire) ? undefined : pointOf(farTie(wire, point));
}

/** Between a device's face and the lines that name it. */
export const faceGap = 8;
const letterDepth = 26;
const plateGap = 16;
const studWidth = 40;
