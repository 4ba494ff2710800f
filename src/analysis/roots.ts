// Where a fault begins: from a point that the wrong pole reaches back to the landing by which that pole got on the way to it.

import { certain } from "../base/certain.ts";
import type { Span } from "../base/span.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { bundleOf, type Landings, type Misplaced } from "./landings.ts";
import type { Edge, Reach } from "./network.ts";
import type { PoleSort } from "./poles.ts";

/** Where a mistake was made. */
export interface Root {
	/** `bunks-1@b1`: a cable's tag or a part, and the box. Part of the key of every finding on this mistake. */
	readonly key: string;
	readonly span: Span;
	/** The box it was made in. */
	readonly enclosure: string;
	/** The conductor whose end is on the wrong point, and that end; undefined where it is no single end. */
	readonly end?: { readonly conductor: number; readonly which: 0 | 1 };
	/** Every end of the same mistake, this one first; empty where it is no misplaced end. */
	readonly halves: readonly Misplaced[];
}

/**
 * For every point of a reach, the mistake that lets a pole of `sort` get there: of the ends on the way behind the last point
 * that is this pole's own, the first that is misplaced. Undefined for a point that is reached rightly all the way.
 */
export function traceRoots(reach: Reach, sort: PoleSort, landings: Landings): (point: number) => Root | undefined {
	const { circuit } = reach.network;
	const firsts = new Map<number, Step>();
	for (const point of reach.points) {
		const edge = reach.cameBy(point);
		if (edge === undefined) continue;
		// Behind a point of the pole's own sort the search starts anew: a mistake before it has been put right on the way.
		const before = landings.sortAt(edge.from) === sort ? undefined : firsts.get(edge.from);
		const misplaced = before?.misplaced ?? misplacedOn(edge, circuit, landings);
		firsts.set(point, { edge: before?.edge ?? edge, ...(misplaced === undefined ? {} : { misplaced }) });
	}
	return (point) => {
		const step = firsts.get(point);
		if (step === undefined) return undefined;
		return step.misplaced === undefined ? rootOfEdge(step.edge, circuit) : rootOfEnd(step.misplaced, circuit, landings);
	};
}

/** The root that a misplaced end stands for. */
export function rootOfEnd(misplaced: Misplaced, circuit: Circuit, landings: Landings): Root {
	const { conductor, which, root } = misplaced;
	const end = certain(circuit.conductors[conductor], "a conductor").ends[which];
	const others = landings.halvesOf(root).filter((half) => half !== misplaced);
	return {
		key: root,
		span: end.span,
		enclosure: end.enclosure.name,
		end: { conductor, which },
		halves: [misplaced, ...others],
	};
}

/** The first edge behind the last right point, and the first misplaced end from there on. */
interface Step {
	readonly edge: Edge;
	readonly misplaced?: Misplaced;
}

/** The end of an edge's conductor that is misplaced: the near one before the far one. */
function misplacedOn(edge: Edge, circuit: Circuit, landings: Landings): Misplaced | undefined {
	if (edge.by.kind !== "conductor") return undefined;
	const conductor = certain(circuit.conductors[edge.by.index], "a conductor");
	const near = conductor.ends[0].point === edge.from ? 0 : 1;
	return landings.misplacedAt(conductor.index, near) ?? landings.misplacedAt(conductor.index, near === 0 ? 1 : 0);
}

/** Where no end is misplaced: the conductor or the part that leads away from the last right point. */
function rootOfEdge({ by, to }: Edge, circuit: Circuit): Root {
	const point = certain(circuit.points[to], "a point");
	if (by.kind === "link")
		return {
			key: `${by.link.part}@${point.enclosure.name}`,
			span: by.link.span,
			enclosure: point.enclosure.name,
			halves: [],
		};
	const conductor = certain(circuit.conductors[by.index], "a conductor");
	return rootOfConductor(conductor, conductor.ends[1].point === to ? 1 : 0, circuit);
}

/** A conductor's end as the root, where no end is misplaced. */
export function rootOfConductor(conductor: Conductor, which: 0 | 1, circuit: Circuit): Root {
	const end = conductor.ends[which];
	return {
		key: `${bundleOf(circuit, conductor)}@${end.enclosure.name}`,
		span: end.span,
		enclosure: end.enclosure.name,
		end: { conductor: conductor.index, which },
		halves: [],
	};
}
