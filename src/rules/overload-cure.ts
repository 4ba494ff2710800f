// What can be done about a circuit that carries too much: another circuit, a larger device with wires that bear it, a smaller load.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Demand } from "../analysis/demand.ts";
import { formatNumber } from "../base/quantity.ts";
import { nextStandardRating } from "../handbook/standard-ratings.ts";
import { wiresForLarger } from "./larger-device.ts";

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
	// A sum of quotients may pass a rating by a hair.
	const rating = nextStandardRating(counted - 1e-6, analysis.circuit.plan.settings.region)?.ampere;
	if (rating === undefined || own.some((load) => load.outlet)) return undefined;
	const wires = wiresForLarger(analysis, device, state, rating);
	if (wires === undefined) return undefined;
	const larger = `use a ${formatNumber(rating, 1)} A ${device.sort}`;
	return wires.bear ? `${larger}, which its wires bear` : `${larger} together with ${wires.size} all the way`;
}

/** What a load that is alone may draw at most. */
function tellSmallerLoad({ device, loads }: Demand, counted: number): string | undefined {
	const [load] = loads;
	if (load?.watts === undefined || device.rating === undefined) return undefined;
	// A hair over, so that what divides evenly is not rounded down to less.
	const watts = Math.floor((load.watts * device.rating) / counted + 1e-6);
	return `take one in place of ${load.part} that draws ${formatNumber(watts)} W at most`;
}
