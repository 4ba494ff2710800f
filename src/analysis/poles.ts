// Which poles of the live sources each point can be joined to in a mode, with every intended bond taken away.
import type { Role } from "../kinds/kind.ts";
import { type Edge, type Network, type Reach, reachFrom } from "./network.ts";

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
	/** The reach of the first pole of a role that has the point. */
	reachAt(point: number, role: Role): Reach | undefined;
}

/** Traces every pole of every live source over what `allow` lets pass. */
export function tracePoles(network: Network, allow: (edge: Edge) => boolean = notABond): PoleMap {
	const poles: Pole[] = [];
	for (const source of network.circuit.sources) {
		if (!network.mode.live.includes(source.name)) continue;
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
	const reaches = poles.map((pole) => reachFrom(network, pole.points, allow));
	const roles = new Map<number, Set<Role>>();
	poles.forEach((pole, index) => {
		for (const point of reaches[index]?.points ?? []) {
			const here = roles.get(point);
			if (here === undefined) roles.set(point, new Set([pole.role]));
			else here.add(pole.role);
		}
	});
	return {
		poles,
		reaches,
		rolesAt: (point) => roles.get(point) ?? none,
		reachAt: (point, role) => reaches.find((reach, index) => poles[index]?.role === role && reach.has(point)),
	};
}

/** Lets pass everything but a bond that joins neutral and ground on purpose. */
export function notABond(edge: Edge): boolean {
	return edge.by.kind === "conductor" || edge.by.link.nature !== "bond";
}

/** Whether a role is one that is live against ground: a hot or a second hot. */
export function isHot(role: Role): boolean {
	return role === "hot" || role === "hot2" || role === "positive";
}

const none: ReadonlySet<Role> = new Set();
