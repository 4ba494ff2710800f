// All that rules and drawings ask of a circuit, worked out once and shared. Facts only: no judgement here.
import type { Circuit, Mode } from "../circuit/circuit.ts";
import { buildNetwork, type Network } from "./network.ts";

/** A circuit with the graph of each of its source modes. */
export interface Analysis {
	readonly circuit: Circuit;
	readonly networks: readonly Network[];
}

/** The analysis of a circuit. */
export function analyse(circuit: Circuit): Analysis {
	return { circuit, networks: circuit.modes.map((mode: Mode) => buildNetwork(circuit, mode)) };
}
