// Findings and a plan's text become the lines to write that put each right, where that is certain: every one was tried on the plan.
import type { Finding, LineEdit } from "../base/finding.ts";
import type { Circuit } from "../circuit/circuit.ts";
import type { Tree } from "../syntax/tree.ts";
import { type BuildText, landByConvention } from "./convention.ts";
import { exchangeConductors, exchangeSides, joinUnderTerminal } from "./landings.ts";
import { applyEdits, type Candidate, makeSubject, mergeEdits, type Subject } from "./subject.ts";
import { changeSaid } from "./words.ts";

/** A plan as it was checked. */
export interface CheckedText {
	readonly text: string;
	readonly tree: Tree;
	readonly circuit: Circuit;
	readonly findings: readonly Finding[];
}

/** How a changed text is tried. */
export interface Trial {
	readonly check: (text: string) => { readonly findings: readonly Finding[]; readonly circuit: Circuit };
	readonly build: BuildText;
	/** How many texts may be tried; counts down over all plans of a call. */
	readonly budget: { left: number };
}

/** The repairs by the keys of their findings. Roots alone get one: what follows from them goes with them. */
export function offerRepairs(plan: CheckedText, trial: Trial): ReadonlyMap<string, readonly LineEdit[]> {
	const offers = new Map<string, readonly LineEdit[]>();
	const told = new Set(plan.findings.map(({ key }) => key));
	for (const finding of plan.findings) {
		if (finding.level === "note" || finding.accepted !== undefined) continue;
		if (finding.consequenceOf !== undefined && told.has(finding.consequenceOf)) continue;
		const subject = makeSubject(finding, plan.text, plan.tree, plan.circuit);
		const repair = findRepair(subject, plan, trial);
		if (repair !== undefined) offers.set(finding.key, repair);
	}
	return offers;
}

/** The first candidate that holds. */
function findRepair(subject: Subject, plan: CheckedText, trial: Trial): Candidate | undefined {
	let tries = mostTries;
	for (const candidate of candidatesFor(subject, plan, trial)) {
		if (tries-- === 0 || trial.budget.left === 0) return undefined;
		trial.budget.left--;
		if (putsRight(subject.finding, plan, trial, applyEdits(plan.text, candidate))) return mergeEdits(candidate);
	}
	return undefined;
}

/** Of one finding. */
const mostTries = 25;

function* candidatesFor(subject: Subject, plan: CheckedText, trial: Trial): Generator<Candidate> {
	for (const way of ways.get(subject.finding.code) ?? [])
		switch (way) {
			case "words":
				yield* changeSaid(subject);
				break;
			case "joint":
				yield* joinUnderTerminal(subject);
				break;
			case "exchange":
				yield* exchangeConductors(subject);
				break;
			case "sides":
				yield* exchangeSides(subject);
				break;
			case "convention":
				yield* landByConvention(subject, plan.text, trial.build);
		}
}

type Way = "words" | "joint" | "exchange" | "sides" | "convention";
const landed: readonly Way[] = ["exchange", "convention"];
const sided: readonly Way[] = ["exchange", "sides", "convention"];

/** Ways that may put a fault right, by its rule, the likeliest first. What hangs on a fact that only the builder knows has none. */
const ways: ReadonlyMap<string, readonly Way[]> = new Map<string, readonly Way[]>([
	["back-feed-unfastened", ["words"]],
	["bond-doubled", ["words", "convention"]],
	["charging-reversed", sided],
	["circuit-mislabelled", landed],
	["circuits-joined", landed],
	["colour-misleading", ["words", ...landed]],
	["enclosure-unbonded", ["convention"]],
	["end-loose", ["convention"]],
	["ground-broken", ["convention", "exchange"]],
	["ground-fault-missing", ["words"]],
	["joint-size-wrong", ["convention"]],
	["leg-left-live", ["words"]],
	["line-load-reversed", ["sides", ...landed]],
	["main-bypassed", landed],
	["neutral-borrowed", landed],
	["neutral-ground-exchanged", landed],
	["neutral-not-isolated", ["words", ...landed]],
	["neutral-shared-unsafely", ["words", ...landed]],
	["one-pole-opened", ["words"]],
	["polarity-dc-reversed", sided],
	["polarity-reversed", landed],
	["poles-joined", sided],
	["sources-paralleled", sided],
	["protection-missing", landed],
	["protection-too-large", ["words"]],
	["receptacle-rating-wrong", ["words"]],
	["strands-unterminated", ["words"]],
	["switch-in-neutral", sided],
	["switch-without-effect", sided],
	["systems-mixed", landed],
	["terminal-overfilled", ["joint", "convention"]],
]);

/** Whether the finding is gone from the changed text, no other has come, and as much of the plan is understood as before. */
function putsRight(target: Finding, plan: CheckedText, trial: Trial, text: string): boolean {
	if (text === plan.text) return false;
	const { findings, circuit } = trial.check(text);
	if (circuit.plan.incomplete && !plan.circuit.plan.incomplete) return false;
	if (circuit.parts.length < plan.circuit.parts.length) return false;
	// Whatever is taken off and capped shows no fault, and is no repair.
	if (countFree(circuit) > countFree(plan.circuit)) return false;
	const before = new Map<string, number>();
	for (const finding of plan.findings) before.set(nameOf(finding), (before.get(nameOf(finding)) ?? 0) + 1);
	for (const finding of findings) {
		// What the fault kept from being looked at may lack a fact.
		if (finding.unchecked === true && finding.level === "note") continue;
		const left = before.get(nameOf(finding)) ?? 0;
		if (left === 0 || nameOf(finding) === nameOf(target)) return false;
		before.set(nameOf(finding), left - 1);
	}
	return true;
}

/** Ends that are on nothing. */
function countFree({ conductors }: Circuit): number {
	let free = 0;
	for (const { ends } of conductors) for (const { state } of ends) if (state !== "landed") free++;
	return free;
}

/** A finding by what it says: lines and columns may have moved. What a note was told of may go by another name then. */
function nameOf({ code, level, title }: Finding): string {
	return level === "note" ? code : `${code} ${level} ${title}`;
}
