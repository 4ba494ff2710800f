// Ferrule as a library: text in, findings and drawings out. Pure, without files or clock; it runs in a browser as well as in Node.
import type { Finding, LineEdit } from "./base/finding.ts";
import { buildCircuit } from "./circuit/build-circuit.ts";
import type { Circuit } from "./circuit/circuit.ts";
import { type CheckResult, checkPlan, repairPlan, type TidiedPlan, tidyPlan } from "./pipeline.ts";
import { buildPlan } from "./plan/build-plan.ts";
import type { Plan } from "./plan/plan.ts";
import { type FindSource, findByPath, readSources } from "./syntax/sources.ts";
import type { Tree } from "./syntax/tree.ts";

export type { Figure, Finding, LabelledSpan, Level, LineEdit, NumberedFinding, PathStep } from "./base/finding.ts";
export type { Span } from "./base/span.ts";
export type { Circuit } from "./circuit/circuit.ts";
export {
	type CheckResult,
	/** Draws a checked plan: each sheet by its name, as SVG text. */
	drawPlan as draw,
	/** Tells a checked plan's circuit: box by box, a line a box, and as data. */
	showPlan as show,
	type TidiedPlan,
	/** The text of a checked plan with everything said that was inferred. */
	writeOutPlan as writeOut,
} from "./pipeline.ts";
export type { Plan } from "./plan/plan.ts";
export type { Tree } from "./syntax/tree.ts";

/**
 * The text of a file by its path, for plans that use others: paths have `/` and stand where the plan's own name does.
 * Undefined where there is none. What lies outside the plan's folder is never asked for.
 */
export type ReadFile = (path: string) => string | undefined;

/** Checks a plan text: every finding, numbered, worst first. `file` is the name it goes by; never throws unless `read` does. */
export function check(text: string, file: string, read?: ReadFile): CheckResult {
	return checkPlan(text, file, finder(read, file));
}

/** A plan text in the layout of all plans, saying the same; with `pinTags` each cable's automatic tag is written down. */
export function tidy(
	text: string,
	file: string,
	{ pinTags = false, read }: { readonly pinTags?: boolean; readonly read?: ReadFile } = {},
): Promise<TidiedPlan> {
	return tidyPlan(text, file, { pinTags, find: finder(read, file) });
}

/**
 * The lines to write that put findings of a checked plan right, by the keys of these, where that is certain: each was tried on
 * the plan. `text` and `read` are those of the check. They say how it is wired once it is; nobody has moved a wire.
 */
export function repairs(
	result: CheckResult,
	text: string,
	read?: ReadFile,
): Promise<ReadonlyMap<string, readonly LineEdit[]>> {
	return repairPlan(result, text, finder(read, result.file), { left: 200 });
}

/** What each line of a text, and of what it uses, says, and what could not be read; never throws unless `read` does. */
export function parse(
	text: string,
	file: string,
	read?: ReadFile,
): { readonly tree: Tree; readonly findings: readonly Finding[] } {
	const { tree, findings } = readSources(text, file, finder(read, file));
	return { tree, findings };
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

function finder(read: ReadFile | undefined, file: string): FindSource | undefined {
	return read === undefined ? undefined : findByPath(read, file);
}
