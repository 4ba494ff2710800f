// How a conductor's end is made up where nothing is said of it.
import type { Termination } from "../kinds/kind.ts";
import type { Settings } from "../plan/plan.ts";
import type { Point } from "./circuit.ts";

/**
 * Of a stranded end: fork under a screw, ring on a stud, ferrule in a cage or bar, bare in a spring port or under a plate
 * (common practice). The plan's `ends` setting says otherwise.
 */
export function usualTermination(stranded: boolean, point: Point, { ends }: Pick<Settings, "ends">): Termination {
	if (!stranded) return "solid";
	if (point.kind === "splice") return "bare";
	if (point.kind === "body") return "ring";
	if (point.clamp === "screw") return ends ?? "fork";
	if (point.clamp === "stud") return "ring";
	return point.clamp === "cage" ? "ferrule" : "bare";
}
