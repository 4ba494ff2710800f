// Figures of measured times, and the one way they are printed: name, value, unit.

/** The middle of some values. */
export function medianOf(values: readonly number[]): number {
	return shareOf(values, 0.5);
}

/** The value that a share of the values does not exceed: 0.95 for the 95th percentile. */
export function shareOf(values: readonly number[], share: number): number {
	const sorted = values.toSorted((one, other) => one - other);
	return sorted[Math.min(sorted.length - 1, Math.ceil(sorted.length * share) - 1)] ?? Number.NaN;
}

/** Milliseconds of each run, after some that only warm up. Between runs the process turns to its events, as an editor's or a server's does. */
export async function timesOf(work: () => unknown, warmUps: number, runs: number): Promise<number[]> {
	const times: number[] = [];
	for (let run = 0; run < warmUps + runs; run++) {
		const start = performance.now();
		await work();
		if (run >= warmUps) times.push(performance.now() - start);
		await new Promise(setImmediate);
	}
	return times;
}

/** Prints one figure on a line of its own. */
export function tell(name: string, value: number, unit: string, decimals = 2): void {
	process.stdout.write(`${name}, ${value.toFixed(decimals)}, ${unit}\n`);
}
