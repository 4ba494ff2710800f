// Whether moved wires are still joined, inside their boxes, with all that they were joined with: a splice or the terminal on it.
import type { Circuit } from "../circuit/circuit.ts";
import type { Differences } from "./differences.ts";
import { isJoint, joinedPoints } from "./nets.ts";

/** Whether every end that was moved is joined with its old place inside the box, and every jumper joins what was joined there. */
export function isJoinedInBoxes(before: Circuit, { moved, added, removed }: Differences): boolean {
	const touched = new Set([...moved.map(([old]) => old.name), ...removed.map(({ name }) => name)]);
	const places = joinedPoints(before.points.length, function* () {
		for (const { ends, sort, name } of before.conductors)
			if (sort !== "core" && !touched.has(name)) yield [ends[0].point, ends[1].point];
		for (const link of before.links)
			if (isJoint(before, link) && enclosureAt(before, link.between[0]) === enclosureAt(before, link.between[1]))
				yield link.between;
	});
	const isOne = (one: number | undefined, other: number | undefined): boolean =>
		one === other || (one !== undefined && other !== undefined && places[one] === places[other]);
	return (
		moved.every(([old, now]) => old.ends.every(({ point }, which) => isOne(point, now.ends[which]?.point))) &&
		[...added, ...removed].every(({ ends }) => isOne(ends[0].point, ends[1].point))
	);
}

function enclosureAt(circuit: Circuit, point: number): string | undefined {
	return circuit.points[point]?.enclosure.name;
}
