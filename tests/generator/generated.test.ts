// Right plans by chance: each reads, builds, checks, shows, tidies, is written out and drawn, and says the same all the way.
// GENERATED_PLANS=2000 GENERATED_FROM=300 GENERATED_DEVICES=200 npx vitest run tests/generator asks for more, other or larger ones.
import { describe, expect, test } from "vitest";
import type { Circuit } from "../../src/circuit/circuit.ts";
import { canonicalCircuit } from "../../src/documents/circuit-record.ts";
import { brokenMeasures } from "../../src/drawing/measures/index.ts";
import type { Sheet } from "../../src/drawing/scene.ts";
import { drawSheets } from "../../src/drawing/sheet-set.ts";
import { type CheckResult, checkPlan, showPlan, tidyPlan, writeOutPlan } from "../../src/pipeline.ts";
import { untruths as directUntruths } from "../drawing/direct-current/drawn.ts";
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

	// Drawing and measuring takes longest, so of large plans and of those with direct current a share is drawn.
	const isDrawn = wish.sides === "ac" ? wish.devices <= 25 || seed % 4 === 0 : seed % 5 === 0;
	if (!isDrawn) return;
	test("is drawn conductor by conductor, within the measures that hold for any sheet", async () => {
		const sheets = await sheetsOf(result);
		const wiring = sheets.filter(({ name }) => name.startsWith("wiring"));
		const direct = sheets.find(({ name }) => name === "direct-current");
		expect(wish.sides === "dc" ? [] : untruths(circuit, wiring), text).toEqual([]);
		expect(
			wish.sides === "ac" ? [] : directUntruths({ circuit, findings: result.findings, sheet: direct }),
			text,
		).toEqual([]);
		for (const sheet of sheets) {
			const sort = sheet.name.startsWith("wiring") ? "wiring" : sheet.name;
			sheetsDrawn.set(sort, (sheetsDrawn.get(sort) ?? 0) + 1);
			for (const { name } of brokenMeasures(sheet)) {
				const gap = `${sort}: ${name}`;
				timesBroken.set(gap, (timesBroken.get(gap) ?? 0) + 1);
				// What must hold on any sheet is a gap only where it is known to be one.
				if (never.has(name) && !(sort === "wiring" && !isTree(circuit) && gapsOfNets.includes(name)))
					expect([...knownGaps.keys()], `plan ${seed}, ${sheet.name}\n${text}`).toContain(gap);
			}
		}
	});
});

const sheetsDrawn = new Map<string, number>();
const timesBroken = new Map<string, number>();

if (isUsual)
	test("sheets are no worse than they are known to be", () => {
		const shares = [...timesBroken].map(([gap, times]) => [gap, times / (sheetsDrawn.get(sortOf(gap)) ?? 1)] as const);
		const worse = shares.filter(([gap, share]) => share > (knownGaps.get(gap) ?? 0));
		expect(worse.filter(([gap]) => !isOfNets(gap))).toEqual([]);
	});

function sortOf(gap: string): string {
	return gap.slice(0, gap.indexOf(": "));
}

function isOfNets(gap: string): boolean {
	return gapsOfNets.some((name) => gap === `wiring: ${name}`);
}
