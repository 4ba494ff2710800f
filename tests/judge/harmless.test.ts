// What is called harmless among single mistakes, asked of the judge by simulation: a share drawn by chance, the same each time.
import { expect, test } from "vitest";
import type { Circuit } from "../../src/circuit/circuit.ts";
import { settleAnew } from "../../src/circuit/modes.ts";
import { beforeMistakes, judgeMistake } from "../../src/mistakes/judge.ts";
import { operators } from "../../src/mistakes/operators/index.ts";
import { checkCircuit, checkPlan } from "../../src/pipeline.ts";
import { Chance } from "../generator/chance.ts";
import { generatePlan } from "../generator/generate-plan.ts";
import type { RightPlan } from "../mistakes/prove.ts";
import { rightSamples } from "../mistakes/right-plans.ts";
import { judge } from "./judge.ts";
import { frameOf, statesOf } from "./wiring.ts";

/** Plans with more states of their switches, or more points, than this take the judge too long. */
const mostStates = 32;
const mostPoints = 120;

/** Right plans without direct current, which the judge cannot read. */
function readablePlans(): readonly (RightPlan & { readonly circuit: Circuit })[] {
	const generated = Array.from({ length: 32 }, (_, seed) => ({
		name: `generated-${seed}`,
		text: generatePlan(seed, { devices: 2 + (seed % 7), sides: "ac" }).text,
	}));
	return [...rightSamples("samples"), ...generated]
		.map((plan) => ({ ...plan, circuit: checkPlan(plan.text, plan.name).analysis.circuit }))
		.filter(
			({ circuit }) =>
				circuit.points.length <= mostPoints &&
				circuit.sources.every(({ system }) => system === "ac") &&
				statesOf(frameOf(circuit), mostStates) !== undefined,
		);
}

function harmsOf(circuit: Circuit): readonly string[] {
	return (judge(circuit) ?? []).map(({ sort, at }) => `${sort} at ${at}`);
}

test("no mistake that is called harmless does harm that the judge sees", { timeout: 180_000 }, () => {
	const asked = new Map<string, number>();
	const contradicted: string[] = [];
	for (const { name, circuit } of readablePlans()) {
		const known = new Set(harmsOf(circuit));
		const before = beforeMistakes(circuit, checkCircuit);
		const chance = new Chance(circuit.conductors.length);
		for (const operator of operators)
			for (const mistake of operator.find(circuit)) {
				if (!chance.maybe(0.08)) continue;
				const verdict = judgeMistake(before, mistake, checkCircuit);
				if (verdict.verdict !== "harmless") continue;
				asked.set(operator.name, (asked.get(operator.name) ?? 0) + 1);
				const more = harmsOf(settleAnew(mistake.wrong())).filter((harm) => !known.has(harm));
				if (more.length > 0)
					contradicted.push(`${name}: ${operator.name}: ${mistake.at}: ${verdict.reason}: ${more.join(", ")}`);
			}
	}
	expect(contradicted).toEqual([]);
	// Few of few operators would prove little.
	expect([...asked.values()].reduce((sum, count) => sum + count, 0)).toBeGreaterThan(100);
	expect(asked.size).toBeGreaterThan(8);
});
