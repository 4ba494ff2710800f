// The heights of a panel: one block for each pole with the rows of its cables, then jumpers, then what feeds the panel.
import type { Part } from "../../circuit/circuit.ts";
import { type BoxContent, type Entry, isCore, pointOf, type Wire } from "./box-content.ts";
import { headerHeight, rowPitch } from "./dimensions.ts";
import { labelLines } from "./panel-labels.ts";
import { leadTerminals, lineTerminals, loadTerminals, type PanelParts } from "./panel-parts.ts";

/** A terminal that faces left or right, with the height of each wire's screw on it. */
export interface Target {
	readonly point: number;
	readonly faces: "left" | "right";
	readonly y: number;
	readonly screws: ReadonlyMap<Wire, number>;
}
/** A breaker at its height. */
export interface PoleRows {
	readonly part: Part;
	readonly top: number;
	readonly bottom: number;
	/** Heights of its load terminals, and of its tail. */
	readonly targets: readonly Target[];
}
/** All heights of a panel. */
export interface PanelRows {
	readonly main?: PoleRows;
	/** Where cables land on the bus itself. */
	readonly lugs?: PoleRows;
	readonly poles: readonly PoleRows[];
	readonly rowOf: ReadonlyMap<Wire, number>;
	/** Of wires that never leave the panel. */
	readonly serviceOf: ReadonlyMap<Wire, number>;
	readonly spliceY: ReadonlyMap<number, number>;
	readonly firstRow: number;
	readonly lastPole: number;
	readonly lastRow: number;
}

/** The heights of a panel, or undefined where more wires share a terminal than it has room to show. */
export function planPanelRows(content: BoxContent, parts: PanelParts): PanelRows | undefined {
	const rowOf = new Map<Wire, number>();
	const { circuit } = content;
	const { main, bus } = parts;
	const mainLines = main === undefined ? 1 : labelLines(main, circuit.plan.settings.region).length;
	const mainY = headerHeight + 50 + (mainLines - 1) * lineHeight;
	const mainPoles = main === undefined ? [] : [...lineTerminals(circuit, main), ...leadTerminals(circuit, main)];
	const lugs = bus?.points.filter((point) => content.landings.has(point)) ?? [];
	const heads = Math.max(mainPoles.length, lugs.length, 1);
	let y = mainY + (heads - 1) * rowPitch + firstPoleDrop;
	const firstRow = y;
	const waiting = new Set(content.right);
	const poles: PoleRows[] = [];
	for (const part of parts.poles) {
		const { loads, tails } = loadTerminals(circuit, part);
		const own = [...waiting].filter((entry) => entry.wires.some((wire) => loads.includes(pointOf(wire.to) ?? -1)));
		for (const entry of own) waiting.delete(entry);
		const top = y;
		y = layEntries(own, y, rowOf);
		const heights = loadHeights(content, loads, own[0], top, rowOf);
		const after = Math.max(own.length > 0 ? y : top, ...heights.map((height) => height + rowPitch));
		const tailHeights = tails.map((_, index) => after + index * rowPitch);
		const targets = targetsAt(content, [...loads, ...tails], [...heights, ...tailHeights], "right", rowOf);
		if (targets === undefined) return undefined;
		const ys = targets.map((target) => target.y);
		poles.push({ part, top: Math.min(...ys) - poleRise, bottom: Math.max(...ys) + poleDrop, targets });
		y = Math.max(after + tails.length * rowPitch + (own.length > 0 ? blockGap : 0), Math.max(...ys) + sparePitch);
	}
	const lastPole = Math.max(...poles.map((pole) => pole.bottom), firstRow - poleRise);
	y = layEntries([...waiting], y, rowOf);
	const { serviceOf, spliceY, next } = layService(content, parts, y);
	y = next + (content.left.length > 0 ? feedGap : 0);
	for (const entry of content.left) y = layEntries([entry], y, rowOf) + rowPitch;
	const lastRow = Math.max(
		firstRow,
		lastPole - poleDrop,
		...rowOf.values(),
		...serviceOf.values(),
		...spliceY.values(),
	);
	const mainRows = main === undefined ? undefined : headAt(content, main, mainPoles, mainY, rowOf);
	const lugRows =
		bus === undefined || lugs.length === 0
			? undefined
			: headAt(content, bus, lugs, mainY + (main === undefined ? 0 : heads * rowPitch), rowOf);
	if (main !== undefined && mainRows === undefined) return undefined;
	return {
		...(mainRows === undefined ? {} : { main: mainRows }),
		...(lugRows === undefined ? {} : { lugs: lugRows }),
		poles,
		rowOf,
		serviceOf,
		spliceY,
		firstRow,
		lastPole,
		lastRow,
	};
}

/** Rows for cables, a gap between two of them; gives the next free height. */
function layEntries(entries: readonly Entry[], from: number, rowOf: Map<Wire, number>): number {
	let y = from;
	for (const [index, entry] of entries.entries()) {
		if (index > 0) y += rowPitch;
		for (const wire of entry.wires) {
			rowOf.set(wire, y);
			y += rowPitch;
		}
	}
	return y;
}

/** A load terminal stands at the row of the conductor on it, as long as terminals keep their order; else below the one above. */
function loadHeights(
	content: BoxContent,
	loads: readonly number[],
	entry: Entry | undefined,
	top: number,
	rowOf: ReadonlyMap<Wire, number>,
): number[] {
	const heights: number[] = [];
	for (const point of loads) {
		const wire = entry?.wires.find((candidate) => pointOf(candidate.to) === point);
		const wanted = wire === undefined ? undefined : rowOf.get(wire);
		const least = (heights.at(-1) ?? top - rowPitch) + rowPitch;
		heights.push(wanted !== undefined && wanted >= least && !taken(content, loads, point) ? wanted : least);
	}
	return heights;
}

/** A terminal with several conductors keeps its place, so that their screws have room around it. */
function taken(content: BoxContent, loads: readonly number[], point: number): boolean {
	return loads.length > 1 && (content.landings.get(point)?.length ?? 0) > 1;
}

/** Wires that stay inside run on rows of their own; so do splices. */
function layService(content: BoxContent, parts: PanelParts, from: number) {
	const serviceOf = new Map<Wire, number>();
	const spliceY = new Map<number, number>();
	const tails = new Set(parts.poles.flatMap((part) => loadTerminals(content.circuit, part).tails));
	let next = from;
	for (const wire of content.wires) {
		if (isCore(wire)) continue;
		if ([wire.from, wire.to].some((tie) => tails.has(pointOf(tie) ?? -1))) continue;
		serviceOf.set(wire, next);
		next += rowPitch;
	}
	for (const splice of content.splices) {
		if (!content.landings.has(splice.index)) continue;
		spliceY.set(splice.index, next + rowPitch / 2);
		next += 2 * rowPitch;
	}
	return { serviceOf, spliceY, next };
}

function headAt(
	content: BoxContent,
	part: Part,
	points: readonly number[],
	y: number,
	rowOf: ReadonlyMap<Wire, number>,
): PoleRows | undefined {
	const heights = points.map((_, index) => y + index * rowPitch);
	const targets = targetsAt(content, points, heights, "left", rowOf);
	if (targets === undefined) return undefined;
	const lines = part.face.traits.includes("panel") ? 1 : labelLines(part, content.circuit.plan.settings.region).length;
	return { part, top: y - headRise - (lines - 1) * lineHeight, bottom: Math.max(y, ...heights) + headDrop, targets };
}

/** Screws for every wire on each terminal: its own row where it comes straight, else beside it. */
function targetsAt(
	content: BoxContent,
	points: readonly number[],
	heights: readonly number[],
	faces: "left" | "right",
	rowOf: ReadonlyMap<Wire, number>,
): Target[] | undefined {
	const targets: Target[] = [];
	for (const [index, point] of points.entries()) {
		const y = heights[index] ?? 0;
		const wires = content.landings.get(point) ?? [];
		const fromRight = (wire: Wire): boolean =>
			wire.from.at === "wall" && wire.from.side === "right" && rowOf.get(wire) === y;
		const straight = faces === "right" ? wires.find(fromRight) : undefined;
		const others = wires.filter((wire) => wire !== straight);
		const row = [...rowOf].some(([wire, height]) => height === y && faces === "right" && wire !== straight);
		const offsets = straight !== undefined || row ? [12, -12] : others.length === 1 ? [0] : [-12, 12, 0];
		if (others.length > offsets.length) return undefined;
		const screws = new Map<Wire, number>();
		if (straight !== undefined) screws.set(straight, y);
		for (const [place, wire] of others.entries()) screws.set(wire, y + (offsets[place] ?? 0));
		targets.push({ point, faces, y, screws });
	}
	return targets;
}

const firstPoleDrop = 56;
const headRise = 32;
const lineHeight = 13;
const headDrop = 16;
const poleRise = 16;
const poleDrop = 28;
const blockGap = 24;
const sparePitch = 58;
const feedGap = 24;
