// A plan that was read becomes a report: what the check finds in the text, and behind it what reading found in the bytes.
import type { NumberedFinding } from "../../base/finding.ts";
import type { CheckedFacts, CheckedPlan } from "../checker.ts";
import type { PlanReport } from "../report/report.ts";
import { reaches } from "../report/report.ts";
import { status } from "../status.ts";
import type { PlanInput } from "./inputs.ts";
import { failLevels, failOnOption } from "./options.ts";
import { type Call, choiceOf } from "./verb.ts";
import type { World } from "./world.ts";

/** A report, with whether enough was read and understood to draw or show anything. */
export interface Verdict extends PlanReport {
	readonly understood: boolean;
	readonly used: ReadonlyMap<string, string>;
	readonly input: PlanInput;
}

/** A verdict with the checked plan it came from; undefined where nothing was understood. */
export interface Judgement extends Verdict {
	readonly checked: CheckedPlan | undefined;
}

/** The report on one plan. */
export function judge(input: PlanInput, world: World): Judgement {
	const checked = input.text === undefined ? undefined : world.checkPlan(input.text, input.name, input.find);
	return { ...reportOn(input, checked), checked: checked?.understood === true ? checked : undefined };
}

/** What was found in the text, and behind it what was found in the bytes. */
function reportOn(input: PlanInput, checked: CheckedFacts | undefined): Verdict {
	const found = checked?.findings ?? [];
	// The numbers of the check stand: the drawings bear them too.
	const last = found.reduce((most, finding) => Math.max(most, finding.number), 0);
	const read: NumberedFinding[] = input.findings.map((finding, index) => ({ ...finding, number: last + index + 1 }));
	return {
		file: input.name,
		text: input.text ?? "",
		used: checked?.used ?? new Map<string, string>(),
		findings: [...found, ...read],
		scope: checked?.scope,
		understood: checked?.understood ?? false,
		input,
	};
}

/** The reports on all plans; undefined when the user interrupted. */
export function judgeAll(inputs: readonly PlanInput[], world: World): Promise<Judgement[] | undefined> {
	return judgeEach(inputs, world, async (judgement) => judgement);
}

/** Of the report on each plan what `keep` makes of it; undefined when the user interrupted. */
export async function judgeEach<Kept extends Verdict>(
	inputs: readonly PlanInput[],
	world: World,
	keep: (judgement: Judgement) => Promise<Kept>,
): Promise<Kept[] | undefined> {
	const kept: Kept[] = [];
	for (const input of inputs) {
		if (await world.interrupted()) return undefined;
		kept.push(await keep(judge(input, world)));
	}
	return leaveOutShared(kept);
}

/** The verdicts on all plans, checked in several threads; undefined when the user interrupted. */
export async function judgeInThreads(
	inputs: readonly PlanInput[],
	threads: number,
	world: World,
): Promise<Verdict[] | undefined> {
	const texts = inputs.flatMap(({ text, name, path, roots }) =>
		text === undefined ? [] : [{ text, name, path, roots }],
	);
	const facts = await world.checkInThreads(texts, threads);
	if (facts === undefined) return undefined;
	const found = facts.values();
	return leaveOutShared(
		inputs.map((input) => reportOn(input, input.text === undefined ? undefined : found.next().value)),
	);
}

/**
 * A file of a folder that wires nothing and that another plan uses is no plan by itself: it was checked with the plan that uses it.
 */
export function leaveOutShared<Kept extends Verdict>(verdicts: readonly Kept[]): Kept[] {
	const used = new Set(verdicts.flatMap((verdict) => [...verdict.used.keys()]));
	return verdicts.filter(({ input, understood, file }) => understood || !input.found || !used.has(file));
}

/** The exit status for what was found, by the level that the call asks for; a plan in which nothing can be wired counts as a finding. */
export function statusOf(verdicts: readonly Verdict[], call: Call): number {
	const level = choiceOf(call, failOnOption.name, failLevels);
	if (level === "never") return status.fine;
	// Nothing in it was checked: that is no plan that passes.
	if (verdicts.some(({ understood }) => !understood)) return status.findings;
	return verdicts.some(({ findings }) => reaches(findings, level)) ? status.findings : status.fine;
}

/** The exit status of a verb that makes something of each plan: a plan of which nothing can be made is a finding, whatever the level. */
export function statusOfWork(judgements: readonly Judgement[], call: Call): number {
	if (judgements.some((judgement) => judgement.checked === undefined)) return status.findings;
	return statusOf(judgements, call);
}
