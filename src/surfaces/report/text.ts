// A whole report as text: a note for each root finding with what follows from it, then one line of counts.
import type { NumberedFinding } from "../../base/finding.ts";
import { type Setting, writeNote } from "./note.ts";
import { choosePrinted, countFindings, type PlanReport, summarise } from "./report.ts";
import { tellScope } from "./scope.ts";
import { wrap } from "./visible.ts";

/** The report for a person at a terminal; ends with the line of counts. */
export function writeText(plans: readonly PlanReport[], setting: Setting): string {
	const notes: string[] = [];
	const printed = new Set(choosePrinted(plans.flatMap((plan) => plan.findings)));
	let told = 0;
	for (const plan of plans) {
		const lines = new Map([[plan.file, linesOf(plan.text)]]);
		for (const [file, text] of plan.used ?? []) lines.set(file, linesOf(text));
		for (const tree of growTrees(plan.findings)) {
			if (!printed.has(tree.finding)) continue;
			const consequences = tree.consequences.filter((consequence) => printed.has(consequence));
			told += 1 + consequences.length;
			notes.push(...writeNote({ ...tree, consequences, lines }, setting), "");
		}
	}
	const all = plans.reduce((sum, plan) => sum + plan.findings.length, 0);
	const scope = tellScope(plans);
	const checked = scope === "" ? [] : wrap(scope, setting.width);
	return [...notes, ...checked, ...writeCaution(plans, setting.width), summarise(plans, all - told), ""].join("\n");
}

function linesOf(text: string): readonly string[] {
	return text.split(/\r\n|\r|\n/);
}

/** A finding with all that follows from it. */
interface FindingTree {
	readonly finding: NumberedFinding;
	readonly root: NumberedFinding | undefined;
	readonly consequences: readonly NumberedFinding[];
}

/**
 * Roots in their order, each with its consequences, however far down.
 * A consequence whose root was accepted is told in full: it still has to be put right.
 */
function growTrees(findings: readonly NumberedFinding[]): FindingTree[] {
	const byKey = new Map(findings.map((finding) => [finding.key, finding]));
	const under = new Map<NumberedFinding, NumberedFinding[]>();
	const trees: { finding: NumberedFinding; root: NumberedFinding | undefined }[] = [];
	for (const finding of findings) {
		const root = rootOf(finding, byKey);
		if (root === finding) trees.push({ finding, root: undefined });
		else if (root.accepted !== undefined && finding.accepted === undefined) trees.push({ finding, root });
		else under.set(root, [...(under.get(root) ?? []), finding]);
	}
	return trees.map((tree) => ({ ...tree, consequences: under.get(tree.finding) ?? [] }));
}

function rootOf(finding: NumberedFinding, byKey: ReadonlyMap<string, NumberedFinding>): NumberedFinding {
	const passed = new Set([finding]);
	let root = finding;
	for (;;) {
		const next = root.consequenceOf === undefined ? undefined : byKey.get(root.consequenceOf);
		// Two that name each other have no root; then each stands by itself.
		if (next === undefined) return root;
		if (passed.has(next)) return finding;
		passed.add(next);
		root = next;
	}
}

/** A plan that passes is not yet safe to switch on. */
function writeCaution(plans: readonly PlanReport[], width: number): string[] {
	const { levels, accepted } = countFindings(plans.flatMap((plan) => plan.findings));
	const first = levels.danger + levels.error > 0 ? "Do not switch it on as it is. " : "";
	const second = accepted.danger > 0 ? "A danger that was accepted is a danger still. " : "";
	return wrap(`${first}${second}${caution}`, width);
}

/** What goes with everything that may lead someone to a live conductor. */
const caution =
	"Follow the local code, have the work checked by a licensed person, and isolate and prove dead before you touch a conductor.";
