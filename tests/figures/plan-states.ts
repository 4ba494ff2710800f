// Plans for the tests of figures: their circuits analysed, without asking a rule.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Analysis, analyse } from "../../src/analysis/analysis.ts";
import { certain } from "../../src/base/certain.ts";
import { buildCircuit } from "../../src/circuit/build-circuit.ts";
import type { Loading } from "../../src/figures/draws.ts";
import { type State, type Steady, setUpMode, solveMode } from "../../src/figures/steady-state.ts";
import { buildPlan } from "../../src/plan/build-plan.ts";
import { readText } from "../../src/syntax/read.ts";

const root = join(import.meta.dirname, "../..");

/** Every sample and starter, by its name. */
export const samples: readonly (readonly [string, string])[] = ["samples", "seeds"].flatMap((folder) =>
	readdirSync(join(root, folder))
		.filter((name) => name.endsWith(".ferrule"))
		.map((name) => [`${folder}/${name}`, readFileSync(join(root, folder, name), "utf8")] as const),
);

/** What is on, in every way. */
export const loadings = ["all", "loads", "charging"] as const satisfies readonly Loading[];

/** The analysis of a plan text. */
export function analysisOf(text: string): Analysis {
	return analyse(buildCircuit(buildPlan(readText(text, "plan").tree).plan).circuit);
}

/** The first mode of a plan text, solved. */
export function stateOf(text: string, loading: Loading = "all"): State {
	const [state] = analysisOf(text).states;
	return solveMode(setUpMode(certain(state, "a mode")), loading);
}

/** The same, where it settles. */
export function steadyOf(text: string, loading: Loading = "all"): Steady {
	const state = stateOf(text, loading);
	if (state.kind !== "steady") throw new Error(`it settles at ${state.share} of its loads only`);
	return state;
}

/** Every steady state of a plan text; those of loadings that change nothing are left out. */
export function* steadiesOf(text: string): Generator<Steady> {
	for (const state of analysisOf(text).states) {
		const setup = setUpMode(state);
		for (const loading of loadings) {
			const solved = solveMode(setup, loading);
			if (solved.kind !== "steady") throw new Error(`${state.mode.name} settles at ${solved.share} of its loads only`);
			yield solved;
			if (setup.supplies.chargers.length === 0) break;
		}
	}
}
