// What is joined to the ground of a live source whatever the switches do: the protective path, with neutrals and loads left out.
import { alwaysClosed, type Network, type Reach, reachFrom } from "./network.ts";
import { notABond } from "./poles.ts";

/** The reach of every live source's ground over joints that never open; bonds are left out, so no way leads through a neutral. */
export function traceGround(network: Network): Reach {
	const starts = network.circuit.sources
		.filter((source) => network.mode.live.includes(source.name))
		.flatMap((source) => (source.ground === undefined ? [] : [source.ground]));
	return reachFrom(network, starts, (edge) => alwaysClosed(edge) && notABond(edge));
}
