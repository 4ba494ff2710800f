import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { tidyPlan } from "../../src/pipeline.ts";
import type { Reading } from "../../src/surfaces/files/read.ts";
import { makeFolder, run } from "./stand-in.ts";

const ragged = "box  a\n  r1:receptacle   15amps\n";
const tidied = "box a\n  r1: receptacle 15 A\n";
const real = { tidyPlan };

function folderWith(plans: Readonly<Record<string, string>>): string {
	const folder = makeFolder();
	for (const [name, text] of Object.entries(plans)) fs.writeFileSync(join(folder, name), text);
	return folder;
}

function typed(text: string) {
	const bytes = new TextEncoder().encode(text);
	return { readInput: async (): Promise<Reading> => ({ kind: "bytes", bytes, identity: { device: 0n, inode: 0n } }) };
}

describe("the tidied text", () => {
	test("goes to standard output, byte for byte, and the file stays", async () => {
		const folder = folderWith({ "a.ferrule": ragged });
		expect(await run(folder, ["tidy", "a.ferrule"], real)).toEqual({ status: 0, output: tidied, messages: "" });
		expect(fs.readFileSync(join(folder, "a.ferrule"), "utf8")).toBe(ragged);
	});

	test("comes from standard input, too", async () => {
		const outcome = await run(makeFolder(), ["tidy", "-"], { ...real, ...typed(ragged.replaceAll("\n", "\r\n")) });
		expect(outcome).toEqual({ status: 0, output: tidied.replaceAll("\n", "\r\n"), messages: "" });
	});

	test("cannot steer a terminal", async () => {
		const written: string[] = [];
		const output = { write: (text: string) => written.push(text), columns: 80 };
		await run(folderWith({ "a.ferrule": "// clear all that is shown: \u001b[2J\n" }), ["tidy", "a.ferrule"], {
			...real,
			output,
		});
		expect(written.join("")).toBe("// clear all that is shown: \\x1b[2J\n");
	});

	test("has a tag on every cable where that is asked for", async () => {
		const chain = "inlet s 30 A\npanel P from s by 10-2\ncircuit c from P breaker 15 A by 14-2\n  9 ft to a: light\n";
		const { output } = await run(folderWith({ "a.ferrule": chain }), ["tidy", "a.ferrule", "--pin-tags"], real);
		expect(output).toBe(chain.replace("9 ft", "9 ft as c-1"));
	});
});

describe("with --write", () => {
	test("it takes the place of the plan, of every plan of a folder", async () => {
		const folder = folderWith({ "a.ferrule": ragged, "b.ferrule": tidied });
		fs.chmodSync(join(folder, "a.ferrule"), 0o640);
		const before = fs.statSync(join(folder, "b.ferrule"), { bigint: true });
		const outcome = await run(folder, ["tidy", ".", "--write"], real);
		expect(outcome).toEqual({ status: 0, output: "", messages: "tidied: a.ferrule\ntidy already: b.ferrule\n" });
		expect(fs.readFileSync(join(folder, "a.ferrule"), "utf8")).toBe(tidied);
		expect(fs.statSync(join(folder, "a.ferrule")).mode & 0o777).toBe(0o640);
		const after = fs.statSync(join(folder, "b.ferrule"), { bigint: true });
		expect([after.ino, after.mtimeNs]).toEqual([before.ino, before.mtimeNs]);
		expect(fs.readdirSync(folder)).toEqual(["a.ferrule", "b.ferrule"]);
	});

	test("a byte order mark and the endings of lines stay", async () => {
		const folder = folderWith({ "a.ferrule": `\ufeff${ragged.replaceAll("\n", "\r\n")}` });
		await run(folder, ["tidy", "a.ferrule", "--write"], real);
		expect(fs.readFileSync(join(folder, "a.ferrule"), "utf8")).toBe(`\ufeff${tidied.replaceAll("\n", "\r\n")}`);
	});

	test("a link stays a link", async () => {
		const folder = folderWith({ "real.txt": ragged });
		fs.symlinkSync("real.txt", join(folder, "a.ferrule"));
		await run(folder, ["tidy", "a.ferrule", "--write"], real);
		expect(fs.lstatSync(join(folder, "a.ferrule")).isSymbolicLink()).toBe(true);
		expect(fs.readFileSync(join(folder, "real.txt"), "utf8")).toBe(tidied);
	});

	test("a plan that something else changes meanwhile stays as that left it", async () => {
		const folder = folderWith({ "a.ferrule": ragged });
		const outcome = await run(folder, ["tidy", "a.ferrule", "--write"], {
			tidyPlan: async (text, file, wish) => {
				fs.writeFileSync(join(folder, "a.ferrule"), "box mine\n");
				return tidyPlan(text, file, wish);
			},
		});
		expect(outcome).toMatchObject({
			status: 73,
			messages: "ferrule: a.ferrule cannot be written: something else changed it after it was read.\n",
		});
		expect(fs.readFileSync(join(folder, "a.ferrule"), "utf8")).toBe("box mine\n");
	});

	test("a plan that may not be written stays whole", async () => {
		const folder = folderWith({ "a.ferrule": ragged });
		const full = () => {
			throw Object.assign(new Error("full"), { code: "ENOSPC" });
		};
		const outcome = await run(folder, ["tidy", "a.ferrule", "--write"], { ...real, files: { ...fs, writeSync: full } });
		expect(outcome).toMatchObject({
			status: 74,
			messages: "ferrule: a.ferrule cannot be written: the disk is full.\n",
		});
		expect(fs.readFileSync(join(folder, "a.ferrule"), "utf8")).toBe(ragged);
		expect(fs.readdirSync(folder)).toEqual(["a.ferrule"]);
	});
});

describe("with --diff", () => {
	test("what would change is shown, and nothing is written", async () => {
		const folder = folderWith({ "a.ferrule": ragged, "b.ferrule": tidied });
		const outcome = await run(folder, ["tidy", ".", "--diff"], real);
		expect(outcome).toEqual({
			status: 1,
			output: [
				"--- a.ferrule",
				"+++ a.ferrule",
				"@@ -1,2 +1,2 @@",
				"-box  a",
				"-  r1:receptacle   15amps",
				"+box a",
				"+  r1: receptacle 15 A",
				"",
			].join("\n"),
			messages: "",
		});
		expect(fs.readFileSync(join(folder, "a.ferrule"), "utf8")).toBe(ragged);
	});

	test("of a tidy plan there is nothing to show", async () => {
		const outcome = await run(folderWith({ "a.ferrule": tidied }), ["tidy", "a.ferrule", "--diff"], real);
		expect(outcome).toEqual({ status: 0, output: "", messages: "" });
	});
});

describe("what cannot be read", () => {
	test("stays, is told line by line, and gives status 1; the rest is tidied", async () => {
		const text = "box  a\n]]\n]]  ]]\nplace  p\n9  to q\n";
		const folder = folderWith({ "a.ferrule": text });
		const outcome = await run(folder, ["tidy", "a.ferrule", "--write"], real);
		expect(outcome).toEqual({
			status: 1,
			output: "",
			messages:
				"tidied: a.ferrule\na.ferrule: lines 2 to 3 and 5 stay as before, because something there cannot be read; `ferrule check` tells what\n",
		});
		expect(fs.readFileSync(join(folder, "a.ferrule"), "utf8")).toBe("box a\n]]\n]]  ]]\nplace p\n9  to q\n");
	});

	test("a plan that is not UTF-8 stays byte for byte", async () => {
		const folder = makeFolder();
		const bytes = Uint8Array.from([...new TextEncoder().encode("box  a // "), 0xfc, 10]);
		fs.writeFileSync(join(folder, "a.ferrule"), bytes);
		const { status, output, messages } = await run(folder, ["tidy", "a.ferrule", "--write"], real);
		expect([status, output]).toEqual([1, ""]);
		expect(messages).toContain("A character here cannot be read");
		expect(messages).toContain("a.ferrule is not tidied: it stays as it is.\n");
		expect(Uint8Array.from(fs.readFileSync(join(folder, "a.ferrule")))).toEqual(bytes);
	});
});

test.each([
	[["tidy", "a.ferrule", "--write", "--diff"], "`--diff` shows what would change"],
	[["tidy", "a.ferrule", "b.ferrule"], "Several plans cannot go to standard output together"],
	[["tidy", "-", "--write"], "Standard input has no file to write to"],
])("%j is a wrong call", async (words, why) => {
	const outcome = await run(folderWith({ "a.ferrule": ragged, "b.ferrule": ragged }), words, {
		...real,
		...typed(ragged),
	});
	expect([outcome.status, outcome.output]).toEqual([64, ""]);
	expect(outcome.messages).toContain(why);
});
