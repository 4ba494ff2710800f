// A person's own usual options, from the environment. They stand behind those of the call and in front of none.

import type { Failure } from "../files/system.ts";
import { status } from "../status.ts";
import { asReportOption, colourOption, failOnOption } from "./options.ts";
import { readOptions } from "./parse-call.ts";
import type { Call, Option, Verb } from "./verb.ts";

/** Where they are read from: `FERRULE_OPTIONS="--color never --fail-on warning"`. */
export const settingsVariable = "FERRULE_OPTIONS";

/** What may be set so: how a report looks and when it fails, never what is read or written. */
export const settable: readonly Option[] = [asReportOption, colourOption, failOnOption];

/** The call with the settings filled in where the verb takes them and the call is silent. */
export function addSettings(call: Call, verb: Verb, text: string | undefined): Call | Failure {
	const words = (text ?? "").split(/\s+/).filter((word) => word !== "");
	const settings = readOptions(settable, words);
	if ("why" in settings) return bad(settings.why);
	const [extra] = settings.operands;
	if (extra !== undefined) return bad(`\`${extra}\` is not an option.`);
	const options = new Map(call.options);
	for (const [name, value] of settings.options)
		if (!options.has(name) && verb.options.some((option) => option.name === name)) options.set(name, value);
	return { ...call, options };
}

function bad(why: string): Failure {
	return { status: status.settings, why: `The settings in ${settingsVariable} cannot be used: ${why}` };
}
