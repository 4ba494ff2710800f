// A danger that the builder accepts stays in sight, with the reason, in everything that is printed, written or drawn.
import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { litConductors } from "../../src/drawing/wiring/lit-conductors.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { quietWorld } from "./quiet-world.ts";
import { makeFolder, run } from "./stand-in.ts";

const reason = "Changed before power is put on";
const plan = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 14-2
  14 ft to b1: receptacle box 18 cuin
accept protection-too-large at LC because "${reason}"
`;
const real = quietWorld();

function folderWithPlan(): string {
	const folder = makeFolder();
	fs.writeFileSync(join(folder, "van.ferrule"), plan);
	return folder;
}
const call = (...words: readonly string[]) =>
	run(folderWithPlan(), words, { checkPlan: real.checkPlan, pages: real.pages, tidyPlan: real.tidyPlan });

describe("an accepted danger", () => {
	test.each(["text", "short", "json", "sarif", "github"])("in %s", async (form) => {
		const { status, output } = await call("check", "van.ferrule", "--as", form);
		expect(status).toBe(0);
		for (const words of ["protection-too-large", reason, "anger"]) expect(output).toContain(words);
		expect(output.toLowerCase()).toContain("accepted");
	});

	test("in the counts of each form that has them", async () => {
		expect((await call("check", "van.ferrule")).output).toMatch(/\nvan\.ferrule: 1 danger accepted\n$/);
		for (const form of ["short", "github"])
			expect((await call("check", "van.ferrule", "--as", form)).messages).toBe("van.ferrule: 1 danger accepted\n");
		const { plans } = JSON.parse((await call("check", "van.ferrule", "--as", "json")).output);
		expect(plans[0].counts).toMatchObject({ danger: 0, accepted: 1, acceptedDangers: 1 });
	});

	test.each(["wiring", "one-line"])("on the sheet %s: number, word and reason", async (sheet) => {
		const { output, messages } = await call("draw", "van.ferrule", "--sheet", sheet, "--out", "-");
		const texts = [...output.matchAll(/<text[^>]*>(.*?)<\/text>/gs)].map(([, text = ""]) =>
			text.replace(/<[^>]*>/g, ""),
		);
		const words = texts.join(" ");
		expect(words).toContain("Danger, accepted:");
		expect(words.replace(/\s+/g, " ")).toContain(`Reason: ${reason}`);
		expect(messages).toContain("van.ferrule: 1 danger accepted; `ferrule check` tells about each\n");
	});

	test("and its wires are lit up on the sheet", () => {
		const { analysis, findings } = checkPlan(plan, "van.ferrule");
		expect([...litConductors(analysis.circuit, findings).keys()]).toContain("bunks-1.black");
		const calm = plan.replace("14-2", "12-2").replace("protection-too-large at LC", "slack-too-short");
		const right = checkPlan(calm, "van.ferrule");
		expect(litConductors(right.analysis.circuit, right.findings).size).toBe(0);
	});

	test("in what show says besides", async () => {
		expect((await call("show", "van.ferrule")).messages).toContain("van.ferrule: 1 danger accepted");
	});

	test("in what npm start says", () => {
		const root = join(import.meta.dirname, "../..");
		const folder = folderWithPlan();
		fs.renameSync(join(folder, "van.ferrule"), join(folder, "accepted-danger.ferrule"));
		const { stdout, status } = spawnSync(process.execPath, [join(root, "dist/start.cjs"), "accepted-danger.ferrule"], {
			cwd: root,
			env: { ...process.env, INIT_CWD: folder, NO_COLOR: "1" },
			encoding: "utf8",
		});
		for (const sheet of ["wiring", "one-line"])
			fs.rmSync(join(root, "drawings", `accepted-danger-${sheet}.svg`), { force: true });
		expect(status).toBe(0);
		expect(stdout).toContain("1 danger accepted");
	});
});
