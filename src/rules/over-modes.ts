// Asks a question of every source mode; what is found alike in several is one finding that names them.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { DirectState } from "../analysis/direct.ts";
import { type Finding, levels } from "../base/finding.ts";
import { modesOf } from "./mode-names.ts";

/** The findings of all modes. Of those with one key the first of the worst level is kept, with the modes in which it holds. */
export function findOverModes(analysis: Analysis, check: (state: ModeState) => readonly Finding[]): Finding[] {
	const kept = new Map<string, { finding: Finding; modes: Set<string> }>();
	for (const state of analysis.states)
		for (const finding of check(state)) {
			const known = kept.get(finding.key);
			if (known === undefined) kept.set(finding.key, { finding, modes: new Set([state.mode.name]) });
			else {
				known.modes.add(state.mode.name);
				if (levels.indexOf(finding.level) < levels.indexOf(known.finding.level)) known.finding = finding;
			}
		}
	return [...kept.values()].map(({ finding, modes }) => ({ ...finding, modes: modesOf(analysis, modes) }));
}

/** The same for a question of the direct-current side alone: modes that share it are asked once. */
export function findOverDirect(analysis: Analysis, check: (direct: DirectState) => readonly Finding[]): Finding[] {
	const known = new Map<DirectState, readonly Finding[]>();
	return findOverModes(analysis, ({ direct }) => {
		if (direct === undefined) return [];
		const found = known.get(direct) ?? check(direct);
		known.set(direct, found);
		return found;
	});
}
