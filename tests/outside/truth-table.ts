// Which loads are on in every position of every switch: enumerated on the circuit's conductors and contacts alone, without the analysis.

import { findSwitches } from "../../src/analysis/switching.ts";
import type { Circuit } from "../../src/circuit/circuit.ts";
import { checkPlan } from "../../src/pipeline.ts";

/** One setting of all switches, and the loads that are on in it. */
export interface Row {
	/** The position of each switch, by its part. */
	readonly positions: ReadonlyMap<string, number>;
	/** The hot terminals of loads and outlets between which and their way back the supply's voltage stands. */
	readonly on: ReadonlySet<string>;
}

/** The truth table of a plan: every setting of its switches, in the plan's first mode. */
export function truthTable(text: string): readonly Row[] {
	const { circuit } = checkPlan(text, "plan").analysis;
	const parts = findSwitches(circuit).map(({ part }) => part);
	return Array.from({ length: 2 ** parts.length }, (_, setting) => {
		const positions = new Map(parts.map((part, index) => [part, (setting >> index) & 1]));
		return { positions, on: loadsOn(circuit, positions) };
	});
}

/** How many switches are thrown in a setting. */
export function thrown({ positions }: Row): number {
	return [...positions.values()].reduce((sum, position) => sum + position, 0);
}

function loadsOn(circuit: Circuit, positions: ReadonlyMap<string, number>): Set<string> {
	const net = circuit.points.map((_, index) => index);
	const find = (point: number): number => {
		for (let at = point; ; at = net[at] ?? at) if (net[at] === at) return at;
	};
	const join = (one: number, other: number): void => {
		net[find(one)] = find(other);
	};
	for (const { ends } of circuit.conductors) {
		const [from, to] = [ends[0].point, ends[1].point];
		if (from !== undefined && to !== undefined) join(from, to);
	}
	for (const { between, nature, contact, part } of circuit.links) {
		const position = positions.get(part);
		// What is no switch stays on: breakers, and ground-fault devices.
		const isClosed = contact === undefined || position === undefined || contact.closed.includes(position);
		if (nature !== "bond" && isClosed) join(...between);
	}
	const [source] = circuit.sources;
	const hots = new Set(source?.hot.map(find));
	const neutral = find(source?.neutral ?? -1);
	const poleAt = (point: number): number | undefined =>
		[...hots, neutral].find((candidate) => candidate === find(point));
	return new Set(
		circuit.loads
			.filter(({ between: [one, other] }) => {
				const [from, to] = [poleAt(one), poleAt(other)];
				return from !== undefined && to !== undefined && from !== to;
			})
			.map(({ between: [hot] }) => circuit.points[hot]?.name ?? ""),
	);
}
