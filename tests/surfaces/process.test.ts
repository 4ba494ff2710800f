// The built command as a process: its statuses, its streams, and that it runs from anywhere. `npm test` builds it first.
import { spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import * as fs from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { starters } from "../../src/surfaces/starters.ts";
import { makeFolder } from "./stand-in.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const command = join(root, "dist/ferrule.cjs");
const unset = { FERRULE_OPTIONS: undefined, NO_COLOR: undefined, NODE_OPTIONS: undefined };

/** A folder with a plan that is fine as far as reading goes and one that is not. */
function plansFolder(): string {
	const folder = makeFolder();
	fs.writeFileSync(join(folder, "fine.ferrule"), starters[0]?.text ?? "");
	fs.writeFileSync(join(folder, "broken.ferrule"), "circut a from LC\n");
	return folder;
}

function ferrule(folder: string, words: readonly string[], environment: NodeJS.ProcessEnv = {}) {
	return spawnSync(process.execPath, [command, ...words], {
		cwd: folder,
		encoding: "utf8",
		env: { ...process.env, ...unset, ...environment },
	});
}

/** Runs a line of bash in which `ferrule` is the command. */
function shell(folder: string, line: string) {
	const script = `ferrule() { "${process.execPath}" "${command}" "$@"; }\n${line}`;
	return spawnSync("bash", ["-c", script], {
		cwd: folder,
		encoding: "utf8",
		env: { ...process.env, ...unset },
		maxBuffer: 1e8,
	});
}

describe("the statuses of the process", () => {
	test.each([
		[0, ["check", "fine.ferrule"]],
		[0, ["tidy", "fine.ferrule"]],
		[0, ["show", "fine.ferrule", "--written-out"]],
		[1, ["check", "broken.ferrule"]],
		[64, ["chekc", "fine.ferrule"]],
		[66, ["check", "none.ferrule"]],
		[73, ["draw", "fine.ferrule", "--out", "broken.ferrule/here"]],
	])("%d: %j", (status, words) => {
		const outcome = ferrule(plansFolder(), words);
		expect(outcome.status, outcome.stderr).toBe(status);
		expect(outcome.stderr).not.toMatch(/\n\s+at /);
	});

	test("70 for a fault of ours: one line and no stack", () => {
		const folder = plansFolder();
		const fault = 'TextDecoder.prototype.decode = () => { throw new TypeError("a fault of ours"); };';
		fs.writeFileSync(join(folder, "fault.cjs"), fault);
		const { status, stderr, stdout } = ferrule(folder, ["check", "fine.ferrule"], {
			NODE_OPTIONS: `--require ${join(folder, "fault.cjs")}`,
		});
		expect(status).toBe(70);
		expect(stdout).toBe("");
		expect(stderr).toMatch(/^ferrule: Ferrule itself has failed, not your plan\. .* TypeError: a fault of ours\n$/);
	});

	test("70 for a program that cannot start", () => {
		const folder = plansFolder();
		fs.mkdirSync(join(folder, "copy/parts"), { recursive: true });
		fs.copyFileSync(command, join(folder, "copy/ferrule.cjs"));
		fs.writeFileSync(join(folder, "copy/parts/ferrule.cjs"), "half a pro(");
		const { status, stderr } = spawnSync(process.execPath, [join(folder, "copy/ferrule.cjs")], { encoding: "utf8" });
		expect(status).toBe(70);
		expect(stderr).toMatch(/^ferrule: the program itself cannot start .*\n$/);
	});

	test("74 for an output that breaks off, with one line", () => {
		const { status, stderr } = shell(plansFolder(), "ferrule check fine.ferrule > /dev/full");
		expect(status).toBe(74);
		expect(stderr).toBe("ferrule: the output cannot be written: the disk is full.\n");
	});

	test("78 for bad settings", () => {
		expect(ferrule(plansFolder(), ["check", "fine.ferrule"], { FERRULE_OPTIONS: "--colr never" }).status).toBe(78);
	});

	test("130 when the user interrupts", async () => {
		const child = spawn(process.execPath, [command, "check", "-"], {
			cwd: plansFolder(),
			stdio: ["pipe", "pipe", "pipe"],
		});
		child.stdin.write("plan");
		// It reads until the end of its input, which does not come; a started process has opened its input.
		await new Promise((resolve) => setTimeout(resolve, 700));
		child.kill("SIGINT");
		const [code, signal] = await once(child, "exit");
		expect([code, signal]).toEqual([130, null]);
	});

	test("141 when whoever reads goes away, without a word", () => {
		const { stdout, stderr } = shell(plansFolder(), "ferrule explain | true; echo $PIPESTATUS");
		expect(stdout).toBe("141\n");
		expect(stderr).toBe("");
	});
});

test("a long output goes through a pipe whole", () => {
	const folder = makeFolder();
	fs.writeFileSync(join(folder, "long.ferrule"), "circut a from LC\n".repeat(3000));
	const { stdout } = shell(folder, "ferrule check long.ferrule --as json | (sleep 0.3; cat)");
	expect(stdout.length).toBeGreaterThan(1_000_000);
	expect(JSON.parse(stdout).findings.length).toBeGreaterThan(2999);
});

test("it runs through a link and from another folder, and without its compiled form", () => {
	const folder = plansFolder();
	fs.symlinkSync(command, join(folder, "link"));
	expect(spawnSync(join(folder, "link"), ["--version"], { cwd: "/", encoding: "utf8" }).stdout).toMatch(/^ferrule \d/);

	const copy = join(folder, "copy");
	fs.cpSync(join(root, "dist"), copy, { recursive: true, filter: (name) => !/\.cjs\.v/.test(name) });
	const words = ["check", "fine.ferrule", "--as", "json"];
	const copied = spawnSync(process.execPath, [join(copy, "ferrule.cjs"), ...words], { cwd: folder, encoding: "utf8" });
	expect(copied.stdout).toBe(ferrule(folder, words).stdout);
	expect(copied.status).toBe(0);
});

test.each([
	["does not know", "13.6.233.8-node.28", /no-word-of-any-engine/],
	["is not asked about", "14.1.146.11-node.14", /^fine\.ferrule: nothing to put right\n$/],
])("under an engine that %s the setting that saves time, a drawing is the same", (_, engine, complaint) => {
	const folder = plansFolder();
	const preload = `
		Object.defineProperty(process, "versions", { value: { ...process.versions, v8: "${engine}" } });
		const v8 = require("node:v8");
		const { setFlagsFromString } = v8;
		v8.setFlagsFromString = () => setFlagsFromString("--no-word-of-any-engine");
	`;
	fs.writeFileSync(join(folder, "engine.cjs"), preload);
	const words = ["draw", "fine.ferrule", "--sheet", "wiring", "--out", "-"];
	const outcome = ferrule(folder, words, { NODE_OPTIONS: `--require ${join(folder, "engine.cjs")}` });
	expect(outcome.stdout).toBe(ferrule(folder, words).stdout);
	expect(outcome.status).toBe(0);
	expect(outcome.stderr).toMatch(complaint);
});

test("a plan comes through standard input as from a file", () => {
	const folder = plansFolder();
	const piped = shell(folder, "ferrule check - --stdin-name broken.ferrule --as json < broken.ferrule");
	expect(piped.stdout).toBe(ferrule(folder, ["check", "broken.ferrule", "--as", "json"]).stdout);
	expect(piped.status).toBe(1);
});

test("a closed or odd standard input is told of, not stumbled over", () => {
	const folder = plansFolder();
	expect(shell(folder, "ferrule check - < .").status).toBe(66);
	expect([0, 1]).toContain(shell(folder, "ferrule check - <&-").status);
});

test("what it draws is what the rooms draw, whatever the language and the time zone", async () => {
	const { checkPlan, drawPlan } = await import("../../src/pipeline.ts");
	const folder = makeFolder();
	for (const sample of ["heron-camper", "otter-van"]) {
		const name = `${sample}.ferrule`;
		fs.copyFileSync(join(root, "samples", name), join(folder, name));
		const sheets = await drawPlan(checkPlan(fs.readFileSync(join(folder, name), "utf8"), name), "all");
		for (const environment of [
			{ LC_ALL: "tr_TR.UTF-8", TZ: "Asia/Kathmandu" },
			{ LC_ALL: "C", TZ: "UTC" },
		]) {
			expect(ferrule(folder, ["draw", name, "--out", "d", "--fail-on", "never"], environment).status).toBe(0);
			for (const sheet of sheets)
				expect(fs.readFileSync(join(folder, "d", `${sample}-${sheet.name}.svg`), "utf8")).toBe(sheet.svg);
			// The second time every file is there, and is known as one of ours.
		}
		expect(sheets.length).toBeGreaterThan(0);
	}
});

test("what it draws does not depend on where the user stands", () => {
	const folder = makeFolder();
	fs.mkdirSync(join(folder, "deep/in"), { recursive: true });
	fs.copyFileSync(join(root, "samples/otter-van.ferrule"), join(folder, "deep/in/van.ferrule"));
	const from = [folder, join(folder, "deep"), join(folder, "deep/in")];
	const drawn = from.map((place) => {
		const plan = ["deep/in/van.ferrule", "in/van.ferrule", "van.ferrule"][from.indexOf(place)] ?? "";
		return ferrule(place, ["draw", plan, "--sheet", "one-line", "--out", "-", "--fail-on", "never"]).stdout;
	});
	expect(drawn[0]).toMatch(/^<svg /);
	expect(new Set(drawn).size).toBe(1);
	expect(drawn[0]).not.toContain("deep");
});

describe("npm start", () => {
	const start = (folder: string, words: readonly string[]) =>
		spawnSync(process.execPath, [join(root, "dist/start.cjs"), ...words], {
			cwd: root,
			encoding: "utf8",
			env: { ...process.env, ...unset, INIT_CWD: folder },
		});

	test("says in three lines what it found and where the drawings lie", () => {
		const { status, stdout, stderr } = start(root, []);
		expect(status).toBe(0);
		expect(stderr).toBe("");
		const lines = stdout.trimEnd().split("\n");
		expect(lines.slice(-3)).toEqual([
			expect.stringMatching(/^samples\/heron-camper\.ferrule: /),
			expect.stringMatching(/^drawn: drawings\/heron-camper-[^ ]+\.svg/),
			"Open them in a browser. Your own plan: npm start -- my.ferrule",
		]);
		expect(lines).toHaveLength(3);
		for (const name of (lines[1] ?? "").slice("drawn: ".length).split(", "))
			expect(fs.readFileSync(join(root, name), "utf8")).toMatch(/^<svg /);
	});

	test("does the same for a plan of one's own, and tells its faults", () => {
		const folder = plansFolder();
		fs.renameSync(join(folder, "fine.ferrule"), join(folder, "start-test.ferrule"));
		fs.appendFileSync(join(folder, "start-test.ferrule"), "\ncircut a from LC\n");
		const { status, stdout } = start(folder, ["start-test.ferrule"]);
		for (const name of fs.readdirSync(join(root, "drawings")))
			if (name.startsWith("start-test")) fs.rmSync(join(root, "drawings", name));
		expect(status).toBe(0);
		expect(stdout).toMatch(/^\d {2}ERROR: /);
		expect(stdout).toContain("\ndrawn: ");
	});
});
