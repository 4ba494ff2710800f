// `npm run proof`: every single mistake in all samples and 200 generated plans, against the bars. `npm run proof -- PLANS SHARE FIRST`
// takes so many generated plans from that seed on, and that share of all mistakes. It ends with status 1 where a bar is not held.
import { fileURLToPath } from "node:url";
import { writeTallies } from "../../src/surfaces/report/survey.ts";
import { gapOf, knownGaps } from "./known-gaps.ts";
import { Proof } from "./prove.ts";
import { generatedPlans, rightSamples } from "./right-plans.ts";

const [plans = 200, share = 1, first = 0] = process.argv.slice(2).map(Number);
const samples = fileURLToPath(new URL("../samples", import.meta.url));
const proof = new Proof();
const start = process.cpuUsage().user;

for (const [index, plan] of [...rightSamples(samples), ...generatedPlans(first, plans)].entries()) {
	proof.add(plan, share, index);
	process.stderr.write(`${plan.name}: ${proof.missed.length} missed so far\n`);
}

const seconds = (process.cpuUsage().user - start) / 1e6;
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
