// Stands in for what the pipeline asks: all of it is kept from one check of a plan to the next, and with a mutant on only
// the rules that pass it are asked again. So a test costs what its rule costs.
import { type Analysis, analyse as analyseAnew } from "../../src/analysis/analysis.ts";
import type { Finding } from "../../src/base/finding.ts";
import { buildCircuit as buildCircuitAnew } from "../../src/circuit/build-circuit.ts";
import { buildPlan as buildPlanAnew } from "../../src/plan/build-plan.ts";
import { rules as allRules } from "../../src/rules/index.ts";
import type { Rule } from "../../src/rules/rule.ts";
import { type FindSource, readSources as readSourcesAnew } from "../../src/syntax/sources.ts";
import { switchboard } from "./switchboard.ts";

export type { Analysis, FindSource, Rule };

type Read = ReturnType<typeof readSourcesAnew>;

const read = new Map<string, Read>();

/** A text that uses others is read anew each time: these may have changed. */
export function readSources(text: string, file: string, find?: FindSource): Read {
	if (find !== undefined) return readSourcesAnew(text, file, find);
	const key = `${file}\n${text}`;
	const known = read.get(key) ?? readSourcesAnew(text, file, find);
	read.set(key, known);
	return known;
}

export const buildPlan = kept(buildPlanAnew);
export const buildCircuit = kept(buildCircuitAnew);
export const analyse = kept(analyseAnew);
export const rules: readonly Rule[] = allRules.map((rule) => ({ ...rule, check: keptCheck(rule) }));

function kept<Given extends object, Made>(make: (given: Given) => Made): (given: Given) => Made {
	const made = new WeakMap<Given, { readonly it: Made }>();
	return (given) => {
		const known = made.get(given) ?? { it: make(given) };
		made.set(given, known);
		return known.it;
	};
}

/** What a rule found with no mutant on, and the mutants it passed on its way. */
interface Asked {
	readonly found: Finding[];
	readonly passed: ReadonlySet<number>;
}

function keptCheck({ check }: Rule): Rule["check"] {
	const asked = new WeakMap<Analysis, Asked>();
	return (analysis) => {
		const { active, passed } = switchboard;
		const known = asked.get(analysis);
		switchboard.round += 1;
		if (active >= 0) return known?.passed.has(active) === false ? known.found : check(analysis);
		const now = known ?? askHealthy(check, analysis);
		asked.set(analysis, now);
		for (const id of now.passed) passed.add(id);
		return now.found;
	};
}

function askHealthy(check: Rule["check"], analysis: Analysis): Asked {
	const { passed } = switchboard;
	const own = new Set<number>();
	switchboard.passed = own;
	try {
		return { found: check(analysis), passed: own };
	} finally {
		switchboard.passed = passed;
	}
}
