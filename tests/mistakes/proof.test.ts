// A share of what `npm run proof` does in full: single mistakes drawn by chance, the same ones each time.
import { expect, test } from "vitest";
import type { Circuit } from "../../src/circuit/circuit.ts";
import { surveyMistakes } from "../../src/mistakes/survey.ts";
import { checkCircuit, checkPlan } from "../../src/pipeline.ts";
import { Chance } from "../generator/chance.ts";
import { gapOf } from "./known-gaps.ts";
import { Proof } from "./prove.ts";
import { generatedPlans, rightSamples } from "./right-plans.ts";

const samples = rightSamples("samples");
const generated = generatedPlans(0, 30);
const proof = new Proof();

test.each(samples)("single mistakes in $name", (plan) => {
	proof.add(plan, 0.03, samples.indexOf(plan));
});

test.each(generated)("single mistakes in $name", (plan) => {
	proof.add(plan, 0.01, generated.indexOf(plan));
});

test("every mistake that matters is found, but for the known gaps", () => {
	expect(proof.counter.tallies.reduce((sum, { made }) => sum + made, 0)).toBeGreaterThan(1000);
	expect(proof.missed.filter(({ operator, at }) => gapOf(operator, at) === undefined)).toEqual([]);
});

test("asking no more rules than it takes says the same as asking all", () => {
	for (const { name, text } of samples) {
		const { circuit } = checkPlan(text, name).analysis;
		const drawn = [new Chance(7), new Chance(7)];
		const [lazy, whole] = [checkCircuit, (wrong: Circuit) => [...checkCircuit(wrong)]].map((check, index) => [
			...surveyMistakes(circuit, check, () => drawn[index]?.maybe(0.005) === true),
		]);
		expect(lazy).toEqual(whole);
	}
});

test("nineteen in twenty are found by the rule that names the fault itself", () => {
	expect(proof.namedShare).toBeGreaterThanOrEqual(0.95);
});

test("the plans as they are have no findings above a note", () => {
	expect(proof.falseAlarms).toEqual([]);
});
