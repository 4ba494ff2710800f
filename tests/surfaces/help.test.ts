import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { kinds } from "../../src/kinds/index.ts";
import { openHandbook } from "../../src/pipeline.ts";
import { ruleGroups } from "../../src/rules/index.ts";
import { parseCall } from "../../src/surfaces/command/parse-call.ts";
import { verbs } from "../../src/surfaces/command/verbs.ts";
import type { Reading } from "../../src/surfaces/files/read.ts";
import { makePages } from "../../src/surfaces/reference/pages.ts";
import { makeFolder, run } from "./stand-in.ts";

describe("help", () => {
	test("names every verb and every status, in 80 columns", async () => {
		const { status, output, messages } = await run(makeFolder(), ["--help"]);
		expect([status, messages]).toEqual([0, ""]);
		for (const { name } of verbs) expect(output).toMatch(new RegExp(`^ {2}${name} `, "m"));
		for (const code of [0, 1, 64, 66, 70, 73, 74, 78, 130, 141])
			expect(output).toMatch(new RegExp(`^ {2}${code} `, "m"));
		for (const line of output.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
	});

	test.each(verbs)("on $name tells every option, in 80 columns", async (verb) => {
		const { status, output } = await run(makeFolder(), [verb.name, "--help"]);
		expect(status).toBe(0);
		expect((await run(makeFolder(), ["help", verb.name])).output).toBe(output);
		for (const { name } of verb.options) expect(output).toContain(`  --${name}`);
		for (const line of output.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
	});

	test("without a verb goes to the messages, as a wrong call", async () => {
		const { status, output, messages } = await run(makeFolder(), []);
		expect([status, output]).toEqual([64, ""]);
		expect(messages).toContain("Verbs:");
	});
});

const examples = verbs.flatMap((verb) => verb.examples.map(({ call }) => ({ call, verb })));

test.each(examples)("the example runs: $call", async ({ call }) => {
	const folder = makeFolder();
	const making = call.startsWith("ferrule new");
	if (!making) fs.writeFileSync(join(folder, "van.ferrule"), "fine");
	fs.mkdirSync(join(folder, "plans"));
	fs.writeFileSync(join(folder, "plans", "cabin.ferrule"), "fine");
	const [line = "", from] = call.split(" < ");
	const bytes = new Uint8Array(from === undefined ? [] : fs.readFileSync(join(folder, from)));
	const readInput = async (): Promise<Reading> => ({ kind: "bytes", bytes, identity: { device: 0n, inode: 0n } });
	const pages = () => makePages({ ruleGroups, problems: [], kinds });
	const outcome = await run(folder, line.split(" ").slice(1), { readInput, pages, handbook: openHandbook });
	expect(outcome.messages).not.toMatch(/^ferrule: /m);
	expect(outcome.status).toBe(0);
});

test("options may stand anywhere, the last of two counts, and behind -- there are none", () => {
	const [check] = verbs;
	if (check === undefined) throw new Error("there is no verb");
	const call = parseCall(check, ["--as", "json", "a", "--as=short", "--", "--as", "-"]);
	expect(call).toEqual({ operands: ["a", "--as", "-"], options: new Map([["as", "short"]]) });
});
