// The words behind a verb become a call, or a message that says which word is wrong and which is near it.
import { parseArgs } from "node:util";
import { didYouMean } from "../../base/nearest.ts";
import type { Failure } from "../files/system.ts";
import { status } from "../status.ts";
import { helpOption } from "./options.ts";
import type { Call, Option, Verb } from "./verb.ts";

/** What the words ask for; an option that is given twice has its last value. */
export function parseCall(verb: Verb, words: readonly string[]): Call | Failure {
	const options = [...verb.options, helpOption];
	const given = readOptions(options, words);
	if ("why" in given) return { ...given, why: `${given.why} See \`ferrule ${verb.name} --help\`.` };
	if (given.options.has(helpOption.name)) return given;
	const { least, most, words: operands } = verb.operands;
	if (given.operands.length < least) return wrong(`Name what to ${verb.name}: \`ferrule ${verb.name} ${operands}\`.`);
	if (given.operands.length > most) {
		const extra = given.operands[most] ?? "";
		return wrong(`\`${extra}\` is one word too many: \`ferrule ${verb.name} ${operands}\`.`);
	}
	return given;
}

/** Options and operands of a row of words, against the options that may stand there. */
export function readOptions(options: readonly Option[], words: readonly string[]): Call | Failure {
	const byName = new Map(options.map((option) => [option.name, option]));
	const { tokens } = parseArgs({
		args: [...words],
		strict: false,
		tokens: true,
		allowPositionals: true,
		options: Object.fromEntries(
			options.map((option) => [option.name, { type: option.value === undefined ? "boolean" : "string" } as const]),
		),
	});
	const operands: string[] = [];
	const values = new Map<string, string>();
	for (const token of tokens) {
		if (token.kind === "positional") operands.push(token.value);
		if (token.kind !== "option") continue;
		const name = token.rawName === "-h" ? helpOption.name : token.name;
		const option = token.rawName.startsWith("--") || token.rawName === "-h" ? byName.get(name) : undefined;
		if (option === undefined) {
			const near = didYouMean(
				token.rawName,
				options.map((each) => `--${each.name}`),
			);
			return wrong(`There is no option \`${token.rawName}\` here. ${near}`.trim());
		}
		const fault = judgeValue(option, token.value);
		if (fault !== undefined) return wrong(fault);
		values.set(name, token.value ?? "");
	}
	return { operands, options: values };
}

/** What is wrong with the value of an option, if anything is. */
function judgeValue(option: Option, value: string | undefined): string | undefined {
	if (option.value === undefined) return value === undefined ? undefined : `\`--${option.name}\` takes no value.`;
	const { word, choices } = option.value;
	const known = choices === undefined ? "" : `: ${choices.join(", ")}`;
	if (value === undefined || value === "")
		return `\`--${option.name}\` needs a value behind it: ${word}${known === "" ? "" : `, one of ${choices?.join(", ")}`}.`;
	if (choices === undefined || choices.includes(value)) return undefined;
	const near = didYouMean(value, choices);
	return `\`--${option.name} ${value}\` is not one of its values${known}. ${near}`.trim();
}

function wrong(why: string): Failure {
	return { status: status.call, why };
}
