// What a verb of the command is: its words for help, the options it takes, and what it does.
import type { World } from "./world.ts";

/** One verb. Its file is named after it. */
export interface Verb {
	readonly name: string;
	/** One line for the list of verbs. */
	readonly summary: string;
	/** What stands behind the verb: `PLAN...`, `[CODE]`. */
	readonly operands: { readonly words: string; readonly least: number; readonly most: number };
	/** What it does, in a paragraph or two. */
	readonly about: readonly string[];
	readonly options: readonly Option[];
	readonly examples: readonly Example[];
	/** Gives the exit status. */
	readonly run: (call: Call, world: World) => Promise<number>;
}

/** An option. With `value` it takes one: that word in help, and the choices if there are any. */
export interface Option {
	readonly name: string;
	readonly value?: { readonly word: string; readonly choices?: readonly string[] };
	readonly summary: string;
}

/** A call that can be made as it stands, and what comes of it. */
export interface Example {
	readonly call: string;
	readonly says: string;
}

/** What was asked for: every option is one that the verb takes, every choice one of its list. */
export interface Call {
	readonly operands: readonly string[];
	readonly options: ReadonlyMap<string, string>;
}

/** The value of an option that is one of `choices`; the first of them where it was not given. */
export function choiceOf<Choice extends string>(
	call: Call,
	option: string,
	choices: readonly [Choice, ...Choice[]],
): Choice {
	return choices.find((choice) => choice === call.options.get(option)) ?? choices[0];
}
