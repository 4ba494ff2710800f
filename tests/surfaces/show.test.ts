import * as fs from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { makeFolder, run } from "./stand-in.ts";

function plansFolder(): string {
	const folder = makeFolder();
	for (const name of ["a", "b"]) fs.writeFileSync(join(folder, `${name}.ferrule`), "fine");
	return folder;
}

test("the circuit is told in words, in short, and as data, plan by plan", async () => {
	const folder = plansFolder();
	expect(await run(folder, ["show", "a.ferrule"])).toEqual({
		status: 0,
		output: "a.ferrule box by box\n",
		messages: "",
	});
	expect((await run(folder, ["show", ".", "--as", "short"])).output).toBe("a.ferrule in short\nb.ferrule in short\n");
	expect(JSON.parse((await run(folder, ["show", ".", "--as", "json"])).output)).toEqual({
		schema: 1,
		plans: [
			{ file: "a.ferrule", circuit: { boxes: 4 } },
			{ file: "b.ferrule", circuit: { boxes: 4 } },
		],
	});
});

test("written out it is a plan again", async () => {
	expect(await run(plansFolder(), ["show", "a.ferrule", "--written-out"])).toEqual({
		status: 0,
		output: "fine written out\n",
		messages: "",
	});
});

test("findings are counted beside it, and decide the status", async () => {
	const folder = plansFolder();
	fs.writeFileSync(join(folder, "a.ferrule"), "error");
	const outcome = await run(folder, ["show", "a.ferrule"]);
	expect(outcome).toEqual({
		status: 1,
		output: "a.ferrule box by box\n",
		messages: "a.ferrule: 1 error; `ferrule check` tells about each\n",
	});
	expect((await run(folder, ["show", "a.ferrule", "--fail-on", "never"])).status).toBe(0);
});

test("where nothing is understood, the findings are told instead", async () => {
	const folder = plansFolder();
	fs.writeFileSync(join(folder, "a.ferrule"), "nonsense, error");
	const { status, output, messages } = await run(folder, ["show", "a.ferrule"]);
	expect([status, output]).toEqual([1, ""]);
	expect(messages).toContain("ERROR: The word error stands here");
	expect(JSON.parse((await run(folder, ["show", "a.ferrule", "--as", "json"])).output).plans[0].circuit).toBe(null);
});

test("names from a plan cannot steer the terminal", async () => {
	const { output } = await run(plansFolder(), ["show", "a.ferrule"], {
		checkPlan: () => ({
			findings: [],
			understood: true,
			used: new Map(),
			scope: { rules: 0, modes: [], parts: 0, conductors: 0, incomplete: false },
			draw: async () => [],
			repairs: async () => new Map(),
			writeOut: async () => "",
			makeMistakes: async () => [],
			sizes: async () => ({ sizes: [], circuits: [], units: "feet" }),
			figures: async () => ({ kind: "refused", why: "" }),
			show: () => ({ text: "b1\n\u001b[2J\u202e\n", short: "", json: null }),
		}),
	});
	expect(output).toBe("b1\n\\x1b[2J\\u{202e}\n");
});
