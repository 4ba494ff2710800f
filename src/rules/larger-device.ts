// Whether a larger protective device could stand where one is: by what is ahead of it and the wires that hang on it.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { carefulLimit, conductorLimit, sizeFor } from "../analysis/conductor-limit.ts";
import type { Conductor, Protection } from "../circuit/circuit.ts";

/**
 * What a device of `rating` amperes in place of another asks of the wires: `bear` if they may have it as they are, else the
 * one size that they all need. Undefined where what is ahead is smaller, or no one size answers.
 */
export function wiresForLarger(
	analysis: Analysis,
	device: Protection,
	state: ModeState,
	rating: number,
): { readonly bear: true } | { readonly bear: false; readonly size: string } | undefined {
	const { circuit } = analysis;
	if (device.sort === "supply" || rating > amperesAhead(analysis, device, state)) return undefined;
	const thin = new Set<string | undefined>();
	for (const conductor of conductorsBehind(analysis, device, state)) {
		const limit = conductorLimit(circuit, conductor);
		if (limit === undefined || limit.beyondTable === true || carefulLimit(limit) < rating)
			thin.add(sizeFor(circuit, rating, conductor));
	}
	const [size] = thin;
	if (thin.size === 0) return { bear: true };
	return size === undefined || thin.size > 1 ? undefined : { bear: false, size };
}

/** What the devices ahead of one let through. */
function amperesAhead({ circuit }: Analysis, { index, links }: Protection, { exposure }: ModeState): number {
	const ahead = links
		.flatMap((link) => circuit.links[link]?.between ?? [])
		.flatMap((point) => {
			const here = exposure.get(point);
			return here === undefined || here.nearest?.device.index === index ? [] : [here.amperes];
		});
	return Math.min(...ahead);
}

/** Conductors with no device between them and this one, leads of devices left out: those are their makers' to size. */
function conductorsBehind({ circuit }: Analysis, { index }: Protection, { exposure }: ModeState): readonly Conductor[] {
	return circuit.conductors.filter(({ ends }) => {
		const points = ends.flatMap(({ point }) => circuit.points[point ?? -1] ?? []);
		return (
			points.some((point) => exposure.get(point.index)?.nearest?.device.index === index) &&
			!points.some((point) => point.kind === "terminal" && point.clamp === "lead")
		);
	});
}
