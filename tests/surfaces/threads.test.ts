// Many plans checked in threads: the same bytes as in one, an end when the user wants one, and a fault that is told.
import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { PlanText } from "../../src/surfaces/checker.ts";
import { checkInThreads } from "../../src/surfaces/threads/check-in-threads.ts";
import { threadsFor } from "../../src/surfaces/threads/threads-for.ts";
import { findWords, makeFolder, run } from "./stand-in.ts";

const root = join(import.meta.dirname, "../..");

test("a check of 210 plans says the same on one processor and on three", () => {
	const folder = makeFolder();
	const samples = fs.readdirSync(join(root, "samples")).filter((name) => name.endsWith(".ferrule"));
	for (let number = 0; number < 210; number++) {
		const name = (number % 10 === 0 ? samples[(number / 10) % samples.length] : undefined) ?? "first-plan.ferrule";
		fs.copyFileSync(join(root, "samples", name), join(folder, `p${number}.ferrule`));
	}
	fs.writeFileSync(join(folder, "p7.ferrule"), 'use "parts/lead.ferrule"\ncircuit a from LC\n');
	fs.mkdirSync(join(folder, "parts"));
	fs.writeFileSync(join(folder, "parts/lead.ferrule"), "panel LC main 30 A furry\n");
	fs.writeFileSync(join(folder, "odd.ferrule"), Buffer.from([0x61, 10, 0x62, 0xff]));
	const check = (processors: number) => {
		const preload = join(folder, `on-${processors}.cjs`);
		fs.writeFileSync(preload, `require("node:os").availableParallelism = () => ${processors};`);
		return spawnSync(process.execPath, ["-r", preload, join(root, "dist/ferrule.cjs"), "check", ".", "--as", "json"], {
			cwd: folder,
			encoding: "utf8",
			maxBuffer: 1e8,
		});
	};
	const [one, three] = [check(1), check(3)];
	expect(JSON.parse(one.stdout).plans.length).toBeGreaterThan(200);
	expect([three.status, three.stderr]).toEqual([one.status, one.stderr]);
	expect(three.stdout === one.stdout).toBe(true);
}, 60_000);

test("few plans, or one processor, need no thread", () => {
	expect([threadsFor(1, 8), threadsFor(199, 8), threadsFor(1000, 1)].map((threads) => threads > 1)).toEqual([
		false,
		false,
		false,
	]);
	expect([threadsFor(200, 2), threadsFor(1000, 2), threadsFor(1000, 64)]).toEqual([2, 2, 4]);
});

test("the command hands many plans over, and puts in what it read of each", async () => {
	const folder = makeFolder();
	for (let number = 0; number < 220; number++) fs.writeFileSync(join(folder, `p${number + 100}.ferrule`), "fine");
	fs.writeFileSync(join(folder, "p103.ferrule"), "error");
	fs.writeFileSync(join(folder, "big.ferrule"), "x".repeat(2_000_001));
	const counts: number[] = [];
	const { status, output } = await run(folder, ["check", ".", "--as", "short"], {
		processors: () => 8,
		checkInThreads: async (texts, threads) => {
			counts.push(texts.length, threads);
			return texts.map(({ text, name }) => findWords(text, name, () => ({ kind: "missing", help: "" })));
		},
	});
	expect(counts).toEqual([220, 2]);
	expect(status).toBe(1);
	expect(output.split("\n").map((line) => line.split(" ")[1])).toEqual(["text-too-long", "error-written", undefined]);
});

describe("a thread", () => {
	const text: PlanText = { text: "", name: "a", path: undefined, roots: [{ path: ".", name: "", words: "" }] };
	const program = (words: string): string => {
		const file = join(makeFolder(), "program.cjs");
		fs.writeFileSync(file, `const { parentPort } = require("node:worker_threads");\n${words}\n`);
		return file;
	};

	test("answers in any order, and the answers stand in that of the texts", async () => {
		const slow = program(
			'parentPort.on("message", (texts) => setTimeout(() => parentPort.postMessage(texts.map(({ name }) => name)), texts[0].name === "p0" ? 200 : 0));',
		);
		const texts = Array.from({ length: 30 }, (_, index) => ({ ...text, name: `p${index}` }));
		expect(await checkInThreads(texts, 3, slow, () => false)).toEqual(texts.map(({ name }) => name));
	});

	test("that fails is told", async () => {
		const failing = program('parentPort.on("message", () => { throw new RangeError("too deep"); });');
		await expect(checkInThreads([text], 2, failing, () => false)).rejects.toThrow("too deep");
	});

	test("that never ends is ended when the user wants to stop", async () => {
		const endless = program('parentPort.on("message", () => { for (;;); });');
		expect(await checkInThreads([text], 1, endless, () => true)).toBe(undefined);
	});
});
