// What can be joined where contacts exclude one another: the two travellers of a three-way switch are never on together.
import type { PathStep } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import type { Link } from "../circuit/circuit.ts";
import { JoinedSets } from "./joined-sets.ts";
import { type Edge, type Network, type Reach, reachFrom, tellWay } from "./network.ts";

/** Positions of one cluster beyond which it is not tried out: then all its contacts count as closed, which errs toward danger. */
const mostStates = 4096;

/**
 * Every point that some setting of all switches joins to `starts` over edges that `allow` lets pass, each with a way that one
 * setting closes. Contacts that one position closes together never exclude one another; the others are tried out, cluster by
 * cluster of those that meet.
 */
export function reachPossible(network: Network, starts: readonly number[], allow: (edge: Edge) => boolean): Reach {
	const choices = findChoices(network, allow);
	if (choices.size === 0) return reachFrom(network, starts, allow);
	const isFree = (edge: Edge): boolean =>
		allow(edge) && (edge.by.kind === "conductor" || !choices.has(edge.by.link.index));
	const base = reachFrom(network, starts, isFree);
	const found = new Map<number, Way>();
	const points = [...base.points];
	for (const { settings } of tryOut(network, base, isFree, [...choices.values()]))
		for (const { reached } of settings)
			for (const [point, way] of reached)
				if (!found.has(point)) {
					found.set(point, way);
					points.push(point);
				}
	return joinReaches(base, found, points);
}

/**
 * Every point that each setting of all switches joins to `starts`: over edges that are `steady`, and over contacts of which one
 * or the other is always closed. Where there are too many settings to try, nothing is proven: then only what is steady counts.
 */
export function reachCertain(
	network: Network,
	starts: readonly number[],
	allow: (edge: Edge) => boolean,
	steady: (edge: Edge) => boolean,
): Reach {
	const isFree = (edge: Edge): boolean => allow(edge) && steady(edge);
	const base = reachFrom(network, starts, isFree);
	const wavering = [...contactsOf(network, (edge) => allow(edge) && !steady(edge)).values()].filter(
		(links) => !positionsOf(links).some((position) => links.every((link) => !isClosedAt(link, position))),
	);
	const found = new Map<number, Way>();
	for (const { settings } of tryOut(network, base, isFree, wavering.flat())) {
		const [first, ...others] = settings;
		if (first === undefined || others.length === 0) continue;
		for (const [point, way] of first.reached)
			if (others.every(({ reached }) => reached.has(point))) found.set(point, way);
	}
	return joinReaches(base, found, [...base.points, ...found.keys()]);
}

/** How a point was reached in one setting: the edge, and the ways of that setting. */
export interface Way {
	readonly edge: Edge;
	readonly setting: ReadonlyMap<number, Way>;
}
/** Switches that meet one another, and what each of their settings reaches beyond what all settings do. */
export interface Trial {
	/** The groups of their contacts. */
	readonly groups: readonly string[];
	/** Every setting: the position of each group, in their order. Positions are empty where there are too many settings to try. */
	readonly settings: readonly { readonly positions: readonly number[]; readonly reached: ReadonlyMap<number, Way> }[];
}

/** Every cluster of switches that exclude ways of one another, tried out from `starts`. */
export function tryClusters(
	network: Network,
	starts: readonly number[],
	allow: (edge: Edge) => boolean,
): readonly Trial[] {
	const choices = findChoices(network, allow);
	if (choices.size === 0) return [];
	const isFree = (edge: Edge): boolean =>
		allow(edge) && (edge.by.kind === "conductor" || !choices.has(edge.by.link.index));
	return tryOut(network, reachFrom(network, starts, isFree), isFree, [...choices.values()]);
}

function tryOut(
	network: Network,
	base: Reach,
	isFree: (edge: Edge) => boolean,
	choices: readonly Link[],
): readonly Trial[] {
	return findClusters(network, base, isFree, choices).map((cluster) => ({
		groups: [...groupBy(cluster, (link) => link.contact?.group ?? "").keys()],
		settings: settingsOf(cluster).map(({ positions, closed }) => ({
			positions,
			reached: search(network, base, cluster, closed, isFree),
		})),
	}));
}

/** The contacts whose group has no position in which all of it is closed, by link. Worked out once: every pole asks. */
export function findChoices(network: Network, allow: (edge: Edge) => boolean): ReadonlyMap<number, Link> {
	const known = choicesOf.get(network) ?? new Map<typeof allow, ReadonlyMap<number, Link>>();
	choicesOf.set(network, known);
	const choices = known.get(allow) ?? gatherChoices(network, allow);
	known.set(allow, choices);
	return choices;
}

const choicesOf = new WeakMap<Network, Map<(edge: Edge) => boolean, ReadonlyMap<number, Link>>>();

function gatherChoices(network: Network, allow: (edge: Edge) => boolean): ReadonlyMap<number, Link> {
	const choices = new Map<number, Link>();
	for (const links of contactsOf(network, allow).values()) {
		const together = positionsOf(links).some((position) => links.every((link) => isClosedAt(link, position)));
		if (!together) for (const link of links) choices.set(link.index, link);
	}
	return choices;
}

/** The contacts that `allow` lets pass, by their groups. */
function contactsOf(network: Network, allow: (edge: Edge) => boolean): ReadonlyMap<string, readonly Link[]> {
	const contacts = new Map<number, Link>();
	for (const edge of network.contacts)
		if (edge.by.kind === "link" && allow(edge)) contacts.set(edge.by.link.index, edge.by.link);
	return groupBy(contacts.values(), (link) => link.contact?.group ?? "");
}

function positionsOf(links: readonly Link[]): readonly number[] {
	const positions = Math.max(...links.map((link) => link.contact?.positions ?? 1));
	return Array.from({ length: positions }, (_, position) => position);
}

function isClosedAt({ contact }: Link, position: number): boolean {
	return contact?.closed.includes(position) === true;
}

/** Choices that meet one another away from the starts, with all contacts of each group together. */
function findClusters(
	network: Network,
	base: Reach,
	isFree: (edge: Edge) => boolean,
	choices: readonly Link[],
): readonly (readonly Link[])[] {
	const sets = new JoinedSets(network.circuit.points.length);
	for (const edges of network.edges)
		for (const edge of edges)
			if (isFree(edge) && !base.has(edge.from) && !base.has(edge.to)) sets.join(edge.from, edge.to);
	const firstOf = new Map<string, number>();
	for (const { between, contact } of choices)
		for (const point of between) {
			if (base.has(point)) continue;
			const first = firstOf.get(contact?.group ?? "") ?? point;
			firstOf.set(contact?.group ?? "", first);
			sets.join(first, point);
		}
	const reachable = choices.filter(({ contact }) => firstOf.has(contact?.group ?? ""));
	return [...groupBy(reachable, ({ contact }) => sets.find(firstOf.get(contact?.group ?? "") ?? 0)).values()];
}

/** Every setting of a cluster with the links it closes; one that closes them all where there are too many to try. */
function settingsOf(
	cluster: readonly Link[],
): readonly { readonly positions: readonly number[]; readonly closed: ReadonlySet<number> }[] {
	let settings: readonly (readonly number[])[] = [[]];
	const groups = [...groupBy(cluster, (link) => link.contact?.group ?? "").values()];
	for (const links of groups) {
		const each = positionsOf(links);
		if (settings.length * each.length > mostStates)
			return [{ positions: [], closed: new Set(cluster.map((link) => link.index)) }];
		settings = settings.flatMap((setting) => each.map((position) => [...setting, position]));
	}
	return settings.map((positions) => ({
		positions,
		closed: new Set(
			groups.flatMap((links, index) =>
				links.filter((link) => isClosedAt(link, positions[index] ?? 0)).map((link) => link.index),
			),
		),
	}));
}

/** What one setting of a cluster reaches beyond the base. */
function search(
	network: Network,
	base: Reach,
	cluster: readonly Link[],
	closed: ReadonlySet<number>,
	isFree: (edge: Edge) => boolean,
): ReadonlyMap<number, Way> {
	const setting = new Map<number, Way>();
	const passes = (edge: Edge): boolean =>
		edge.by.kind === "link" && closed.has(edge.by.link.index) ? true : isFree(edge);
	const queue = cluster.flatMap((link) => link.between).filter((point) => base.has(point));
	for (const point of queue)
		for (const edge of network.edges[point] ?? []) {
			if (base.has(edge.to) || setting.has(edge.to) || !passes(edge)) continue;
			setting.set(edge.to, { edge, setting });
			queue.push(edge.to);
		}
	return setting;
}

function joinReaches(base: Reach, found: ReadonlyMap<number, Way>, points: readonly number[]): Reach {
	const edgesTo = (point: number): readonly Edge[] => {
		const last = found.get(point);
		if (last === undefined) return base.edgesTo(point);
		const beyond: Edge[] = [];
		let from = point;
		for (let way: Way | undefined = last; way !== undefined; way = last.setting.get(from)) {
			beyond.push(way.edge);
			from = way.edge.from;
		}
		return [...base.edgesTo(from), ...beyond.reverse()];
	};
	const has = (point: number): boolean => base.has(point) || found.has(point);
	return {
		network: base.network,
		points,
		has,
		cameBy: (point) => found.get(point)?.edge ?? base.cameBy(point),
		distance: (point) => (has(point) ? edgesTo(point).length : undefined),
		startOf: (point) => (has(point) ? (edgesTo(point)[0]?.from ?? point) : undefined),
		edgesTo,
		pathTo: (point): readonly PathStep[] => (has(point) ? tellWay(base.network.circuit, edgesTo(point), point) : []),
	};
}
