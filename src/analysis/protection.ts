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
	const exposure = new Map<number, Exposure>();
	// Ratings are few, so a queue by rating, widest first, is a search for widest ways (Dijkstra's with a bottleneck for a sum).
	const queues = new Map<number, number[]>();
	const offer = (point: number, offered: Exposure): void => {
		const known = exposure.get(point);
		if (known !== undefined && !isWider(offered, known)) return;
		// Put last, so that the order stays that of the ways.
		exposure.delete(point);
		exposure.set(point, offered);
		const queue = queues.get(offered.amperes);
		if (queue === undefined) queues.set(offered.amperes, [point]);
		else queue.push(point);
	};
	for (const source of liveSources(network)) {
		const device = circuit.protections.find((protection) => protection.source === source.name);
		for (const point of source.hot)
			offer(point, {
				amperes: device?.rating ?? Number.POSITIVE_INFINITY,
				device: device?.rating === undefined ? undefined : device,
				nearest: device === undefined ? undefined : { device, pole: point },
				unrated: device?.rating === undefined ? device : undefined,
				source: source.name,
				by: undefined,
			});
	}
	for (let amperes = widest(queues); amperes !== undefined; amperes = widest(queues)) {
		const queue = queues.get(amperes) ?? [];
		for (const point of queue) {
			const here = exposure.get(point);
			if (here === undefined || here.amperes !== amperes) continue;
			for (const edge of network.edges[point] ?? []) {
				if (!notABond(edge)) continue;
				const known = exposure.get(edge.to);
				// What passes the edge is never wider than here.
				if (known === undefined || isWider(here, known)) offer(edge.to, narrow(here, edge, circuit.protections));
			}
		}
		queues.delete(amperes);
	}
	return exposure;
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
			nearest: here.nearest,
			unrated: here.unrated,
			source: here.source,
			by: edge,
		};
	const nearest: Passage = { device, pole: link.index };
	if (device.rating === undefined) return { ...here, nearest, unrated: device, by: edge };
	if (device.rating > here.amperes) return { ...here, nearest, by: edge };
	return { ...here, amperes: device.rating, device, nearest, by: edge };
}

function widest(queues: ReadonlyMap<number, unknown>): number | undefined {
	let most: number | undefined;
	for (const amperes of queues.keys()) if (most === undefined || amperes > most) most = amperes;
	return most;
}
