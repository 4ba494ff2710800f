#!/usr/bin/env node
// Starts the command. Beside each part of it may lie the same code as compiled by this very Node, put there by the build: then it starts faster.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Script } from "node:vm";
import { status } from "./status.ts";

const folder = join(__dirname, "parts");
const parts = new Map<string, { exports: unknown }>();

try {
	requirePart("./ferrule.cjs");
} catch (error) {
	process.stderr.write(
		`ferrule: the program itself cannot start (${String(error)}). Install it again, or report this line.\n`,
	);
	process.exitCode = status.internal;
}

/** What a part asks for: another part by its name, or a module of Node. Parts are loaded once. */
function requirePart(name: string): unknown {
	if (!name.startsWith("./")) return require(name);
	const loaded = parts.get(name);
	if (loaded !== undefined) return loaded.exports;
	const file = join(folder, name);
	const part = { exports: {} };
	parts.set(name, part);
	// The build leaves nothing but ASCII in a part, and this is the quickest way to read that.
	const source = `(function (exports, require, module, __filename, __dirname) {${readFileSync(file, "latin1")}\n})`;
	const script = new Script(source, { filename: file, cachedData: readCompiled(file) });
	script.runInThisContext()(part.exports, requirePart, part, file, folder);
	return part.exports;
}

/** Compiled code; nothing where there is none. What does not fit this engine it refuses by itself. */
function readCompiled(file: string): Buffer | undefined {
	try {
		return readFileSync(`${file}.${process.version}-${process.arch}`);
	} catch {
		return undefined;
	}
}
