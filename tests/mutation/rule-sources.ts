// The sources of the rules with all their mutants in them, numbered through in the order of the files' names.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Instrumented, instrument, type Mutant } from "./instrument.ts";

/** Where the rules are. */
export const rulesFolder: string = join(import.meta.dirname, "../../src/rules");

/** Each file of the rules by its path, instrumented. */
export function instrumentRules(): ReadonlyMap<string, Instrumented> {
	const files = new Map<string, Instrumented>();
	let next = 0;
	for (const name of readdirSync(rulesFolder).toSorted()) {
		const path = join(rulesFolder, name);
		const instrumented = instrument(readFileSync(path, "utf8"), name, next);
		next += instrumented.mutants.length;
		files.set(path, instrumented);
	}
	return files;
}

/** All mutants of the rules. */
export function mutantsOfRules(): readonly Mutant[] {
	return [...instrumentRules().values()].flatMap(({ mutants }) => mutants);
}
