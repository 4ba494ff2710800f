// Which mutant is on, and which have been passed: what the instrumented rules ask while they run.

interface Switchboard {
	active: number;
	ticks: number;
	passed: Set<number>;
}

/** One for the process: the instrumented modules and the run of the mutants share it. */
export const switchboard: Switchboard = { active: -1, ticks: 0, passed: new Set() };

/** More turns than any loop of a rule takes on the plans of the tests. */
const mostTicks = 3_000_000;

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
