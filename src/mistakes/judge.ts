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
	return { circuit, known: new Set(check(circuit).map(nameOf)) };
}

/** What comes of a mistake. */
export function judgeMistake(before: Unharmed, mistake: Mistake, check: CheckCircuit): Verdict {
	const wrong = mistake.wrong();
	if (mistake.reading !== undefined && wrong === before.circuit)
		return { verdict: "meter-only", reading: mistake.reading };
	if (isSame(before.circuit, wrong)) return { verdict: "same" };
	const found = check(settleAnew(wrong)).filter(
		(finding) => finding.level !== "note" && !before.known.has(nameOf(finding)),
	);
	const naming = findNaming(found, mistake);
	const by = naming ?? found[0];
	if (by !== undefined) return { verdict: "found", by: by.code, named: naming !== undefined };
	if (mistake.reading !== undefined) return { verdict: "meter-only", reading: mistake.reading };
	const reason = findHarmless(before.circuit, wrong);
	return reason === undefined ? { verdict: "missed" } : { verdict: "harmless", reason };
}

/** A finding that follows from no other, at the very place of the mistake or on a way through it. */
function findNaming(found: readonly Finding[], { places }: Mistake): Finding | undefined {
	const keys = new Set(found.map(({ key }) => key));
	const here = new Set(places);
	return found.find(
		({ consequenceOf, marks, path }) =>
			(consequenceOf === undefined || !keys.has(consequenceOf)) &&
			(marks.some((mark) => here.has(mark)) || path.some(({ point, by }) => here.has(point) || here.has(by))),
	);
}

function nameOf({ key, level }: Finding): string {
	return `${level} ${key}`;
}
