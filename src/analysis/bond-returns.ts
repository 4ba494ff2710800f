// What has its way back by way of bonds alone: leads that join a minus to metal, and are there to carry faults.
import type { Circuit, Conductor, Load, Source } from "../circuit/circuit.ts";
import type { DirectState } from "./direct.ts";
import { findLoopless, type Loopless } from "./direct-loops.ts";
import { joinWhere } from "./joined-sets.ts";
import { type Edge, reachFrom } from "./network.ts";
import { isHot } from "./poles.ts";

/** A source or load for direct current whose current comes back through bonds. */
export interface BondReturn {
	readonly thing: Source | Load;
	/** The bonds that its current passes, in the order of the circuit. */
	readonly bonds: readonly Conductor[];
}

/** Every such thing of a mode. What is landed on the metal itself, as an alternator's case is, returns through that on purpose. */
export function findBondReturns(circuit: Circuit, { network, poles }: DirectState): readonly BondReturn[] {
	const bonds = new Set(circuit.cables.flatMap(({ runSort, conductors }) => (runSort === "bond" ? conductors : [])));
	if (bonds.size === 0) return [];
	const isOther = ({ by }: Edge): boolean => by.kind === "link" || !bonds.has(by.index);
	const apart = joinWhere(network, isOther);
	const lost = findLoopless(network, apart);
	if (lost.sources.length + lost.loads.length === 0) return [];
	const whole = findLoopless(network);
	const lostAnyway = new Set([...whole.sources, ...whole.loads].map(({ thing }) => thing));
	const metals = circuit.parts
		.filter(({ kind }) => kind === "chassis" || kind === "hull")
		.flatMap(({ points }) => points);
	const isOnMetal = (point: number | undefined): boolean =>
		point !== undefined && metals.some((metal) => apart.isJoined(metal, point));
	return [...lost.sources, ...lost.loads].flatMap(({ thing }: Loopless): BondReturn[] => {
		const minus = "hot" in thing ? thing.neutral : thing.between[1];
		if (lostAnyway.has(thing) || isOnMetal(minus) || minus === undefined) return [];
		const ends = poles.poles.flatMap(({ role, points }) => (isHot(role) ? [] : points));
		const reach = reachFrom(network, [minus], () => true);
		const end = ends.find((point) => reach.has(point) && !apart.isJoined(point, minus));
		const passed = end === undefined ? [] : reach.edgesTo(end);
		const through = passed.flatMap(({ by }) => {
			const conductor = by.kind === "conductor" && bonds.has(by.index) ? circuit.conductors[by.index] : undefined;
			return conductor === undefined ? [] : [conductor];
		});
		return through.length === 0 ? [] : [{ thing, bonds: through.toSorted((one, other) => one.index - other.index) }];
	});
}
