// `npm run bench`: how fast Ferrule is, one figure a line. Figures depend on the machine; ratios and the exponent less so.
import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { drawSheets } from "../../src/drawing/sheet-set.ts";
import { solveLoadings } from "../../src/figures/mode-figures.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { writeSvg } from "../../src/svg/index.ts";
import { Proof } from "../mistakes/prove.ts";
import { cabinOf } from "./cabin.ts";
import { measureDirectEngine, measureDirectSheet } from "./direct.ts";
import { medianOf, shareOf, tell, timesOf } from "./figures.ts";
import { measureLarge } from "./large.ts";
import { planOf, planOfSources } from "./plans.ts";
import { measureProcesses } from "./process.ts";
import { findSlowestRule } from "./rules.ts";

/** A usual plan, and a large one. */
const usual = 50;
const large = 2000;
/** Circuits behind the fuse block of a direct-current sheet. */
const directCircuits = 10;
/** A cabin with mains and direct current. */
const bothSides = 120;
const self = fileURLToPath(import.meta.url);

if (process.argv[2] === "direct-sheet") process.stdout.write(String(await measureDirectSheet(directCircuits)));
else if (process.argv[2] === "direct-engine") process.stdout.write(String(await measureDirectEngine(directCircuits)));
else if (process.argv[2] === "large") process.stdout.write(JSON.stringify(await measureLarge(large)));
else {
	benchProcesses();
	await benchWarm();
	benchMistakes();
	await benchGrowth();
	await benchSolving();
	await benchSources();
	benchLarge();
	benchDirect();
}

function benchProcesses(): void {
	const folder = mkdtempSync(join(tmpdir(), "ferrule-bench-"));
	const plan = join(folder, "plan.ferrule");
	const cabin = join(folder, "cabin.ferrule");
	writeFileSync(plan, planOf(usual));
	writeFileSync(cabin, cabinOf(bothSides));
	const command = fileURLToPath(new URL("ferrule.cjs", import.meta.url));
	// As it comes in the package, where what the build has compiled ahead is left out.
	const uncompiled = join(folder, "uncompiled");
	cpSync(dirname(command), uncompiled, { recursive: true, filter: (path) => !/\.v[^/\\]*$/.test(basename(path)) });
	const { bare, ratios } = measureProcesses(
		[
			{ name: "check-process", words: [command, "check", plan] },
			{ name: "check-process-uncompiled", words: [join(uncompiled, "ferrule.cjs"), "check", plan] },
			{ name: "draw-process", words: [command, "draw", plan] },
			{ name: "check-cabin-process", words: [command, "check", cabin] },
			{ name: "figures-process", words: [command, "figures", plan] },
		],
		21,
	);
	rmSync(folder, { recursive: true });
	tell("bare-node-start", bare, "ms");
	for (const { name, ratio } of ratios) tell(name, ratio, "bare node starts");
}

async function benchWarm(): Promise<void> {
	const text = planOf(usual);
	const file = "plan.ferrule";
	const { analysis, findings } = checkPlan(text, file);
	const draw = async (): Promise<string[]> => {
		const drawn: string[] = [];
		for await (const sheet of drawSheets(analysis, findings, "all")) drawn.push(await writeSvg(sheet, file));
		return drawn;
	};
	const layOut = async (): Promise<number> => {
		let sheets = 0;
		for await (const _ of drawSheets(analysis, findings, "all")) sheets += 1;
		return sheets;
	};
	// The engine goes on making code faster for some two hundred rounds; only then is it warm.
	tell("check-warm-p95", shareOf(await timesOf(() => checkPlan(text, file), 400, 400), 0.95), "ms");
	const cabin = cabinOf(bothSides);
	tell("check-cabin-warm-p95", shareOf(await timesOf(() => checkPlan(cabin, file), 200, 200), 0.95), "ms");
	const slowest = findSlowestRule(cabin, 200);
	tell(`slowest-rule-${slowest.code}`, slowest.milliseconds, "ms");
	tell("scene-warm-p95", shareOf(await timesOf(layOut, 200, 200), 0.95), "ms");
	tell("scene-and-svg-warm-p95", shareOf(await timesOf(draw, 60, 60), 0.95), "ms");
	const svg = (await draw()).join("");
	tell("svg-elements-per-device", (svg.match(/<[a-z]/gi) ?? []).length / usual, "elements", 1);
	tell("svg-size-per-device", svg.length / 1000 / usual, "kB");
}

/** On one core, of every sort its share; the same mistakes each time. */
function benchMistakes(): void {
	const warm = new Proof();
	warm.add({ name: "plan", text: planOf(usual) }, 0.05, 1);
	const proof = new Proof();
	const start = performance.now();
	proof.add({ name: "plan", text: planOf(usual) }, 0.2, 2);
	const seconds = (performance.now() - start) / 1000;
	const made = proof.counter.tallies.reduce((sum, tally) => sum + tally.made, 0);
	tell("mistakes-judged", made / seconds, "a second", 0);
}

async function benchGrowth(): Promise<void> {
	const timeOf = async (devices: number, warmUps: number, runs: number): Promise<number> => {
		const text = planOf(devices);
		return medianOf(await timesOf(() => checkPlan(text, "plan.ferrule"), warmUps, runs));
	};
	const small = await timeOf(100, 100, 101);
	const great = await timeOf(10_000, 1, 3);
	tell("check-100-devices", small, "ms");
	tell("check-10000-devices", great, "ms", 0);
	tell("check-growth-100-to-10000", Math.log(great / small) / Math.log(100), "exponent");
}

/** Each source is a mode of its own, in which the whole circuit is judged; of so many a check judges the first sixteen. */
/** The steady state of all modes, the circuit being there. */
async function benchSolving(): Promise<void> {
	const timeOf = async (text: string, warmUps: number, runs: number): Promise<number> => {
		const { states } = checkPlan(text, "plan.ferrule").analysis;
		return medianOf(await timesOf(() => states.map((state) => solveLoadings(state)), warmUps, runs));
	};
	const small = await timeOf(planOf(100), 50, 51);
	const great = await timeOf(planOf(10_000), 1, 5);
	tell("solve-cabin-all-modes", await timeOf(cabinOf(bothSides), 50, 51), "ms");
	tell("solve-10000-devices", great, "ms", 0);
	tell("solve-growth-100-to-10000", Math.log(great / small) / Math.log(100), "exponent");
}

async function benchSources(): Promise<void> {
	for (const sources of [50, 100]) {
		const text = planOfSources(sources);
		tell(`check-${sources}-sources`, medianOf(await timesOf(() => checkPlan(text, "plan.ferrule"), 1, 5)), "ms");
	}
}

function benchLarge(): void {
	const { stdout, status } = spawnSync(process.execPath, [self, "large"], {
		encoding: "utf8",
		stdio: ["ignore", "pipe", "inherit"],
	});
	if (status !== 0) throw new Error("the large plan could not be measured");
	const { laidOut, written, sheets, memory } = JSON.parse(stdout);
	tell("large-checked-and-laid-out", laidOut, "s");
	tell("large-all-sheets-written", written, "s");
	tell("large-sheets", sheets, "sheets", 0);
	tell("large-memory", memory, "MB", 0);
}

/** Each in a process of its own, from cold, in turns. */
function benchDirect(): void {
	const times = { "direct-sheet": [] as number[], "direct-engine": [] as number[] };
	for (let run = 0; run < 11; run++)
		for (const name of ["direct-sheet", "direct-engine"] as const) {
			const { stdout, status } = spawnSync(process.execPath, [self, name], { encoding: "utf8" });
			if (status !== 0) throw new Error("the direct-current sheet could not be measured");
			times[name].push(Number(stdout));
		}
	const [sheet, engine] = [medianOf(times["direct-sheet"]), medianOf(times["direct-engine"])];
	tell("direct-sheet", sheet, "ms");
	tell("direct-sheet-to-engine-alone", sheet / engine, "times");
}
