// How long whole processes take, as multiples of a bare start of Node; runs of all sorts take turns, so that a busy moment hits each.
import { spawnSync } from "node:child_process";
import { medianOf } from "./figures.ts";

/** Runs Node with these words. */
export interface ProcessCase {
	readonly name: string;
	readonly words: readonly string[];
}

/** The median time of a bare start, in milliseconds, and that of each case as a multiple of it. */
export function measureProcesses(
	cases: readonly ProcessCase[],
	runs: number,
): { readonly bare: number; readonly ratios: readonly { readonly name: string; readonly ratio: number }[] } {
	const all = [["-e", "0"], ...cases.map((each) => each.words)];
	const times: number[][] = all.map(() => []);
	for (let run = 0; run <= runs; run++)
		for (const [index, words] of all.entries()) {
			const start = performance.now();
			const { status } = spawnSync(process.execPath, words, { stdio: "ignore" });
			if (status !== 0) throw new Error(`node ${words.join(" ")} ended with ${status}`);
			// The first run fills the disk's memory.
			if (run > 0) times[index]?.push(performance.now() - start);
		}
	const bare = medianOf(times[0] ?? []);
	return { bare, ratios: cases.map(({ name }, index) => ({ name, ratio: medianOf(times[index + 1] ?? []) / bare })) };
}
