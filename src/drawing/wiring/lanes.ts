// Places boxes in lanes: each chain runs straight outward from where it starts, branches open lanes below, and what is too
// long for the sheet wraps. Cables keep the order of their glands, so that none ever crosses another.
import { certain } from "../../base/certain.ts";
import type { Cable } from "../../circuit/circuit.ts";
import type { XY } from "../scene.ts";
import { laneGap, returnChannel, shortestCable, trackLead, trackPitch } from "./dimensions.ts";
import { type Branch, endKey, type SheetBox } from "./sheet-box.ts";
import { boundLong, Skyline, type Tract } from "./skyline.ts";

/** A box at its place, and a cable on its way. */
export interface PlacedBox {
	readonly box: SheetBox;
	readonly x: number;
	readonly y: number;
}
export interface PlacedCable {
	readonly cable: Cable;
	/** From the gland nearer the root to the other. */
	readonly points: readonly XY[];
	readonly from: SheetBox;
	readonly to: SheetBox;
}
/** A lane with its branches, measured outward from the gland at which it is entered. */
export interface Block {
	readonly top: number;
	readonly bottom: number;
	readonly reach: number;
	/** What it covers, piece by piece. */
	readonly tracts: readonly Tract[];
	/** Puts everything at its place, the entry gland at `u`, `y`. */
	readonly emit: (u: number, y: number) => void;
}

/** Where lanes run to, and where what they place is put down. */
export interface Outward {
	readonly sign: 1 | -1;
	/** Where the outward measure is 0. */
	readonly origin: number;
	readonly boxes: PlacedBox[];
	readonly cables: PlacedCable[];
}

/** One lane: a box, its first follower, and so on, in as many rows as the width asks for. */
export function layLane(outward: Outward, first: Branch, width: number): Block {
	const rows: Row[] = [];
	let row: Row = { stations: [], entryY: 0 };
	let u = 0;
	let y = 0;
	for (let branch: Branch | undefined = first; branch !== undefined; branch = branch.box.right[0]) {
		const { box, links } = branch;
		const inY = glandOf(box, links, box.end).y;
		const before = row.stations.at(-1);
		if (before !== undefined && u + box.width > width) {
			rows.push(row);
			row = { stations: [], entryY: 0 };
			u = 0;
			y = 0;
		}
		row.stations.push({ branch, u, y: y - inY });
		const next: Branch | undefined = box.right[0];
		if (next === undefined) break;
		y += glandOf(box, next.links, otherEnd(next.box)).y - inY;
		u += box.width + gapAfter(box);
	}
	rows.push(row);
	return stackRows(outward, rows, width);
}

/** A row of a lane: its boxes, heights measured from its entry. */
interface Row {
	readonly stations: { readonly branch: Branch; readonly u: number; readonly y: number }[];
	readonly entryY: number;
}

/** The rows of a lane below one another, each with the branches of its boxes. */
function stackRows(outward: Outward, rows: readonly Row[], width: number): Block {
	const placed: { row: Row; branches: PlacedBlock[]; y: number; channel: number; right: number }[] = [];
	let tracts: Tract[] = [];
	let top = 0;
	let bottom = 0;
	let reach = 0;
	let y = 0;
	for (const [index, row] of rows.entries()) {
		const laid = layBranches(outward, row, width);
		const bounds = boundsOfTracts(laid.tracts);
		if (index > 0) y = bottom + returnChannel - bounds.top;
		else top = bounds.top;
		placed.push({
			row,
			branches: laid.blocks,
			y,
			channel: y + bounds.bottom + returnChannel / 2,
			right: bounds.to + wrapReach,
		});
		bottom = y + bounds.bottom;
		reach = Math.max(reach, bounds.to + (rows.length > 1 ? wrapReach : 0));
		tracts = laid.tracts;
	}
	return {
		top,
		bottom,
		reach,
		// A lane of several rows has cables all around it and is kept whole.
		tracts: rows.length === 1 ? boundLong(tracts) : [{ from: -wrapReturn - 20, to: reach + 20, top, bottom }],
		emit: (u0, y0) => {
			for (const [index, { row, branches, y: rowY }] of placed.entries()) {
				emitRow(outward, row, u0, y0 + rowY);
				for (const { block, u, y: blockY } of branches) block.emit(u0 + u, y0 + rowY + blockY);
				const above = placed[index - 1];
				if (above !== undefined) wrap(outward, above, row, u0, y0, rowY);
			}
		},
	};
}

function emitRow(outward: Outward, row: Row, u0: number, y0: number): void {
	for (const [place, { branch, u, y }] of row.stations.entries()) {
		putBox(outward, branch.box, u0 + u, y0 + y);
		const before = row.stations[place - 1];
		if (before !== undefined) connect(outward, before.branch.box, branch, u0 + before.u, y0 + before.y, u0 + u, y0 + y);
	}
}

interface PlacedBlock {
	readonly block: Block;
	readonly u: number;
	readonly y: number;
}

/** The lanes that branch off the boxes of a row, those furthest out first and highest, and what row and lanes cover. */
function layBranches(outward: Outward, row: Row, width: number): { blocks: PlacedBlock[]; tracts: Tract[] } {
	const blocks: PlacedBlock[] = [];
	const tracts: Tract[] = [];
	const branched = row.stations.some(({ branch }) => branch.box.right.length > 1);
	const sky = new Skyline();
	const put = (tract: Tract): void => {
		tracts.push(tract);
		if (branched) sky.add([tract], 0, 0);
	};
	for (let index = row.stations.length - 1; index >= 0; index--) {
		const { branch, u, y } = certain(row.stations[index], "a station");
		const { box, links } = branch;
		const wall = u + box.width;
		const after = row.stations[index + 1];
		if (after !== undefined) {
			const level = after.y + glandOf(after.branch.box, after.branch.links, after.branch.box.end).y;
			put({ from: wall, to: after.u, top: level - tagReach, bottom: level + tagReach });
		}
		if (box.right.length > 1) {
			// What goes on in the next row leaves straight over all that branches off here.
			if (after === undefined && box.right[0] !== undefined) {
				const level = y + glandOf(box, box.right[0].links, otherEnd(box.right[0].box)).y;
				sky.add([{ from: wall, to: farOut, top: level - tagReach, bottom: level + tagReach }], 0, 0);
			}
			const block = fanOut(outward, box, box.right.slice(1), width - wall, false, { sky, u: wall, y });
			blocks.push({ block, u: wall, y });
			for (const tract of block.tracts)
				tracts.push({ from: tract.from + wall, to: tract.to + wall, top: tract.top + y, bottom: tract.bottom + y });
		}
		put({ from: u, to: wall, top: y, bottom: y + box.height });
		if (index === 0) {
			const level = y + glandOf(box, links, box.end).y;
			tracts.push({ from: u - shortestCable, to: u, top: level - tagReach, bottom: level + tagReach });
		}
	}
	return { blocks, tracts };
}

/** What already stands, seen from a wall that is `u` along and `y` down. */
interface Standing {
	readonly sky: Skyline;
	readonly u: number;
	readonly y: number;
}

/**
 * Lanes that leave one wall, one below the other. The wall is at 0, heights are the box's. With `straight` the first lane goes
 * straight on; the others turn down on tracks of their own, the lowest nearest the wall.
 */
export function fanOut(
	outward: Outward,
	box: SheetBox,
	branches: readonly Branch[],
	width: number,
	straight: boolean,
	{ sky, u, y: down }: Standing = { sky: new Skyline(), u: 0, y: 0 },
): Block {
	const gap = laneStart(branches, branches.length - (straight ? 1 : 0));
	const tracts: Tract[] = [];
	let [top, bottom, reach] = [0, 0, 0];
	let level = Number.NEGATIVE_INFINITY;
	const lanes = branches.map((branch, index) => {
		const block = layLane(outward, branch, width - gap);
		const exit = glandOf(box, branch.links, otherEnd(branch.box)).y;
		const wanted = Math.max(sky.clearance(block.tracts, u + gap, laneGap) - down, level + 2 * tagReach);
		const y = (straight && index === 0) || wanted <= exit ? exit : Math.max(wanted, exit + leastTurn);
		const track = trackLead + tracksOf(branches.slice(index + 1)) * trackPitch;
		const farthest = track + (branch.links.length - 1) * trackPitch;
		const own = [
			...block.tracts.map((tract) => shiftTract(tract, gap, y)),
			{ from: track - trackReach, to: farthest + trackReach, top: Math.min(exit, y), bottom: y + trackReach },
			{ from: track - trackReach, to: gap, top: y - tagReach, bottom: y + tagReach },
		];
		tracts.push(...own);
		sky.add(own, u, down);
		level = y;
		bottom = Math.max(bottom, y + block.bottom);
		top = Math.min(top, y + block.top);
		reach = Math.max(reach, gap + block.reach);
		return { branch, block, y, track };
	});
	return {
		top,
		bottom,
		reach,
		tracts: boundLong(tracts),
		emit: (u0, y0) => {
			for (const { branch, block, y, track } of lanes) {
				block.emit(u0 + gap, y0 + y);
				const inY = glandOf(branch.box, branch.links, branch.box.end).y;
				connect(outward, box, branch, u0 - box.width, y0, u0 + gap, y0 + y - inY, u0 + track);
			}
		},
	};
}

function shiftTract(tract: Tract, du: number, dy: number): Tract {
	return { from: tract.from + du, to: tract.to + du, top: tract.top + dy, bottom: tract.bottom + dy };
}

function boundsOfTracts(tracts: readonly Tract[]): { top: number; bottom: number; to: number } {
	let [top, bottom, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0];
	for (const tract of tracts) {
		top = Math.min(top, tract.top);
		bottom = Math.max(bottom, tract.bottom);
		to = Math.max(to, tract.to);
	}
	return { top, bottom, to };
}

/** From a wall to the boxes of the lanes that leave it: tracks, then the widest tag. */
function laneStart(branches: readonly Branch[], turns: number): number {
	const tag = Math.max(0, ...branches.map(({ room }) => room));
	if (turns === 0) return tag;
	return trackLead + (tracksOf(branches) - 1) * trackPitch + tag;
}

/** Each cable has a track of its own. */
function tracksOf(branches: readonly Branch[]): number {
	let count = 0;
	for (const { links } of branches) count += links.length;
	return count;
}

/** The gap behind a box of a lane: the tag of the cable straight on, or the tracks of the branches that turn off in it. */
function gapAfter(box: SheetBox): number {
	const [next, ...others] = box.right;
	const tag = next?.room ?? 0;
	return others.length === 0 ? tag : Math.max(tag, trackLead + tracksOf(others) * trackPitch);
}

/** The cables between two placed boxes: straight where the glands are level, else by the track, each beside the other. */
function connect(
	outward: Outward,
	from: SheetBox,
	branch: Branch,
	fromU: number,
	fromY: number,
	toU: number,
	toY: number,
	track?: number,
): void {
	for (const [index, cable] of branch.links.entries()) {
		const exit = certain(from.glands.get(endKey(cable, otherEnd(branch.box))), "the gland a cable leaves by");
		const entry = certain(branch.box.glands.get(endKey(cable, branch.box.end)), "the gland a cable comes to");
		const start = { u: fromU + from.width, y: fromY + exit.y };
		const end = { u: toU, y: toY + entry.y };
		// The lowest of several turns down nearest the wall.
		const turn = (track ?? (start.u + end.u) / 2) + (branch.links.length - 1 - index) * trackPitch;
		const way = start.y === end.y ? [start, end] : [start, { u: turn, y: start.y }, { u: turn, y: end.y }, end];
		outward.cables.push({ cable, points: way.map((point) => toXY(outward, point)), from, to: branch.box });
	}
}

/** A lane that goes on in the row below: out on the right, back in a channel under everything, in again from the left. */
function wrap(
	outward: Outward,
	above: { row: Row; y: number; channel: number; right: number },
	row: Row,
	u0: number,
	y0: number,
	rowY: number,
): void {
	const last = certain(above.row.stations.at(-1), "the last box of a row");
	const first = certain(row.stations[0], "the first box of a row");
	const from = last.branch.box;
	const { box, links } = first.branch;
	for (const cable of links) {
		const exit = certain(from.glands.get(endKey(cable, otherEnd(box))), "the gland a cable leaves by");
		const entry = certain(box.glands.get(endKey(cable, box.end)), "the gland a cable comes to");
		const start = { u: u0 + last.u + from.width, y: y0 + above.y + last.y + exit.y };
		const end = { u: u0, y: y0 + rowY + first.y + entry.y };
		const way = [
			start,
			{ u: u0 + above.right, y: start.y },
			{ u: u0 + above.right, y: y0 + above.channel },
			{ u: u0 - wrapReturn, y: y0 + above.channel },
			{ u: u0 - wrapReturn, y: end.y },
			end,
		];
		outward.cables.push({ cable, points: way.map((point) => toXY(outward, point)), from, to: box });
	}
}

function putBox(outward: Outward, box: SheetBox, u: number, y: number): void {
	const x = outward.origin + (outward.sign === 1 ? u : -u - box.width);
	outward.boxes.push({ box, x, y });
	placeLoops(box, x, y, outward.sign, outward.cables);
}

/** A cable that comes back to its own box turns outside its wall. */
export function placeLoops(box: SheetBox, x: number, y: number, sign: 1 | -1, cables: PlacedCable[]): void {
	for (const cable of box.loops) {
		const out = certain(box.glands.get(endKey(cable, 0)), "a loop's gland");
		const back = certain(box.glands.get(endKey(cable, 1)), "a loop's gland");
		const turn = x + out.x + sign * trackLead;
		const points = [
			{ x: x + out.x, y: y + out.y },
			{ x: turn, y: y + out.y },
			{ x: turn, y: y + back.y },
			{ x: x + back.x, y: y + back.y },
		];
		cables.push({ cable, points, from: box, to: box });
	}
}

function toXY(outward: Outward, { u, y }: { readonly u: number; readonly y: number }): XY {
	return { x: outward.origin + outward.sign * u, y };
}

export function glandOf(box: SheetBox, links: readonly Cable[], end: 0 | 1): { x: number; y: number } {
	return certain(box.glands.get(endKey(certain(links[0], "a cable"), end)), "a gland");
}

/** The end of a child's cables that is at its parent. */
export function otherEnd(child: SheetBox): 0 | 1 {
	return child.end === 0 ? 1 : 0;
}

/** Half of what a cable takes across its way, with its tag and without. */
const tagReach = 32;
const trackReach = 18;
/** Further out than any lane reaches. */
const farOut = 1e6;
/** A turn needs room for both its corners. */
const leastTurn = 44;
/** From the end of a row to the upright track of what goes on below it, and from its start back. */
const wrapReach = 36;
const wrapReturn = 36;
