// Which findings mark which step of a one-line diagram: the first of a finding's marks that is drawn here gets the number.
import type { NumberedFinding } from "../../base/finding.ts";
import type { Circuit } from "../../circuit/circuit.ts";

/** The findings that belong at each of the names a step may have. */
export function findingsByName(
	findings: readonly NumberedFinding[],
	circuit: Circuit,
): ReadonlyMap<string, readonly NumberedFinding[]> {
	const byName = new Map<string, NumberedFinding[]>();
	for (const finding of findings) {
		const name = finding.marks.flatMap((mark) => ownersOf(mark, circuit))[0];
		if (name === undefined) continue;
		const there = byName.get(name);
		if (there === undefined) byName.set(name, [finding]);
		else there.push(finding);
	}
	return byName;
}

/** What on this drawing a mark's name belongs to: a part, a box, a cable; nothing where it is on no line of power. */
function ownersOf(mark: string, circuit: Circuit): string[] {
	if (circuit.partByName.has(mark) || circuit.enclosureByName.has(mark) || circuit.cableByTag.has(mark)) return [mark];
	const point = circuit.points[circuit.pointByName.get(mark) ?? -1];
	if (point !== undefined) return [point.kind === "terminal" ? point.part : point.enclosure.name];
	const conductor = circuit.conductors[circuit.conductorByName.get(mark) ?? -1];
	if (conductor === undefined) return [];
	return [conductor.cable ?? conductor.ends[0].enclosure.name];
}
