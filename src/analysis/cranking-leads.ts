// Which conductors lead from a battery to a starter with no device between: by custom and by rule they need none.
import type { Circuit } from "../circuit/circuit.ts";
import { type Edge, type Network, reachFrom } from "./network.ts";

/**
 * The conductors on any way between the plus of a battery and that of a starter, also where two banks can start two engines
 * across one another. What only branches off such a way, to a load or an alternator, is not among them.
 */
export function findCrankingLeads(network: Network): ReadonlySet<number> {
	const { circuit } = network;
	const starters = plusOfStarters(circuit);
	if (starters.length === 0) return new Set();
	const ends = new Set([...starters, ...plusOfBatteries(circuit)]);
	const unprotected = ({ by }: Edge): boolean => by.kind === "conductor" || by.link.protection === undefined;
	const reach = reachFrom(network, starters, unprotected);
	const edgesAt = (point: number): readonly Edge[] => (network.edges[point] ?? []).filter(unprotected);
	// What ends elsewhere is taken off from its tip, until only ways between the ends are left.
	const off = new Set<number>();
	const tips = network.edges.flatMap((_, point) => (reach.has(point) ? [point] : []));
	for (const point of tips) {
		if (off.has(point) || ends.has(point)) continue;
		const on = new Set(edgesAt(point).flatMap(({ to }) => (off.has(to) || to === point ? [] : [to])));
		if (on.size > 1) continue;
		off.add(point);
		tips.push(...on);
	}
	const found = new Set<number>();
	for (let point = 0; point < network.edges.length; point++)
		if (reach.has(point) && !off.has(point))
			for (const { by, to } of edgesAt(point)) if (by.kind === "conductor" && !off.has(to)) found.add(by.index);
	return found;
}

function plusOfStarters({ loads, partByName }: Circuit): number[] {
	return loads.flatMap(({ part, between: [plus] }) =>
		partByName.get(part)?.face.traits.includes("starter") === true ? [plus] : [],
	);
}

function plusOfBatteries({ sources }: Circuit): number[] {
	return sources.flatMap(({ sort, hot }) => (sort === "battery" ? hot : []));
}
