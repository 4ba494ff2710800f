// One call of the command from its words to its exit status. Nothing is thrown past here.
import { didYouMean } from "../../base/nearest.ts";
import { visible } from "../report/visible.ts";
import { status } from "../status.ts";
import { writeHelp, writeVerbHelp } from "./help.ts";
import { helpOption } from "./options.ts";
import { parseCall } from "./parse-call.ts";
import { addSettings, settingsVariable } from "./settings.ts";
import { verbs } from "./verbs.ts";
import type { World } from "./world.ts";

/** Runs the words behind `ferrule` and gives the exit status. */
export async function runCommand(words: readonly string[], world: World): Promise<number> {
	try {
		return await dispatch(words, world);
	} catch (error) {
		world.messages.write(tellInternalFault(error, world.version));
		return status.internal;
	}
}

/** One line on a fault of ours: no blame, no stack, what to send. */
export function tellInternalFault(error: unknown, version: string): string {
	const what = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
	return `ferrule: Ferrule itself has failed, not your plan. Please report this line with the plan: version ${version}, ${visible(what)}\n`;
}

async function dispatch(words: readonly string[], world: World): Promise<number> {
	const [first, ...rest] = words;
	if (first === undefined) {
		world.messages.write(writeHelp(verbs));
		return status.call;
	}
	if (first === "--version") {
		world.output.write(`ferrule ${world.version}\n`);
		return status.fine;
	}
	if (first === "--help" || first === "-h" || first === "help") return help(rest[0], world);
	const verb = verbs.find((each) => each.name === first);
	if (verb === undefined) return unknown(first, world);
	const call = parseCall(verb, rest);
	if ("why" in call) return refuse(call.status, call.why, world);
	if (call.options.has(helpOption.name)) return help(verb.name, world);
	const complete = addSettings(call, verb, world.environment(settingsVariable));
	if ("why" in complete) return refuse(complete.status, complete.why, world);
	return verb.run(complete, world);
}

function help(name: string | undefined, world: World): number {
	const verb = verbs.find((each) => each.name === name);
	if (name !== undefined && verb === undefined) return unknown(name, world);
	world.output.write(verb === undefined ? writeHelp(verbs) : writeVerbHelp(verb));
	return status.fine;
}

function unknown(word: string, world: World): number {
	const known = word.startsWith("-") ? ["--help", "--version"] : verbs.map((verb) => verb.name);
	const near = didYouMean(word, known);
	const sort = word.startsWith("-") ? "option" : "verb";
	return refuse(status.call, `There is no ${sort} \`${word}\`. ${near || `There are ${known.join(", ")}.`}`, world);
}

function refuse(code: number, why: string, world: World): number {
	world.messages.write(`ferrule: ${visible(why)}\n`);
	return code;
}
