import { spawn } from "node:child_process";
import { once } from "node:events";
import * as fs from "node:fs";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { build } from "rolldown";
import { expect, test } from "vitest";
import { replaceFile } from "../../src/surfaces/files/replace.ts";
import { makeFolder } from "./stand-in.ts";

test("however often the writing is killed, the file is whole, and the next run clears up", async () => {
	const folder = makeFolder();
	const script = join(folder, "writer.mjs");
	const input = fileURLToPath(new URL("write-for-ever.ts", import.meta.url));
	await build({ input, platform: "node", logLevel: "silent", output: { file: script } });
	const target = join(folder, "out");
	fs.mkdirSync(target);
	const path = join(target, "a.svg");
	const seen = new Set<string>();
	for (let turn = 0; turn < 12; turn++) {
		// It begins with another letter than the file has, and the clock starts when it has written: on a slow machine, too.
		const before = fs.existsSync(path) ? fs.readFileSync(path, "utf8").charAt(0) : "";
		const first = (before === "" ? 0 : before.charCodeAt(0) - 97 + 1) % 26;
		const writer = spawn(process.execPath, [script, path, String(first)], { stdio: "ignore" });
		while (!fs.existsSync(path) || fs.readFileSync(path, "utf8").charAt(0) === before) await wait(5);
		// Different moments of the writing; a random one would make a failure hard to see again.
		await wait(turn * 7);
		writer.kill("SIGKILL");
		await once(writer, "exit");
		const text = fs.readFileSync(path, "utf8");
		expect(text).toHaveLength(300_000);
		expect(new Set(text).size).toBe(1);
		seen.add(text.slice(0, 1));
	}
	expect(seen.size).toBeGreaterThan(1);
	const writer = { process: process.pid, salt: () => "0", isRunning: (number: number) => number === process.pid };
	expect(replaceFile(fs, writer, path, "last", { inputs: [], replace: "any" })).toBeUndefined();
	expect(fs.readdirSync(target)).toEqual(["a.svg"]);
});
