// What can be done about a circuit that carries too much: another circuit, a larger device with wires that bear it, a smaller load.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { conductorLimit, sizeFor } from "../analysis/conductor-limit.ts";
import type { Demand } from "../analysis/demand.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Conductor, Protection } from "../circuit/circuit.ts";
import { nextStandardRating } from "../handbook/standard-ratings.ts";

/** The cure of a circuit whose loads count `counted` amperes. A larger device is told only with the wires that may have it. */
export function tellOverloadCure(analysis: Analysis, demand: Demand, state: ModeState, counted: number): string {
	const isAlone = new Set(demand.loads.map(({ part }) => part)).size === 1;
	const ways = [
		isAlone ? undefined : `move ${worstLoad(demand)} to a circuit of its own`,
		tellLargerDevice(analysis, demand, state, counted),
		isAlone ? tellSmallerLoad(demand, counted) : undefined,
	].filter((way) => way !== undefined);
	const text = ways.join(", or ");
	return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

/** The load that draws most, by the name of its part. */
export function worstLoad({ loads }: Demand): string {
	return loads.toSorted((one, other) => (other.watts ?? 0) - (one.watts ?? 0))[0]?.part ?? "a load";
}

/** The next device that carries the sum, where nothing ahead is smaller and no outlet behind it limits the circuit. */
function tellLargerDevice(
	analysis: Analysis,
	{ device, own }: Demand,
	state: ModeState,
	counted: number,
): string | undefined {
	const { circuit } = analysis;
	const { settings } = circuit.plan;
	// A sum of quotients may pass a rating by a hair.
	const rating = nextStandardRating(counted - 1e-6, settings.region)?.ampere;
	if (rating === undefined || device.sort === "supply" || own.some((load) => load.outlet)) return undefined;
	if (rating > amperesAhead(analysis, device, state)) return undefined;
	const wires = conductorsBehind(analysis, device, state).map((conductor) => {
		const cable = conductor.cable === undefined ? undefined : circuit.cableByTag.get(conductor.cable);
		const limit = conductorLimit(conductor, cable, settings);
		const bears = limit !== undefined && limit.beyondTable !== true && limit.largest >= rating;
		return { bears, size: sizeFor(rating, conductor, cable, settings) };
	});
	if (wires.every(({ bears }) => bears))
		return `use a ${formatNumber(rating, 1)} A ${device.sort}, which its wires bear`;
	const thin = wires.filter(({ bears }) => !bears);
	const size = thin[0]?.size;
	return size === undefined || thin.some((wire) => wire.size !== size)
		? undefined
		: `use a ${formatNumber(rating, 1)} A ${device.sort} together with ${size} all the way`;
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

/** What a load that is alone may draw at most. */
function tellSmallerLoad({ device, loads }: Demand, counted: number): string | undefined {
	const [load] = loads;
	if (load?.watts === undefined || device.rating === undefined) return undefined;
	// A hair over, so that what divides evenly is not rounded down to less.
	const watts = Math.floor((load.watts * device.rating) / counted + 1e-6);
	return `take one in place of ${load.part} that draws ${formatNumber(watts)} W at most`;
}
