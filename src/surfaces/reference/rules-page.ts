// All pages of rules as one Markdown page, `grammar/rules.md`: a table of where each applies, then rule by rule.
import { regions, ruleSets } from "../../handbook/scope.ts";
import type { CheckPlan } from "../checker.ts";
import { tellFigure } from "../report/note.ts";
import { withoutMarks } from "./marks.ts";
import type { Page, PagePlan } from "./page.ts";
import { findShown } from "./shown-faults.ts";

/** The page of the pages that are rules' own; `check` tells what is found in their wrong plans. */
export function writeRulesPage(pages: readonly Page[], check: CheckPlan): string {
	const groups = new Map<string, Page[]>();
	for (const page of pages)
		if (page.rule !== undefined) groups.set(page.rule.group, [...(groups.get(page.rule.group) ?? []), page]);
	const parts = [...groups].flatMap(([group, members]) => [
		`## ${startWithCapital(group)}\n`,
		...members.map((page) => writeRule(page, check)),
	]);
	return [head, writeTable(groups), ...parts].join("\n");
}

const head = `# The rules

Every rule, made from what the rules say of themselves; \`ferrule explain RULE\` prints the same. What a text of a plan can have wrong
with it stands in \`ferrule explain\` alone; the kinds of things are on [a page of theirs](kinds.md), and so is [the notation](reference.md).

\`danger\` can shock or burn, \`error\` is wrong, \`warning\` is against good practice, \`note\` is for information. A clause that was not read in
a published text says how else it is known: recalled from memory, computed, or common practice of the trade. The code in force where the
place is used and a licensed person decide.

**Before any test called dead:** isolate every source (shore cord, generator, inverter, battery, solar), prove your tester, prove dead, and
prove the tester again. Tests called live are for those who are trained for them.
`;

/** Where each rule applies, a row each. */
function writeTable(groups: ReadonlyMap<string, readonly Page[]>): string {
	const columns = regions.flatMap((region) => ruleSets.map((rules) => ({ region, rules })));
	const rows = [...groups.values()].flat().map(({ name, level, rule }) => {
		const cells = columns.map(({ region, rules }) =>
			rule?.applies.regions.includes(region) === true && rule.applies.rules.includes(rules) ? "yes" : "no",
		);
		return `| [${name}](#${name}) | ${[level, ...cells].join(" | ")} |`;
	});
	return [
		"## Where each applies\n",
		`| rule | level | ${columns.map(({ region, rules }) => `${region} ${rules}`).join(" | ")} |`,
		`| --- | --- |${" --- |".repeat(columns.length)}`,
		...rows,
		"",
	].join("\n");
}

function writeRule(page: Page, check: CheckPlan): string {
	const says: string[] = [];
	for (const { word, text } of page.slots) {
		// A word left out goes on with the one before, on a line of its own.
		if (word === "") says.push(`${says.pop() ?? ""}\\\n  ${withoutMarks(text)}`);
		else says.push(`- **${word}:** ${withoutMarks(text)}`);
	}
	return [
		`### ${page.name}\n`,
		`${page.level === undefined ? "" : `**${page.level}.** `}${withoutMarks(page.summary)}\n`,
		...says,
		"",
		...page.plans.flatMap((plan) => writePlan(page, plan, check)),
	].join("\n");
}

function writePlan(page: Page, plan: PagePlan, check: CheckPlan): string[] {
	const shown = findShown(page, plan, check).map(({ title, span, figures }) => {
		const sums = figures.map((figure) => `; ${tellFigure(figure)}`).join("");
		return `- finds at line ${span.line}: ${withoutMarks(`${title}${sums}`)}`;
	});
	return [
		`${plan.word}:\n`,
		`\`\`\`ferrule\n${plan.text.trimEnd()}\n\`\`\`\n`,
		...(shown.length === 0 ? [] : [...shown, ""]),
	];
}

function startWithCapital(word: string): string {
	return word.slice(0, 1).toUpperCase() + word.slice(1);
}
