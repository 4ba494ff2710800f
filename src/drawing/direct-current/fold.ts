// Whether a net is drawn in several storeys: what a fuse block shares out, and what belongs to another bank, stands below the first bank.
import { certain } from "../../base/certain.ts";
import { otherBanks } from "./banks.ts";
import type { NetOrder } from "./columns.ts";
import type { DirectBox } from "./direct-box.ts";
import { type Estimate, estimateOf, type Size } from "./estimate.ts";
import type { DirectNet, Run } from "./net.ts";
import { paperFor, shelve } from "./shelves.ts";

/** A storey: its nodes, and the runs that join it to the first. */
export interface Storey {
	readonly nodes: ReadonlySet<string>;
	/** Runs that come down to it and enter on the left. */
	readonly feeds: readonly Run[];
	/** Runs that leave it, and the first storey, on the right: to the coil of a relay up there. */
	readonly returns: readonly Run[];
	/** Those of its nodes that stand left of the fuse block. */
	readonly turned: ReadonlySet<string>;
	/** The fuse block that all of it hangs on, where it is one. */
	readonly panel?: string;
}

/** The storeys below the first; none where one is of a better shape. */
export function planStoreys(net: DirectNet, order: NetOrder, boxOf: ReadonlyMap<string, DirectBox>): Storey[] {
	const measure = estimateOf(net, order, boxOf);
	const whole = new Set(net.nodes.map(({ name }) => name));
	const panels = panelStoreys(net, order);
	const others = otherBanks(net, order).flatMap((nodes) => bankStorey(net, order, nodes, panels));
	const loose = others.filter(({ feeds }) => feeds.length === 0);
	const banks = others.filter(({ feeds }) => feeds.length > 0);
	if (panels.length === 0 && banks.length === 0) return loose;
	const shared = panels.map((storey) => shareOut(net, storey, measure, boxOf) ?? storey);
	const measureBank: Estimate = (names) => {
		const { width, height } = measure(names);
		return { width: width * bankWidth, height: height * bankHeight };
	};
	let best: { readonly storeys: Storey[]; readonly paper: number } = {
		storeys: [],
		paper: paperFor(measureBank(whole)),
	};
	for (const storeys of [panels, shared, banks, [...banks, ...panels], [...banks, ...shared]]) {
		const below = new Set(storeys.flatMap(({ nodes }) => [...nodes]));
		const upper = measureBank(new Set([...whole].filter((name) => !below.has(name))));
		const parts = storeys.map((storey) => ({
			...(storey.panel === undefined ? measureBank(storey.nodes) : sizeOf(net, storey, measure, boxOf)),
			isLast: storey.returns.length > 0,
		}));
		const paper = shelve(upper, parts).paper * (1 - closer * storeys.length);
		if (paper < best.paper) best = { storeys, paper };
	}
	return [...best.storeys, ...loose];
}

/** What hangs on each fuse block, where nothing but its feed and the coils it works join it to the rest. */
function panelStoreys({ nodes, runs }: DirectNet, order: NetOrder): Storey[] {
	const byName = new Map(nodes.map((node) => [node.name, node]));
	const found: Storey[] = [];
	for (const own of nodes) {
		const panel = own.name;
		if (own.kind !== "box" || own.stock.enclosure.sort !== "panel") continue;
		if (found.some((storey) => storey.nodes.has(panel))) continue;
		const inside = new Set([panel]);
		const returns: Run[] = [];
		for (const name of inside)
			for (const { run, end } of byName.get(name)?.meetings ?? []) {
				if (order.sourceOf(run) !== end) continue;
				const far = byName.get(run.ends[end === 0 ? 1 : 0]);
				if (far === undefined) continue;
				const isCoil = far.meetings.some((one) => one.run === run && one.isControl);
				if (isCoil && far.meetings.some(({ isControl }) => !isControl)) returns.push(run);
				else inside.add(far.name);
			}
		const isCut = ({ ends: [from, to] }: Run): boolean => inside.has(from) !== inside.has(to);
		const feeds = runs.filter((run) => isCut(run) && !returns.includes(run));
		const isFeed = (run: Run): boolean => run.ends[order.sourceOf(run) === 0 ? 1 : 0] === panel && run.sort !== "strap";
		if (inside.size <= 2 || feeds.length === 0 || feeds.length > mostFeeds || !feeds.every(isFeed)) continue;
		found.push({ nodes: inside, feeds, returns: returns.filter(isCut), turned: new Set(), panel });
	}
	// A fuse block that is fed through another stands with it.
	return found.filter(
		({ panel }) => !found.some((other) => other.panel !== panel && panel !== undefined && other.nodes.has(panel)),
	);
}

/** Another bank by itself, where few runs join it to the first and none to a fuse block's storey. */
function bankStorey(
	{ nodes, runs }: DirectNet,
	order: NetOrder,
	bank: ReadonlySet<string>,
	panels: readonly Storey[],
): Storey[] {
	const cut = runs.filter(({ ends: [from, to] }) => bank.has(from) !== bank.has(to));
	const isSmall =
		cut.length > 0 && nodes.filter(({ name, kind }) => kind === "box" && bank.has(name)).length < fewestInBank;
	const comesDown = (run: Run): boolean => {
		const [from, to] = order.startOf(run) === 0 ? run.ends : [run.ends[1], run.ends[0]];
		return bank.has(to) && run.sort !== "strap" && !panels.some((storey) => storey.nodes.has(from));
	};
	const isApart = !panels.some((storey) => [...storey.nodes].some((name) => bank.has(name)));
	if (isSmall || !isApart || cut.length > mostFeeds || !cut.every(comesDown)) return [];
	return [{ nodes: bank, feeds: cut, returns: [], turned: new Set() }];
}

/** The ways of a fuse block on both its walls, longer ones on the right, about as high on either; undefined where there are too few. */
function shareOut(
	net: DirectNet,
	storey: Storey,
	measure: Estimate,
	boxOf: ReadonlyMap<string, DirectBox>,
): Storey | undefined {
	const { panel, nodes, returns } = storey;
	// A block that is drawn with glands has them where its inside wants them.
	if (panel === undefined || certain(boxOf.get(panel), "a node's box").docks.some(({ hasGland }) => hasGland))
		return undefined;
	const ways = waysOf(net, panel, nodes).map((way) => {
		const { width, height } = measure(way);
		return { way, size: { width, height: height + betweenWays } };
	});
	if (ways.length < fewestShared) return undefined;
	const inOrder = ways.toSorted((one, other) => other.size.width - one.size.width);
	const whole = ways.reduce((sum, { size }) => sum + size.height, 0);
	const mustStay = (way: ReadonlySet<string>): boolean =>
		returns.some(({ ends }) => ends.some((name) => way.has(name)));
	const turned = new Set<string>();
	let height = 0;
	for (const { way, size } of inOrder)
		if (height === 0 || mustStay(way) || height + size.height / 2 <= whole / 2) height += size.height;
		else for (const name of way) turned.add(name);
	return turned.size === 0 ? undefined : { ...storey, turned };
}

/** The size of a storey, about; of a fuse block whose ways leave on both its walls, from what is on either. */
function sizeOf(
	net: DirectNet,
	{ nodes, turned, panel }: Storey,
	measure: Estimate,
	boxOf: ReadonlyMap<string, DirectBox>,
): Size {
	const block = panel === undefined ? undefined : boxOf.get(panel);
	if (panel === undefined || block === undefined || turned.size === 0) return measure(nodes);
	const sides = { left: { width: 0, height: 0 }, right: { width: 0, height: 0 } };
	for (const way of waysOf(net, panel, nodes)) {
		const side = sides[[...way].some((name) => turned.has(name)) ? "left" : "right"];
		const { width, height } = measure(way);
		side.width = Math.max(side.width, width);
		side.height += height + betweenWays;
	}
	return {
		width: sides.left.width + sides.right.width + block.width + 2 * besideBlock,
		height: Math.max(sides.left.height, sides.right.height) + blockHead,
	};
}

/** What hangs on a fuse block, way by way: all that is joined to one another without it. */
function waysOf({ nodes }: DirectNet, panel: string, inside: ReadonlySet<string>): Set<string>[] {
	const byName = new Map(nodes.map((node) => [node.name, node]));
	const seen = new Set([panel]);
	const ways: Set<string>[] = [];
	for (const start of inside) {
		if (seen.has(start)) continue;
		const way = new Set([start]);
		for (const name of way)
			for (const { run, end } of byName.get(name)?.meetings ?? []) {
				const next = run.ends[end === 0 ? 1 : 0];
				if (next !== panel && inside.has(next)) way.add(next);
			}
		for (const name of way) seen.add(name);
		ways.push(way);
	}
	return ways;
}

/** Parts apart from each other leave less between them than one drawing of all: what each saves of the ground. */
const closer = 0.08;
/** What banks take beyond the boxes of their layers: plus and minus of each device run to buses that stand apart. */
const bankWidth = 1.12;
const bankHeight = 1.4;
/** What a way of a fuse block takes beyond its boxes: room for its terminals, and for the grid they stand on. */
const betweenWays = 40;
/** From a fuse block to what is on either side, and what its feed and its name take above the ways of both. */
const besideBlock = 150;
const blockHead = 140;
const mostFeeds = 4;
/** With fewer ways than this all leave on the right, as a sheet is read. */
const fewestShared = 4;
/** A bank of fewer boxes stands with the first. */
const fewestInBank = 5;
