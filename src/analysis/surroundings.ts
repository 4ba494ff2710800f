// What lies around conductors that keeps their heat in: an engine space they run through or end in.
import type { Circuit, Conductor } from "../circuit/circuit.ts";

/** Whether any of a conductor's way is in an engine space: a place its cable is led through, or one where it begins or ends. */
export function runsInEngineSpace(circuit: Circuit, { cable, ends }: Conductor): boolean {
	if (cable !== undefined && tagsThrough(circuit).has(cable)) return true;
	return ends.some(({ enclosure }) => enclosure.place?.traits.has("engine-space") === true);
}

/** Tags of cables that the plan leads through an engine space. Worked out once for a circuit. */
function tagsThrough(circuit: Circuit): ReadonlySet<string> {
	const known = tagsOf.get(circuit);
	if (known !== undefined) return known;
	const tags = new Set(
		circuit.plan.runs
			.flatMap(({ hops }) => hops)
			.filter(({ through }) => through.some(({ place }) => place.traits.has("engine-space")))
			.map(({ tag }) => tag),
	);
	tagsOf.set(circuit, tags);
	return tags;
}

const tagsOf = new WeakMap<Circuit, ReadonlySet<string>>();
