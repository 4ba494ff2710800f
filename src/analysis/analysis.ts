// All that rules and drawings ask of a circuit, worked out once when first asked for and shared. Facts only: no judgement here.
import type { Circuit, Mode } from "../circuit/circuit.ts";
import { type Demand, traceDemand } from "./demand.ts";
import { traceGround } from "./ground.ts";
import { buildNetwork, type Network, type Reach } from "./network.ts";
import { type PoleMap, tracePoles } from "./poles.ts";
import { type Exposure, traceExposure } from "./protection.ts";
import { type Returns, traceReturns } from "./returns.ts";

/** A circuit with what is known of each of its source modes. */
export interface Analysis {
	readonly circuit: Circuit;
	readonly states: readonly ModeState[];
}

/** One source mode: its graph, and the facts that follow from it. */
export interface ModeState {
	readonly mode: Mode;
	readonly network: Network;
	/** Which poles reach which points. */
	readonly poles: PoleMap;
	/** What is always joined to the live sources' ground. */
	readonly ground: Reach;
	/** What protective devices let through to each point. */
	readonly exposure: ReadonlyMap<number, Exposure>;
	/** What neutral and ground conductors may have to carry. */
	readonly returns: Returns;
	/** What each pole of each protective device has to carry when every fixed load runs. */
	readonly demand: ReadonlyMap<string, Demand>;
}

/** The analysis of a circuit. */
export function analyse(circuit: Circuit): Analysis {
	return { circuit, states: circuit.modes.map((mode) => new LazyModeState(buildNetwork(circuit, mode))) };
}

class LazyModeState implements ModeState {
	readonly network: Network;
	private knownPoles: PoleMap | undefined;
	private knownGround: Reach | undefined;
	private knownExposure: ReadonlyMap<number, Exposure> | undefined;
	private knownReturns: Returns | undefined;
	private knownDemand: ReadonlyMap<string, Demand> | undefined;

	constructor(network: Network) {
		this.network = network;
	}

	get mode(): Mode {
		return this.network.mode;
	}

	get poles(): PoleMap {
		this.knownPoles ??= tracePoles(this.network);
		return this.knownPoles;
	}

	get ground(): Reach {
		this.knownGround ??= traceGround(this.network);
		return this.knownGround;
	}

	get exposure(): ReadonlyMap<number, Exposure> {
		this.knownExposure ??= traceExposure(this.network);
		return this.knownExposure;
	}

	get returns(): Returns {
		this.knownReturns ??= traceReturns(this.network, this.poles, this.ground, this.exposure);
		return this.knownReturns;
	}

	get demand(): ReadonlyMap<string, Demand> {
		this.knownDemand ??= traceDemand(this.network, this.poles, this.exposure);
		return this.knownDemand;
	}
}
