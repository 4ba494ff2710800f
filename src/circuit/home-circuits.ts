// Which circuit a box belongs to. Where a second one, behind another device, comes into it, its conductors are kept apart.
import type { Run } from "../plan/plan.ts";
import type { Draft } from "./draft.ts";

/** The circuits of runs, by their protective devices, and of boxes: that of the first run with one that comes into a box. */
export interface HomeCircuits {
	/** Whether a run's hots and neutrals are strangers in a box. */
	isStranger(run: Run, enclosure: string): boolean;
	/** The protective device of a run's circuit; undefined for conductors run by themselves and for feeds. */
	circuitOf(run: Run): string | undefined;
}

/** Follows runs in the order of the text; one that starts in a box goes on with the circuit of that box. */
export function findHomeCircuits(draft: Draft): HomeCircuits {
	const circuits = new Map<string, string>();
	const homes = new Map<string, string>();
	for (const run of draft.plan.runs) {
		const start = run.hops[0]?.from.thing;
		const box = start === undefined ? undefined : draft.enclosureOfThing.get(start);
		const circuit = (box?.sort === "box" ? homes.get(box.name) : undefined) ?? run.protection;
		if (circuit === undefined) continue;
		circuits.set(run.name, circuit);
		for (const hop of run.hops) {
			const arrived = draft.enclosureOfThing.get(hop.to.thing);
			if (arrived?.sort === "box" && !homes.has(arrived.name)) homes.set(arrived.name, circuit);
		}
	}
	return {
		circuitOf: (run) => circuits.get(run.name),
		isStranger: (run, enclosure) => {
			const [home, own] = [homes.get(enclosure), circuits.get(run.name)];
			return home !== undefined && own !== undefined && home !== own;
		},
	};
}
