// Ferrule as a library: text in, findings and drawings out. Pure, without files or clock; it runs in a browser as well as in Node.
import type { Finding } from "./base/finding.ts";
import { buildCircuit } from "./circuit/build-circuit.ts";
import type { Circuit } from "./circuit/circuit.ts";
import { buildPlan } from "./plan/build-plan.ts";
import type { Plan } from "./plan/plan.ts";
import { readText } from "./syntax/read.ts";
import type { Tree } from "./syntax/tree.ts";

export type { Figure, Finding, LabelledSpan, Level, NumberedFinding, PathStep } from "./base/finding.ts";
export type { Span } from "./base/span.ts";
export type { Circuit } from "./circuit/circuit.ts";
export {
	type CheckResult,
	/** Checks a plan text: every finding, numbered, worst first. */
	checkPlan as check,
	/** Draws a checked plan: each sheet by its name, as SVG text. */
	drawPlan as draw,
	/** Tells a checked plan's circuit: box by box, a line a box, and as data. */
	showPlan as show,
	type TidiedPlan,
	/** A plan text in the layout of all plans, saying the same. */
	tidyPlan as tidy,
	/** The text of a checked plan with everything said that was inferred. */
	writeOutPlan as writeOut,
} from "./pipeline.ts";
export type { Plan } from "./plan/plan.ts";
export type { Tree } from "./syntax/tree.ts";

/** What each line of a text says, and what could not be read. `file` is the name the text goes by; never throws. */
export function parse(text: string, file: string): { readonly tree: Tree; readonly findings: readonly Finding[] } {
	return readText(text, file);
}

/** What the builder said and the circuit that follows from it, with what is wrong in either; never throws. */
export function build(tree: Tree): {
	readonly plan: Plan;
	readonly circuit: Circuit;
	readonly findings: readonly Finding[];
} {
	const planned = buildPlan(tree);
	const built = buildCircuit(planned.plan);
	return { plan: planned.plan, circuit: built.circuit, findings: [...planned.findings, ...built.findings] };
}
