// What the judge of the tests can find, and the volts above which something is live to the touch.
import { solve } from "./nodal.ts";
import type { State, Wiring } from "./wiring.ts";

/**
 * A way to be hurt.
 * `case`: what is grounded for safety stays live, by itself or after one fault. `shell`: the neutral side of a load is
 * live. `live when off`: a load is switched off and a pole of it is live. `pins`: an inlet that nothing is plugged in to is live.
 * `bare end`: an end that is not capped is live. `short`: a device opens at once with nothing wrong plugged in.
 * `live past its device`: what a device feeds stays live when it opens. `overload`: a conductor carries more than it may and
 * nothing opens. `ground current`: a ground carries what loads use.
 */
export type HarmSort =
	| "case"
	| "shell"
	| "live when off"
	| "live past its device"
	| "pins"
	| "bare end"
	| "short"
	| "overload"
	| "ground current";

/** One harm, and where it shows. */
export interface Harm {
	readonly sort: HarmSort;
	/** A point or a conductor. */
	readonly at: string;
	readonly state: State;
	/** Volts, or amperes. */
	readonly figure: number;
	/** The fault that was put in. */
	readonly fault?: string;
}

/** Volts that may stand on what can be touched (IEC 60364-4-41, recalled). */
export const touchLimit = 50;

/** Takes down a harm. */
export type Tell = (harm: Harm) => void;

/** Ohms of what touches, as those of a lamp tester: tells what is live from what only seems so to a good meter. */
const touchOhms = 10_000;

/** Volts on a node with something of a few thousand ohms between it and the earth. */
export function touchVolts({ volts, eliminated }: Wiring, node: number): number {
	const open = Math.abs(volts[node] ?? 0);
	if (open <= touchLimit) return open;
	const ohms = solve(eliminated, new Map([[node, 1]]))[node] ?? 0;
	return (open * touchOhms) / (touchOhms + ohms);
}
