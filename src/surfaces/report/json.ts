// A report as JSON, by the schema published in `grammar/findings.schema.json`. Members are added to it, never changed.

import type { NumberedFinding } from "../../base/finding.ts";
import { formatNumber } from "../../base/quantity.ts";
import { countFindings, type PlanReport } from "./report.ts";

/** The report of all plans; every finding is in it, however many there are. */
export function writeJson(plans: readonly (PlanReport & { readonly understood: boolean })[]): string {
	const report = {
		schema: 1,
		plans: plans.map(({ file, understood, scope, findings }) => {
			const { levels, accepted } = countFindings(findings);
			const all = Object.values(accepted).reduce((sum, number) => sum + number, 0);
			return {
				file,
				understood,
				counts: { ...levels, accepted: all, acceptedDangers: accepted.danger },
				checked: scope ?? null,
			};
		}),
		findings: plans.flatMap((plan) => plan.findings.map(toJson)),
	};
	return `${JSON.stringify(report, undefined, 2)}\n`;
}

function toJson(finding: NumberedFinding) {
	const { span } = finding;
	return {
		number: finding.number,
		key: finding.key,
		code: finding.code,
		level: finding.level,
		file: span.file,
		line: span.line,
		column: span.column,
		endColumn: span.endColumn,
		title: finding.title,
		label: finding.label,
		why: finding.why,
		help: finding.help,
		basis: finding.basis,
		figures: finding.figures.map((figure) => ({ ...figure, found: round(figure.found), limit: round(figure.limit) })),
		path: finding.path,
		modes: finding.modes,
		marks: finding.marks,
		also: finding.also.map((place) => ({
			file: place.span.file,
			line: place.span.line,
			column: place.span.column,
			endColumn: place.span.endColumn,
			label: place.label,
		})),
		unchecked: finding.unchecked ?? false,
		consequenceOf: finding.consequenceOf ?? null,
		repair: finding.repair ?? null,
		accepted: finding.accepted ?? null,
	};
}

/** Three decimals, as in the text form. */
function round(figure: number): number {
	return Number(formatNumber(figure));
}
