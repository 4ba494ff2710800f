// `ferrule explain`: the page of a rule, of an error in the text, or of a kind of thing; without a name, the list of all.
import { didYouMean } from "../../base/nearest.ts";
import { writePageJson, writePageListJson } from "../reference/page-json.ts";
import { writePage, writePageList } from "../reference/page-text.ts";
import { visible } from "../report/visible.ts";
import { status } from "../status.ts";
import { asOption } from "./options.ts";
import { choiceOf, type Option, type Verb } from "./verb.ts";

const pageForms = ["text", "json"] as const;
const asPageOption: Option = {
	name: asOption.name,
	value: { word: "FORM", choices: pageForms },
	summary: "text to read, json for programs",
};

export const explain: Verb = {
	name: "explain",
	summary: "the page of a finding's code or of a kind of thing",
	operands: { words: "[CODE]", least: 0, most: 1 },
	about: [
		"Prints what a code means, what can happen, what to do, where it applies, the clause behind it, the meter test, and wrong plans with what is found in them, and right ones. Without a CODE it lists every rule, every error in the text, and every kind of thing.",
	],
	options: [asPageOption],
	examples: [
		{ call: "ferrule explain ground-broken", says: "the page of one rule" },
		{ call: "ferrule explain receptacle", says: "the page of one kind of thing" },
		{ call: "ferrule explain", says: "the list of all" },
		{ call: "ferrule explain ground-broken --as json", says: "for programs; see grammar/pages.schema.json" },
	],
	run: async (call, world) => {
		const pages = world.pages();
		const [name] = call.operands;
		const asJson = choiceOf(call, asPageOption.name, pageForms) === "json";
		if (name === undefined) {
			world.output.write(asJson ? writePageListJson(pages) : writePageList(pages));
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
		world.output.write(asJson ? writePageJson(page, world.checkPlan) : writePage(page, world.checkPlan));
		return status.fine;
	},
};
