// The options that several verbs share, each written once.
import { sheetChoices } from "../checker.ts";
import type { Option } from "./verb.ts";

/** The forms a report can take; the first is what is meant where nothing is said. */
export const forms = ["text", "short", "json"] as const;
/** The forms that a report of what was found can take besides: for tools that gather findings, and for a code host. */
export const reportForms = [...forms, "sarif", "github"] as const;
/** The levels at which a run counts as failed; accepted findings never count. */
export const failLevels = ["error", "warning", "note", "never"] as const;
/** When colours are used. */
export const colourChoices = ["auto", "always", "never"] as const;

export const asOption: Option = {
	name: "as",
	value: { word: "FORM", choices: forms },
	summary: "text to read, short for one line each, json for programs",
};

export const asReportOption: Option = {
	name: asOption.name,
	value: { word: "FORM", choices: reportForms },
	summary: "text to read, short for one line each, json or sarif for programs, github for remarks on a change",
};

export const failOnOption: Option = {
	name: "fail-on",
	value: { word: "LEVEL", choices: failLevels },
	summary: "end with status 1 from this level up, error if not said; never: always end with 0",
};

export const colourOption: Option = {
	name: "color",
	value: { word: "WHEN", choices: colourChoices },
	summary: "colours on a terminal only (auto), always or never",
};

export const stdinNameOption: Option = {
	name: "stdin-name",
	value: { word: "NAME" },
	summary: "what to call the plan that `-` reads from standard input",
};

export const libraryOption: Option = {
	name: "library",
	value: { word: "FOLDER" },
	summary: "a folder beside the plan's own from which `use` may read",
};

export const helpOption: Option = { name: "help", summary: "print this page" };

export const sheetOption: Option = {
	name: "sheet",
	value: { word: "SHEET", choices: sheetChoices },
	summary: "the wiring sheets, the direct-current sheet, the one-line sheet, or all (if not said)",
};

export const outOption: Option = {
	name: "out",
	value: { word: "PLACE" },
	summary: "a file ending in .svg, a folder, or - for standard output; beside the plan if not said",
};

export const forceOption: Option = {
	name: "force",
	summary: "replace a file that Ferrule did not draw; a plan is never replaced",
};
