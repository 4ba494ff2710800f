// The way of the hot to a part, for the `path` slot of findings on it.
import type { ModeState } from "../analysis/analysis.ts";
import type { PathStep } from "../base/finding.ts";
import type { Part } from "../circuit/circuit.ts";

/** From the source's pole to the first terminal of the part that a hot reaches; empty where none does. */
export function hotPathTo({ exposure, poles }: ModeState, part: Part | undefined): readonly PathStep[] {
	const point = part?.points.find((candidate) => exposure.has(candidate));
	return point === undefined ? [] : (poles.reachOf(point, "hot")?.pathTo(point) ?? []);
}
