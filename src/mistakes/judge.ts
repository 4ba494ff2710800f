// The verdict on one mistake: whether it changed anything, which rule finds it, and if none does, why.
import type { Finding } from "../base/finding.ts";
import type { Circuit } from "../circuit/circuit.ts";
import { settleAnew } from "../circuit/modes.ts";
import { findHarmless } from "./harmless.ts";
import type { CheckCircuit, Mistake, Verdict } from "./mistake.ts";
import { isSame } from "./sameness.ts";

/** A circuit as it was before any mistake, with what is found in it then. */
export interface Unharmed {
	readonly circuit: Circuit;
	/** What is found in it, by key and level: no mistake is to answer for that. */
	readonly known: ReadonlySet<string>;
}

/** A circuit ready to have mistakes made in it. */
export function beforeMistakes(circuit: Circuit, check: CheckCircuit): Unharmed {
	return { circuit, known: new Set([...check(circuit)].map(nameOf)) };
}

/** What comes of a mistake. */
export function judgeMistake(before: Unharmed, mistake: Mistake, check: CheckCircuit): Verdict {
	const wrong = mistake.wrong();
	const places = new Set(mistake.places);
	if (mistake.reading !== undefined && wrong === before.circuit)
		return { verdict: "meter-only", reading: mistake.reading };
	if (isSame(before.circuit, wrong)) return { verdict: "same" };
	const found: Finding[] = [];
	for (const finding of check(settleAnew(wrong))) {
		if (finding.level === "note" || before.known.has(nameOf(finding))) continue;
		// Whatever else is found, nothing better can come.
		if (finding.consequenceOf === undefined && isAt(finding, places))
			return { verdict: "found", by: finding.code, named: true };
		found.push(finding);
	}
	const keys = new Set(found.map(({ key }) => key));
	const naming = found.find((finding) => !keys.has(finding.consequenceOf ?? "") && isAt(finding, places));
	const by = naming ?? found[0];
	if (by !== undefined) return { verdict: "found", by: by.code, named: naming !== undefined };
	if (mistake.reading !== undefined) return { verdict: "meter-only", reading: mistake.reading };
	const reason = findHarmless(before.circuit, wrong);
	return reason === undefined ? { verdict: "missed" } : { verdict: "harmless", reason };
}

/** Whether a finding is at the very place of the mistake or on a way through it; one that follows from no other names it then. */
function isAt({ marks, path }: Finding, places: ReadonlySet<string>): boolean {
	return marks.some((mark) => places.has(mark)) || path.some(({ point, by }) => places.has(point) || places.has(by));
}

function nameOf({ key, level }: Finding): string {
	return `${level} ${key}`;
}
