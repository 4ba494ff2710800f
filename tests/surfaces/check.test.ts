import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { CheckPlan } from "../../src/surfaces/checker.ts";
import type { Reading } from "../../src/surfaces/files/read.ts";
import { findWords, makeFolder, run } from "./stand-in.ts";

function folderWith(files: Readonly<Record<string, string>>): string {
	const folder = makeFolder();
	for (const [name, text] of Object.entries(files)) {
		fs.mkdirSync(join(folder, name, ".."), { recursive: true });
		fs.writeFileSync(join(folder, name), text);
	}
	return folder;
}

describe("plans", () => {
	test("of a folder are all *.ferrule in it and then below, in order of their names, and no others", async () => {
		const folder = folderWith({
			"plans/b.ferrule": "error",
			"plans/B.ferrule": "error",
			"plans/a.ferrule": "error",
			"plans/a.txt": "error",
			"plans/deep/c.ferrule": "error",
			"plans/deep/er/d.ferrule": "error",
			"plans/Deep/c.ferrule": "error",
			"plans/.hidden/c.ferrule": "error",
			"plans/node_modules/c.ferrule": "error",
			"elsewhere/c.ferrule": "error",
		});
		fs.mkdirSync(join(folder, "plans", "d.ferrule"));
		fs.symlinkSync(join(folder, "elsewhere"), join(folder, "plans", "link"));
		fs.symlinkSync(join(folder, "plans"), join(folder, "plans", "deep", "round"));
		const { output } = await run(folder, ["check", "plans", "--as", "short"]);
		expect(output.split("\n").map((line) => line.split(":")[0])).toEqual([
			"plans/B.ferrule",
			"plans/a.ferrule",
			"plans/b.ferrule",
			"plans/Deep/c.ferrule",
			"plans/deep/c.ferrule",
			"plans/deep/er/d.ferrule",
			"",
		]);
	});

	test("go by names relative to the working folder, however they were named", async () => {
		const folder = folderWith({ "in/a.ferrule": "error" });
		const inside = join(folder, "in");
		for (const name of ["./a.ferrule", join(folder, "in", "a.ferrule"), "../in/a.ferrule"])
			expect((await run(inside, ["check", name, "--as", "short"])).output).toMatch(/^a\.ferrule:1:1: /);
	});

	test("outside of it go by what the call says, and to programs by relative names", async () => {
		const folder = folderWith({ "in/a.ferrule": "error" });
		const outside = join(folder, "other");
		const there = join(folder, "in");
		for (const [operand, name] of [
			["../in/a.ferrule", "../in/a.ferrule"],
			["../in", join("..", "in", "a.ferrule")],
			[there, join(there, "a.ferrule")],
		] as const) {
			const { output } = await run(outside, ["check", operand, "--as", "short"]);
			expect(output.startsWith(`${name}:1:1: `)).toBe(true);
			const { findings, plans } = JSON.parse((await run(outside, ["check", operand, "--as", "json"])).output);
			expect([findings[0].file, plans[0].file]).toEqual(["../in/a.ferrule", "../in/a.ferrule"]);
		}
		const { messages } = await run(outside, ["draw", join(there, "a.ferrule")]);
		expect(messages).toContain(`drawn: ${join(there, "a-wiring.svg")}, ${join(there, "a-one-line.svg")}\n`);
	});

	test("that are named twice are checked once", async () => {
		const folder = folderWith({ "a.ferrule": "error" });
		const { output } = await run(folder, ["check", "a.ferrule", "a.ferrule", "--as", "short"]);
		expect(output.trim().split("\n")).toHaveLength(1);
	});

	test("from standard input go by the name that is given", async () => {
		const bytes = new TextEncoder().encode("error");
		const readInput = async (): Promise<Reading> => ({ kind: "bytes", bytes, identity: { device: 0n, inode: 0n } });
		const folder = makeFolder();
		expect((await run(folder, ["check", "-", "--as", "short"], { readInput })).output).toMatch(/^standard-input:1:1: /);
		const words = ["check", "-", "--stdin-name", "sub/van.ferrule", "--as", "short"];
		expect((await run(folder, words, { readInput })).output).toMatch(/^sub\/van\.ferrule:1:1: /);
	});

	test("that can be read are checked although another cannot", async () => {
		const folder = folderWith({ "a.ferrule": "error" });
		const { status, output, messages } = await run(folder, ["check", "no.ferrule", "a.ferrule", "--as", "short"]);
		expect(status).toBe(66);
		expect(output).toMatch(/^a\.ferrule:1:1: /);
		expect(messages).toContain("ferrule: no.ferrule cannot be read: there is no such file.\n");
	});

	test("that are too large or no text are findings at their place", async () => {
		const folder = folderWith({ "big.ferrule": "x".repeat(2_000_001) });
		fs.writeFileSync(join(folder, "odd.ferrule"), Buffer.from([0x61, 10, 0x62, 0xff]));
		const { status, output } = await run(folder, ["check", "big.ferrule", "odd.ferrule", "--as", "short"]);
		expect(status).toBe(1);
		expect(output).toBe(
			"big.ferrule:1:1: text-too-long The plan is too large to be read\nodd.ferrule:2:2: text-not-utf8 A character here cannot be read\n",
		);
	});

	test("whose bytes give a finding keep the numbers of those in their text", async () => {
		const folder = makeFolder();
		fs.writeFileSync(join(folder, "odd.ferrule"), Buffer.from("error \u00ff", "latin1"));
		const { output } = await run(folder, ["check", "odd.ferrule", "--as", "json"]);
		expect(JSON.parse(output).findings).toMatchObject([
			{ number: 1, code: "error-written" },
			{ number: 2, code: "text-not-utf8" },
		]);
	});
});

test("a file's name cannot steer the terminal, whatever is said of it", async () => {
	const name = "a\u001b[2J\u202e.ferrule";
	const folder = folderWith({ [name]: "error", [`twice/${name}`]: "error" });
	const calls = [
		["check", name],
		["check", name, "--as", "short"],
		["check", `no${name}`],
		["draw", name],
		["draw", name, `twice/${name}`, "--out", "d"],
		["draw", name, "--out", `${name}/x`],
		["draw", name, "--out", "-"],
		["show", name],
		["new", name],
		["explain", name],
		[name],
	];
	for (const call of calls) {
		const { output, messages } = await run(folder, call);
		const shown = call.includes("-") ? messages : output + messages;
		expect(shown, call.join(" ")).not.toMatch(/(?!\n)[\p{Cc}\p{Cf}]/u);
	}
});

describe("the number of findings", () => {
	const many = { "many.ferrule": "error\n".repeat(250) };

	test("is limited to 200 in the list, and all are told", async () => {
		const folder = folderWith(many);
		const text = (await run(folder, ["check", "many.ferrule"])).output;
		expect(text.match(/ERROR:/g)).toHaveLength(200);
		expect(text).toMatch(/many\.ferrule: 250 errors \(250 in all, 50 not listed here\)\n$/);
		const short = await run(folder, ["check", "many.ferrule", "--as", "short"]);
		expect(short.output.trim().split("\n")).toHaveLength(200);
		expect(short.messages).toContain("50 not listed here");
	});

	test("is not limited for programs", async () => {
		const { output } = await run(folderWith(many), ["check", "many.ferrule", "--as", "json"]);
		expect(JSON.parse(output).findings).toHaveLength(250);
	});
});

describe("colours", () => {
	const colours = async (
		words: readonly string[],
		columns: number | undefined,
		environment: Record<string, string>,
	) => {
		const folder = folderWith({ "a.ferrule": "error" });
		let text = "";
		const output = { write: (more: string) => (text += more), columns };
		await run(folder, ["check", "a.ferrule", ...words], {
			output: { ...output, write: (more) => void output.write(more) },
			environment: (name) => new Map(Object.entries(environment)).get(name),
		});
		return text.includes("\u001b[");
	};

	test.each([
		[[], 80, {}, true],
		[[], undefined, {}, false],
		[[], 80, { NO_COLOR: "1" }, false],
		[[], 80, { NO_COLOR: "" }, true],
		[[], 80, { TERM: "dumb" }, false],
		[["--color", "never"], 80, {}, false],
		[["--color", "always"], undefined, { NO_COLOR: "1" }, true],
		[["--color", "auto"], undefined, {}, false],
		[["--as", "short", "--color", "always"], 80, {}, false],
		[["--as", "json", "--color", "always"], 80, {}, false],
	])("%j on %s columns with %j: %s", async (words, columns, environment, expected) => {
		expect(await colours(words, columns, environment)).toBe(expected);
	});
});

describe("lines to write", () => {
	const offering: CheckPlan = (text, file, find) => ({
		...findWords(text, file, find),
		repairs: async ({ left }) =>
			new Map(left === 0 ? [] : [[`error-written@${file}:1:1`, [{ line: 1, instead: 1, lines: ["fine"] }]]]),
	});
	const plans = (count: number) =>
		Object.fromEntries(Array.from({ length: count }, (_, index) => [`p${index}.ferrule`, "error"]));
	const check = (count: number, form: string) =>
		run(folderWith(plans(count)), ["check", ".", "--as", form], { checkPlan: offering });

	test("are in the reports that have room for them", async () => {
		expect((await check(2, "text")).output).toContain(
			"     write  once it is wired so, in place of line 1\n         1  fine\n",
		);
		const { findings } = JSON.parse((await check(2, "json")).output);
		expect(findings[1].repair).toEqual([{ line: 1, instead: 1, lines: ["fine"] }]);
		expect((await check(1, "sarif")).output).toContain('"repair"');
		expect((await check(1, "short")).output).toBe("p0.ferrule:1:1: error-written The word error stands here\n");
	});

	test("are looked for where few plans are checked", async () => {
		expect((await check(10, "text")).output).toContain("     write  ");
		expect((await check(11, "text")).output).not.toContain("     write  ");
	});
});
