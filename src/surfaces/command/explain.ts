// `ferrule explain`: the page of a rule, of an error in the text, or of a kind of thing; without a name, the list of all.
import { didYouMean } from "../../base/nearest.ts";
import type { Page } from "../reference/page.ts";
import { visible, wrap } from "../report/visible.ts";
import { status } from "../status.ts";
import type { Verb } from "./verb.ts";

export const explain: Verb = {
	name: "explain",
	summary: "the page of a finding's code or of a kind of thing",
	operands: { words: "[CODE]", least: 0, most: 1 },
	about: [
		"Prints what a code means, what can happen, what to do, where it applies, the clause behind it, the meter test, and a wrong and a right plan. Without a CODE it lists every rule, every error in the text, and every kind of thing.",
	],
	options: [],
	examples: [
		{ call: "ferrule explain ground-broken", says: "the page of one rule" },
		{ call: "ferrule explain receptacle", says: "the page of one kind of thing" },
		{ call: "ferrule explain", says: "the list of all" },
	],
	run: async (call, world) => {
		const pages = world.pages();
		const [name] = call.operands;
		if (name === undefined) {
			world.output.write(writeList(pages));
			return status.fine;
		}
		const page = pages.find((each) => each.name === name) ?? pages.find((each) => each.also.includes(name));
		if (page === undefined) {
			const near = didYouMean(
				name,
				pages.flatMap((each) => [each.name, ...each.also]),
			);
			const hint = near === "" ? "`ferrule explain` lists all codes and kinds." : near;
			world.messages.write(`ferrule: there is no page on \`${visible(name)}\`. ${hint}\n`);
			return status.call;
		}
		world.output.write(writePage(page));
		return status.fine;
	},
};

const columns = 80;
const slotWidth = 12;

function writePage(page: Page): string {
	const level = page.level === undefined ? "" : `, ${page.level}`;
	return [
		`${page.name} (${groupNames[page.group].one}${level})`,
		"",
		...wrap(page.summary, columns),
		"",
		...page.slots.flatMap(({ word, text }) => writeSlot(word, text)),
		...page.plans.flatMap(({ word, text }) => ["", `${word}:`, "", ...indent(text)]),
		"",
	].join("\n");
}

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

/** Every page under its group, with its sentence. */
function writeList(pages: readonly Page[]): string {
	const blocks = groups.map((group) => {
		const rows = pages
			.filter((page) => page.group === group)
			.flatMap((page) => {
				const level = page.level === undefined ? "" : ` (${page.level})`;
				return [`  ${page.name}${level}`, ...wrap(page.summary, columns - 6).map((row) => `      ${row}`)];
			});
		return [`${groupNames[group].all}:`, ...rows, ""].join("\n");
	});
	return blocks.join("\n");
}

const groups = ["rule", "text", "kind"] as const;
const groupNames = {
	rule: { one: "rule", all: "Rules, by what is wrong with the wiring" },
	text: { one: "error in the text", all: "What can be wrong with the text of a plan" },
	kind: { one: "kind of thing", all: "Kinds of things" },
} as const;
