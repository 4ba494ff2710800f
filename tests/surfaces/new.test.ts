import * as fs from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { checkPlan, drawPlan } from "../../src/pipeline.ts";
import { starters } from "../../src/surfaces/starters.ts";
import { makeFolder, run } from "./stand-in.ts";

const seeds = new URL("../../seeds/", import.meta.url);

test("every file of the folder of seeds is a starter, with its text", () => {
	const files = fs.readdirSync(seeds).sort();
	expect(starters.map(({ name }) => `${name}.ferrule`).sort()).toEqual(files);
	for (const { name, text } of starters) expect(text).toBe(fs.readFileSync(new URL(`${name}.ferrule`, seeds), "utf8"));
});

test.each(starters)("$name is copied byte for byte, and the next step is told", async ({ name, text }) => {
	const folder = makeFolder();
	const { status, output, messages } = await run(folder, ["new", "sub.folder/van", "--from", name]);
	expect(status).toBe(73);
	expect(messages).toContain("the folder it should go to does not exist");
	expect((await run(folder, ["new", "van", "--from", name])).messages).toBe(
		`wrote van.ferrule from ${name}; next: ferrule check van.ferrule\n`,
	);
	expect(output).toBe("");
	expect(fs.readFileSync(join(folder, "van.ferrule"), "utf8")).toBe(text);
});

test.each(starters)("$name checks clean and draws as it stands", async ({ name, text }) => {
	const result = checkPlan(text, `${name}.ferrule`);
	expect(result.findings.filter(({ level }) => level !== "note").map(({ code, title }) => `${code}: ${title}`)).toEqual(
		[],
	);
	expect((await drawPlan(result, "all")).length).toBeGreaterThan(0);
});

test("without a starter the first is taken, and an extension is kept", async () => {
	const folder = makeFolder();
	await run(folder, ["new", "van.txt"]);
	expect(fs.readFileSync(join(folder, "van.txt"), "utf8")).toBe(starters[0]?.text);
});

test("an unknown starter lists those there are and offers the nearest", async () => {
	const { messages } = await run(makeFolder(), ["new", "van", "--from", "camper-inverted"]);
	expect(messages).toContain("bench, camper-shore, camper-inverter, cabin");
	expect(messages).toContain("Did you mean `camper-inverter`?");
});

test("what is there already stays, a link included", async () => {
	const folder = makeFolder();
	fs.writeFileSync(join(folder, "van.ferrule"), "mine");
	fs.symlinkSync("elsewhere.ferrule", join(folder, "link.ferrule"));
	expect((await run(folder, ["new", "van"])).messages).toContain("there is a file already");
	expect((await run(folder, ["new", "link"])).status).toBe(73);
	expect(fs.readFileSync(join(folder, "van.ferrule"), "utf8")).toBe("mine");
	expect(fs.readdirSync(folder).sort()).toEqual(["link.ferrule", "van.ferrule"]);
});
