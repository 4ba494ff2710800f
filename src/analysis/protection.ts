// How much current protective devices let through to each point from each live source: the widest way from source to point.
import type { Protection } from "../circuit/circuit.ts";
import { type Edge, liveSources, type Network } from "./network.ts";
import { notABond } from "./poles.ts";

/** What stands between a point and the source that can push most through to it. */
export interface Exposure {
	/** Amperes that pass before a device opens; infinite where there is none. */
	readonly amperes: number;
	/** The device that limits it: the smallest on the widest way, the last of equals; undefined where there is none. */
	readonly device: Protection | undefined;
	/** Others that let current in beside that device, where batteries in parallel have one each. */
	readonly beside: readonly Protection[] | undefined;
	/** The last device on the way, whatever its rating; undefined where there is none. */
	readonly nearest: Passage | undefined;
	/** A device on the way whose rating is not known: less may pass than `amperes` says. */
	readonly unrated: Protection | undefined;
	readonly source: string;
	/** The edge by which the point was reached; undefined at the source. */
	readonly by: Edge | undefined;
}

/** One pole of a protective device, as the way to a point leads through it. */
export interface Passage {
	readonly device: Protection;
	/** The position of its link; for the device of a far supply the point of the source's pole. */
	readonly pole: number;
}

/**
 * The exposure of every point that a hot of a live source can be joined to. Points it does not reach are left out.
 * Points stand behind the point they were reached from.
 */
export function traceExposure(network: Network): ReadonlyMap<number, Exposure> {
	const { circuit } = network;
	const spread = new Spread(network, new Map());
	for (const source of liveSources(network)) {
		const device = circuit.protections.find((protection) => protection.source === source.name);
		for (const point of source.hot)
			spread.offer(point, {
				amperes: device?.rating ?? Number.POSITIVE_INFINITY,
				device: device?.rating === undefined ? undefined : device,
				beside: undefined,
				nearest: device === undefined ? undefined : { device, pole: point },
				unrated: device?.rating === undefined ? device : undefined,
				source: source.name,
				by: undefined,
			});
	}
	return spread.run(notABond);
}

/**
 * What is known of a network's exposure, with what several devices let through together where it leaves `wires`, the way from
 * one to the others. On that no more flows than one side gives.
 */
export function addTogether(
	network: Network,
	known: ReadonlyMap<number, Exposure>,
	devices: readonly Protection[],
	wires: ReadonlySet<Edge>,
): ReadonlyMap<number, Exposure> {
	const [first, ...others] = devices;
	const amperes = devices.reduce((sum, { rating }) => sum + (rating ?? Number.POSITIVE_INFINITY), 0);
	if (first === undefined || !Number.isFinite(amperes)) return known;
	const own = new Set(devices.flatMap(({ links }) => links));
	const between = new Set([...wires].flatMap(({ from, to }) => [from, to]));
	const isBeyond = (edge: Edge): boolean =>
		notABond(edge) && !between.has(edge.to) && (edge.by.kind === "conductor" || !own.has(edge.by.link.index));
	const spread = new Spread(network, new Map(known));
	for (const point of between) {
		const here = known.get(point);
		if (here?.device === undefined || here.amperes >= amperes) continue;
		for (const edge of network.edges[point] ?? [])
			if (isBeyond(edge) && known.get(edge.to)?.by === edge)
				spread.offer(
					edge.to,
					narrow({ ...here, amperes, device: first, beside: others }, edge, network.circuit.protections),
				);
	}
	return spread.run(isBeyond);
}

/** A search for widest ways (Dijkstra's with a bottleneck for a sum): ratings are few, so its queue is one for each, widest first. */
class Spread {
	private readonly network: Network;
	private readonly exposure: Map<number, Exposure>;
	private readonly queues = new Map<number, number[]>();

	constructor(network: Network, exposure: Map<number, Exposure>) {
		this.network = network;
		this.exposure = exposure;
	}

	offer(point: number, offered: Exposure): void {
		const known = this.exposure.get(point);
		if (known !== undefined && !isWider(offered, known)) return;
		// Put last, so that the order stays that of the ways.
		this.exposure.delete(point);
		this.exposure.set(point, offered);
		const queue = this.queues.get(offered.amperes);
		if (queue === undefined) this.queues.set(offered.amperes, [point]);
		else queue.push(point);
	}

	run(allow: (edge: Edge) => boolean): ReadonlyMap<number, Exposure> {
		const { edges, circuit } = this.network;
		for (let amperes = widest(this.queues); amperes !== undefined; amperes = widest(this.queues)) {
			const queue = this.queues.get(amperes) ?? [];
			for (const point of queue) {
				const here = this.exposure.get(point);
				if (here === undefined || here.amperes !== amperes) continue;
				for (const edge of edges[point] ?? []) {
					if (!allow(edge)) continue;
					const known = this.exposure.get(edge.to);
					// What passes the edge is never wider than here.
					if (known === undefined || isWider(here, known)) this.offer(edge.to, narrow(here, edge, circuit.protections));
				}
			}
			this.queues.delete(amperes);
		}
		return this.exposure;
	}
}

/** Whether more can come by the first way: more amperes, or as many without a device that may let less through. */
function isWider(one: Exposure, other: Exposure): boolean {
	if (one.amperes !== other.amperes) return one.amperes > other.amperes;
	return one.unrated === undefined && other.unrated !== undefined;
}

/** The exposure beyond an edge: a device on it with a rating no larger than what comes takes over. */
function narrow(here: Exposure, edge: Edge, protections: readonly Protection[]): Exposure {
	const link = edge.by.kind === "link" ? edge.by.link : undefined;
	const device = link?.protection === undefined ? undefined : protections[link.protection];
	// Written out: this is done for every edge, and a spread is slow.
	if (link === undefined || device === undefined)
		return {
			amperes: here.amperes,
			device: here.device,
			beside: here.beside,
			nearest: here.nearest,
			unrated: here.unrated,
			source: here.source,
			by: edge,
		};
	const nearest: Passage = { device, pole: link.index };
	if (device.rating === undefined) return { ...here, nearest, unrated: device, by: edge };
	if (device.rating > here.amperes) return { ...here, nearest, by: edge };
	return { ...here, amperes: device.rating, device, beside: undefined, nearest, by: edge };
}

function widest(queues: ReadonlyMap<number, unknown>): number | undefined {
	let most: number | undefined;
	for (const amperes of queues.keys()) if (most === undefined || amperes > most) most = amperes;
	return most;
}
