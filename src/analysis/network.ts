// The circuit in one source mode as a graph: what joins which points, always or sometimes, and the way from one to another.
import type { PathStep } from "../base/finding.ts";
import type { Circuit, Conductor, Link, Mode, Source } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import type { Role, System } from "../kinds/kind.ts";

/** One way between two neighbouring points. */
export interface Edge {
	readonly from: number;
	readonly to: number;
	/** A conductor's position, or a link's. */
	readonly by: { readonly kind: "conductor"; readonly index: number } | { readonly kind: "link"; readonly link: Link };
	/** Whether it can ever be open in this mode. */
	readonly closed: "always" | "sometimes";
}

/** The graph of one system in one mode, grounds with both. Links that do not exist in the mode are left out. */
export interface Network {
	readonly circuit: Circuit;
	readonly mode: Mode;
	readonly system: System;
	/** The edges that leave each point, by the point's position. */
	readonly edges: readonly (readonly Edge[])[];
	/** Those of them that are a contact with positions: few, and asked for often. */
	readonly contacts: readonly Edge[];
}

/** What a search found: which points, and by which edge each was first reached. */
export interface Reach {
	readonly network: Network;
	has(point: number): boolean;
	/** The start from which a point was reached. */
	startOf(point: number): number | undefined;
	/** Steps in edges from the start; undefined where not reached. */
	distance(point: number): number | undefined;
	/** The edge by which a point was first reached; undefined for a start and where not reached. */
	cameBy(point: number): Edge | undefined;
	/** The edges from a start to a point, in order; empty where not reached or a start itself. */
	edgesTo(point: number): readonly Edge[];
	/** The way in words, for a finding. */
	pathTo(point: number): readonly PathStep[];
	/** Reached points in the order they were reached: nearest first. */
	readonly points: readonly number[];
}

/** The graph of one system of a circuit in one of its modes: conductors and links of the other are left out. */
export function buildNetwork(circuit: Circuit, mode: Mode, system: System): Network {
	const joined: Edge[] = [];
	const join = (one: number, other: number, by: Edge["by"], closed: Edge["closed"]): void => {
		joined.push({ from: one, to: other, by, closed }, { from: other, to: one, by, closed });
	};
	for (const conductor of circuit.conductors) {
		if (!concerns({ circuit, system }, conductor)) continue;
		const [one, other] = [conductor.ends[0].point, conductor.ends[1].point];
		if (one !== undefined && other !== undefined)
			join(one, other, { kind: "conductor", index: conductor.index }, "always");
	}
	for (const link of circuit.links) {
		if (link.modes !== undefined && !link.modes.has(mode.name)) continue;
		const closed = closedIn(link);
		if (closed === "never" || !link.between.every((point) => belongsTo({ system }, circuit.points[point]?.role)))
			continue;
		join(...link.between, { kind: "link", link }, closed);
	}
	const contacts = joined.filter(({ by }) => by.kind === "link" && by.link.contact !== undefined);
	return { circuit, mode, system, edges: edgesByPoint(joined, circuit.points.length), contacts };
}

/** The edges that leave each point. Counted first, so that no list is made longer than it gets. */
function edgesByPoint(joined: readonly Edge[], points: number): Edge[][] {
	const counts = new Int32Array(points);
	for (const { from } of joined) counts[from] = (counts[from] ?? 0) + 1;
	const edges = Array.from(counts, (count) => new Array<Edge>(count));
	for (const edge of joined) {
		const left = (counts[edge.from] ?? 0) - 1;
		counts[edge.from] = left;
		const leaving = edges[edge.from];
		if (leaving !== undefined) leaving[leaving.length - 1 - left] = edge;
	}
	return edges;
}

/** Whether a conductor is part of a network: by what it is for, or because it is landed on something that is. */
export function concerns(network: Pick<Network, "circuit" | "system">, { role, ends }: Conductor): boolean {
	if (belongsTo(network, role)) return true;
	return ends.some(({ point }) => {
		const found = point === undefined ? undefined : network.circuit.points[point];
		return found !== undefined && systemOfRole(found.role) === network.system;
	});
}

/** Whether a conductor or point of a role belongs to a network: it is of the same system, or a ground. */
export function belongsTo({ system }: Pick<Network, "system">, role: Role | undefined): boolean {
	const own = role === undefined ? undefined : systemOfRole(role);
	return own === undefined || own === system;
}

/** The sources of a network's system that are live in its mode. */
export function liveSources({ circuit, mode, system }: Network): Source[] {
	return circuit.sources.filter((source) => source.system === system && mode.live.includes(source.name));
}

/** A contact that is closed in each of its positions never opens, one that is closed in none never joins. */
function closedIn(link: Link): Edge["closed"] | "never" {
	if (link.contact === undefined) return link.nature === "contact" ? "sometimes" : "always";
	const { positions, closed } = link.contact;
	if (closed.length === 0) return "never";
	return closed.length >= positions ? "always" : "sometimes";
}

/** Every point that can be reached from `starts` over edges that `allow` lets pass; breadth first, so ways are shortest. */
export function reachFrom(network: Network, starts: Iterable<number>, allow: (edge: Edge) => boolean): Reach {
	const cameBy: (Edge | undefined)[] = new Array(network.edges.length);
	// One more than the steps from the start; 0 where not reached.
	const depths = new Int32Array(network.edges.length);
	const points: number[] = [];
	for (const start of starts) {
		if (depths[start] !== 0) continue;
		depths[start] = 1;
		points.push(start);
	}
	for (const point of points) {
		const depth = (depths[point] ?? 0) + 1;
		for (const edge of network.edges[point] ?? []) {
			if (depths[edge.to] !== 0 || !allow(edge)) continue;
			cameBy[edge.to] = edge;
			depths[edge.to] = depth;
			points.push(edge.to);
		}
	}
	const has = (point: number): boolean => (depths[point] ?? 0) > 0;
	const edgesTo = (point: number): Edge[] => {
		const way: Edge[] = [];
		for (let edge = cameBy[point]; edge !== undefined; edge = cameBy[edge.from]) way.push(edge);
		return way.reverse();
	};
	return {
		network,
		points,
		has,
		distance: (point) => (has(point) ? (depths[point] ?? 1) - 1 : undefined),
		cameBy: (point) => cameBy[point],
		startOf: (point) => (has(point) ? (edgesTo(point)[0]?.from ?? point) : undefined),
		edgesTo,
		pathTo: (point) => (has(point) ? tellWay(network.circuit, edgesTo(point), point) : []),
	};
}

/** Lets pass what is joined whatever the switches and devices do. */
export function alwaysClosed(edge: Edge): boolean {
	return edge.closed === "always";
}

/** A way as path steps: the start, then each point with what leads to it. */
export function tellWay(circuit: Circuit, way: readonly Edge[], end: number): PathStep[] {
	const nameOf = (point: number): string => circuit.points[point]?.name ?? "";
	const start = way[0]?.from ?? end;
	return [
		{ point: nameOf(start), by: "" },
		...way.map((edge) => ({
			point: nameOf(edge.to),
			by: edge.by.kind === "conductor" ? (circuit.conductors[edge.by.index]?.name ?? "") : edge.by.link.part,
		})),
	];
}
