// What lies around conductors that keeps their heat in: an engine space or a hot place they run through or end in.
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import type { Place } from "../plan/plan.ts";

/** Whether any of a conductor's way is in an engine space: a place its cable is led through, or one where it begins or ends. */
export function runsInEngineSpace(circuit: Circuit, conductor: Conductor): boolean {
	return placesOf(circuit, conductor).some((place) => place?.traits.has("engine-space") === true);
}

/** The hottest air around a conductor. */
export interface Air {
	/** Degrees Celsius. */
	readonly celsius: number;
	/** The place it is that hot in; undefined where it is so in the whole plan. */
	readonly place: Place | undefined;
}

/** The hottest air on a conductor's way: in the places where it begins and ends, and those its cable is led through. */
export function hottestAir(circuit: Circuit, conductor: Conductor): Air {
	const { ambient } = circuit.plan.settings;
	let hottest: Air = { celsius: ambient, place: undefined };
	if (!hasHotPlace(circuit)) return hottest;
	for (const place of placesOf(circuit, conductor))
		if (place?.temperature !== undefined && place.temperature > hottest.celsius)
			hottest = { celsius: place.temperature, place };
	return hottest;
}

function placesOf(circuit: Circuit, { cable, ends }: Conductor): readonly (Place | undefined)[] {
	const own = [ends[0].enclosure.place, ends[1].enclosure.place];
	const through = cable === undefined ? undefined : placesThrough(circuit).get(cable);
	return through === undefined ? own : [...own, ...through];
}

/** The places that the plan leads cables through, by their tags. Worked out once for a circuit. */
function placesThrough(circuit: Circuit): ReadonlyMap<string, readonly Place[]> {
	const known = throughOf.get(circuit);
	if (known !== undefined) return known;
	const places = new Map<string, readonly Place[]>();
	for (const { hops } of circuit.plan.runs)
		for (const { tag, through } of hops)
			if (through.length > 0)
				places.set(
					tag,
					through.map(({ place }) => place),
				);
	throughOf.set(circuit, places);
	return places;
}

const throughOf = new WeakMap<Circuit, ReadonlyMap<string, readonly Place[]>>();

/** Most plans have none: then no conductor's way need be looked at. */
function hasHotPlace(circuit: Circuit): boolean {
	let known = hotOf.get(circuit);
	if (known === undefined) {
		const { ambient } = circuit.plan.settings;
		known = [...circuit.plan.places.values()].some(({ temperature }) => (temperature ?? ambient) > ambient);
		hotOf.set(circuit, known);
	}
	return known;
}

const hotOf = new WeakMap<Circuit, boolean>();
