// One row for each exit status that the command gives, as functions in process; `process.test.ts` has those of the real one.
import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { World } from "../../src/surfaces/command/world.ts";
import type { FileSystem } from "../../src/surfaces/files/system.ts";
import { makeFolder, run } from "./stand-in.ts";

/** A folder with plans that hold what their names say. */
function plansFolder(): string {
	const folder = makeFolder();
	for (const name of ["danger", "error", "warning", "note", "fine", "nonsense", "slip"])
		fs.writeFileSync(join(folder, `${name}.ferrule`), `${name}\n`);
	fs.writeFileSync(join(folder, "accepted.ferrule"), "error, accept it\n");
	fs.writeFileSync(join(folder, "ragged.ferrule"), "fine \n");
	return folder;
}

interface Row {
	readonly says: string;
	readonly words: readonly string[];
	readonly status: number;
	readonly changes?: Partial<World>;
}

const throwing = (code: string) => () => {
	throw Object.assign(new Error(code), { code });
};
const fullDisk: FileSystem = { ...fs, writeSync: throwing("ENOSPC") };
const interrupted: Partial<World> = { interrupted: async () => true };
const settings = (text: string): Partial<World> => ({
	environment: (name) => (name === "FERRULE_OPTIONS" ? text : undefined),
});

const rows: readonly Row[] = [
	{ says: "nothing found", words: ["check", "fine.ferrule"], status: 0 },
	{ says: "only a warning", words: ["check", "warning.ferrule"], status: 0 },
	{ says: "only what was accepted", words: ["check", "accepted.ferrule", "--fail-on", "note"], status: 0 },
	{ says: "a warning as remarks for a code host", words: ["check", "warning.ferrule", "--as", "github"], status: 0 },
	{
		says: "an error as SARIF, never to fail",
		words: ["check", "error.ferrule", "--as", "sarif", "--fail-on", "never"],
		status: 0,
	},
	{ says: "findings, but never to fail", words: ["check", "danger.ferrule", "--fail-on", "never"], status: 0 },
	{ says: "drawn", words: ["draw", "fine.ferrule"], status: 0 },
	{ says: "shown", words: ["show", "fine.ferrule"], status: 0 },
	{ says: "written out", words: ["show", "fine.ferrule", "--written-out"], status: 0 },
	{ says: "figured", words: ["figures", "fine.ferrule"], status: 0 },
	{ says: "figured for a spreadsheet", words: ["figures", "fine.ferrule", "--as", "csv"], status: 0 },
	{ says: "sized", words: ["size", "fine.ferrule"], status: 0 },
	{ says: "sized though it is faulty", words: ["size", "error.ferrule"], status: 0 },
	{ says: "every single mistake found", words: ["mistakes", "fine.ferrule"], status: 0 },
	{ says: "tidied", words: ["tidy", "error.ferrule"], status: 0 },
	{ says: "tidied in place", words: ["tidy", "ragged.ferrule", "nonsense.ferrule", "--write"], status: 1 },
	{ says: "tidy already", words: ["tidy", "fine.ferrule", "--diff"], status: 0 },
	{ says: "help", words: ["--help"], status: 0 },
	{ says: "help on a verb", words: ["check", "--help"], status: 0 },
	{ says: "help on a verb, the other way", words: ["help", "draw"], status: 0 },
	{ says: "the version", words: ["--version"], status: 0 },
	{ says: "the list of pages", words: ["explain"], status: 0 },
	{ says: "the list of pages for programs", words: ["explain", "--as", "json"], status: 0 },
	{ says: "the list of tables", words: ["handbook"], status: 0 },
	{ says: "the list of tables for programs", words: ["handbook", "--as", "json"], status: 0 },
	{ says: "a new plan", words: ["new", "mine"], status: 0 },

	{ says: "a danger", words: ["check", "danger.ferrule"], status: 1 },
	{ says: "an error", words: ["check", "error.ferrule"], status: 1 },
	{ says: "an error as SARIF", words: ["check", "error.ferrule", "--as", "sarif"], status: 1 },
	{ says: "an error as remarks for a code host", words: ["check", "error.ferrule", "--as", "github"], status: 1 },
	{ says: "a warning where warnings count", words: ["check", "warning.ferrule", "--fail-on", "warning"], status: 1 },
	{ says: "a note where notes count", words: ["check", "note.ferrule", "--fail-on=note"], status: 1 },
	{ says: "one faulty plan of several", words: ["check", "."], status: 1 },
	{ says: "a faulty plan that is drawn", words: ["draw", "error.ferrule"], status: 1 },
	{ says: "figures of a faulty plan", words: ["figures", "error.ferrule"], status: 1 },
	{ says: "sizes of what could not be understood", words: ["size", "nonsense.ferrule"], status: 1 },
	{ says: "figures of what could not be understood", words: ["figures", "nonsense.ferrule"], status: 1 },
	{ says: "a faulty plan that is shown", words: ["show", "error.ferrule"], status: 1 },

	{
		says: "a plan of which nothing can be drawn",
		words: ["draw", "nonsense.ferrule", "--fail-on", "never"],
		status: 1,
	},
	{ says: "a plan in which nothing could be checked", words: ["check", "nonsense.ferrule"], status: 1 },
	{ says: "the same, never to fail", words: ["check", "nonsense.ferrule", "--fail-on", "never"], status: 0 },
	{ says: "a plan of which nothing can be shown", words: ["show", "nonsense.ferrule"], status: 1 },

	{ says: "a single mistake that is missed", words: ["mistakes", "slip.ferrule"], status: 1 },
	{ says: "mistakes in a faulty plan", words: ["mistakes", "error.ferrule"], status: 1 },
	{ says: "mistakes in what could not be understood", words: ["mistakes", "nonsense.ferrule"], status: 1 },

	{ says: "not yet tidy", words: ["tidy", "ragged.ferrule", "--diff"], status: 1 },
	{ says: "a plan of which a part cannot be tidied", words: ["tidy", "nonsense.ferrule"], status: 1 },

	{ says: "several plans written out", words: ["show", ".", "--written-out"], status: 64 },
	{ says: "a plan written out as data", words: ["show", "fine.ferrule", "--written-out", "--as", "json"], status: 64 },
	{ says: "several plans tidied to standard output", words: ["tidy", "."], status: 64 },
	{ says: "tidied in place, and not", words: ["tidy", "fine.ferrule", "--write", "--diff"], status: 64 },
	{ says: "no verb", words: [], status: 64 },
	{ says: "an unknown verb", words: ["chekc", "fine.ferrule"], status: 64 },
	{ says: "an unknown option", words: ["check", "fine.ferrule", "--colour", "never"], status: 64 },
	{ says: "an unknown short option", words: ["check", "-x"], status: 64 },
	{ says: "an unknown value", words: ["check", "fine.ferrule", "--as", "jsno"], status: 64 },
	{ says: "a value left out", words: ["check", "fine.ferrule", "--as"], status: 64 },
	{ says: "a value where none belongs", words: ["draw", "fine.ferrule", "--force=yes"], status: 64 },
	{ says: "no plan", words: ["check"], status: 64 },
	{ says: "mistakes in a form there is not", words: ["mistakes", "fine.ferrule", "--as", "short"], status: 64 },
	{ says: "two files for a new plan", words: ["new", "a", "b"], status: 64 },
	{ says: "an unknown starter", words: ["new", "a", "--from", "bneh"], status: 64 },
	{ says: "a page in a form of reports", words: ["explain", "--as", "sarif"], status: 64 },
	{ says: "a circuit in a form of reports", words: ["show", "fine.ferrule", "--as", "github"], status: 64 },
	{ says: "an unknown code", words: ["explain", "ground-borken"], status: 64 },
	{ says: "a circuit to size that is not there", words: ["size", "fine.ferrule", "bnuks"], status: 64 },
	{ says: "figures of nothing", words: ["figures", "fine.ferrule", "--of", "nothing"], status: 64 },
	{ says: "figures in yards", words: ["figures", "fine.ferrule", "--units", "yards"], status: 64 },
	{ says: "an unknown table", words: ["handbook", "coper-ampacity"], status: 64 },
	{ says: "a table in a form of reports", words: ["handbook", "--as", "short"], status: 64 },
	{ says: "two sheets to standard output", words: ["draw", "fine.ferrule", "--out", "-"], status: 64 },
	{ says: "two sheets to one file", words: ["draw", "fine.ferrule", "--out", "a.svg"], status: 64 },
	{ says: "two plans to one file", words: ["draw", ".", "--sheet", "wiring", "--out", "a.svg"], status: 64 },

	{ says: "a plan that is not there", words: ["check", "none.ferrule"], status: 66 },
	{ says: "one of several that is not there", words: ["check", "error.ferrule", "none.ferrule"], status: 66 },
	{ says: "a folder without plans", words: ["check", "empty"], status: 66 },
	{ says: "standard input that cannot be read", words: ["check", "-"], status: 66 },
	{ says: "a plan to make mistakes in that is not there", words: ["mistakes", "none.ferrule"], status: 66 },
	{ says: "a plan to tidy that is not there", words: ["tidy", "none.ferrule"], status: 66 },
	{ says: "a plan to draw that is not there", words: ["draw", "none.ferrule"], status: 66 },
	{
		says: "a plan that may not be read",
		words: ["check", "fine.ferrule"],
		status: 66,
		changes: { files: { ...fs, openSync: throwing("EACCES") } },
	},

	{
		says: "a fault of Ferrule",
		words: ["check", "fine.ferrule"],
		status: 70,
		changes: {
			checkPlan: () => {
				throw new RangeError("too deep");
			},
		},
	},

	{
		says: "a folder where a drawing should go",
		words: ["draw", "fine.ferrule", "--sheet", "wiring", "--out", "folder.svg"],
		status: 73,
	},
	{ says: "a drawing below a file", words: ["draw", "fine.ferrule", "--out", "error.ferrule/x"], status: 73 },
	{
		says: "somebody else's file",
		words: ["draw", "fine.ferrule", "--sheet", "wiring", "--out", "other.svg"],
		status: 73,
	},
	{ says: "a plan to tidy with a second name", words: ["tidy", "linked/plan.ferrule", "--write"], status: 73 },
	{ says: "a new plan where one is", words: ["new", "fine.ferrule"], status: 73 },
	{ says: "a new plan where a folder is", words: ["new", "folder.svg"], status: 73 },

	{ says: "a full disk", words: ["draw", "fine.ferrule"], status: 74, changes: { files: fullDisk } },
	{ says: "a full disk for a new plan", words: ["new", "mine"], status: 74, changes: { files: fullDisk } },

	{
		says: "a full disk for a tidied plan",
		words: ["tidy", "ragged.ferrule", "--write"],
		status: 74,
		changes: { files: fullDisk },
	},

	{ says: "a misspelt setting", words: ["check", "fine.ferrule"], status: 78, changes: settings("--fial-on note") },
	{ says: "a wrong value of a setting", words: ["check", "fine.ferrule"], status: 78, changes: settings("--as xml") },
	{ says: "a word in the settings", words: ["check", "fine.ferrule"], status: 78, changes: settings("note") },
	{ says: "a setting the verb does not take", words: ["explain"], status: 0, changes: settings("--fail-on note") },
	{ says: "a setting that is used", words: ["check", "note.ferrule"], status: 1, changes: settings("--fail-on note") },
	{
		says: "a setting that the call overrules",
		words: ["check", "note.ferrule", "--fail-on", "error"],
		status: 0,
		changes: settings("--fail-on note"),
	},

	{ says: "interrupted while checking", words: ["check", "error.ferrule"], status: 130, changes: interrupted },
	{ says: "interrupted while making mistakes", words: ["mistakes", "fine.ferrule"], status: 130, changes: interrupted },
	{ says: "interrupted while tidying", words: ["tidy", "ragged.ferrule"], status: 130, changes: interrupted },
	{ says: "interrupted while drawing", words: ["draw", "error.ferrule"], status: 130, changes: interrupted },
];

describe.each(rows)("$status: $says ($words)", ({ words, status, changes }) => {
	test("ends so, and says why without a stack", async () => {
		const folder = plansFolder();
		fs.mkdirSync(join(folder, "empty"));
		fs.writeFileSync(join(folder, "other.txt"), "fine \n");
		fs.mkdirSync(join(folder, "linked"));
		fs.linkSync(join(folder, "other.txt"), join(folder, "linked", "plan.ferrule"));
		fs.mkdirSync(join(folder, "folder.svg"));
		fs.writeFileSync(join(folder, "other.svg"), "<svg>somebody's</svg>");
		const outcome = await run(folder, words, changes);
		expect(outcome.status).toBe(status);
		expect(outcome.output + outcome.messages).not.toMatch(/\n\s+at .*:\d+/);
		if (status >= 64 && status < 128) {
			expect(outcome.messages).toMatch(words.length === 0 ? /^Ferrule reads/ : /^ferrule: \S.*\.?\n/m);
			expect(fs.readFileSync(join(folder, "other.svg"), "utf8")).toBe("<svg>somebody's</svg>");
			expect(fs.readdirSync(folder).filter((name) => name.startsWith("."))).toEqual([]);
		}
		if (status === 64 || status === 78) expect(outcome.output).toBe("");
	});
});

test.each([
	[["chekc", "x"], "`check`"],
	[["check", "x", "--fial-on", "note"], "`--fail-on`"],
	[["check", "x", "--as", "jsno"], "`json`"],
	[["check", "x", "--fail-on", "wraning"], "`warning`"],
	[["draw", "x", "--sheet", "wirring"], "`wiring`"],
	[["--hepl"], "`--help`"],
	[["help", "darw"], "`draw`"],
])("%j offers %s", async (words, near) => {
	expect((await run(makeFolder(), words)).messages).toContain(`Did you mean ${near}?`);
});

test("an internal fault is one calm line that says what to report", async () => {
	const folder = plansFolder();
	const { messages } = await run(folder, ["check", "fine.ferrule"], {
		checkPlan: () => {
			throw new Error("first line\nsecond line\u001b[2J");
		},
	});
	expect(messages).toBe(
		"ferrule: Ferrule itself has failed, not your plan. Please report this line with the plan: version 1.2.3, Error: first line\\x0asecond line\\x1b[2J\n",
	);
});
