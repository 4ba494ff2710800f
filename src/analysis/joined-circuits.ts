// Protective devices whose hots meet behind them: what hangs there is fed through both, and neither alone makes it dead.
import type { Protection } from "../circuit/circuit.ts";
import { reachPossible } from "./choices.ts";
import { JoinedSets } from "./joined-sets.ts";
import type { Edge, Network } from "./network.ts";
import { isHot, notABond, type PoleMap } from "./poles.ts";

/** Two devices that feed the same wires and do not open together. */
export interface JoinedCircuits {
	readonly devices: readonly [Protection, Protection];
	/** From the first device's terminal to the second's, through what both feed. */
	readonly way: readonly Edge[];
	/** Every point that both feed. */
	readonly points: readonly number[];
}

/** One pole of a device, between two sets of points that no device parts. */
interface Pass {
	readonly device: Protection;
	/** Its terminal nearer the source, and the one beyond. */
	readonly line: number;
	readonly load: number;
}

/**
 * Every pair of devices that meet behind them in one mode. Between devices the hots of a right plan make a tree;
 * a pole that closes a ring in it meets another one's circuit.
 */
export function traceJoinedCircuits(network: Network, poles: PoleMap): readonly JoinedCircuits[] {
	const sets = new JoinedSets(network.circuit.points.length);
	const isLive = (point: number): boolean => poles.sortsAt(point).has("hot");
	const stays = (edge: Edge): boolean =>
		notABond(edge) && isLive(edge.from) && isLive(edge.to) && deviceOf(edge) === undefined;
	for (const edges of network.edges) for (const edge of edges) if (stays(edge)) sets.join(edge.from, edge.to);
	const { ahead, rings } = findRings(network, poles, sets);
	return rings.flatMap((found): JoinedCircuits[] => {
		const turned = turnToLoad(network, found);
		// A pole that leads back out of what its own device feeds meets what is behind it there.
		const ring = ahead.get(sets.find(turned.load))?.device === turned.device ? found : turned;
		const other = ahead.get(sets.find(ring.load));
		if (other === undefined || other.device === ring.device) return [];
		// Ways that no setting of the switches closes at once do not meet.
		const reach = reachPossible(network, [other.load], stays);
		if (!reach.has(ring.load)) return [];
		return [{ devices: [other.device, ring.device], way: reach.edgesTo(ring.load), points: reach.points }];
	});
}

/** The pole by which each set is first fed, and those that lead to a set which another feeds already. */
function findRings(
	network: Network,
	poles: PoleMap,
	sets: JoinedSets,
): { ahead: ReadonlyMap<number, Pass>; rings: readonly Pass[] } {
	const leaving = new Map<number, Pass[]>();
	for (const edges of network.edges)
		for (const edge of edges) {
			const device = deviceOf(edge);
			if (device === undefined || !poles.sortsAt(edge.from).has("hot") || !poles.sortsAt(edge.to).has("hot")) continue;
			const [from, protection] = [sets.find(edge.from), network.circuit.protections[device]];
			if (protection === undefined || from === sets.find(edge.to)) continue;
			const pass = { device: protection, line: edge.from, load: edge.to };
			const known = leaving.get(from);
			if (known === undefined) leaving.set(from, [pass]);
			else known.push(pass);
		}
	const ahead = new Map<number, Pass>();
	const rings: Pass[] = [];
	const crossed = new Set<string>();
	const reached = new Set<number>();
	for (const { role, points } of poles.poles)
		if (isHot(role)) for (const point of points) reached.add(sets.find(point));
	// A set hands out what is added while it is walked: nearest the source first.
	for (const here of reached)
		for (const pass of leaving.get(here) ?? []) {
			const contact = pass.line < pass.load ? `${pass.line}/${pass.load}` : `${pass.load}/${pass.line}`;
			if (crossed.has(contact)) continue;
			crossed.add(contact);
			const next = sets.find(pass.load);
			if (reached.has(next)) rings.push(pass);
			else {
				reached.add(next);
				ahead.set(next, pass);
			}
		}
	return { ahead, rings };
}

/** Between two sets as far from the source as one another, what a device feeds is on the side it calls load. */
function turnToLoad({ circuit }: Network, pass: Pass): Pass {
	const point = circuit.points[pass.line];
	return point?.kind === "terminal" && point.side === "load" ? { ...pass, line: pass.load, load: pass.line } : pass;
}

function deviceOf({ by }: Edge): number | undefined {
	return by.kind === "link" ? by.link.protection : undefined;
}
