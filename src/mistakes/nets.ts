// Which points of a circuit are one, whatever the switches do: joined by conductors, by bars, by being bolted together.
import type { Circuit, Link } from "../circuit/circuit.ts";

/** For each point the lowest position of all points that are joined with it for good. */
export function netsOf(circuit: Circuit): Int32Array {
	const parents = new Int32Array(circuit.points.length).map((_, index) => index);
	const rootOf = (point: number): number => {
		let root = point;
		for (let next = parents[root] ?? root; next !== root; next = parents[root] ?? root) root = next;
		for (let at = point; at !== root; ) {
			const next = parents[at] ?? root;
			parents[at] = root;
			at = next;
		}
		return root;
	};
	const join = (one: number, other: number): void => {
		const [first, second] = [rootOf(one), rootOf(other)];
		if (first < second) parents[second] = first;
		else parents[first] = second;
	};
	for (const { ends } of circuit.conductors)
		if (ends[0].point !== undefined && ends[1].point !== undefined) join(ends[0].point, ends[1].point);
	for (const link of circuit.links) if (isJoint(circuit, link)) join(...link.between);
	return parents.map((_, index) => rootOf(index));
}

/** Whether what a link leads between is one point. What goes round a shunt is not counted by it, so its two sides are two. */
export function isJoint(circuit: Circuit, { nature, modes, part }: Link): boolean {
	return nature === "solid" && modes === undefined && circuit.partByName.get(part)?.kind !== "shunt";
}
