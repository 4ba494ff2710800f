// Sets of points that are one potential together, grown one joint at a time (union-find with path halving).
import type { Edge, Network } from "./network.ts";

/** Points 0 to `count` - 1, each alone at first. */
export class JoinedSets {
	private readonly parents: Int32Array;

	constructor(count: number) {
		this.parents = new Int32Array(count);
		for (let index = 1; index < count; index++) this.parents[index] = index;
	}

	/** The point that stands for all that are joined with this one. */
	find(point: number): number {
		let here = point;
		for (let above = this.above(here); above !== here; above = this.above(here)) {
			const next = this.above(above);
			this.parents[here] = next;
			here = next;
		}
		return here;
	}

	/** Whether two points are joined. */
	isJoined(one: number, other: number): boolean {
		return this.find(one) === this.find(other);
	}

	/** Joins two points; the set keeps the name of the first one's. */
	join(one: number, other: number): void {
		this.parents[this.find(other)] = this.find(one);
	}

	private above(point: number): number {
		return this.parents[point] ?? point;
	}
}

/** The points of a network joined by every edge that `allow` lets pass. */
export function joinWhere({ circuit, edges }: Network, allow: (edge: Edge) => boolean): JoinedSets {
	const sets = new JoinedSets(circuit.points.length);
	for (const here of edges) for (const edge of here) if (allow(edge)) sets.join(edge.from, edge.to);
	return sets;
}

/** The points of a network joined by all its edges: what is apart here, no setting of any switch joins. Worked out once. */
export function joinAll(network: Network): Pick<JoinedSets, "find" | "isJoined"> {
	const known = all.get(network);
	if (known !== undefined) return known;
	const sets = joinWhere(network, () => true);
	all.set(network, sets);
	return sets;
}

const all = new WeakMap<Network, JoinedSets>();
