// Every code block of the README runs and says what the README says; its picture is the one that is drawn today.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { checkPlan, drawPlan } from "../../src/pipeline.ts";
import { verbs } from "../../src/surfaces/command/verbs.ts";

const root = join(import.meta.dirname, "../..");
const folder = mkdtempSync(join(tmpdir(), "ferrule-readme-"));
const readme = readFileSync(join(root, "README.md"), "utf8");
const blocks = [...readme.matchAll(/^```(\S+)(?: (\S+))?\n([\s\S]*?)^```$/gm)].map(
	([, language = "", info = "", text = ""]) => ({
		language,
		info,
		text,
	}),
);

afterAll(() => rmSync(folder, { recursive: true }));

function run(command: string, words: readonly string[], cwd: string, input = "") {
	return spawnSync(command, words, { cwd, encoding: "utf8", input, env: { ...process.env, NO_COLOR: "1" } });
}

function blocksOf(language: string) {
	return blocks.filter((block) => block.language === language);
}

test("every block has a language that is run here", () => {
	expect([...new Set(blocks.map((block) => block.language))].toSorted()).toEqual(["ferrule", "sh", "text", "ts"]);
});

describe("plans", () => {
	test.each(blocksOf("ferrule"))("a plan finds what its fence says: $info", ({ info, text }) => {
		const { findings } = checkPlan(text, "readme.ferrule");
		const found = findings.filter(({ level }) => level !== "note").map(({ code }) => code);
		expect(found.join(",")).toBe(info.replace("finds=", ""));
	});

	test("the first plan is the sample of that name", () => {
		expect(readFileSync(join(root, "samples/first-plan.ferrule"), "utf8")).toBe(blocksOf("ferrule")[0]?.text);
	});

	test("the printed finding is what check prints", () => {
		const faulty = blocksOf("ferrule")[1];
		writeFileSync(join(folder, "van.ferrule"), faulty?.text ?? "");
		const result = run(process.execPath, [join(root, "dist/ferrule.cjs"), "check", "van.ferrule"], folder);
		// A new rule changes their number, and is to touch no page but its own.
		const uncounted = (text: string | undefined) => text?.replace(/^Checked: \d+ rules/m, "Checked: all rules");
		expect(uncounted(result.stdout)).toBe(uncounted(blocksOf("text")[0]?.text));
		expect(result.status).toBe(1);
	});
});

describe("commands", () => {
	const lines = blocksOf("sh").flatMap((block) => block.text.trim().split("\n"));

	test("the ferrule commands run one after the other", () => {
		const commands = lines.filter((line) => line.startsWith("ferrule "));
		expect(commands.length).toBeGreaterThan(0);
		rmSync(join(folder, "van.ferrule"), { force: true });
		for (const command of commands) {
			const result = run(process.execPath, [join(root, "dist/ferrule.cjs"), ...command.split(" ").slice(1)], folder);
			expect([command, result.status, result.stderr]).toEqual([command, 0, expect.any(String)]);
		}
	});

	test("the table of verbs is that of --help", () => {
		const rows = [...readme.matchAll(/^\| `ferrule ([^`]+)` \| (.*) \|$/gm)].map(([, call, summary]) => [
			call,
			summary,
		]);
		expect(rows).toEqual(verbs.map(({ name, operands, summary }) => [`${name} ${operands.words}`, summary]));
	});

	test("npm start checks and draws a sample", () => {
		expect(lines).toContain("npm ci && npm start");
		const result = run("npm", ["start", "--silent"], root);
		expect(result.status).toBe(0);
		expect(result.stdout.trim().split("\n").length).toBeLessThanOrEqual(3);
		expect(result.stdout).toContain("drawings");
	});

	test("npm test is what continuous integration runs", () => {
		expect(lines).toContain("npm ci && npm test");
		expect(readFileSync(join(root, ".ci/run"), "utf8")).toContain("npm test");
	});
});

test("the library block runs and prints", () => {
	const result = run(process.execPath, ["--input-type=module", "-"], root, blocksOf("ts")[0]?.text);
	expect([result.status, result.stderr]).toEqual([0, ""]);
	expect(result.stdout).toContain("wiring");
});

test("the picture is fresh", async () => {
	const name = "first-plan";
	const result = checkPlan(readFileSync(join(root, `samples/${name}.ferrule`), "utf8"), `${name}.ferrule`);
	const [sheet] = await drawPlan(result, "wiring");
	await expect(sheet?.svg).toMatchFileSnapshot(join(root, `samples/drawings/${name}-wiring.svg`));
});
