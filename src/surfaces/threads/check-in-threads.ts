// Plans checked in several threads at once. Which thread has which plan makes no difference to what comes out.
import { Worker } from "node:worker_threads";
import type { CheckedFacts, PlanText } from "../checker.ts";
import { threadWord } from "./check-thread.ts";

/**
 * What was found in each text, in their order; undefined when the user interrupted. `program` is the file of the command.
 * A fault in a thread is thrown here.
 */
export function checkInThreads(
	texts: readonly PlanText[],
	threads: number,
	program: string,
	stopped: () => boolean,
): Promise<readonly CheckedFacts[] | undefined> {
	const parcels: (readonly PlanText[])[] = [];
	for (let from = 0; from < texts.length; from += parcelSize) parcels.push(texts.slice(from, from + parcelSize));
	const found: (readonly CheckedFacts[])[] = [];
	return new Promise((resolve, reject) => {
		const workers = Array.from({ length: threads }, () => new Worker(program, { argv: [threadWord] }));
		const looking = setInterval(() => {
			if (stopped()) finish(() => resolve(undefined));
		}, betweenLooks);
		const finish = (settle: () => void): void => {
			clearInterval(looking);
			for (const worker of workers) void worker.terminate();
			settle();
		};
		let given = 0;
		let answered = 0;
		const give = (worker: Worker): void => {
			const place = given++;
			const parcel = parcels[place];
			if (parcel === undefined) return;
			worker.once("message", (facts: readonly CheckedFacts[]) => {
				found[place] = facts;
				if (++answered === parcels.length) finish(() => resolve(found.flat()));
				else give(worker);
			});
			worker.postMessage(parcel);
		};
		for (const worker of workers) {
			worker.on("error", (error) => finish(() => reject(error)));
			give(worker);
		}
	});
}

/** Texts that a thread gets at once: few, so that all threads end at about the same time. */
const parcelSize = 4;
/** Milliseconds after which it is asked again whether the user wants to stop. */
const betweenLooks = 50;
