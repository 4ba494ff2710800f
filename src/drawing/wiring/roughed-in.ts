// Which devices are yet to come: those on a run whose cables are drawn in and that is finished later.
import type { Circuit, Part } from "../../circuit/circuit.ts";

/** Whether a device stands on a run that is roughed in. A breaker does not: its panel is there. */
export function isRoughedIn(circuit: Circuit, part: Part | undefined): boolean {
	if (part?.run === undefined || part.face.traits.includes("breaker")) return false;
	return circuit.plan.runs.some(({ name, roughedIn }) => roughedIn && name === part.run);
}
