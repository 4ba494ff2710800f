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
	const order = [...ways.flatMap(({ load }) => load ?? []), ...fed, ...bar.points];
	const found = rowsOf(circuit, enclosure.name, meetings, order);
	// A spare way leads nowhere; a way whose conductor comes in on the left is drawn as any other box is.
	if (found === undefined || found.left.some(({ point }) => ways.some(({ load }) => load === point))) return undefined;
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
	private readonly busX = 46;
	private readonly barX: number;
	private readonly yOf = new Map<Row, number>();
	private readonly fuses: { readonly fuse: Part; readonly y: number }[] = [];
	private y: number;

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
		this.width = Math.max(230, words + 24);
		this.barX = this.width - 46;
		this.y = onGrid(14 + this.lines.length * 14 + 34);
	}

	/** A fuse with the rows of its sheath, as far below the way before as what hangs on both needs; a spare one takes less. */
	addWay(fuse: Part, load: number | undefined): void {
		const own = this.right.find(({ point }) => point === load);
		if (own === undefined) {
			this.fuses.push({ fuse, y: this.y });
			this.y += spareRoom;
			return;
		}
		const sheath = this.right.filter(({ meeting }) => meeting === own.meeting);
		const before = this.right.findLast((row) => this.yOf.has(row));
		const y =
			before === undefined ? 0 : (this.yOf.get(before) ?? 0) + roomBetween(before, own, this.right, this.extentOf);
		this.y = Math.max(this.y, y);
		this.fuses.push({ fuse, y: this.y });
		for (const [index, row] of sheath.entries()) this.yOf.set(row, this.y + index * terminalPitch);
		this.y += (sheath.length - 1) * terminalPitch + wayRoom;
	}

	finish(): DirectBox {
		// The feed comes in at the foot of the bus, so that its negative passes below it.
		const others = this.right.filter((row) => !this.yOf.has(row));
		const below = this.y;
		this.y = this.fuses.at(-1)?.y ?? this.y;
		for (const [index, row] of this.left.entries()) {
			const before = this.left[index - 1];
			if (before?.meeting === row.meeting) this.y -= wayRoom - terminalPitch;
			this.place(row);
		}
		this.y = Math.max(this.y, below);
		for (const row of others) this.place(row);
		const height = this.y - wayRoom + 24;
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
					...this.fuses.map(({ fuse, y }) => [fuse.name, { at: { x: this.busX + 20, y: y - 10 }, within }] as const),
					[this.bar.name, { at: { x: this.barX, y: height - 20 }, within }],
					[enclosure.name, { at: { x: this.width - 14, y: 14 }, within }],
				],
			}),
		};
	}

	private place(row: Row): void {
		this.yOf.set(row, this.y);
		this.y += wayRoom;
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
		const fuseX = this.busX + fuseReach;
		return this.fuses.flatMap(({ fuse, y }): Mark[] => {
			const slot = fuse.name.slice(this.block.name.length + 1);
			const isSpare = !this.right.some(({ point }) => fuse.points.includes(point));
			return [
				{
					kind: "symbol",
					symbol: contactSymbol("contact-fuse")?.symbol ?? "",
					of: fuse.name,
					x: fuseX,
					y,
					scale: 1,
					paint: "ink",
				},
				leadMark(fuse.name, [
					{ x: this.busX, y },
					{ x: fuseX - 30, y },
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

	/** From a screw on the wall to its fuse, its bus or its bar; over a bar that is not its own it passes with a gap. */
	private leadTo(row: Row, at: XY): Mark[] {
		const way = this.fuses.find(({ fuse }) => fuse.points.includes(row.point));
		const isNegative = this.bar.points.includes(row.point);
		const to = way === undefined ? (isNegative ? this.barX : this.busX) : this.busX + fuseReach + 30;
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

const barWidth = 10;
/** From the bus to the middle of a fuse. */
const fuseReach = 48;
/** Between ways: room for the tags of two sheaths; and where nothing is wired. */
const wayRoom = 48;
const spareRoom = 36;
