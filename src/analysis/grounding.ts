// What is joined to ground as it must be: by a way that never opens and leads through nothing that is meant for another pole.
import type { Circuit } from "../circuit/circuit.ts";
import { type Break, findBreaks } from "./breaks.ts";
import type { Landings } from "./landings.ts";
import { alwaysClosed, type Edge, type Network, type Reach, reachFrom } from "./network.ts";
import { notABond, type PoleMap } from "./poles.ts";

/** The protective ground of one mode. */
export interface Grounding {
	/** From the ground of every live source. */
	readonly reach: Reach;
	/** Every break behind which a ground terminal or a metal case in an enclosure with a live conductor is not grounded. */
	readonly breaks: readonly Break[];
	/** By what a point that is not grounded as it must be meets ground all the same; undefined where it does not. */
	byWayOf(point: number): "neutral" | "detour" | undefined;
}

/** Traces the ground of a mode. A device's own ground counts only where something in its box is live. */
export function traceGrounding(network: Network, landings: Landings, poles: PoleMap): Grounding {
	const { circuit, mode } = network;
	const starts = circuit.sources
		.filter((source) => mode.live.includes(source.name))
		.flatMap((source) => (source.ground === undefined ? [] : [source.ground]));
	const joins = (edge: Edge): boolean => alwaysClosed(edge) && notABond(edge) && leadsOn(circuit, landings, edge.from);
	const reach = reachFrom(network, starts, joins);
	const live = new Set<string>();
	for (const { index, enclosure } of circuit.points) if (poles.sortsAt(index).has("hot")) live.add(enclosure.name);
	const victims = circuit.points
		.filter(
			(point) =>
				point.kind !== "splice" && point.role === "ground" && live.has(point.enclosure.name) && !reach.has(point.index),
		)
		.map((point) => point.index);
	return {
		reach,
		breaks:
			starts.length === 0
				? []
				: findBreaks(network, landings, {
						sort: "ground",
						victims,
						isReached: (point) => reach.has(point),
						joins: (edge) => joins(edge) && leadsOn(circuit, landings, edge.to),
					}),
		byWayOf: (point) => {
			const sorts = poles.sortsAt(point);
			return sorts.has("neutral") ? "neutral" : sorts.has("ground") ? "detour" : undefined;
		},
	};
}

/** A ground does not lead on through a terminal that is meant for another pole, even where a wire puts it there. */
function leadsOn(circuit: Circuit, landings: Landings, point: number): boolean {
	return circuit.points[point]?.kind === "splice" || landings.sortAt(point) === "ground";
}

/** The breaks by which terminals, or the metal of boxes, go without ground, each with the points of that sort that do. */
export function groundless(
	{ network, grounding }: { readonly network: Network; readonly grounding: Grounding },
	kind: "terminal" | "body",
): readonly { readonly lost: Break; readonly points: readonly number[] }[] {
	return grounding.breaks
		.map((lost) => ({ lost, points: lost.victims.filter((point) => network.circuit.points[point]?.kind === kind) }))
		.filter(({ points }) => points.length > 0);
}
