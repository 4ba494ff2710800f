// A fuse block: its feed on the left, a way with its fuse on the right for each circuit, the negatives on their own bar.
import type { Circuit, Part } from "../../circuit/circuit.ts";
import type { Mark, XY } from "../scene.ts";
import type { Stock } from "../wiring/box-content.ts";
import { contactSymbol } from "../wiring/face-symbols.ts";
import { wordsOf } from "./device-box.ts";
import {
	caseMark,
	type DirectBox,
	type Dock,
	type ExtentOf,
	grid,
	leadMark,
	nameStyle,
	noteStyle,
	onGrid,
	type SidedMeeting,
	screwMark,
	terminalPitch,
	words,
	wordsWidth,
} from "./direct-box.ts";
import { docksOf, type Row, roomBetween, rowsOf } from "./rows.ts";

/** The box of a fuse block whose conductors end on its feed, its fuses and its negative bar; undefined for anything else. */
export function fuseBlockBox(
	circuit: Circuit,
	stock: Stock,
	meetings: readonly SidedMeeting[],
	extentOf: ExtentOf,
): DirectBox | undefined {
	const { enclosure, parts, splices, inner } = stock;
	const block = parts.find((part) => part.name === enclosure.name);
	const bar = parts.find((part) => part.face.traits.includes("neutral-bar"));
	const fuses = parts.filter((part) => part !== block && part !== bar);
	if (block === undefined || bar === undefined || splices.length > 0 || inner.length > 0) return undefined;
	const ways = fuses.map((fuse) => ({ fuse, load: loadOf(circuit, fuse) }));
	const fed = block.points;
	const order = [...fed, ...ways.flatMap(({ load }) => load ?? []), ...bar.points];
	const found = rowsOf(circuit, enclosure.name, meetings, order);
	// A spare way leads nowhere; a way that power comes in by is drawn the way every other box is.
	const isWay = ({ point }: Row): boolean => ways.some(({ load }) => load === point);
	if (found === undefined || found.left.some((row) => isWay(row) && !row.meeting.isOnward)) return undefined;
	const drawing = new BlockDrawing(circuit, stock, block, bar, found, extentOf);
	for (const { fuse, load } of ways) drawing.addWay(fuse, load);
	return drawing.finish();
}

/** Where everything of a block stands, filled from the top. */
class BlockDrawing {
	private readonly circuit: Circuit;
	private readonly stock: Stock;
	private readonly block: Part;
	private readonly bar: Part;
	private readonly left: readonly Row[];
	private readonly right: readonly Row[];
	private readonly extentOf: ExtentOf;
	private readonly lines: readonly string[];
	private readonly width: number;
	/** Ways leave on both walls: the fuses of each stand before it, the bus and the bar between them. */
	private readonly isTwoSided: boolean;
	private readonly busX: number;
	private readonly barX: number;
	private readonly yOf = new Map<Row, number>();
	private readonly fuses: { readonly fuse: Part; readonly y: number; readonly side: Side }[] = [];
	/** How far each wall is filled. */
	private readonly floor: Record<Side, number>;

	constructor(
		circuit: Circuit,
		stock: Stock,
		block: Part,
		bar: Part,
		rows: { readonly left: readonly Row[]; readonly right: readonly Row[] },
		extentOf: ExtentOf,
	) {
		this.extentOf = extentOf;
		this.circuit = circuit;
		this.stock = stock;
		this.block = block;
		this.bar = bar;
		this.left = rows.left;
		this.right = rows.right;
		this.lines = wordsOf(stock.enclosure, block, undefined);
		const words = Math.max(...this.lines.map((line, index) => wordsWidth(line, index === 0 ? nameStyle : noteStyle)));
		this.isTwoSided = rows.left.some(({ meeting }) => meeting.isOnward);
		this.width = Math.max(this.isTwoSided ? 2 * besideBus + betweenBars : 230, words + 24);
		this.busX = this.isTwoSided ? Math.round((this.width - betweenBars) / 2) : 46;
		this.barX = this.isTwoSided ? this.busX + betweenBars : this.width - 46;
		const top = onGrid(14 + this.lines.length * 14 + 34);
		this.floor = { left: top, right: top };
		// With ways below it on both walls, the feed comes in above them.
		if (this.isTwoSided) for (const row of this.left) if (!row.meeting.isOnward) this.place("left", row);
	}

	/** A fuse with the rows of its sheath, as far below the way before as what hangs on both needs; a spare one takes less. */
	addWay(fuse: Part, load: number | undefined): void {
		const side = this.left.some(({ point }) => point === load) ? "left" : "right";
		const rows = side === "left" ? this.left : this.right;
		const own = rows.find(({ point }) => point === load);
		if (own === undefined) {
			this.fuses.push({ fuse, y: this.floor.right, side });
			this.floor.right += spareRoom;
			return;
		}
		const sheath = rows.filter(({ meeting }) => meeting === own.meeting);
		const before = this.lowest(rows);
		const room = before === undefined ? 0 : roomBetween(before, own, rows, this.extentOf);
		let y = Math.max(this.floor[side], before === undefined ? 0 : (this.yOf.get(before) ?? 0) + room);
		// Between the bus and the bar what comes from one wall never runs on in what goes to the other.
		const across = this.isTwoSided ? (side === "left" ? this.right : this.left) : [];
		const isTaken = (at: number): boolean => across.some((row) => this.yOf.get(row) === at);
		while (sheath.some((_, index) => isTaken(y + index * terminalPitch))) y += grid;
		this.fuses.push({ fuse, y, side });
		for (const [index, row] of sheath.entries()) this.yOf.set(row, y + index * terminalPitch);
		this.floor[side] = y + (sheath.length - 1) * terminalPitch + wayRoom;
	}

	finish(): DirectBox {
		// The feed comes in at the foot of the bus, so that its negative passes below it.
		if (!this.isTwoSided) this.floor.left = this.fuses.at(-1)?.y ?? this.floor.left;
		for (const row of this.left) if (!this.yOf.has(row)) this.place("left", row);
		const others = this.right.filter((row) => !this.yOf.has(row));
		if (!this.isTwoSided) this.floor.right = Math.max(this.floor.left, this.floor.right);
		for (const row of others) this.place("right", row);
		const height = Math.max(this.floor.left, this.floor.right) - wayRoom + 24;
		const { enclosure } = this.stock;
		const yOf = (row: Row): number => this.yOf.get(row) ?? 0;
		const docks: Dock[] = [...docksOf(this.left, 0, yOf), ...docksOf(this.right, this.width, yOf)];
		const marks = [
			caseMark(enclosure, this.width, height),
			...this.lineMarks(),
			...this.barMarks(),
			...this.fuseMarks(),
		];
		const spots = [
			...this.left.map((row) => ({ row, x: 0 })),
			...this.right.map((row) => ({ row, x: this.width })),
		].map(({ row, x }) => ({ row, at: { x, y: yOf(row) } }));
		const within = { x: 0, y: 0, width: this.width, height };
		return {
			name: `box ${enclosure.name}`,
			label: this.lines.join(": "),
			span: enclosure.span,
			width: this.width,
			height,
			docks,
			draw: () => ({
				marks: [...marks, ...spots.flatMap(({ row, at }) => this.leadTo(row, at))],
				over: spots.map(({ row, at }) => screwMark(this.circuit, row.point, at)),
				anchors: [
					...spots.map(({ row, at }) => [this.circuit.points[row.point]?.name ?? "", { at, within }] as const),
					...this.fuses.map(
						({ fuse, y, side }) => [fuse.name, { at: { x: this.fuseX(side) - 28, y: y - 10 }, within }] as const,
					),
					[this.bar.name, { at: { x: this.barX, y: height - 20 }, within }],
					[enclosure.name, { at: { x: this.width - 14, y: 14 }, within }],
				],
			}),
		};
	}

	private lowest(rows: readonly Row[]): Row | undefined {
		let lowest: Row | undefined;
		for (const row of rows) {
			const y = this.yOf.get(row);
			if (y !== undefined && (lowest === undefined || y > (this.yOf.get(lowest) ?? 0))) lowest = row;
		}
		return lowest;
	}

	/** The next row of a wall; rows of one sheath stand together. */
	private place(side: Side, row: Row): void {
		const rows = side === "left" ? this.left : this.right;
		if (rows[rows.indexOf(row) - 1]?.meeting === row.meeting) this.floor[side] -= wayRoom - terminalPitch;
		this.yOf.set(row, this.floor[side]);
		this.floor[side] += wayRoom;
	}

	/** The middle of a fuse: right of the bus, or outside of the bus and the bar. */
	private fuseX(side: Side): number {
		if (!this.isTwoSided) return this.busX + fuseReach;
		return side === "left" ? this.busX - fuseReach : this.barX + fuseReach;
	}

	/** The heights at which something leads to the feed's bus, or to the negative bar. */
	private heightsOf(which: "bus" | "bar"): number[] {
		const points = new Set(which === "bus" ? this.block.points : this.bar.points);
		const rows = [...this.left, ...this.right]
			.filter(({ point }) => points.has(point))
			.map((row) => this.yOf.get(row) ?? 0);
		return which === "bus" ? [...rows, ...this.fuses.map(({ y }) => y)] : rows;
	}

	private barMarks(): Mark[] {
		return (["bus", "bar"] as const).flatMap((which): Mark[] => {
			const ys = this.heightsOf(which);
			if (ys.length === 0) return [];
			const top = Math.min(...ys) - 10;
			return [
				{
					kind: "rectangle",
					as: "bar",
					of: which === "bus" ? this.block.name : this.bar.name,
					x: (which === "bus" ? this.busX : this.barX) - barWidth / 2,
					y: top,
					width: barWidth,
					height: Math.max(...ys) + 10 - top,
					radius: 2,
					fill: which === "bus" ? "hot-bus" : "neutral-bar",
					stroke: "ink",
					strokeWidth: 1,
				},
			];
		});
	}

	private fuseMarks(): Mark[] {
		return this.fuses.flatMap(({ fuse, y, side }): Mark[] => {
			const fuseX = this.fuseX(side);
			const inner = fuseX + (side === "left" ? 30 : -30);
			const passesBar = this.barX > this.busX && this.barX < inner && !this.isBeyond("bar", y);
			const slot = fuse.name.slice(this.block.name.length + 1);
			const isSpare = ![...this.left, ...this.right].some(({ point }) => fuse.points.includes(point));
			return [
				{
					kind: "symbol",
					symbol: contactSymbol(this.contactOf(fuse))?.symbol ?? "",
					of: fuse.name,
					x: fuseX,
					y,
					scale: 1,
					paint: "ink",
				},
				...(passesBar ? [gap(fuse.name, { x: this.barX, y })] : []),
				leadMark(fuse.name, [
					{ x: this.busX, y },
					{ x: inner, y },
				]),
				dot(fuse.name, { x: this.busX, y }),
				words(slot, { x: fuseX - 30, y: y - 15 }, fuse.name, { bold: true, paint: "ink" }),
				words(isSpare ? `${ratingOf(fuse)} spare` : ratingOf(fuse), { x: fuseX + 30, y: y - 15 }, fuse.name, {
					anchor: "end",
					paint: "ink",
				}),
			];
		});
	}

	/** A way may have a breaker in place of a fuse. */
	private contactOf({ face }: Part): string {
		return face.oneLine === "fuse" ? "contact-fuse" : `contact-breaker-${this.circuit.plan.settings.region}`;
	}

	/** From a screw on the wall to its fuse, its bus or its bar; over a bar that is not its own it passes with a gap. */
	private leadTo(row: Row, at: XY): Mark[] {
		const way = this.fuses.find(({ fuse }) => fuse.points.includes(row.point));
		const isNegative = this.bar.points.includes(row.point);
		const to =
			way === undefined
				? isNegative
					? this.barX
					: this.busX
				: this.fuseX(way.side) + (way.side === "left" ? -30 : 30);
		const of = way?.fuse.name ?? (isNegative ? this.bar.name : this.block.name);
		const [from, end] = [Math.min(at.x, to), Math.max(at.x, to)];
		const passed = (isNegative ? this.busX : this.barX) > from && (isNegative ? this.busX : this.barX) < end;
		const point = this.circuit.points[row.point];
		const sign = point?.role === "negative" ? "−" : "+";
		const atLeft = at.x === 0;
		return [
			...(passed && !this.isBeyond(isNegative ? "bus" : "bar", at.y)
				? [gap(of, { x: isNegative ? this.busX : this.barX, y: at.y })]
				: []),
			leadMark(of, [at, { x: to, y: at.y }]),
			...(way === undefined ? [dot(of, { x: to, y: at.y })] : []),
			words(sign, { x: at.x + (atLeft ? 10 : -10), y: at.y - 5 }, of, {
				bold: true,
				paint: "ink",
				anchor: atLeft ? "start" : "end",
			}),
		];
	}

	private isBeyond(which: "bus" | "bar", y: number): boolean {
		const ys = this.heightsOf(which);
		return y < Math.min(...ys) - 10 || y > Math.max(...ys) + 10;
	}

	private lineMarks(): Mark[] {
		const of = this.stock.enclosure.name;
		return this.lines.map((line, index) =>
			words(line, { x: 12, y: 20 + index * 14 }, of, index === 0 ? { ...nameStyle, paint: "ink" } : {}),
		);
	}
}

function loadOf(circuit: Circuit, fuse: Part): number | undefined {
	return fuse.points.find((index) => {
		const point = circuit.points[index];
		return point?.kind === "terminal" && point.side === "load";
	});
}

function ratingOf(fuse: Part): string {
	return fuse.face.rating === undefined ? fuse.face.text : `${fuse.face.rating} A`;
}

function dot(of: string, at: XY): Mark {
	return { kind: "circle", as: "dot", of, ...at, radius: 3, fill: "ink" };
}

/** Paper of the block's colour under a lead that passes a bar. */
function gap(of: string, { x, y }: XY): Mark {
	const half = barWidth / 2 + 1;
	return {
		kind: "line",
		as: "rule",
		of,
		points: [
			{ x: x - half, y },
			{ x: x + half, y },
		],
		stroke: "panel",
		strokeWidth: 7,
	};
}

type Side = "left" | "right";
const barWidth = 10;
/** Where ways leave on both walls: from a wall to the bus or the bar, and between these. */
const besideBus = 116;
const betweenBars = 44;
/** From the bus to the middle of a fuse. */
const fuseReach = 48;
/** Between ways: room for the tags of two sheaths; and where nothing is wired. */
const wayRoom = 48;
const spareRoom = 36;
