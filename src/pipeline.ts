// The table of contents: every step from a plan text to findings and drawings, in order. Pure; never throws for any text.
import { type Analysis, analyse } from "./analysis/analysis.ts";
import { type Finding, levels, type NumberedFinding } from "./base/finding.ts";
import { compareSpans } from "./base/span.ts";
import { buildCircuit } from "./circuit/build-circuit.ts";
import { listBoxes, tellCircuit } from "./documents/circuit-account.ts";
import { type CircuitRecord, recordCircuit } from "./documents/circuit-record.ts";
import type { SheetChoice } from "./drawing/sheet-set.ts";
import { buildPlan } from "./plan/build-plan.ts";
import { applyAcceptances } from "./rules/acceptance.ts";
import { rules } from "./rules/index.ts";
import { readText } from "./syntax/read.ts";

/** All that was found out about a plan. */
export interface CheckResult {
	readonly file: string;
	/** Worst first, then by place. */
	readonly findings: readonly NumberedFinding[];
	/** False where there is nothing that could be drawn. */
	readonly understood: boolean;
	readonly analysis: Analysis;
}

/** Reads, builds and checks a plan text; `file` is the name it goes by in findings. */
export function checkPlan(text: string, file: string): CheckResult {
	const read = readText(text, file);
	const planned = buildPlan(read.tree);
	const built = buildCircuit(planned.plan);
	const analysis = analyse(built.circuit);
	const applicable = rules.filter(
		({ applies }) =>
			applies.regions.includes(planned.plan.settings.region) && applies.rules.includes(planned.plan.settings.rules),
	);
	const wiring = applicable.flatMap((rule) => rule.check(analysis));
	const all = [...read.findings, ...planned.findings, ...built.findings, ...wiring];
	const findings = numberFindings(applyAcceptances(all, planned.plan, ruleNames));
	return { file, findings, understood: built.circuit.parts.length > 0, analysis };
}

/** The sheets of a checked plan as SVG texts. What draws is loaded only here, so that a check starts fast. */
export async function drawPlan(
	{ analysis, findings, file }: CheckResult,
	choice: SheetChoice,
): Promise<{ readonly name: string; readonly svg: string }[]> {
	const [{ drawSheets }, { writeSvg }] = await Promise.all([
		import("./drawing/sheet-set.ts"),
		import("./svg/index.ts"),
	]);
	const drawn: { name: string; svg: string }[] = [];
	for await (const sheet of drawSheets(analysis, findings, choice))
		drawn.push({ name: sheet.name, svg: await writeSvg(sheet, file) });
	return drawn;
}

/** The circuit as it is wired: told box by box, a line a box, and as data. */
export function showPlan({ analysis }: CheckResult): {
	readonly text: string;
	readonly short: string;
	readonly json: CircuitRecord;
} {
	const { circuit } = analysis;
	return { text: tellCircuit(circuit), short: listBoxes(circuit), json: recordCircuit(circuit) };
}

const ruleNames = rules.map((rule) => rule.code);

/** Sorts findings by level, then place, then name, and numbers them from 1; what follows from another stands behind it. */
function numberFindings(findings: readonly Finding[]): NumberedFinding[] {
	const roots = findings.filter(
		(finding) => finding.consequenceOf === undefined || !findings.some((other) => other.key === finding.consequenceOf),
	);
	const order = (one: Finding, other: Finding): number =>
		levels.indexOf(one.level) - levels.indexOf(other.level) ||
		compareSpans(one.span, other.span) ||
		(one.code === other.code ? compareText(one.title, other.title) : compareText(one.code, other.code));
	const sorted = roots
		.toSorted(order)
		.flatMap((root) => [
			root,
			...findings.filter((finding) => finding !== root && finding.consequenceOf === root.key).toSorted(order),
		]);
	return sorted.map((finding, index) => ({ ...finding, number: index + 1 }));
}

function compareText(one: string, other: string): number {
	return one < other ? -1 : one > other ? 1 : 0;
}
