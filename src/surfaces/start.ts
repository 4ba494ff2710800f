// `npm start`: checks and draws a finished sample, or the plans that are named, and says where the drawings lie.
import { type StdioOptions, spawnSync } from "node:child_process";
import { join } from "node:path";
import { status } from "./status.ts";

const named = process.argv.slice(2);
const plans = named.length > 0 ? named : [besideUs("samples/heron-camper.ferrule")];

process.exitCode = start();

/** Faults in a plan are told and drawn, and are no failure of this script: npm would bury them under its own words. */
function start(): number {
	// Notes are in what the drawing says; they would bury what it shows of a plan that is right.
	const checked = ferrule(["check", ...plans, "--fail-on", "warning"], ["inherit", "pipe", "ignore"]);
	if (checked.status === status.findings) process.stdout.write(`${checked.stdout}\n`);
	// What is said of the drawings is what this script has to say: it goes to standard output.
	const drawn = ferrule(["draw", ...plans, "--out", besideUs("drawings"), "--fail-on", "never"], ["inherit", 1, 1]);
	if (drawn.status !== status.fine) return drawn.status ?? status.internal;
	process.stdout.write("Open them in a browser. Your own plan: npm start -- my.ferrule\n");
	return status.fine;
}

/** A path of this package, wherever the user stands. */
function besideUs(path: string): string {
	return join(__dirname, "..", path);
}

function ferrule(words: readonly string[], stdio: StdioOptions) {
	const colours = process.stdout.isTTY ? ["--color", "always"] : [];
	return spawnSync(process.execPath, [besideUs("dist/ferrule.cjs"), ...words, ...colours], {
		// npm runs scripts in the package's folder; plans are named from where the user stands.
		cwd: process.env.INIT_CWD ?? process.cwd(),
		encoding: "utf8",
		stdio,
	});
}
