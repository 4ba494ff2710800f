// Right plans by chance: each reads, builds, checks, shows, tidies, is written out and drawn, and says the same all the way.
// GENERATED_PLANS=2000 GENERATED_FROM=300 GENERATED_DEVICES=200 npx vitest run tests/generator asks for more, other or larger ones.
import { describe, expect, test } from "vitest";
import type { Circuit } from "../../src/circuit/circuit.ts";
import { canonicalCircuit } from "../../src/documents/circuit-record.ts";
import { brokenMeasures } from "../../src/drawing/measures/index.ts";
import type { Sheet } from "../../src/drawing/scene.ts";
import { drawSheets } from "../../src/drawing/sheet-set.ts";
import { type CheckResult, checkPlan, showPlan, tidyPlan, writeOutPlan } from "../../src/pipeline.ts";
import { never } from "../drawing/measures/measure-sets.ts";
import { untruths } from "../drawing/wiring/drawn-truth.ts";
import { gapsOfNets, knownGaps } from "./drawing-gaps.ts";
import { generatePlan } from "./generate-plan.ts";

const { GENERATED_PLANS = "300", GENERATED_FROM = "0", GENERATED_DEVICES } = process.env;
const size = GENERATED_DEVICES === undefined ? {} : { devices: Number(GENERATED_DEVICES) };
/** Whether these are the plans of every test run, which the known gaps are counted on. */
const isUsual = GENERATED_PLANS === "300" && GENERATED_FROM === "0" && GENERATED_DEVICES === undefined;
const seeds = Array.from({ length: Number(GENERATED_PLANS) }, (_, index) => Number(GENERATED_FROM) + index);

/** What was found above a note, a line each. */
function foundIn({ findings }: CheckResult): string[] {
	return findings
		.filter(({ level }) => level !== "note")
		.map(({ span, code, title }) => `${span.line}: ${code}: ${title}`);
}

async function sheetsOf({ analysis, findings }: CheckResult): Promise<Sheet[]> {
	const sheets: Sheet[] = [];
	for await (const sheet of drawSheets(analysis, findings, "all")) sheets.push(sheet);
	return sheets;
}

/** Every tag, box and device that the account of a circuit leaves out. */
function leftOut(circuit: Circuit, account: string): string[] {
	const names = [...circuit.cables.map(({ tag }) => tag), ...circuit.enclosures.map(({ name }) => name)];
	return names.filter((name) => !account.includes(name));
}

/** Whether no box is reached by two ways, as one is whose receptacle hangs on two circuits. */
function isTree({ cables }: Circuit): boolean {
	return new Set(cables.map(({ to }) => to)).size === cables.length;
}

describe.each(seeds)("plan %i", (seed) => {
	const { text, wish } = generatePlan(seed, size);
	const result = checkPlan(text, "plan");
	const { circuit } = result.analysis;

	test("is right, and shown whole", () => {
		expect(foundIn(result), text).toEqual([]);
		expect(leftOut(circuit, showPlan(result).text), text).toEqual([]);
	});

	test("says the same tidied, and tidied again stays as it is", async () => {
		const tidied = await tidyPlan(text, "plan");
		expect(tidied.kept, text).toEqual([]);
		expect((await tidyPlan(tidied.text, "plan")).text, text).toBe(tidied.text);
		expect(canonicalCircuit(checkPlan(tidied.text, "plan").analysis.circuit), text).toBe(canonicalCircuit(circuit));
	});

	test("is the same circuit written out, and as right", async () => {
		const written = checkPlan(await writeOutPlan(result, text), "plan");
		expect(foundIn(written), text).toEqual([]);
		expect(canonicalCircuit(written.analysis.circuit), text).toBe(canonicalCircuit(circuit));
	});

	// Drawing and measuring large sheets takes longest, so of them a share is drawn; of small ones every one.
	const isDrawn = wish.devices <= 25 || seed % 4 === 0;
	if (!isDrawn) return;
	test("is drawn conductor by conductor, within the measures that hold for any sheet", async () => {
		const sheets = await sheetsOf(result);
		const wiring = sheets.filter(({ name }) => name !== "one-line");
		expect(untruths(circuit, wiring), text).toEqual([]);
		const broken = sheets.flatMap(brokenMeasures);
		sheetsDrawn += sheets.length;
		for (const { name } of broken) timesBroken.set(name, (timesBroken.get(name) ?? 0) + 1);
		const gaps = isTree(circuit) ? [] : gapsOfNets;
		expect(
			broken.filter(({ name }) => never.has(name) && !gaps.includes(name)),
			text,
		).toEqual([]);
	});
});

let sheetsDrawn = 0;
const timesBroken = new Map<string, number>();

if (isUsual)
	test("averages and shapes of sheets are no worse than they are known to be", () => {
		const shares = [...timesBroken].map(([name, times]) => [name, times / sheetsDrawn] as const);
		const worse = shares.filter(([name, share]) => !never.has(name) && share > (knownGaps.get(name) ?? 0));
		expect(worse).toEqual([]);
	});
