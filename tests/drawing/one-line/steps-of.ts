// A plan's one-line steps as short lines of text, indented where a line parts: what tests compare.
import { followPower } from "../../../src/drawing/one-line/follow.ts";
import { groupAlike } from "../../../src/drawing/one-line/grouping.ts";
import type { Chain, Step } from "../../../src/drawing/one-line/steps.ts";
import { checkPlan } from "../../../src/pipeline.ts";

/** The steps of a plan text, alike neighbours drawn together but for the names in `apart`. */
export function stepsOf(text: string, apart: readonly string[] = []): string {
	const { analysis } = checkPlan(text, "plan");
	const chains = followPower(analysis.circuit).map((chain) => groupAlike(chain, new Set(apart)));
	return chains.flatMap((chain) => tell(chain, "")).join("\n");
}

function tell(chain: Chain, indent: string): string[] {
	return chain.flatMap((step) => tellStep(step, indent));
}

function tellStep(step: Step, indent: string): string[] {
	switch (step.kind) {
		case "device":
			return [`${indent}${step.place} ${step.parts.join("+")}: ${step.symbol}`];
		case "cable":
			return [`${indent}by ${step.cables.map((cable) => cable.tag).join("+")}`];
		case "joint":
			return [`${indent}joint ${step.label.name}`];
		case "flag":
			return [`${indent}flag ${step.text}`];
		case "bus":
		case "split":
			return [
				`${indent}${step.kind}${step.label.name === "" ? "" : ` ${step.label.name}`}`,
				...step.branches.flatMap((branch, index) => [`${indent}  ${index + 1}.`, ...tell(branch, `${indent}  `)]),
			];
	}
}
