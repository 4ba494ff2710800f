// Which mutant is on, and which have been passed: what the instrumented rules ask while they run.

interface Switchboard {
	active: number;
	ticks: number;
	/** Counts how often a rule was asked: what rules remember of an analysis is forgotten with it. */
	round: number;
	passed: Set<number>;
}

/** One for the process: the instrumented modules and the run of the mutants share it. */
export const switchboard: Switchboard = { active: -1, ticks: 0, round: 0, passed: new Set() };

/** More turns than any loop of a rule takes on the plans of the tests. */
const mostTicks = 300_000;

/** Whether a mutant is on. */
export function $on(id: number): boolean {
	if (switchboard.active === -1) switchboard.passed.add(id);
	return switchboard.active === id;
}

/** Counts a turn of a loop, so that none goes on for ever. */
export function $tick(): void {
	switchboard.ticks += 1;
	if (switchboard.ticks > mostTicks) throw new Error("a loop does not end");
}

/**
 * Goes by the name of the language's own map in the instrumented rules: what they remember from one rule to the next would
 * hide a mutant from the second, so it lasts no longer than one rule is asked.
 */
export class RoundMap<Key extends object, Value> {
	#round = -1;
	#map = new WeakMap<Key, Value>();

	get(key: Key): Value | undefined {
		return this.#round === switchboard.round ? this.#map.get(key) : undefined;
	}

	set(key: Key, value: Value): this {
		if (this.#round !== switchboard.round) this.#map = new WeakMap<Key, Value>();
		this.#round = switchboard.round;
		this.#map.set(key, value);
		return this;
	}
}
