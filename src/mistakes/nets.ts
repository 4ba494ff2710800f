// Which points are one, whatever the switches do: sets of what is joined, by a list of joints.
import type { Circuit, Link } from "../circuit/circuit.ts";

/** For each point the lowest position of all points that are joined with it, by pairs of points; undefined joins nothing. */
export function joinedPoints(
	points: number,
	joints: () => Iterable<readonly [number | undefined, number | undefined]>,
): Int32Array {
	const parents = new Int32Array(points).map((_, index) => index);
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
	for (const [one, other] of joints()) {
		if (one === undefined || other === undefined) continue;
		const [first, second] = [rootOf(one), rootOf(other)];
		if (first < second) parents[second] = first;
		else parents[first] = second;
	}
	return parents.map((_, index) => rootOf(index));
}

/** Nets of a circuit: what conductors and lasting joints make one. */
export function netsOf(circuit: Circuit): Int32Array {
	return joinedPoints(circuit.points.length, function* () {
		for (const { ends } of circuit.conductors) yield [ends[0].point, ends[1].point];
		for (const link of circuit.links) if (isJoint(circuit, link)) yield link.between;
	});
}

/** Whether what a link leads between is one point. What goes round a shunt is not counted by it, so its two sides are two. */
export function isJoint(circuit: Circuit, { nature, modes, part }: Link): boolean {
	return nature === "solid" && modes === undefined && circuit.partByName.get(part)?.kind !== "shunt";
}
