// The pages that `--help` prints: one for the whole command, one for each verb. They fit in 80 columns.
import { wrap } from "../report/visible.ts";
import { helpOption } from "./options.ts";
import { settable, settingsVariable } from "./settings.ts";
import type { Example, Verb } from "./verb.ts";

/** The page of the whole command. */
export function writeHelp(verbs: readonly Verb[]): string {
	return page(
		wrap(
			"Ferrule reads the electrics of a camper, tiny house, cabin or boat from plain text, checks them as an inspector would, and draws them.",
			columns,
		),
		["Verbs:", ...table(verbs.map((verb) => [`${verb.name} ${verb.operands.words}`, verb.summary]))],
		wrap("`ferrule VERB --help` tells all about a verb, `ferrule --version` the version.", columns),
		examples([
			{ call: "ferrule new van.ferrule --from camper-shore", says: "begin from a commented starter" },
			{ call: "ferrule check van.ferrule", says: "what is miswired, and why it matters" },
			{ call: "ferrule draw van.ferrule", says: "both sheets, beside the plan" },
		]),
		[
			"Exit status:",
			...table([
				["0", "nothing found at the level asked for"],
				["1", "findings at that level (--fail-on), or a plan in which nothing can be wired"],
				["64", "wrong call"],
				["66", "a plan cannot be read"],
				["70", "a fault of Ferrule itself"],
				["73", "a file cannot be created"],
				["74", "reading or writing broke off"],
				["78", `bad settings in ${settingsVariable}`],
				["130", "interrupted"],
				["141", "whoever read the output went away"],
			]),
		],
		wrap(
			`${settingsVariable} may hold options that are always meant unless a call says otherwise: ${settable.map(({ name }) => `--${name}`).join(", ")}.`,
			columns,
		),
		wrap(caution, columns),
	);
}

/** The page of one verb. */
export function writeVerbHelp(verb: Verb): string {
	const options = [...verb.options, helpOption];
	return page(
		[`ferrule ${verb.name} ${verb.operands.words}${verb.options.length > 0 ? " [options]" : ""}`],
		...verb.about.map((paragraph) => wrap(paragraph, columns)),
		[
			"Options:",
			...table(
				options.map(({ name, value, summary }) => [
					`--${name}${value === undefined ? "" : ` ${value.choices?.join("|") ?? value.word}`}`,
					summary,
				]),
			),
		],
		examples(verb.examples),
	);
}

/** What every page ends with that may lead someone to a live conductor. */
const caution =
	"A plan without findings is not yet safe. Follow the local code, have the work checked by a licensed person, and isolate and prove dead before you touch a conductor.";

const columns = 80;

function page(...blocks: readonly (readonly string[])[]): string {
	return `${blocks.map((block) => block.join("\n")).join("\n\n")}\n`;
}

function examples(rows: readonly Example[]): string[] {
	return ["Examples:", ...rows.flatMap(({ call, says }) => [`  ${call}`, `      ${says}`])];
}

/** Two columns; a left side that is too wide has the right one below it. */
function table(rows: readonly (readonly [string, string])[]): string[] {
	const left = Math.min(28, Math.max(...rows.map(([word]) => word.length))) + 4;
	return rows.flatMap(([word, text]) => {
		const [first = "", ...rest] = wrap(text, columns - left);
		const head = word.length + 4 > left ? [`  ${word}`, " ".repeat(left) + first] : [`  ${word}`.padEnd(left) + first];
		return [...head, ...rest.map((row) => " ".repeat(left) + row)];
	});
}
