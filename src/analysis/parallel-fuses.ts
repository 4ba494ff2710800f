// Fuses of batteries in parallel that let current in together: which they are, and the wires between them.
import type { Protection } from "../circuit/circuit.ts";
import { joinWhere } from "./joined-sets.ts";
import { type Edge, type Network, reachFrom } from "./network.ts";
import { notABond } from "./poles.ts";
import { addTogether, type Exposure, traceExposure } from "./protection.ts";

/**
 * The exposure of a network for direct current. Batteries in parallel with a fuse each feed what is behind both; where a handle or
 * a coil parts them, as between two banks that are tied to crank an engine, they are not in parallel.
 */
export function traceDirectExposure(network: Network): ReadonlyMap<number, Exposure> {
	return findParallelFuses(network).reduce(
		(exposure, { devices, wires }) => addTogether(network, exposure, devices, wires),
		traceExposure(network),
	);
}

/** Such fuses, and the edges on the way from the first to the others. */
interface ParallelFuses {
	readonly devices: readonly Protection[];
	readonly wires: ReadonlySet<Edge>;
}

function findParallelFuses(network: Network): readonly ParallelFuses[] {
	const { circuit } = network;
	const posts = circuit.sources.flatMap(({ sort, hot: [plus] }) =>
		sort === "battery" && plus !== undefined ? [plus] : [],
	);
	if (posts.length < 2) return [];
	const sets = joinWhere(network, isMeantToStay);
	const batteries = new Set(posts.map((post) => sets.find(post)));
	const groups = new Map<number, Map<number, { readonly device: Protection; readonly load: number }>>();
	for (const device of circuit.protections)
		for (const index of device.links) {
			const [one, other] = circuit.links[index]?.between ?? [];
			if (one === undefined || other === undefined) continue;
			for (const [post, load] of [
				[one, other],
				[other, one],
			] as const) {
				const [from, to] = [sets.find(post), sets.find(load)];
				if (!batteries.has(from) || batteries.has(to)) continue;
				const group = groups.get(to) ?? new Map();
				groups.set(to, group);
				if (!group.has(from)) group.set(from, { device, load });
			}
		}
	return [...groups.values()].flatMap((group): ParallelFuses[] => {
		const [first, ...others] = group.values();
		if (first === undefined || others.length === 0) return [];
		const reach = reachFrom(network, [first.load], isMeantToStay);
		const wires = new Set(others.flatMap(({ load }) => reach.edgesTo(load)));
		return [{ devices: [first, ...others].map(({ device }) => device), wires }];
	});
}

/** Lets pass what no handle, coil or device parts. */
export function isMeantToStay(edge: Edge): boolean {
	return edge.by.kind === "conductor" || (notABond(edge) && edge.by.link.nature === "solid");
}
