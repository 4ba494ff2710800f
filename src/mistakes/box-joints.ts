// Whether wires that were moved inside their boxes are still joined there with all that they were joined with: by a splice, the terminal on it.
import type { Circuit } from "../circuit/circuit.ts";
import { isJoint, joinedPoints } from "./nets.ts";

/**
 * Whether in every box the same terminals and the same cores are joined as before, pigtails, jumpers and lasting joints taken together. A core
 * of which the other end is on nothing is a spare and does not count; a pigtail with both its ends on one point joins nothing.
 */
export function isJoinedInBoxes(before: Circuit, wrong: Circuit): boolean {
	if (before.points.length !== wrong.points.length) return false;
	const [then, now] = [netsInBoxes(before), netsInBoxes(wrong)];
	const pairs = new Map<number, number>();
	const isPaired = (one: number, other: number): boolean => {
		const known = pairs.get(one);
		pairs.set(one, known ?? other);
		return known === undefined || known === other;
	};
	const spots = [...spotsOf(before)];
	const found = new Map(spotsOf(wrong));
	if (spots.length !== found.size) return false;
	const isKept = spots.every(([name, point]) => {
		const there = found.get(name);
		return there !== undefined && isPaired(then[point] ?? -1, now[there] ?? -1);
	});
	return isKept && new Set(pairs.values()).size === pairs.size;
}

/** What is joined without leaving its box. */
function netsInBoxes(circuit: Circuit): Int32Array {
	return joinedPoints(circuit.points.length, function* () {
		for (const { ends, sort } of circuit.conductors) if (sort !== "core") yield [ends[0].point, ends[1].point];
		for (const link of circuit.links)
			if (isJoint(circuit, link) && enclosureAt(circuit, link.between[0]) === enclosureAt(circuit, link.between[1]))
				yield link.between;
	});
}

/** Terminals and metal, and the ends of cores that lead on, each by a name. */
function* spotsOf({ points, conductors }: Circuit): Iterable<readonly [string, number]> {
	for (const { kind, name, index } of points) if (kind !== "splice") yield [name, index];
	for (const { sort, name, ends } of conductors) {
		const [one, other] = [ends[0].point, ends[1].point];
		if (sort !== "core" || one === undefined || other === undefined) continue;
		yield [`${name} 0`, one];
		yield [`${name} 1`, other];
	}
}

function enclosureAt(circuit: Circuit, point: number): string | undefined {
	return circuit.points[point]?.enclosure.name;
}
