// Builds all that runs into `dist`: the command, `npm start`, the library with its types.
// `--if-stale` does nothing when what was built is newer than all it is built from; `--bench` builds the measurements alone, `--proof` the proof by mistakes.
import { spawnSync } from "node:child_process";
import {
	chmodSync,
	existsSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	renameSync,
	rmSync,
	statSync,
	utimesSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "rolldown";
import { optionsFor } from "./.rolldown.config.mjs";

const root = dirname(fileURLToPath(import.meta.url));
const at = (path) => join(root, path);
const words = new Set(process.argv.slice(2));

/** What the outputs are made of and by. */
const origins = [
	"src",
	"seeds",
	"samples",
	"package-lock.json",
	"package.json",
	"tsconfig.json",
	"tsconfig.build.json",
	".build.mjs",
	".rolldown.config.mjs",
	".plain-steps.mjs",
];
/** Written last: its time is that at which a build began that went through. */
const mark = ".built";
/** Folders in which builds are made that are not yet done, by the number of their process. */
const unfinished = /^\.dist-(\d+)(?:-old)?$/;

/**
 * Builds into a folder of its own, which takes the place of `dist` when all is there: nobody ever finds half a build.
 * Between the two renames there is, for a moment, no `dist` at all; a command started just then has to be started again.
 */
async function buildAll() {
	const began = new Date();
	const folder = at(`.dist-${process.pid}`);
	sweepUnfinished();
	try {
		for (const name of ["launch", "ferrule", "handbook", "figures", "start", "library"]) await bundle(name, folder);
		chmodSync(join(folder, "ferrule.cjs"), 0o755);
		run("the types of the library could not be written", [
			at("node_modules/typescript/bin/tsc"),
			...["-p", at("tsconfig.build.json")],
			...["--outDir", join(folder, "types")],
		]);
		compileAhead(folder);
		writeFileSync(join(folder, mark), "");
		// What was changed while we built may not be in it.
		utimesSync(join(folder, mark), began, began);
		putInPlace(folder);
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
}

/** Two builds at once may both get here; the later one stays. */
function putInPlace(folder) {
	const old = `${folder}-old`;
	for (let attempts = 1; ; attempts++) {
		try {
			if (existsSync(at("dist"))) renameSync(at("dist"), old);
			renameSync(folder, at("dist"));
			break;
		} catch (error) {
			if (attempts === 20) throw error;
		} finally {
			rmSync(old, { recursive: true, force: true });
		}
	}
}

/** Removes what builds have left that were killed. */
function sweepUnfinished() {
	for (const name of readdirSync(root)) {
		const owner = unfinished.exec(name)?.[1];
		if (owner !== undefined && !isRunning(Number(owner))) rmSync(at(name), { recursive: true, force: true });
	}
}

function isRunning(number) {
	try {
		return process.kill(number, 0);
	} catch (error) {
		return error.code === "EPERM";
	}
}

/**
 * Keeps the command's code as this Node has compiled it by the end of a run over the samples: what a check, a drawing and figures need.
 * The names hold the version, because no other Node can use it; without it the command works just as well.
 */
function compileAhead(folder) {
	const drawings = mkdtempSync(join(tmpdir(), "ferrule-build-"));
	const samples = at("samples");
	const program = join(folder, "ferrule.cjs");
	// The part that is loaded before the engine is set for a longer run is compiled as the engine comes, all others as it is set then.
	compile([program, "check", samples, "--fail-on", "never"], `v8.setFlagsFromString = () => {};`, `/ferrule\\.cjs$/`);
	compile([program, "draw", samples, "--fail-on", "never", "--out", drawings], "", `/(?<!ferrule)\\.cjs$/`);
	compile([program, "figures", samples, "--fail-on", "never"], "", `/figures\\.cjs$/`);
	rmSync(drawings, { recursive: true });
}

/** Loads the launcher as a call would, after some words of its own, and on the way out writes down the scripts whose file is asked for. */
function compile(call, before, kept) {
	const compiling = `
		const v8 = require("node:v8");
		const vm = require("node:vm");
		const { writeFileSync } = require("node:fs");
		const scripts = new Map();
		vm.Script = class extends vm.Script {
			constructor(source, options) {
				super(source, { filename: options.filename });
				scripts.set(options.filename, this);
			}
		};
		${before}
		process.once("exit", () => {
			for (const [file, script] of scripts)
				if (${kept}.test(file)) writeFileSync(file + "." + process.version + "-" + process.arch, script.createCachedData());
		});
		require(process.argv[1]);
	`;
	run("the command could not be compiled ahead", ["-e", compiling, ...call], "pipe");
}

/** What it says is shown as it says it; where it says much, and `stdio` holds it back, only after a failure. */
function run(complaint, args, stdio = "inherit") {
	const { status, stderr } = spawnSync(process.execPath, args, { stdio, encoding: "utf8" });
	if (status !== 0) throw new Error(`${complaint}${stderr ? `: ${stderr}` : ""}`);
}

/** Bundles one entry, and refuses a library whose licence is not in NOTICE. */
async function bundle(name, folder) {
	const { output } = await build(optionsFor(name, folder));
	const notice = readFileSync(at("NOTICE"), "utf8");
	const modules = output.flatMap((chunk) => (chunk.type === "chunk" ? chunk.moduleIds : []));
	for (const id of modules) {
		const library = /[\\/]node_modules[\\/]((?:@[^\\/]+[\\/])?[^\\/]+)[\\/](?!.*[\\/]node_modules[\\/])/.exec(id)?.[1];
		if (library !== undefined && !notice.includes(library.replaceAll("\\", "/")))
			throw new Error(`${library} is built in, and NOTICE does not name it`);
	}
}

function isStale() {
	const built = statSync(at(join("dist", mark)), { throwIfNoEntry: false })?.mtimeMs;
	if (built === undefined) return true;
	return origins.some((origin) => newest(at(origin)) > built);
}

/** The time of the newest file or folder at or under a path; a folder's own time tells of files that went away. */
function newest(path) {
	const facts = statSync(path);
	if (!facts.isDirectory()) return facts.mtimeMs;
	return Math.max(facts.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}

if (words.has("--bench")) await bundle("bench", at("dist"));
else if (words.has("--proof")) await bundle("proof", at("dist"));
else if (!words.has("--if-stale") || isStale()) await buildAll();
