// What a mistake is: one slip of a hand in a right circuit, where it was made, and what came of checking it.
import type { Finding } from "../base/finding.ts";
import type { Circuit } from "../circuit/circuit.ts";

/** One way in which a hand slips. */
export interface Operator {
	/** As the table lists it: `two wires exchanged at a part`. */
	readonly name: string;
	/** Every such slip that can be made in a circuit, in the circuit's order. */
	readonly find: (circuit: Circuit) => Iterable<Mistake>;
}

/** One slip at one place. */
export interface Mistake {
	/** What was done where, in a few words: `bunks-1.black and bunks-1.white in b1`. */
	readonly at: string;
	/** The circuit with the slip in it. */
	readonly wrong: () => Circuit;
	/** Names of the conductors, points, parts and boxes that it was made at. */
	readonly places: readonly string[];
	/** Set where nothing in a plan can tell of it: the reading that does. */
	readonly reading?: string;
}

/** What came of a mistake. */
export type Verdict =
	/** `named` where the rule names the fault itself, and not merely what follows from it. */
	| { readonly verdict: "found"; readonly by: string; readonly named: boolean }
	/** The circuit is the same as before. */
	| { readonly verdict: "same" }
	| { readonly verdict: "harmless"; readonly reason: string }
	| { readonly verdict: "meter-only"; readonly reading: string }
	| { readonly verdict: "missed" };

/** A mistake with its verdict. */
export type JudgedMistake = Verdict & { readonly operator: string; readonly at: string };

/** Everything the rules find in a circuit, rule by rule; what is not asked for is not worked out. */
export type CheckCircuit = (circuit: Circuit) => Iterable<Finding>;
