// A text tidied, for the tests of what tidying does.
import { readText } from "../../src/syntax/read.ts";
import { tidyText } from "../../src/writing/tidy-text.ts";

/** The text laid out, and the lines that stayed as they were. */
export function tidy(text: string): { text: string; kept: number[] } {
	const tidied = tidyText({ text, ...readText(text, "plan") });
	return { text: tidied.text, kept: [...tidied.kept].toSorted((one, other) => one - other) };
}
