// Which conductors a finding's path runs over: they are lit up on the drawing under the finding's number.
import type { NumberedFinding } from "../../base/finding.ts";
import type { Circuit } from "../../circuit/circuit.ts";

/** The number of the first finding whose path or marks hold each conductor. Notes, and what the builder accepts, light up nothing. */
export function litConductors(circuit: Circuit, findings: readonly NumberedFinding[]): Map<string, number> {
	const lit = new Map<string, number>();
	for (const finding of findings) {
		if (finding.level === "note" || finding.accepted !== undefined) continue;
		for (const name of [...finding.marks, ...finding.path.map((step) => step.by)])
			if (circuit.conductorByName.has(name) && !lit.has(name)) lit.set(name, finding.number);
	}
	return lit;
}
