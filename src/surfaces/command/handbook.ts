// `ferrule handbook`: a table of published numbers with its sources; without a name, the list of all.
import { didYouMean } from "../../base/nearest.ts";
import { writeTable, writeTableList, writeTablesJson } from "../report/handbook.ts";
import { visible } from "../report/visible.ts";
import { status } from "../status.ts";
import { asOption } from "./options.ts";
import { choiceOf, type Option, type Verb } from "./verb.ts";

const tableForms = ["text", "json"] as const;
const asTableOption: Option = {
	name: asOption.name,
	value: { word: "FORM", choices: tableForms },
	summary: "text to read, json for programs",
};

export const handbook: Verb = {
	name: "handbook",
	summary: "print a table of published numbers with its sources",
	operands: { words: "[NAME]", least: 0, most: 1 },
	about: [
		"Prints a table of the numbers that checks and figures rest on: each row with its published source, the edition where it is known, and whether it was read there, recalled, computed, or is common practice. Without a NAME it lists every table.",
		"The standards themselves, the code in force where you build, and a licensed person decide.",
	],
	options: [asTableOption],
	examples: [
		{ call: "ferrule handbook", says: "the list of all tables" },
		{ call: "ferrule handbook copper-ampacity", says: "one table, each row with its source" },
		{ call: "ferrule handbook resistance-75 --as json", says: "for programs; see grammar/handbook.schema.json" },
	],
	run: async (call, world) => {
		const tables = await world.handbook();
		const [name] = call.operands;
		const found = name === undefined ? tables : tables.filter((table) => table.name === name);
		if (name !== undefined && found.length === 0) {
			const near = didYouMean(
				name,
				tables.map((table) => table.name),
			);
			const hint = near === "" ? "`ferrule handbook` lists all tables." : near;
			world.messages.write(`ferrule: there is no table \`${visible(name)}\`. ${hint}\n`);
			return status.call;
		}
		if (choiceOf(call, asTableOption.name, tableForms) === "json") world.output.write(writeTablesJson(found));
		else world.output.write(name === undefined ? writeTableList(found) : found.map(writeTable).join("\n"));
		return status.fine;
	},
};
