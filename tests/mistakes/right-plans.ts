// The right plans that mistakes are made in: every finished sample, and generated ones.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { generatePlan } from "../generator/generate-plan.ts";
import type { RightPlan } from "./prove.ts";

/** The samples of a folder that have nothing wrong in them. */
export function rightSamples(folder: string): readonly RightPlan[] {
	return readdirSync(folder)
		.filter((name) => name.endsWith(".ferrule") && !name.startsWith("faulty-"))
		.toSorted()
		.map((name) => ({ name, text: readFileSync(join(folder, name), "utf8") }));
}

/** Generated plans by their seeds. */
export function generatedPlans(first: number, count: number): readonly RightPlan[] {
	return Array.from({ length: count }, (_, index) => ({
		name: `generated-${first + index}`,
		text: generatePlan(first + index).text,
	}));
}
