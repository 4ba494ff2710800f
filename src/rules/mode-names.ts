// In which modes a finding holds, as its `modes` slot says it.
import type { Analysis } from "../analysis/analysis.ts";

/** The names in the order of the modes; empty where they are all of them, for then it does not depend on the mode. */
export function modesOf(analysis: Analysis, names: ReadonlySet<string>): readonly string[] {
	const all = analysis.states.map((state) => state.mode.name);
	return all.every((name) => names.has(name)) ? [] : all.filter((name) => names.has(name));
}
