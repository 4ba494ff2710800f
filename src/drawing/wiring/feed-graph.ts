// Which enclosures belong on one sheet, and how they hang together there: a tree from the panel, or a net that is none.
import type { Cable, Circuit } from "../../circuit/circuit.ts";
import { type CableEnd, type Stock, takeStock } from "./box-content.ts";
import { circuitsPerSheet } from "./dimensions.ts";
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
}

/** The sheets of a circuit, in the order of its panels. */
export function shareSheets(circuit: Circuit): SheetShare[] {
	const stocks = takeStock(circuit);
	const regionOf = assignRegions(stocks);
	const regions = new Map<string, Stock[]>();
	for (const stock of stocks.values()) {
		const region = regionOf.get(stock.enclosure.name) ?? "";
		const there = regions.get(region);
		if (there === undefined) regions.set(region, [stock]);
		else there.push(stock);
	}
	return [...regions].flatMap(([region, members]) => shareRegion(circuit, region, members, stocks));
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

/** A panel with more circuits than fit on a sheet is drawn on several, its feed on the first. */
function splitByCircuits(share: SheetShare, root: FeedNode): SheetShare[] {
	const total = root.right.length;
	const count = Math.ceil(total / circuitsPerSheet);
	if (root.stock?.enclosure.sort !== "panel" || count <= 1) return [share];
	const each = Math.ceil(total / count);
	return Array.from({ length: count }, (_, index): SheetShare => {
		const right = root.right.slice(index * each, (index + 1) * each);
		const part = { panel: share.suffix, first: index * each + 1, last: index * each + right.length, total };
		if (index === 0) return { ...share, roots: [{ ...root, right }, ...share.roots.slice(1)], part };
		return { ...share, suffix: `${share.suffix}-${index + 1}`, roots: [{ ...root, right, left: [], loops: [] }], part };
	});
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

/** Whether power comes from a branch: it holds a source, or is a flag to the panel that its cable starts from. */
function feeds(grower: Grower, branch: FeedNode): boolean {
	if (branch.flagTo !== undefined) return branch.end === 0;
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
