// Tells of each neutral that two legs share what the legs draw and what the neutral carries.
import type { Analysis } from "../analysis/analysis.ts";
import { findSharedNeutrals, type Leg, type SharedNeutral } from "../analysis/shared-neutrals.ts";
import { listNames } from "../base/wording.ts";

/** A paragraph for each mode in which a neutral is shared, a line for each such neutral; empty where none is. */
export function tellSharedNeutrals({ states }: Analysis): string {
	const paragraphs = states.flatMap((state) => {
		const shared = findSharedNeutrals(state);
		return shared.length === 0 ? [] : [[`shared neutrals in mode ${state.mode.name}`, ...shared.map(tell)].join("\n")];
	});
	return paragraphs.map((paragraph) => `\n${paragraph}\n`).join("");
}

function tell({ neutral, legs: [first, second], together, most }: SharedNeutral): string {
	const isOpen = first.isOpen || second.isOpen;
	const legs = `  ${neutral}: leg A ${tellLeg(first)}, leg B ${tellLeg(second)}`;
	if (most === 0 && isOpen) return `${legs}; the neutral carries the difference of what is plugged in`;
	return `${legs}; ${amperes(together)} in the neutral with every fixed load on, ${amperes(most)} with one leg off${isOpen ? ", and what is plugged in" : ""}`;
}

function tellLeg({ amperes: drawn, parts, isOpen }: Leg): string {
	const own = drawn === 0 && isOpen ? "outlets" : `${amperes(drawn)}${isOpen ? " and outlets" : ""}`;
	return `${own} (${listNames(parts)})`;
}

function amperes(value: number): string {
	return `${Number(value.toFixed(1))} A`;
}
