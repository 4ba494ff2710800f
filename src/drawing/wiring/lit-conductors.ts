// Which conductors findings point at: they are lit up on the drawing, which shows without colour too.
import { levels, type NumberedFinding } from "../../base/finding.ts";
import type { Circuit } from "../../circuit/circuit.ts";

/**
 * The number of the finding that lights up each conductor: the worst findings light their whole path, the others what they
 * mark, the first in the list before the rest. Notes, and what the builder accepts, light up nothing; a danger that is
 * accepted is one still.
 */
export function litConductors(circuit: Circuit, findings: readonly NumberedFinding[]): Map<string, number> {
	const open = findings.filter(
		({ level, accepted }) => level === "danger" || (level !== "note" && accepted === undefined),
	);
	const worst = levels.find((level) => open.some((finding) => finding.level === level));
	const lit = new Map<string, number>();
	const light = (name: string, number: number): void => {
		if (circuit.conductorByName.has(name) && !lit.has(name)) lit.set(name, number);
	};
	for (const { marks, number } of open)
		for (const mark of marks) {
			light(mark, number);
			for (const index of circuit.cableByTag.get(mark)?.conductors ?? [])
				light(circuit.conductors[index]?.name ?? "", number);
		}
	for (const { path, level, number } of open) if (level === worst) for (const { by } of path) light(by, number);
	return lit;
}
