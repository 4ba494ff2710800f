// Which poles of the live sources each point can be joined to in a mode, with every intended bond taken away.
import { certain } from "../base/certain.ts";
import type { Role } from "../kinds/kind.ts";
import { reachPossible } from "./choices.ts";
import { type Edge, liveSources, type Network, type Reach } from "./network.ts";

/** The three things a conductor can be for, whatever the leg or the system: live, its return, or protective ground. */
export type PoleSort = "hot" | "neutral" | "ground";

/** The sort of a role: both legs and a positive are hot, a negative is a return like a neutral. */
export function sortOfRole(role: Role): PoleSort {
	return role === "ground" ? "ground" : role === "neutral" || role === "negative" ? "neutral" : "hot";
}

/** A pole of a live source. */
export interface Pole {
	readonly source: string;
	readonly role: Extract<Role, "hot" | "hot2" | "neutral" | "ground" | "positive" | "negative">;
	readonly points: readonly number[];
}

/** What one mode's live sources reach. */
export interface PoleMap {
	readonly poles: readonly Pole[];
	/** For each pole, in the same order, what it can be joined to over conductors and closable contacts, bonds left out. */
	readonly reaches: readonly Reach[];
	/** The roles that reach a point; empty for a dead point. */
	rolesAt(point: number): ReadonlySet<Role>;
	/** How many poles reach a point. */
	countAt(point: number): number;
	/** The sorts of poles that reach a point. */
	sortsAt(point: number): ReadonlySet<PoleSort>;
	/** The reach of the first pole of a role that has the point. */
	reachAt(point: number, role: Role): Reach | undefined;
	/** The reach of the first pole of a sort that has the point. */
	reachOf(point: number, sort: PoleSort): Reach | undefined;
}

/** Traces every pole of every live source over what `allow` lets pass. */
export function tracePoles(network: Network, allow: (edge: Edge) => boolean = notABond): PoleMap {
	const poles: Pole[] = [];
	for (const source of liveSources(network)) {
		const [hot, hot2] = source.hot;
		const [first, second] = source.system === "ac" ? (["hot", "hot2"] as const) : (["positive", "positive"] as const);
		if (hot !== undefined) poles.push({ source: source.name, role: first, points: [hot] });
		if (hot2 !== undefined) poles.push({ source: source.name, role: second, points: [hot2] });
		if (source.neutral !== undefined)
			poles.push({
				source: source.name,
				role: source.system === "ac" ? "neutral" : "negative",
				points: [source.neutral],
			});
		if (source.ground !== undefined) poles.push({ source: source.name, role: "ground", points: [source.ground] });
	}
	const reaches = poles.map((pole) => reachPossible(network, pole.points, allow));
	// Points are many and the roles that come together few: a point has a number that stands for its set of them.
	const roles = new SetNumbers<Role>();
	const sorts = new SetNumbers<PoleSort>();
	const roleSets = new Uint8Array(network.edges.length);
	const sortSets = new Uint8Array(network.edges.length);
	const counts = new Uint16Array(network.edges.length);
	poles.forEach((pole, index) => {
		const sort = sortOfRole(pole.role);
		for (const point of reaches[index]?.points ?? []) {
			roleSets[point] = roles.add(roleSets[point], pole.role);
			sortSets[point] = sorts.add(sortSets[point], sort);
			counts[point] = (counts[point] ?? 0) + 1;
		}
	});
	return {
		poles,
		reaches,
		rolesAt: (point) => roles.setOf(roleSets[point]),
		countAt: (point) => counts[point] ?? 0,
		sortsAt: (point) => sorts.setOf(sortSets[point]),
		reachAt: (point, role) => reaches.find((reach, index) => poles[index]?.role === role && reach.has(point)),
		reachOf: (point, sort) =>
			reaches.find((reach, index) => {
				const role = poles[index]?.role;
				return role !== undefined && sortOfRole(role) === sort && reach.has(point);
			}),
	};
}

/** Lets pass everything but a bond that joins neutral and ground on purpose. */
export function notABond(edge: Edge): boolean {
	return edge.by.kind === "conductor" || edge.by.link.nature !== "bond";
}

/** Whether a role is one that is live against ground: a hot or a second hot. */
export function isHot(role: Role): boolean {
	return sortOfRole(role) === "hot";
}

/** Numbers for sets, in the order in which values are added to them; 0 is the empty one. */
class SetNumbers<Value> {
	private readonly sets: ReadonlySet<Value>[] = [new Set()];
	private readonly next = new Map<Value, number[]>();

	/** The number of a set with one value more. */
	add(number: number | undefined, value: Value): number {
		const from = number ?? 0;
		const known = this.next.get(value) ?? [];
		this.next.set(value, known);
		const there = known[from];
		if (there !== undefined) return there;
		const set = this.setOf(from);
		const added = set.has(value) ? from : this.sets.push(new Set([...set, value])) - 1;
		known[from] = added;
		return added;
	}

	setOf(number: number | undefined): ReadonlySet<Value> {
		return certain(this.sets[number ?? 0], "a set");
	}
}
