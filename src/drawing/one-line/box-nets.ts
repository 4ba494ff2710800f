// What is one potential inside each enclosure, and the contacts that lead from one to another. Cables are left out: they join enclosures.
import type { Circuit, Link } from "../../circuit/circuit.ts";

/** The potentials of a circuit, enclosure by enclosure. */
export interface BoxNets {
	/** The potential that a point belongs to, by the number of one of its points. */
	netOf(point: number): number;
	/** The contacts that leave a potential, each with the potential on its other side. */
	contactsFrom(net: number): readonly { readonly link: Link; readonly to: number }[];
}

/** Finds them. The two legs of a panel's bus count as one: on a one-line diagram a bus is a single bar. */
export function findBoxNets(circuit: Circuit): BoxNets {
	const parent = circuit.points.map((_, index) => index);
	const rootOf = (point: number): number => {
		let root = point;
		while (parent[root] !== root && parent[root] !== undefined) root = parent[root] ?? root;
		// Shortened on the way, so that long rows of joins stay quick.
		for (let at = point; at !== root; ) {
			const next = parent[at] ?? root;
			parent[at] = root;
			at = next;
		}
		return root;
	};
	const join = (one: number, other: number): void => {
		parent[rootOf(one)] = rootOf(other);
	};
	for (const conductor of circuit.conductors) {
		const [one, other] = [conductor.ends[0].point, conductor.ends[1].point];
		if (conductor.cable === undefined && one !== undefined && other !== undefined) join(one, other);
	}
	for (const link of circuit.links) if (link.nature === "solid") join(...link.between);
	for (const part of circuit.parts) {
		const [first] = part.points;
		if (first !== undefined && part.face.traits.includes("panel")) for (const point of part.points) join(first, point);
	}
	const contacts = new Map<number, { link: Link; to: number }[]>();
	for (const link of circuit.links) {
		if (link.nature !== "contact") continue;
		const [one, other] = [rootOf(link.between[0]), rootOf(link.between[1])];
		if (one === other) continue;
		for (const [from, to] of [
			[one, other],
			[other, one],
		] as const)
			contacts.set(from, [...(contacts.get(from) ?? []), { link, to }]);
	}
	return { netOf: rootOf, contactsFrom: (net) => contacts.get(net) ?? [] };
}
