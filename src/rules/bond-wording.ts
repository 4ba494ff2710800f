// Who bonds a neutral to ground, in words.
import type { Circuit, Link } from "../circuit/circuit.ts";

/** `at the pedestal of shore`, `in inv`, `by the bonding screw of LC.neutral`. */
export function tellBond(circuit: Circuit, bond: Link): string {
	const source = circuit.sources.find((candidate) => candidate.part === bond.part);
	if (source === undefined) return `by the bonding screw of ${bond.part}`;
	if (source.sort === "utility") return `at the meter of ${source.name}`;
	return source.sort === "shore" ? `at the pedestal of ${source.name}` : `in ${source.name}`;
}

/** Whether a bond belongs to a source: then it is where the one bond should be. */
export function isOfSource(circuit: Circuit, bond: Link): boolean {
	return circuit.sources.some((source) => source.part === bond.part);
}
