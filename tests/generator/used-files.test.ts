// Generated plans in several files: the same circuit as where everything stands in one.
import { describe, expect, test } from "vitest";
import { canonicalCircuit } from "../../src/documents/circuit-record.ts";
import { checkPlan, tidyPlan, writeOutPlan } from "../../src/pipeline.ts";
import { findByPath } from "../../src/syntax/sources.ts";
import { generatePlan } from "./generate-plan.ts";

const seeds = Array.from({ length: 24 }, (_, index) => index * 5);

describe.each(seeds)("plan %i", (seed) => {
	const { text, files } = generatePlan(seed, { usesFiles: true });
	const find = findByPath((path) => files.get(path), "plan");
	const result = checkPlan(text, "plan", find);
	const circuit = canonicalCircuit(result.analysis.circuit);

	test("is right with the files it uses", () => {
		const found = result.findings.filter(({ level }) => level !== "note");
		expect(
			found.map(({ code, title }) => `${code}: ${title}`),
			text,
		).toEqual([]);
		expect([...result.used.keys()].toSorted()).toEqual(["own/cables.ferrule", "own/parts.ferrule"]);
	});

	test("is the same circuit as with all its lines in one file", () => {
		const uses = [...files.keys()].map((path) => `use "${path}"`);
		const lines = text.split(/\r?\n/);
		const first = lines.findIndex((line) => uses.includes(line));
		const whole = [...files.values()].join("").replace(/use "cables.ferrule"\r?\n/, "");
		const rest = lines.slice(first).filter((line) => !uses.includes(line));
		const joined = [...lines.slice(0, first), ...whole.split(/\r?\n/), ...rest].join("\n");
		expect(canonicalCircuit(checkPlan(joined, "plan").analysis.circuit), joined).toBe(circuit);
	});

	test("says the same tidied and written out", async () => {
		const tidied = await tidyPlan(text, "plan", { find });
		expect(canonicalCircuit(checkPlan(tidied.text, "plan", find).analysis.circuit)).toBe(circuit);
		const written = await writeOutPlan(result, text);
		expect(canonicalCircuit(checkPlan(written, "plan", find).analysis.circuit)).toBe(circuit);
	});
});
