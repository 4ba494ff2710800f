// `npm run proof`: every single mistake in all samples and 200 generated plans, against the bars. `npm run proof -- PLANS SHARE FIRST`
// takes so many generated plans from that seed on, and that share of all mistakes. It ends with status 1 where a bar is not held.
import { once } from "node:events";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { type MessagePort, parentPort, Worker } from "node:worker_threads";
import { writeTallies } from "../../src/surfaces/report/survey.ts";
import { gapOf, knownGaps } from "./known-gaps.ts";
import { Proof, type ProvenPlan, provePlan } from "./prove.ts";
import { generatedPlans, rightSamples } from "./right-plans.ts";

const [plans = 200, share = 1, first = 0] = process.argv.slice(2).map(Number);
const samples = fileURLToPath(new URL("../samples", import.meta.url));
const right = [...rightSamples(samples), ...generatedPlans(first, plans)];

if (parentPort === null) tellProof(await proveInThreads());
else answer(parentPort);

/** A thread proves the plans whose places it is sent, one after the other. */
function answer(port: MessagePort): void {
	port.on("message", (place: number) => {
		const plan = right[place];
		if (plan !== undefined) port.postMessage(provePlan(plan, share, place));
	});
}

/** All plans in as many threads as there are processors; which of them has which plan makes no difference. */
async function proveInThreads(): Promise<Proof> {
	const proven: ProvenPlan[] = [];
	let next = 0;
	const run = async (): Promise<void> => {
		const thread = new Worker(fileURLToPath(import.meta.url), { argv: process.argv.slice(2) });
		for (let place = next++; place < right.length; place = next++) {
			const answered = once(thread, "message");
			thread.postMessage(place);
			const plans: readonly ProvenPlan[] = await answered;
			for (const plan of plans) proven[place] = plan;
			process.stderr.write(`${right[place]?.name}\n`);
		}
		await thread.terminate();
	};
	await Promise.all(Array.from({ length: availableParallelism() }, run));
	const proof = new Proof();
	for (const plan of proven) proof.take(plan);
	return proof;
}

function tellProof(proof: Proof): void {
	const seconds = process.cpuUsage().user / 1e6;
	const { tallies } = proof.counter;
	const made = tallies.reduce((sum, tally) => sum + tally.made, 0);
	const bars = [
		{ says: `${proof.missed.length} missed, none allowed`, held: proof.missed.length === 0 },
		{
			says: `${(proof.namedShare * 100).toFixed(2)} % of those found are found by name, 95 % asked for`,
			held: proof.namedShare >= 0.95,
		},
		{
			says: `${proof.falseAlarms.length} findings above a note in the plans as they are, none allowed`,
			held: proof.falseAlarms.length === 0,
		},
	];
	const open = new Set(proof.missed.map(({ operator, at }) => gapOf(operator, at)));
	const lines = [
		...writeTallies(tallies),
		"",
		...proof.falseAlarms.map((line) => `false alarm: ${line}`),
		...proof.missed.map(({ plan, operator, at }) => `missed: ${plan}: ${operator}: ${at}`),
		...knownGaps.filter((gap) => !open.has(gap)).map(({ says }) => `a known gap that nothing needs any more: ${says}`),
		`${made} mistakes in ${seconds.toFixed(0)} s of computing, ${(made / seconds).toFixed(0)} a second`,
		...bars.map(({ says, held }) => `${held ? "held" : "NOT HELD"}: ${says}`),
	];
	process.stdout.write(`${lines.join("\n")}\n`);
	process.exitCode = bars.every(({ held }) => held) ? 0 : 1;
}
