#!/usr/bin/env node
// Starts the command. Beside its code may lie the same code as compiled by this very Node, put there by the build: it starts faster then.
import { readFileSync } from "node:fs";
import Module, { createRequire } from "node:module";
import { join } from "node:path";
import { Script } from "node:vm";
import { status } from "./status.ts";

try {
	launch(join(__dirname, "parts"));
} catch (error) {
	process.stderr.write(
		`ferrule: the program itself cannot start (${String(error)}). Install it again, or report this line.\n`,
	);
	process.exitCode = status.internal;
}

/** Runs the command's code, compiled before if it is there for this Node. */
function launch(folder: string): void {
	const file = join(folder, "ferrule.cjs");
	// The build leaves nothing but ASCII in it, and this is the quickest way to read that.
	const script = new Script(Module.wrap(readFileSync(file, "latin1")), {
		filename: file,
		cachedData: readCompiled(`${file}.${process.version}-${process.arch}`),
	});
	// The parts that are loaded later ask for this one by its name.
	const part = new Module(file);
	require.cache[file] = part;
	script.runInThisContext()(part.exports, createRequire(file), part, file, folder);
}

/** Compiled code; nothing where there is none. What does not fit this engine it refuses by itself. */
function readCompiled(path: string): Buffer | undefined {
	try {
		return readFileSync(path);
	} catch {
		return undefined;
	}
}
