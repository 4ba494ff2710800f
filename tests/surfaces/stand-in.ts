// A world for tests: real files in a folder of its own, streams that keep what is written, and a check that finds what the text asks for.
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import type { NumberedFinding } from "../../src/base/finding.ts";
import { finding } from "../../src/base/finding.ts";
import type { CheckPlan, JudgedMistake, TidyPlan } from "../../src/surfaces/checker.ts";
import { runCommand } from "../../src/surfaces/command/run.ts";
import type { World } from "../../src/surfaces/command/world.ts";

/** What a run of the command left behind. */
export interface Outcome {
	readonly status: number;
	readonly output: string;
	readonly messages: string;
}

/** A folder for one test, removed after it. */
export function makeFolder(): string {
	const folder = fs.realpathSync(fs.mkdtempSync(join(tmpdir(), "ferrule-test-")));
	onTestFinished(() => fs.rmSync(folder, { recursive: true, force: true }));
	return folder;
}

/** Runs the command in `folder`; `changes` replace parts of its world. */
export async function run(folder: string, words: readonly string[], changes: Partial<World> = {}): Promise<Outcome> {
	const output: string[] = [];
	const messages: string[] = [];
	const world: World = {
		version: "1.2.3",
		checkPlan: findWords,
		checkInThreads: async (texts) =>
			texts.map(({ text, name }) => findWords(text, name, () => ({ kind: "missing", help: "" }))),
		processors: () => 1,
		tidyPlan: tidyWords,
		pages: () => [],
		handbook: async () => [],
		files: fs,
		writer: testWriter,
		folder,
		environment: () => undefined,
		output: { write: (text) => output.push(text), columns: undefined },
		messages: { write: (text) => messages.push(text), columns: undefined },
		readInput: async () => ({ kind: "unreadable", why: "there is none" }),
		interrupted: async () => false,
		...changes,
	};
	const status = await runCommand(words, world);
	return { status, output: output.join(""), messages: messages.join("") };
}

/** This process as a writer, with salts in a row. */
export const testWriter = {
	process: process.pid,
	salt: () => (salts++).toString(36),
	isRunning: (number: number) => number === process.pid,
};
let salts = 0;

/** Stands in for the pipeline: each word `danger`, `error`, `warning` or `note` is a finding at its place; `nonsense` is not understood. */
export const findWords: CheckPlan = (text, file) => {
	const findings: NumberedFinding[] = text.split("\n").flatMap((row, index) =>
		[...row.matchAll(/\b(danger|error|warning|note)\b/g)].map((match) => ({
			...finding({
				code: `${match[1]}-written`,
				level: match[1] === "danger" || match[1] === "error" || match[1] === "warning" ? match[1] : "note",
				title: `The word ${match[1]} stands here`,
				span: { file, line: index + 1, column: match.index + 1, endColumn: match.index + 1 + match[0].length },
				why: "It asks for a finding.",
				help: "Take it out.",
				basis: "common practice",
				...(row.includes("accept") ? { accepted: "on purpose" } : {}),
			}),
			number: 0,
		})),
	);
	const understood = !text.includes("nonsense");
	return {
		findings: findings.map((each, index) => ({ ...each, number: index + 1 })),
		understood,
		used: new Map(),
		scope: { rules: 3, modes: ["shore"], parts: 2, conductors: text.split("\n").length, incomplete: !understood },
		draw: async (choice) =>
			["wiring", "one-line"]
				.filter((name) => choice === "all" || choice === name)
				.map((name) => ({ name, svg: `<svg class="fe-sheet"><title>${file}</title>${name}</svg>\n` })),
		show: () => ({ text: `${file} box by box\n`, short: `${file} in short\n`, json: { boxes: text.length } }),
		figures: async ({ of }) =>
			of === "nothing"
				? { kind: "refused", why: "There is nothing `nothing`." }
				: { kind: "figures", units: "feet", modes: [], workings: [] },
		sizes: async () => ({ sizes: [], circuits: ["bunks"], units: "feet" }),
		repairs: async () => new Map(),
		writeOut: async () => `${text.trimEnd()} written out\n`,
		makeMistakes: async () => mistakeWords(text),
	};
};

/** Stands in for making mistakes: one of each verdict, with `slip` one that is missed. */
function mistakeWords(text: string): JudgedMistake[] {
	const of = { operator: "an end left loose", at: "a.black off b.hot" };
	return [
		{ ...of, verdict: "found", by: "end-loose", named: true },
		{ ...of, verdict: "found", by: "ground-broken", named: false },
		{ ...of, verdict: "same" },
		{ ...of, verdict: "harmless", reason: "it is a spare" },
		{ ...of, verdict: "meter-only", reading: "12 V at b" },
		...(text.includes("slip") ? [{ ...of, verdict: "missed" as const }] : []),
	];
}

/** Stands in for tidying: no line ends in a blank; a line with `nonsense` cannot be read. */
export const tidyWords: TidyPlan = async (text, _file, { pinTags }) => ({
	text: text.replace(/ +$/gm, "") + (pinTags ? "tags\n" : ""),
	kept: text.split("\n").flatMap((line, index) => (line.includes("nonsense") ? [index + 1] : [])),
});
