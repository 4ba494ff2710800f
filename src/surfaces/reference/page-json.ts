// Pages as JSON, by the schema published in `grammar/pages.schema.json`. Members are added to it, never changed.
import type { CheckPlan } from "../checker.ts";
import type { Page, RuleFacts } from "./page.ts";
import { findShown } from "./shown-faults.ts";

/** One page whole; `check` tells what is found in its wrong plans. */
export function writePageJson(page: Page, check: CheckPlan): string {
	const { rule } = page;
	return write([
		{
			...briefly(page),
			says: page.slots,
			...(rule === undefined ? {} : tellRule(rule)),
			plans: page.plans.map((plan) => ({
				sort: plan.sort,
				text: plan.text,
				findings: findShown(page, plan, check).map(({ level, title, span, figures }) => ({
					level,
					line: span.line,
					title,
					figures,
				})),
			})),
		},
	]);
}

function tellRule({ clause, applies: { regions, rules, differs }, meter }: RuleFacts) {
	return { clause, applies: { regions, rules, differs: differs ?? null }, meter };
}

/** All pages, each with its sentence alone. */
export function writePageListJson(pages: readonly Page[]): string {
	return write(pages.map(briefly));
}

function briefly({ name, also, group, rule, level, summary }: Page) {
	return { name, also, sort: group, group: rule?.group ?? null, level: level ?? null, summary };
}

function write(pages: readonly object[]): string {
	return `${JSON.stringify({ schema: 1, pages }, undefined, 2)}\n`;
}
