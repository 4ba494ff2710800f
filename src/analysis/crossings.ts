// Where a pole of a source gets to what is meant for another: conductors that join two poles, and points reached by the wrong one.
import type { Conductor, Link } from "../circuit/circuit.ts";
import { JoinedSets } from "./joined-sets.ts";
import type { Landings } from "./landings.ts";
import { belongsTo, concerns, type Edge, type Network, type Reach } from "./network.ts";
import { isHot, type Pole, type PoleMap, type PoleSort, tracePoles } from "./poles.ts";
import { type Root, rootOfConductor, rootOfEnd, traceRoots } from "./roots.ts";
import { findSwitches, terminalsOf } from "./switching.ts";

/** A conductor that joins two poles which must stay apart. */
export interface Bridge {
	readonly conductor: number;
	readonly between: readonly [Pole, Pole];
	readonly root: Root;
}
/** A terminal or case that a pole of another sort reaches, and its own does not. */
export interface Stray {
	readonly point: number;
	readonly by: PoleSort;
	readonly root: Root;
	/** What it does; undefined on a switch where the switch is the fault, or there is none: put into the neutral, or two poles exchanged. */
	readonly effect: Effect | undefined;
}
/** What a mistake does, worst first: a short circuit, hot where it must not be, neutral tied to ground, neutral and ground exchanged. */
export type Effect = "shorted" | "paralleled" | "reversed" | "bridged" | "exchanged";

/** Everything of one mode that the wrong pole gets to. */
export interface Crossings {
	readonly bridges: readonly Bridge[];
	readonly strays: readonly Stray[];
	/** The first stray at a point that does something. */
	strayAt(point: number): Stray | undefined;
	/** The graph with every bridge cut: what is found on it is not due to two poles being joined. */
	readonly network: Network;
	/** The poles as they reach in it. */
	readonly poles: PoleMap;
	/** The mistake by which a pole of a sort reaches a point; undefined where it does not, or rightly does. */
	rootAt(point: number, sort: PoleSort): Root | undefined;
	/** The worst that each mistake does in this mode, by the key of its root. */
	readonly effects: ReadonlyMap<string, Effect>;
	/** The worst that a mistake does in any mode; undefined where it does nothing. */
	effectOf(root: string): Effect | undefined;
}

/** Traces every crossing of a mode. */
export function traceCrossings(
	whole: Network,
	landings: Landings,
	poles: PoleMap,
	effectOf: Crossings["effectOf"],
): Crossings {
	const bridges = findBridges(whole, landings, poles);
	const network = bridges.length === 0 ? whole : cutBridges(whole, new Set(bridges.map((bridge) => bridge.conductor)));
	const apart = network === whole ? poles : tracePoles(network);
	const resolvers = new Map<Reach, (point: number) => Root | undefined>();
	const rootAt = (point: number, sort: PoleSort): Root | undefined => {
		const reach = apart.reachOf(point, sort);
		if (reach === undefined) return undefined;
		const resolver = resolvers.get(reach) ?? traceRoots(reach, sort, landings);
		resolvers.set(reach, resolver);
		return resolver(point);
	};
	const strays = findStrays(network, landings, apart, rootAt);
	const harmful = new Map(
		strays.toReversed().flatMap((stray) => (stray.effect === undefined ? [] : [[stray.point, stray]])),
	);
	return {
		bridges,
		strays,
		strayAt: (point) => harmful.get(point),
		network,
		poles: apart,
		rootAt,
		effects: weigh(bridges, strays),
		effectOf,
	};
}

function cutBridges(network: Network, cut: ReadonlySet<number>): Network {
	const stays = ({ by }: Edge): boolean => by.kind === "link" || !cut.has(by.index);
	return { ...network, edges: network.edges.map((edges) => (edges.every(stays) ? edges : edges.filter(stays))) };
}

/** The worst of several effects; undefined of none. */
export function worstEffect(effects: Iterable<Effect | undefined>): Effect | undefined {
	let worst: Effect | undefined;
	for (const effect of effects)
		if (effect !== undefined && (worst === undefined || order.indexOf(effect) < order.indexOf(worst))) worst = effect;
	return worst;
}

function weigh(bridges: readonly Bridge[], strays: readonly Stray[]): ReadonlyMap<string, Effect> {
	const effects = new Map<string, Effect>();
	const note = (root: Root, effect: Effect | undefined): void => {
		const worst = worstEffect([effects.get(root.key), effect]);
		if (worst !== undefined) effects.set(root.key, worst);
	};
	for (const { root, between } of bridges)
		note(
			root,
			areParalleled(between) ? "paralleled" : between.some((pole) => isHot(pole.role)) ? "shorted" : "bridged",
		);
	for (const stray of strays) note(stray.root, stray.effect);
	return effects;
}

/** Whether a bridge joins the hots of two sources, and not the two legs of one. */
export function areParalleled([one, other]: Bridge["between"]): boolean {
	return isHot(one.role) && isHot(other.role) && one.source !== other.source;
}

const order: readonly Effect[] = ["shorted", "paralleled", "reversed", "bridged", "exchanged"];

/** What a stray stands for by itself: a jumper or pigtail too many ties neutral to ground, a wire landed wrongly exchanges them. */
function effectOfStray(lands: PoleSort, by: PoleSort, root: Root, { circuit }: Network): Effect {
	if (by === "hot" || lands === "hot") return "reversed";
	const conductor = root.end === undefined ? undefined : circuit.conductors[root.end.conductor];
	const isExtra = conductor !== undefined && conductor.sort !== "core" && root.halves.length < 2;
	return isExtra ? "bridged" : "exchanged";
}

/** The poles that a set of joined points holds. */
type Held = readonly Pole[];

/**
 * The conductors that join poles, found by joining everything else first: then what agrees with its colour, last what does not.
 * So of two conductors that meet wrongly the misplaced one is named.
 */
function findBridges(network: Network, landings: Landings, poles: PoleMap): Bridge[] {
	const { circuit, mode } = network;
	// Where no point is reached by two poles there is nothing to look for.
	if (!circuit.points.some((point) => poles.countAt(point.index) > 1)) return [];
	const sets = new JoinedSets(circuit.points.length);
	const held = new Map<number, Held>();
	for (const pole of poles.poles) for (const point of pole.points) held.set(point, [...(held.get(point) ?? []), pole]);
	const join = (one: number, other: number): void => {
		const [first, second] = [sets.find(one), sets.find(other)];
		if (first === second) return;
		const both = [...(held.get(first) ?? []), ...(held.get(second) ?? [])];
		sets.join(first, second);
		held.delete(second);
		if (both.length > 0) held.set(first, both);
	};
	for (const link of circuit.links)
		if (isThere(link, mode.name) && link.between.every((point) => belongsTo(network, circuit.points[point]?.role)))
			join(...link.between);
	const isMisplaced = ({ index }: Conductor): boolean =>
		landings.misplacedAt(index, 0) !== undefined || landings.misplacedAt(index, 1) !== undefined;
	const bridges: Bridge[] = [];
	for (const misplaced of [false, true])
		for (const conductor of circuit.conductors) {
			const [one, other] = [conductor.ends[0].point, conductor.ends[1].point];
			if (one === undefined || other === undefined || isMisplaced(conductor) !== misplaced) continue;
			if (!concerns(network, conductor)) continue;
			const between = conflict(held.get(sets.find(one)), held.get(sets.find(other)));
			if (between === undefined || sets.find(one) === sets.find(other)) join(one, other);
			else bridges.push({ conductor: conductor.index, between, root: rootOfBridge(conductor, network, landings) });
		}
	return bridges;
}

function rootOfBridge(conductor: Conductor, { circuit }: Network, landings: Landings): Root {
	const misplaced = landings.misplacedAt(conductor.index, 0) ?? landings.misplacedAt(conductor.index, 1);
	return misplaced === undefined ? rootOfConductor(conductor, 1, circuit) : rootOfEnd(misplaced, circuit, landings);
}

function isThere(link: Link, mode: string): boolean {
	return (
		link.nature !== "bond" && link.contact?.closed.length !== 0 && (link.modes === undefined || link.modes.has(mode))
	);
}

/** Two poles that must not meet: of different sorts, or two hots, be they legs of one source or of two. */
function conflict(first: Held = [], second: Held = []): readonly [Pole, Pole] | undefined {
	for (const one of first)
		for (const other of second) if (one.role !== other.role || (isHot(one.role) && one !== other)) return [one, other];
	return undefined;
}

function findStrays(network: Network, landings: Landings, poles: PoleMap, rootAt: Crossings["rootAt"]): Stray[] {
	const { circuit } = network;
	const switches = findSwitches(circuit);
	const hotOnly = new Set(switches.filter((found) => !found.opensNeutral).flatMap(terminalsOf));
	const withNeutral = new Set(switches.filter((found) => found.opensNeutral).flatMap(terminalsOf));
	const strays: Stray[] = [];
	for (const { kind, index } of circuit.points) {
		if (kind === "splice") continue;
		const sorts = poles.sortsAt(index);
		if (sorts.size === 0 || sorts.has(landings.sortAt(index))) continue;
		for (const by of sorts) {
			const root = rootAt(index, by);
			if (root === undefined) continue;
			// Which pole of a two-pole switch is which makes no difference; what hangs behind it shows an exchange.
			const switched =
				(by !== "ground" && withNeutral.has(index)) ||
				(by === "neutral" && hotOnly.has(index) && root.halves.some((half) => hotOnly.has(half.point)));
			const effect = switched ? undefined : effectOfStray(landings.sortAt(index), by, root, network);
			strays.push({ point: index, by, root, effect });
		}
	}
	return strays;
}
