// Which runs hang on a protective device: asked for every breaker of every panel, so worked out once for a plan.
import { groupBy } from "../base/group.ts";
import type { Plan, Run } from "../plan/plan.ts";

/** The runs behind a device, by the name of its part, in the order of the text. */
export function runsBehind(plan: Plan, device: string): readonly Run[] {
	const known = runsOf.get(plan) ?? groupBy(plan.runs, ({ protection }) => protection);
	runsOf.set(plan, known);
	return known.get(device) ?? [];
}

const runsOf = new WeakMap<Plan, ReadonlyMap<string | undefined, readonly Run[]>>();
