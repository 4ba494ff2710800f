// Runs the tests of the rules against every mutant of the rules, and prints the share that they kill.
// MUTATION_FILES="ground-broken bond-doubled" asks for those files alone; MUTATION_LIST=all lists what is killed as well.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { rules } from "../../src/rules/index.ts";
import { tellRule } from "../rules/told-findings.ts";
import { type Collected, collected, openFile } from "./collector.ts";
import type { Mutant } from "./instrument.ts";
import { mutantsOfRules } from "./rule-sources.ts";
import { switchboard } from "./switchboard.ts";

const { MUTATION_FILES = "", MUTATION_LIST = "survivors" } = process.env;

/** Folders of tests that are about rules. */
const folders = ["rules", "outside", "samples"];
/** A test that takes longer, in milliseconds, is left out: what it alone would kill counts as a survivor. */
const longest = 2_500;

/** Left out: what takes a minute by itself, and what is run here in another way. What they alone would kill counts as a survivor. */
const leftOut: readonly string[] = ["single-mistakes.test.ts", "any-wiring.test.ts", "told-findings.test.ts"];

interface Timed extends Collected {
	readonly milliseconds: number;
	readonly passed: ReadonlySet<number>;
}

test("mutants of the rules", async () => {
	// What a rule's file does while it is loaded, to write its own plans, is done before a mutant can be on.
	const atLoad = switchboard.passed;
	const tests = await timeTests(await collectTests());
	const wanted = new Set(MUTATION_FILES.split(" ").filter((name) => name !== ""));
	const asked = mutantsOfRules().filter(({ file }) => wanted.size === 0 || wanted.has(file.replace(/\.ts$/, "")));
	const mutants = asked.filter(({ id }) => !atLoad.has(id) || tests.some(({ passed }) => passed.has(id)));
	process.stdout.write(
		`${asked.length - mutants.length} mutants run only while the rules are loaded, and are not counted\n`,
	);
	const killers = new Map<Mutant, string | undefined>();
	for (const mutant of mutants) {
		const killer = await killerOf(mutant, tests);
		killers.set(mutant, killer);
		if (killer === undefined || MUTATION_LIST === "all") process.stdout.write(`${tell(mutant, killer)}\n`);
	}
	process.stdout.write(`${report(killers).join("\n")}\n`);
	// What one mutant left behind could look like the kill of another.
	const upset: string[] = [];
	for (const one of tests) if (!(await passes(one, -1))) upset.push(one.name);
	expect(upset).toEqual([]);
});

async function collectTests(): Promise<readonly Collected[]> {
	for (const folder of folders) {
		const path = join(import.meta.dirname, "..", folder);
		for (const name of readdirSync(path).toSorted()) {
			if (!name.endsWith(".test.ts") || leftOut.includes(name)) continue;
			openFile(name.replace(/\.test\.ts$/, ""));
			await import(join(path, name));
		}
	}
	return [...collected, ...rules.map(({ code }) => toldTest(code))];
}

/** The test of what a rule says, against its text: the test library's own way to do so would write a text that is not there. */
function toldTest(code: string): Collected {
	const text = readFileSync(join(import.meta.dirname, "../rules/told", `${code}.txt`), "utf8");
	const run = (): void => {
		if (tellRule(code) !== text) throw new Error(`${code} says something else`);
	};
	return { file: code, name: "what it says", run };
}

/** Each test with what it takes and which mutants it passes; those that fail as things are, or take too long, are left out. */
async function timeTests(all: readonly Collected[]): Promise<readonly Timed[]> {
	const timed: Timed[] = [];
	const dropped: string[] = [];
	for (const one of all) {
		// Once before its time is taken: what it checks is kept then.
		await passes(one, -1);
		switchboard.passed = new Set();
		const start = performance.now();
		const isRight = await passes(one, -1);
		const milliseconds = performance.now() - start;
		if (isRight && milliseconds < longest) timed.push({ ...one, milliseconds, passed: switchboard.passed });
		else dropped.push(`${isRight ? "long" : "failing"}: ${one.name}`);
	}
	for (const line of dropped) process.stdout.write(`left out, ${line}\n`);
	process.stdout.write(`${timed.length} tests\n`);
	return timed.toSorted((one, other) => one.milliseconds - other.milliseconds);
}

/** The test that fails when a mutant is on: of those that pass it, first those of its own file, then the quickest. */
async function killerOf({ id, file }: Mutant, tests: readonly Timed[]): Promise<string | undefined> {
	const passing = tests.filter(({ passed }) => passed.has(id));
	const isOwn = (one: Timed): boolean => `${one.file}.ts` === file;
	const ordered = [...passing.filter(isOwn), ...passing.filter((one) => !isOwn(one))];
	for (const one of ordered) if (!(await passes(one, id))) return `${one.file}: ${one.name}`;
	return undefined;
}

async function passes({ run }: Collected, active: number): Promise<boolean> {
	switchboard.active = active;
	switchboard.ticks = 0;
	try {
		await run();
		return true;
	} catch (error) {
		if (active === -1) process.stdout.write(`${String(error).slice(0, 300)}\n`);
		return false;
	} finally {
		switchboard.active = -2;
	}
}

function tell({ file, line, operator, was, is }: Mutant, killer: string | undefined): string {
	const what = `${file}:${line} ${operator}: ${was} -> ${is}`;
	return killer === undefined ? `survived ${what}` : `killed ${what} (${killer})`;
}

/** The share that is killed of each file, and of all. */
function report(killers: ReadonlyMap<Mutant, string | undefined>): string[] {
	const all = [...killers];
	const shareOf = (some: typeof all): string => {
		const killed = some.filter(([, killer]) => killer !== undefined).length;
		return `${killed} of ${some.length} killed, ${((100 * killed) / Math.max(some.length, 1)).toFixed(1)} %`;
	};
	const files = [...new Set(all.map(([{ file }]) => file))];
	return [
		...files.map((file) => `${file}: ${shareOf(all.filter(([mutant]) => mutant.file === file))}`),
		`all: ${shareOf(all)}`,
	];
}
