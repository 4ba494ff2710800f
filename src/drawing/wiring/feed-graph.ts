// Which enclosures belong on one sheet, and how they hang together there: a tree from the panel, or a net that is none.
import type { Cable, Circuit } from "../../circuit/circuit.ts";
import { type Shows, showsAll } from "../system-parts.ts";
import { type CableEnd, type Stock, takeStock } from "./box-content.ts";
import { circuitsPerSheet, laneGap } from "./dimensions.ts";
import { slotOrder } from "./panel-parts.ts";

/** One sheet's share of a circuit. */
export interface SheetShare {
	/** What distinguishes it from the plan's other wiring sheets: a panel's name, with a number where it needs several. */
	readonly suffix: string;
	/** Trees in the order of the plan; the first holds the panel. */
	readonly roots: readonly FeedNode[];
	/** False where cables close a ring: then `roots` hold every box without children. */
	readonly isTree: boolean;
	/** The cables between the boxes of a net that is no tree. */
	readonly net: readonly Cable[];
	/** Circuits of the panel on this sheet, where it has more sheets than one. */
	readonly part?: { readonly panel: string; readonly first: number; readonly last: number; readonly total: number };
}

/** A box, or a flag that leads to another sheet, with what hangs on it. */
export interface FeedNode {
	readonly stock?: Stock;
	/** The enclosure a flag stands for. */
	readonly flagTo?: string;
	/** The cables that lead here from the node before. */
	readonly links: readonly Cable[];
	/** The direction of `links`: which end is here. */
	readonly end: 0 | 1;
	readonly right: readonly FeedNode[];
	/** Only at a root: what feeds it. */
	readonly left: readonly FeedNode[];
	/** Cables that leave the box and come back to it. */
	readonly loops: readonly Cable[];
	/** Cables of this box that are drawn on another sheet only. */
	readonly elsewhere?: readonly Cable[];
}

/** The sheets of a circuit, in the order of its panels. */
export function shareSheets(circuit: Circuit, shows: Shows = showsAll): SheetShare[] {
	const stocks = takeStock(circuit, shows);
	const regionOf = assignRegions(stocks);
	const regions = new Map<string, Stock[]>();
	for (const stock of stocks.values()) {
		const region = regionOf.get(stock.enclosure.name) ?? "";
		const there = regions.get(region);
		if (there === undefined) regions.set(region, [stock]);
		else there.push(stock);
	}
	// What hangs on no panel comes last.
	const ordered = [...regions].toSorted(([one], [other]) => Number(one === "") - Number(other === ""));
	return ordered.flatMap(([region, members]) => shareRegion(circuit, region, members, stocks));
}

/** Each panel is a region of its own; what hangs on it without another panel between belongs to it. The rest is region "". */
function assignRegions(stocks: ReadonlyMap<string, Stock>): Map<string, string> {
	const regionOf = new Map<string, string>();
	const isPanel = (name: string): boolean => stocks.get(name)?.enclosure.sort === "panel";
	for (const name of stocks.keys()) if (isPanel(name)) regionOf.set(name, name);
	for (const start of stocks.keys()) {
		if (regionOf.has(start)) continue;
		const { members, panels } = gather(start, stocks, isPanel);
		// What feeds several panels belongs to the first of them in the plan; what lies between two, to the one that feeds it.
		const region = panels[0] ?? "";
		for (const member of members) regionOf.set(member, region);
	}
	return regionOf;
}

/** All boxes joined to `start` without a panel between, and the panels around them: those that feed it first. */
function gather(start: string, stocks: ReadonlyMap<string, Stock>, isPanel: (name: string) => boolean) {
	const members = new Set([start]);
	const feeding: string[] = [];
	const fed: string[] = [];
	for (const name of members)
		for (const { cable, end } of stocks.get(name)?.meetings ?? []) {
			const other = otherBox(cable, end);
			if (isPanel(other)) (end === 1 ? feeding : fed).push(other);
			else members.add(other);
		}
	return { members, panels: [...feeding, ...fed] };
}

function shareRegion(
	circuit: Circuit,
	region: string,
	members: readonly Stock[],
	stocks: ReadonlyMap<string, Stock>,
): SheetShare[] {
	const inside = new Set(members.map((stock) => stock.enclosure.name));
	const panel = members.find((stock) => stock.enclosure.name === region);
	if (closesRing(members, inside)) {
		const roots = members.map((stock): FeedNode => ({ stock, links: [], end: 1, right: [], left: [], loops: [] }));
		const net = [...new Set(members.flatMap((stock) => stock.meetings.map(({ cable }) => cable)))];
		return [{ suffix: region, roots, isTree: false, net }];
	}
	const sources = new Set(
		circuit.sources.flatMap((source) => circuit.partByName.get(source.part)?.enclosure.name ?? []),
	);
	const grower: Grower = { circuit, stocks, inside, sources, seen: new Set() };
	const first = panel ?? members.find((stock) => sources.has(stock.enclosure.name)) ?? members[0];
	if (first === undefined) return [];
	const root = growRoot(grower, first);
	const others = members.flatMap((stock) => (grower.seen.has(stock.enclosure.name) ? [] : [growRoot(grower, stock)]));
	return splitByCircuits({ suffix: region, roots: [root, ...others], isTree: true, net: [] }, root);
}

/** A panel whose lanes are too many or too high for one sheet is drawn on several, its feed on the first. */
function splitByCircuits(share: SheetShare, root: FeedNode): SheetShare[] {
	const total = root.right.length;
	if (root.stock?.enclosure.sort !== "panel") return [share];
	const heights = root.right.map(estimateHeight);
	const sum = heights.reduce((one, other) => one + other, 0);
	const count = Math.max(1, Math.ceil(total / circuitsPerSheet), Math.ceil(sum / highestSheet - slack));
	if (count === 1) return [share];
	const shares: SheetShare[] = [];
	let first = 0;
	let used = 0;
	for (let index = 0; index < count && first < total; index++) {
		let last = first;
		// Each sheet takes its fair part of the height that is left, and at least one lane.
		for (; last < total && last - first < circuitsPerSheet; last++) {
			const height = heights[last] ?? 0;
			if (last > first && index < count - 1 && used + height / 2 > (sum * (index + 1)) / count) break;
			used += height;
		}
		const right = root.right.slice(first, last);
		const elsewhere = root.right.flatMap((branch) => (right.includes(branch) ? [] : branch.links));
		const part = { panel: share.suffix, first: first + 1, last, total };
		shares.push(
			index === 0
				? { ...share, roots: [{ ...root, right, elsewhere }, ...share.roots.slice(1)], part }
				: {
						...share,
						suffix: `${share.suffix}.${index + 1}`,
						roots: [{ ...root, right, elsewhere, left: root.left.map(flagFor), loops: [] }],
						part,
					},
		);
		first = last;
	}
	return shares;
}

/** A flag in place of a branch that is drawn on another sheet. */
function flagFor(branch: FeedNode): FeedNode {
	const flagTo = branch.flagTo ?? branch.stock?.enclosure.name ?? "";
	return { flagTo, links: branch.links, end: branch.end, right: [], left: [], loops: [] };
}

/** About how high a lane will be: its highest box, and below it the lanes that branch off. */
function estimateHeight(lane: FeedNode): number {
	let height = laneGap;
	const waiting: FeedNode[] = [lane];
	for (const start of waiting) {
		let highest = 0;
		for (let node: FeedNode | undefined = start; node !== undefined; node = node.right[0]) {
			highest = Math.max(highest, node.right.length === 0 ? usualHeights.last : usualHeights.passing);
			waiting.push(...node.right.slice(1));
		}
		height += highest;
	}
	return height;
}

interface Grower {
	readonly circuit: Circuit;
	readonly stocks: ReadonlyMap<string, Stock>;
	readonly inside: ReadonlySet<string>;
	readonly sources: ReadonlySet<string>;
	readonly seen: Set<string>;
}

function growRoot(grower: Grower, stock: Stock): FeedNode {
	grower.seen.add(stock.enclosure.name);
	const branches = growBranches(grower, stock, []);
	const isPanel = stock.enclosure.sort === "panel";
	const left = branches.filter((branch) => isPanel && feeds(grower, branch));
	const right = branches.filter((branch) => !left.includes(branch));
	return { stock, links: [], end: 1, left, right, loops: loopsOf(stock) };
}

/** Whether power comes from a branch: its cable starts there, and it holds a source or is a flag to another panel. */
function feeds(grower: Grower, branch: FeedNode): boolean {
	if (branch.end === 1) return false;
	if (branch.flagTo !== undefined) return true;
	const waiting = [branch];
	for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
		if (node.stock !== undefined && grower.sources.has(node.stock.enclosure.name)) return true;
		waiting.push(...node.right);
	}
	return false;
}

/** Everything that hangs on a box, branch by branch; a panel's in the order of its slots. Grown with a list, not by recursion. */
function growBranches(grower: Grower, start: Stock, from: readonly Cable[]): FeedNode[] {
	const top: FeedNode[] = [];
	const waiting: { stock: Stock; from: readonly Cable[]; into: FeedNode[] }[] = [{ stock: start, from, into: top }];
	// The list grows while it is walked.
	for (const { stock, from: cameBy, into } of waiting)
		for (const [other, meetings] of neighbours(grower.circuit, stock, cameBy)) {
			const links = meetings.map(({ cable }) => cable);
			const end = meetings[0]?.end === 0 ? 1 : 0;
			const found = grower.inside.has(other) ? grower.stocks.get(other) : undefined;
			if (found === undefined) {
				into.push({ flagTo: other, links, end, right: [], left: [], loops: [] });
				continue;
			}
			if (grower.seen.has(other)) continue;
			grower.seen.add(other);
			const right: FeedNode[] = [];
			into.push({ stock: found, links, end, right, left: [], loops: loopsOf(found) });
			waiting.push({ stock: found, from: links, into: right });
		}
	return top;
}

/** The boxes at the far ends of a box's cables, each with its cables, without those it was reached by. */
function neighbours(circuit: Circuit, stock: Stock, from: readonly Cable[]): Map<string, CableEnd[]> {
	const known = new Set(from);
	const meetings = stock.meetings.filter(
		({ cable, end }) => !known.has(cable) && otherBox(cable, end) !== stock.enclosure.name,
	);
	if (stock.enclosure.sort === "panel") {
		const order = new Map(meetings.map((meeting) => [meeting, slotOrder(circuit, stock, meeting)]));
		meetings.sort((one, other) => (order.get(one) ?? 0) - (order.get(other) ?? 0));
	}
	const found = new Map<string, CableEnd[]>();
	for (const meeting of meetings) {
		const other = otherBox(meeting.cable, meeting.end);
		const there = found.get(other);
		if (there === undefined) found.set(other, [meeting]);
		else there.push(meeting);
	}
	return found;
}

/** Cables that start and end in a box, once each. */
function loopsOf(stock: Stock): Cable[] {
	return stock.meetings
		.filter(({ cable, end }) => end === 0 && cable.from.name === cable.to.name)
		.map(({ cable }) => cable);
}

/** Whether cables between the boxes of a region close a ring; several between the same two do not count as one. */
function closesRing(members: readonly Stock[], inside: ReadonlySet<string>): boolean {
	const leader = new Map<string, string>();
	const find = (name: string): string => {
		let top = name;
		for (let up = leader.get(top); up !== undefined; up = leader.get(top)) top = up;
		for (let at = name; at !== top; ) {
			const up = leader.get(at) ?? top;
			leader.set(at, top);
			at = up;
		}
		return top;
	};
	const joined = new Set<string>();
	for (const { meetings } of members)
		for (const { cable, end } of meetings) {
			const [from, to] = [cable.from.name, cable.to.name];
			const pair = JSON.stringify(from < to ? [from, to] : [to, from]);
			if (end === 1 || from === to || !inside.has(from) || !inside.has(to) || joined.has(pair)) continue;
			joined.add(pair);
			const [one, other] = [find(from), find(to)];
			if (one === other) return true;
			leader.set(one, other);
		}
	return false;
}

function otherBox(cable: Cable, end: 0 | 1): string {
	return end === 0 ? cable.to.name : cable.from.name;
}

/** Lanes this high together fill a sheet of ISO A1 or ANSI D; a quarter more is let pass. */
const highestSheet = 1700;
const slack = 0.25;
/** Heights of ordinary boxes: at a lane's end, and where it goes on. */
const usualHeights = { last: 175, passing: 240 } as const;
