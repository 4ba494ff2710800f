// Whether conductors and devices of another size still keep their limits: what is ahead of a wire opens before the wire suffers.
import { carefulLimit, conductorLimit } from "../analysis/conductor-limit.ts";
import { directLimit } from "../analysis/direct-limit.ts";
import { compareGauges } from "../base/gauge.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { equipmentGroundFor } from "../handbook/equipment-ground.ts";
import { servicesOf } from "./services.ts";

/** Whether each of some conductors may have the smallest protective device that stands before it. */
export function areProtected(circuit: Circuit, conductors: readonly Conductor[]): boolean {
	return conductors.every((conductor) => isProtected(circuit, conductor));
}

function isProtected(circuit: Circuit, conductor: Conductor): boolean {
	const limit = limitOf(circuit, conductor);
	const rating = ratingAhead(circuit, conductor);
	if (rating === undefined) return false;
	if (conductor.role !== "ground") return limit !== undefined && limit >= rating;
	const row = equipmentGroundFor(rating);
	return (
		(limit !== undefined && limit >= rating) || (row !== undefined && compareGauges(conductor.gauge, row.copper) >= 0)
	);
}

function limitOf(circuit: Circuit, conductor: Conductor): number | undefined {
	if (conductor.role !== "positive" && conductor.role !== "negative") {
		const limit = conductorLimit(circuit, conductor);
		return limit === undefined || limit.beyondTable === true ? undefined : carefulLimit(limit);
	}
	const volts = Math.max(0, ...circuit.sources.flatMap(({ system, volts: own }) => (system === "dc" ? [own] : [])));
	const limit = directLimit(circuit, conductor, volts);
	return limit === undefined || limit.beyondTable === true ? undefined : limit.largest;
}

/** The smallest device before a conductor; of one that carries no hot, before the hots that it goes with. Undefined where there is none. */
function ratingAhead(circuit: Circuit, conductor: Conductor): number | undefined {
	const fellows =
		conductor.role === "hot" || conductor.role === "positive"
			? [conductor]
			: circuit.conductors.filter(
					(other) =>
						other.cable !== undefined &&
						other.cable === conductor.cable &&
						!["neutral", "negative", "ground"].includes(other.role),
				);
	const ratings = fellows.map((fellow) => smallestAhead(circuit, fellow));
	const known = ratings.flatMap((rating) => rating ?? []);
	return known.length === 0 || known.length < ratings.length ? undefined : Math.max(...known);
}

function smallestAhead(circuit: Circuit, { ends }: Conductor): number | undefined {
	const services = servicesOf(circuit);
	const perEnd = ends.map(({ point }) =>
		point === undefined ? [] : services.devicesBefore(point).flatMap(({ rating }) => rating ?? []),
	);
	if (perEnd.some((ratings) => ratings.length === 0)) return undefined;
	return Math.max(...perEnd.map((ratings) => Math.min(...ratings)));
}
