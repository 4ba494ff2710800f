// All that rules and drawings ask of a circuit, worked out once when first asked for and shared. Facts only: no judgement here.
import type { Circuit, Mode } from "../circuit/circuit.ts";
import { type NeutralIsland, traceBonds } from "./bonds.ts";
import type { Break } from "./breaks.ts";
import { type Coverage, traceCoverage } from "./coverage.ts";
import { type Crossings, traceCrossings, worstEffect } from "./crossings.ts";
import { type Demand, traceDemand } from "./demand.ts";
import { type DirectState, directKey, hasDirectCurrent, traceDirect } from "./direct.ts";
import { type Feeder, traceFeeders } from "./feeders.ts";
import { traceGround } from "./ground.ts";
import { type Grounding, traceGrounding } from "./grounding.ts";
import { type Landings, sortLandings } from "./landings.ts";
import { buildNetwork, type Network, type Reach } from "./network.ts";
import { traceOpenings } from "./openings.ts";
import { type PoleMap, tracePoles } from "./poles.ts";
import { type Exposure, traceExposure } from "./protection.ts";
import { type Return, traceReturns } from "./returns.ts";
import { traceWaysBack, type WaysBack } from "./ways-back.ts";

/** A circuit with what is known of each of its source modes. */
export interface Analysis {
	readonly circuit: Circuit;
	readonly states: readonly ModeState[];
	/** What every landed end is for, and which are misplaced. */
	readonly landings: Landings;
}

/** One source mode: its graph, and the facts that follow from it. */
export interface ModeState {
	readonly mode: Mode;
	readonly network: Network;
	/** Which poles reach which points. */
	readonly poles: PoleMap;
	/** What is always joined to the live sources' ground. */
	readonly ground: Reach;
	/** What protective devices let through to each point, as far as no two poles are joined. */
	readonly exposure: ReadonlyMap<number, Exposure>;
	/** Where a pole gets to what is meant for another. */
	readonly crossings: Crossings;
	/** What is grounded by a way meant for it, and where such ways are lost. */
	readonly grounding: Grounding;
	/** Where the hot or the way back of an outlet or load is lost. */
	readonly openings: readonly Break[];
	/** What ground-fault devices stand before. */
	readonly coverage: Coverage;
	/** The pole and the last protective device of every point that a hot reaches. */
	readonly feeders: ReadonlyMap<number, Feeder>;
	/** Loads by the way back they share. */
	readonly returns: readonly Return[];
	/** The bonds of each live neutral. */
	readonly bonds: readonly NeutralIsland[];
	/** What neutral and ground conductors may have to carry. */
	readonly waysBack: WaysBack;
	/** What each pole of each protective device has to carry when every fixed load runs. */
	readonly demand: ReadonlyMap<string, Demand>;
	/** The direct-current side; undefined where a plan has none. */
	readonly direct: DirectState | undefined;
}

/** The analysis of a circuit. */
export function analyse(circuit: Circuit): Analysis {
	return new LazyAnalysis(circuit);
}

class LazyAnalysis implements Analysis {
	readonly circuit: Circuit;
	readonly states: readonly ModeState[];
	readonly #landings: () => Landings;

	constructor(circuit: Circuit) {
		this.circuit = circuit;
		this.#landings = once(() => sortLandings(circuit));
		const effectOf: Crossings["effectOf"] = (root) =>
			worstEffect(this.states.map((state) => state.crossings.effects.get(root)));
		const isDirect = once(() => hasDirectCurrent(circuit));
		const sides = new Map<string, DirectState>();
		const directIn = (mode: Mode): DirectState | undefined => {
			if (!isDirect()) return undefined;
			const key = directKey(circuit, mode);
			const side = sides.get(key) ?? traceDirect(circuit, mode);
			sides.set(key, side);
			return side;
		};
		this.states = circuit.modes.map(
			(mode) => new LazyModeState(buildNetwork(circuit, mode, "ac"), this.#landings, effectOf, directIn),
		);
	}

	get landings(): Landings {
		return this.#landings();
	}
}

class LazyModeState implements ModeState {
	readonly network: Network;
	readonly #poles: () => PoleMap;
	readonly #ground: () => Reach;
	readonly #exposure: () => ReadonlyMap<number, Exposure>;
	readonly #crossings: () => Crossings;
	readonly #grounding: () => Grounding;
	readonly #openings: () => readonly Break[];
	readonly #coverage: () => Coverage;
	readonly #feeders: () => ReadonlyMap<number, Feeder>;
	readonly #returns: () => readonly Return[];
	readonly #bonds: () => readonly NeutralIsland[];
	readonly #waysBack: () => WaysBack;
	readonly #demand: () => ReadonlyMap<string, Demand>;
	readonly #direct: () => DirectState | undefined;

	constructor(
		network: Network,
		landings: () => Landings,
		effectOf: Crossings["effectOf"],
		directIn: (mode: Mode) => DirectState | undefined,
	) {
		this.network = network;
		this.#poles = once(() => tracePoles(network));
		this.#ground = once(() => traceGround(network));
		this.#crossings = once(() => traceCrossings(network, landings(), this.poles, effectOf));
		this.#exposure = once(() => traceExposure(this.crossings.network));
		this.#grounding = once(() => traceGrounding(network, landings(), this.poles));
		this.#openings = once(() => traceOpenings(network, landings(), this.poles));
		this.#coverage = once(() => traceCoverage(this.crossings.network, this.crossings.poles));
		this.#direct = once(() => directIn(network.mode));
		this.#feeders = once(() => traceFeeders(this.crossings.network, this.crossings.poles));
		this.#returns = once(() => traceReturns(this.crossings.network, landings(), this.crossings.poles, this.feeders));
		this.#bonds = once(() => traceBonds(network, this.poles));
		this.#waysBack = once(() =>
			traceWaysBack(this.crossings.network, this.crossings.poles, this.ground, this.exposure),
		);
		this.#demand = once(() => traceDemand(this.crossings.network, this.crossings.poles, this.exposure));
	}

	get mode(): Mode {
		return this.network.mode;
	}

	get poles(): PoleMap {
		return this.#poles();
	}

	get ground(): Reach {
		return this.#ground();
	}

	get exposure(): ReadonlyMap<number, Exposure> {
		return this.#exposure();
	}

	get crossings(): Crossings {
		return this.#crossings();
	}

	get grounding(): Grounding {
		return this.#grounding();
	}

	get openings(): readonly Break[] {
		return this.#openings();
	}

	get coverage(): Coverage {
		return this.#coverage();
	}

	get feeders(): ReadonlyMap<number, Feeder> {
		return this.#feeders();
	}

	get returns(): readonly Return[] {
		return this.#returns();
	}

	get bonds(): readonly NeutralIsland[] {
		return this.#bonds();
	}

	get waysBack(): WaysBack {
		return this.#waysBack();
	}

	get demand(): ReadonlyMap<string, Demand> {
		return this.#demand();
	}

	get direct(): DirectState | undefined {
		return this.#direct();
	}
}

/** The same work, done when first asked for and never again. */
function once<Fact>(work: () => Fact): () => Fact {
	let known: { readonly fact: Fact } | undefined;
	return () => {
		known ??= { fact: work() };
		return known.fact;
	};
}
