// Pages as text for a terminal: one page whole, or the list of all with a sentence each.
import type { CheckPlan } from "../checker.ts";
import { tellFigure } from "../report/note.ts";
import { wrap } from "../report/visible.ts";
import type { Page, PagePlan } from "./page.ts";
import { findShown } from "./shown-faults.ts";

/** A page in 80 columns; `check` tells what is found in its wrong plans. */
export function writePage(page: Page, check: CheckPlan): string {
	const level = page.level === undefined ? "" : `, ${page.level}`;
	return [
		`${page.name} (${page.rule === undefined ? "" : `${page.rule.group} `}${groupNames[page.group].one}${level})`,
		"",
		...wrap(page.summary, columns),
		"",
		...page.slots.flatMap(({ word, text }) => writeSlot(word, text)),
		...page.plans.flatMap((plan) => writePlan(page, plan, check)),
		"",
	].join("\n");
}

function writePlan(page: Page, plan: PagePlan, check: CheckPlan): string[] {
	const shown = findShown(page, plan, check).flatMap(({ title, span, figures }) => [
		...writeSlot("finds", `line ${span.line}: ${title}`),
		...figures.flatMap((figure) => writeSlot("found", tellFigure(figure))),
	]);
	return ["", `${plan.word}:`, "", ...indent(plan.text), ...(shown.length === 0 ? [] : ["", ...shown])];
}

/** Every page under its group, with its sentence. */
export function writePageList(pages: readonly Page[]): string {
	const heads = new Map<string, Page[]>();
	for (const page of pages) {
		const head = page.rule === undefined ? groupNames[page.group].all : `Rules on ${page.rule.group}`;
		heads.set(head, [...(heads.get(head) ?? []), page]);
	}
	const blocks = [...heads].map(([head, under]) => {
		const rows = under.flatMap((page) => {
			const level = page.level === undefined ? "" : ` (${page.level})`;
			return [`  ${page.name}${level}`, ...wrap(page.summary, columns - 6).map((row) => `      ${row}`)];
		});
		return [`${head}:`, ...rows, ""].join("\n");
	});
	return blocks.join("\n");
}

const columns = 80;
const slotWidth = 12;
const groupNames = {
	rule: { one: "rule", all: "Rules" },
	text: { one: "error in the text", all: "What can be wrong with the text of a plan" },
	kind: { one: "kind of thing", all: "Kinds of things" },
} as const;

function writeSlot(word: string, text: string): string[] {
	return wrap(text, columns - slotWidth).map(
		(row, index) => `${(index === 0 ? word : "").padStart(slotWidth - 2)}  ${row}`,
	);
}

function indent(text: string): string[] {
	return text
		.trimEnd()
		.split("\n")
		.map((line) => (line === "" ? "" : `    ${line}`));
}
