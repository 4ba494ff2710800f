// As built: a plan written out has everything said, and is the same circuit.
import { describe, expect, test } from "vitest";
import { buildCircuit } from "../../src/circuit/build-circuit.ts";
import type { Circuit } from "../../src/circuit/circuit.ts";
import { canonicalCircuit } from "../../src/documents/circuit-record.ts";
import { buildPlan } from "../../src/plan/build-plan.ts";
import { readText } from "../../src/syntax/read.ts";
import { writeOut } from "../../src/writing/write-out.ts";
import { chancePlans, finishedPlans, shownPlans } from "./plan-texts.ts";

function wire(text: string) {
	const read = readText(text, "plan");
	const planned = buildPlan(read.tree);
	const built = buildCircuit(planned.plan);
	const findings = [...read.findings, ...planned.findings, ...built.findings].map(({ code }) => code);
	return { read: { text, ...read }, circuit: built.circuit, findings };
}

function written(text: string): string {
	const { read, circuit } = wire(text);
	return writeOut(read, circuit);
}

/** The ends that nobody said; where a device's own lead begins there is nothing to say. */
function inferredEnds(circuit: Circuit): string[] {
	const leads = new Set(
		circuit.plan.things.flatMap((thing) => (thing.blueprint.leads ?? []).map((lead) => `${thing.name}~${lead.mine}`)),
	);
	return circuit.conductors.flatMap(({ name, ends }) =>
		ends.flatMap((end, which) => (end.said || (which === 0 && leads.has(name)) ? [] : [`${name} ${which}`])),
	);
}

describe("a plan written out", () => {
	test.each([...finishedPlans, ...shownPlans])("$name is the same circuit, with every landing said", ({ text }) => {
		const before = wire(text);
		const after = wire(written(text));
		expect(canonicalCircuit(after.circuit)).toBe(canonicalCircuit(before.circuit));
		expect(after.findings).toEqual(before.findings);
		expect(inferredEnds(after.circuit)).toEqual([]);
		expect(written(after.read.text)).toBe(after.read.text);
	});

	test("the same holds for plans by chance, rightly and wrongly wired", () => {
		for (const { name, text } of chancePlans(300)) {
			const before = wire(text);
			const after = wire(written(text));
			expect(canonicalCircuit(after.circuit), name).toBe(canonicalCircuit(before.circuit));
			expect(inferredEnds(after.circuit), name).toEqual([]);
			expect(written(after.read.text), name).toBe(after.read.text);
		}
	});
});
