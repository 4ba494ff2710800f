// A plan text read and built, with what was found as short lines.
import type { Finding } from "../../src/base/finding.ts";
import { buildPlan } from "../../src/plan/build-plan.ts";
import type { Hop, Plan, Run } from "../../src/plan/plan.ts";
import { readText } from "../../src/syntax/read.ts";

/** What a text says. `told` has a line for each finding of text and plan: `line:text under it code`. */
export function readPlan(text: string): { plan: Plan; findings: readonly Finding[]; told: readonly string[] } {
	const read = readText(text, "plan");
	const built = buildPlan(read.tree);
	const findings = [...read.findings, ...built.findings];
	const lines = text.split("\n");
	const told = findings.map(({ code, span }) => {
		const under = (lines[span.line - 1] ?? "").slice(span.column - 1, span.endColumn - 1);
		return `${span.line}:${under} ${code}`;
	});
	return { plan: built.plan, findings, told };
}

/** The run of a name. */
export function runOf(plan: Plan, name: string): Run | undefined {
	return plan.runs.find((run) => run.name === name);
}

/** A hop as a line: `tag: from.side -> to.side by make length`. */
export function tellHop({ tag, from, to, cable, lengthText }: Hop): string {
	const end = ({ thing, side }: Hop["from"]): string => (side === undefined ? thing : `${thing}>${side}`);
	return `${tag}: ${end(from)} -> ${end(to)} by ${cable.text}${lengthText === "" ? "" : ` ${lengthText}`}`;
}

/** An inlet and a panel, two lines. */
export const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
