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
import { generatePlan } from "./generate-plan.ts";

const { GENERATED_PLANS = "300", GENERATED_FROM = "0", GENERATED_DEVICES } = process.env;
const size = GENERATED_DEVICES === undefined ? {} : { devices: Number(GENERATED_DEVICES) };
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

describe.each(seeds)("plan %i", (seed) => {
	const { text } = generatePlan(seed, size);
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

	test("is drawn conductor by conductor, within the measures that hold for any sheet", async () => {
		const sheets = await sheetsOf(result);
		expect(
			untruths(
				circuit,
				sheets.filter(({ name }) => name !== "one-line"),
			),
			text,
		).toEqual([]);
		const broken = sheets.flatMap(brokenMeasures).filter(({ name }) => never.has(name));
		expect(broken, text).toEqual([]);
	});
});
