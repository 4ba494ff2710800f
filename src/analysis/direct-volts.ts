// How many volts a point has against the lowest minus of what it is joined with: what a device there has to open.
import type { DirectState } from "./direct.ts";
import { liveSources } from "./network.ts";

/** Volts of points above the lowest minus of their sources; 0 for one that is joined with no source. */
export function voltsAboveLowest({ network, potentials }: DirectState): (point: number) => number {
	const lowest = new Map<number, number>();
	for (const { neutral } of liveSources(network)) {
		if (neutral === undefined) continue;
		const { root, volts } = potentials.at(neutral);
		lowest.set(root, Math.min(volts, lowest.get(root) ?? volts));
	}
	return (point) => {
		const { root, volts } = potentials.at(point);
		return volts - (lowest.get(root) ?? volts);
	};
}
