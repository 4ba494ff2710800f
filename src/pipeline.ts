// The table of contents: every step from a plan text to findings and drawings, in order. Pure; never throws for any text.
import { type Analysis, analyse } from "./analysis/analysis.ts";
import { type Finding, type LineEdit, levels, type NumberedFinding } from "./base/finding.ts";
import { compareSpans } from "./base/span.ts";
import { buildCircuit } from "./circuit/build-circuit.ts";
import type { Circuit } from "./circuit/circuit.ts";
import { listBoxes, tellCircuit } from "./documents/circuit-account.ts";
import { type CircuitRecord, recordCircuit } from "./documents/circuit-record.ts";
import { findEnergised } from "./documents/energised.ts";
import { tellSharedNeutrals } from "./documents/neutral-account.ts";
import type { SheetChoice } from "./drawing/sheet-set.ts";
import type { FigureAnswer, FigureWish, SizeAnswer } from "./figures/index.ts";
import type { HandbookTable } from "./handbook/table.ts";
import type { JudgedMistake } from "./mistakes/mistake.ts";
import { buildPlan } from "./plan/build-plan.ts";
import { followUnreadFiles } from "./plan/files-unread.ts";
import type { Plan } from "./plan/plan.ts";
import { applyAcceptances } from "./rules/acceptance.ts";
import { rules } from "./rules/index.ts";
import type { Rule } from "./rules/rule.ts";
import { readText } from "./syntax/read.ts";
import { type FindSource, readSources } from "./syntax/sources.ts";

/** All that was found out about a plan. */
export interface CheckResult {
	readonly file: string;
	/** Worst first, then by place. */
	readonly findings: readonly NumberedFinding[];
	/** False where there is nothing that could be drawn. */
	readonly understood: boolean;
	readonly analysis: Analysis;
	readonly scope: CheckScope;
	/** The texts that the plan uses, by the names of their files in findings. */
	readonly used: ReadonlyMap<string, string>;
}

/** What was looked at in a check, so that a report without findings does not claim more than was done. */
export interface CheckScope {
	/** How many rules were asked: those for its region and place. */
	readonly rules: number;
	/** The source modes in which everything was asked. */
	readonly modes: readonly string[];
	readonly parts: number;
	readonly conductors: number;
	/** Whether lines were left out because they were not understood. */
	readonly incomplete: boolean;
}

/** Reads, builds and checks a plan text; `file` is the name it goes by in findings, `find` finds what it uses. */
export function checkPlan(text: string, file: string, find?: FindSource): CheckResult {
	const { plan, used, findings: said } = planOf(text, file, find);
	const built = buildCircuit(plan);
	const analysis = analyse(built.circuit);
	const applicable = rulesFor(plan);
	const wiring = applicable.flatMap((rule) => rule.check(analysis));
	const all = followUnreadFiles([...said, ...built.findings, ...wiring]);
	const findings = numberFindings(applyAcceptances(all, plan, ruleNames));
	const { parts, conductors, modes } = built.circuit;
	const scope = {
		rules: applicable.length,
		modes: modes.map((mode) => mode.name),
		parts: parts.length,
		conductors: conductors.length,
		incomplete: plan.incomplete,
	};
	return { file, findings, understood: parts.length > 0, analysis, scope, used };
}

/** The rules that hold where a plan is built. */
function rulesFor({ settings }: Plan): readonly Rule[] {
	return rules.filter(
		({ applies }) => applies.regions.includes(settings.region) && applies.rules.includes(settings.rules),
	);
}

/** What the texts say. A step of its own, so that their trees are let go before the circuit is built. */
function planOf(text: string, file: string, find: FindSource | undefined) {
	const { tree, used, findings } = readSources(text, file, find);
	const planned = buildPlan(tree);
	return { plan: planned.plan, used, findings: [...findings, ...planned.findings] };
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
	// Where a plan lies is nobody's business but its owner's: only its own name goes into ids.
	const name = file.split(/[\\/]/).at(-1) ?? file;
	for await (const sheet of drawSheets(analysis, findings, choice))
		drawn.push({ name: sheet.name, svg: await writeSvg(sheet, name) });
	return drawn;
}

/** The circuit as it is wired: told box by box, a line a box, and as data. */
export function showPlan({ analysis }: CheckResult): {
	readonly text: string;
	readonly short: string;
	readonly json: CircuitRecord;
} {
	return {
		text: tellCircuit(analysis) + tellSharedNeutrals(analysis),
		short: listBoxes(analysis.circuit),
		json: recordCircuit(analysis.circuit, findEnergised(analysis)),
	};
}

/** Volts, amperes and losses of a checked plan in each mode, and the working of one thing. What reckons is loaded only here. */
export async function figurePlan({ analysis }: CheckResult, wish: FigureWish): Promise<FigureAnswer> {
	const { tellFigures } = await import("./figures/index.ts");
	return tellFigures(analysis, wish);
}

/** What size the circuits of a checked plan need, or the one that is named. */
export async function sizePlan({ analysis }: CheckResult, circuit: string | undefined): Promise<SizeAnswer> {
	const { tellSizes } = await import("./figures/index.ts");
	return tellSizes(analysis, circuit);
}

/** Every table of the handbook. All of them together are loaded only here: a check reads few of their rows. */
export async function openHandbook(): Promise<readonly HandbookTable[]> {
	const { tables } = await import("./handbook/index.ts");
	return tables;
}

/** What came of tidying a text. */
export interface TidiedPlan {
	readonly text: string;
	/** The lines that stayed exactly as they were because something there cannot be read, counted from 1, in order. */
	readonly kept: readonly number[];
}

/** What is wanted of a tidied text: `pinTags` writes each cable's automatic tag down, for which `find` finds what the plan uses. */
export interface TidyWish {
	readonly pinTags?: boolean;
	readonly find?: FindSource | undefined;
}

/**
 * A plan text in the layout of all plans: it says the same, with every comment, and tidied again it stays as it is.
 * What tidies is loaded only here.
 */
export async function tidyPlan(
	text: string,
	file: string,
	{ pinTags = false, find }: TidyWish = {},
): Promise<TidiedPlan> {
	const writing = await import("./writing/index.ts");
	const given = { text, ...readText(text, file) };
	const pinned = pinTags ? writing.pinTags(given, buildPlan(readSources(text, file, find).tree).plan) : text;
	const tidied = writing.tidyText(pinTags ? { text: pinned, ...readText(pinned, file) } : given);
	return { text: tidied.text, kept: [...tidied.kept].toSorted((one, other) => one - other) };
}

/** The text of a checked plan with everything said: slots, tags, and every landing, joint and end that was inferred. */
export async function writeOutPlan({ analysis, file }: CheckResult, text: string): Promise<string> {
	const { writeOut } = await import("./writing/index.ts");
	return writeOut({ text, ...readText(text, file) }, analysis.circuit);
}

/**
 * Every single mistake that a hand can make in a checked plan, each judged when it is asked for: found by which rule, the same,
 * harmless, to be found by a meter only, or missed. What makes mistakes is loaded only here.
 */
export async function makeMistakes({ analysis: { circuit } }: CheckResult): Promise<Iterable<JudgedMistake>> {
	const { surveyMistakes } = await import("./mistakes/survey.ts");
	return surveyMistakes(circuit, checkCircuit);
}

/** What the rules find in a circuit, each rule being asked only when its findings are. */
export function* checkCircuit(circuit: Circuit): Generator<Finding> {
	const analysis = analyse(circuit);
	for (const rule of rulesFor(circuit.plan)) yield* rule.check(analysis);
}

/** How many changed texts may still be tried for repairs. */
export interface RepairBudget {
	left: number;
}

/**
 * The lines to write that put a plan's findings right, by the keys of these, where that is certain: each was checked.
 * `text` and `find` are those of the check. What repairs is loaded only here.
 */
export async function repairPlan(
	{ analysis: { circuit }, findings, file }: CheckResult,
	text: string,
	find: FindSource | undefined,
	budget: RepairBudget,
): Promise<ReadonlyMap<string, readonly LineEdit[]>> {
	if (budget.left === 0 || findings.every(({ level }) => level === "note")) return new Map();
	const { offerRepairs } = await import("./repairs/offer-repairs.ts");
	return offerRepairs(
		{ text, tree: readText(text, file).tree, circuit, findings },
		{
			check: (changed) => {
				const result = checkPlan(changed, file, find);
				return { findings: result.findings, circuit: result.analysis.circuit };
			},
			build: (changed) => buildCircuit(planOf(changed, file, find).plan).circuit,
			budget,
		},
	);
}

const ruleNames = rules.map((rule) => rule.code);

/** Sorts findings by level, then place, then name, and numbers them from 1; what follows from another stands behind it. */
function numberFindings(findings: readonly Finding[]): NumberedFinding[] {
	const known = new Map(findings.map((finding) => [finding.key, finding]));
	const followers = new Map<Finding, Finding[]>();
	for (const finding of findings) {
		const root = rootOf(finding, known);
		if (root !== finding) followers.set(root, [...(followers.get(root) ?? []), finding]);
	}
	return findings
		.filter((finding) => rootOf(finding, known) === finding)
		.toSorted(compareFindings)
		.flatMap((root) => [root, ...(followers.get(root) ?? []).toSorted(compareFindings)])
		.map((finding, index) => ({ ...finding, number: index + 1 }));
}

/** The finding at the bottom of what one follows from; itself where it follows from none that was found, or from itself. */
function rootOf(finding: Finding, known: ReadonlyMap<string, Finding>): Finding {
	const seen = new Set<Finding>();
	let root = finding;
	for (;;) {
		seen.add(root);
		const next = root.consequenceOf === undefined ? undefined : known.get(root.consequenceOf);
		if (next === undefined) return root;
		if (seen.has(next)) return finding;
		root = next;
	}
}

function compareFindings(one: Finding, other: Finding): number {
	return (
		levels.indexOf(one.level) - levels.indexOf(other.level) ||
		compareSpans(one.span, other.span) ||
		compareText(one.code, other.code) ||
		compareText(one.title, other.title)
	);
}

function compareText(one: string, other: string): number {
	return one < other ? -1 : one > other ? 1 : 0;
}
