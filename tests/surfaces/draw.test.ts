import * as fs from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { Reading } from "../../src/surfaces/files/read.ts";
import { makeFolder, run } from "./stand-in.ts";

const wiring = (file: string) => `<svg class="fe-sheet"><title>${file}</title>wiring</svg>\n`;

function planFolder(text = "fine"): string {
	const folder = makeFolder();
	fs.mkdirSync(join(folder, "plans"));
	fs.writeFileSync(join(folder, "plans", "van.ferrule"), text);
	return folder;
}

test("both sheets go beside the plan, named after it", async () => {
	const folder = planFolder();
	const { output, messages } = await run(folder, ["draw", "plans/van.ferrule"]);
	expect(fs.readdirSync(join(folder, "plans"))).toEqual(["van-one-line.svg", "van-wiring.svg", "van.ferrule"]);
	expect(fs.readFileSync(join(folder, "plans", "van-wiring.svg"), "utf8")).toBe(wiring("plans/van.ferrule"));
	expect(output).toBe("");
	expect(messages).toBe(
		"plans/van.ferrule: nothing to put right\ndrawn: plans/van-wiring.svg, plans/van-one-line.svg\n",
	);
});

test("a folder is made where it is missing, and drawn into again", async () => {
	const folder = planFolder();
	for (let turn = 0; turn < 2; turn++)
		expect((await run(folder, ["draw", "plans", "--out", "out/deep", "--sheet", "one-line"])).status).toBe(0);
	expect(fs.readdirSync(join(folder, "out", "deep"))).toEqual(["van-one-line.svg"]);
});

test("one sheet goes to a file or to standard output", async () => {
	const folder = planFolder();
	const words = ["draw", "plans/van.ferrule", "--sheet", "wiring", "--out"];
	expect((await run(folder, [...words, "-"])).output).toBe(wiring("plans/van.ferrule"));
	await run(folder, [...words, "A.SVG"]);
	expect(fs.readFileSync(join(folder, "A.SVG"), "utf8")).toBe(wiring("plans/van.ferrule"));
});

test("a file of another sort is refused, a folder of such a name is not", async () => {
	const folder = planFolder();
	for (const name of ["van.png", "van.PDF", "plans/van.ferrule"]) {
		const { status, messages } = await run(folder, ["draw", "plans", "--sheet", "wiring", "--out", name]);
		expect(status).toBe(64);
		expect(messages).toContain(`${name} ends like a file of another sort`);
	}
	expect(fs.readdirSync(folder)).toEqual(["plans"]);
	fs.mkdirSync(join(folder, "old.zip"));
	expect((await run(folder, ["draw", "plans", "--out", "old.zip"])).status).toBe(0);
	expect((await run(folder, ["draw", "plans", "--out", "v1.2"])).status).toBe(0);
});

test("a plan from standard input goes to standard output", async () => {
	const readInput = async (): Promise<Reading> => ({
		kind: "bytes",
		bytes: new Uint8Array(),
		identity: { device: 0n, inode: 0n },
	});
	const folder = makeFolder();
	expect((await run(folder, ["draw", "-", "--sheet", "wiring"], { readInput })).output).toBe(wiring("standard-input"));
	expect((await run(folder, ["draw", "-", "--out", "d"], { readInput })).status).toBe(0);
	expect(fs.readdirSync(join(folder, "d"))).toEqual(["standard-input-one-line.svg", "standard-input-wiring.svg"]);
});

test("a file of somebody else's is replaced only with --force, a plan never", async () => {
	const folder = planFolder();
	const path = join(folder, "plans", "van-wiring.svg");
	fs.writeFileSync(path, "<svg>mine</svg>");
	const refused = await run(folder, ["draw", "plans/van.ferrule"]);
	expect(refused.status).toBe(73);
	expect(refused.messages).toContain("--force");
	expect(fs.readFileSync(path, "utf8")).toBe("<svg>mine</svg>");
	expect((await run(folder, ["draw", "plans/van.ferrule", "--force"])).status).toBe(0);
	expect(fs.readFileSync(path, "utf8")).toBe(wiring("plans/van.ferrule"));

	fs.renameSync(join(folder, "plans", "van.ferrule"), join(folder, "plan.svg"));
	const words = ["draw", "plan.svg", "--sheet", "wiring", "--out", "plan.svg", "--force"];
	expect((await run(folder, words)).status).toBe(73);
	expect(fs.readFileSync(join(folder, "plan.svg"), "utf8")).toBe("fine");
});

test("a plan with faults is drawn, one that is not understood is not", async () => {
	const faulty = planFolder("danger");
	const drawn = await run(faulty, ["draw", "plans/van.ferrule"]);
	expect(drawn.status).toBe(1);
	expect(drawn.messages).toContain("plans/van.ferrule: 1 danger; `ferrule check` tells about each\n");
	expect(fs.existsSync(join(faulty, "plans", "van-wiring.svg"))).toBe(true);

	const odd = planFolder("nonsense, error");
	const refused = await run(odd, ["draw", "plans/van.ferrule"]);
	expect(refused.status).toBe(1);
	expect(refused.messages).toContain("Nothing is drawn of plans/van.ferrule");
	expect(refused.messages).toContain("The word error stands here");
	expect(fs.readdirSync(join(odd, "plans"))).toEqual(["van.ferrule"]);
});

test("two plans of one name are not drawn over each other", async () => {
	const folder = planFolder();
	fs.mkdirSync(join(folder, "more"));
	fs.writeFileSync(join(folder, "more", "Van.ferrule"), "fine");
	expect((await run(folder, ["draw", "plans", "more", "--out", "d"])).status).toBe(64);
	expect(fs.existsSync(join(folder, "d"))).toBe(false);
	expect((await run(folder, ["draw", "plans", "more"])).status).toBe(0);
});

test("when the disk fills up, what was drawn before stays and is named, and nothing is half written", async () => {
	const folder = planFolder();
	let left = 1;
	const files = {
		...fs,
		fsyncSync: (handle: number) => {
			if (left-- <= 0) throw Object.assign(new Error("ENOSPC"), { code: "ENOSPC" });
			fs.fsyncSync(handle);
		},
	};
	// The folder is synced after the first file: count files only.
	const opened = {
		...files,
		fsyncSync: (handle: number) => (fs.fstatSync(handle).isFile() ? files.fsyncSync(handle) : undefined),
	};
	const { status, messages } = await run(folder, ["draw", "plans/van.ferrule"], { files: opened });
	expect(status).toBe(74);
	expect(messages).toContain("drawn: plans/van-wiring.svg\n");
	expect(messages).toContain("ferrule: plans/van-one-line.svg cannot be written: the disk is full.\n");
	expect(fs.readdirSync(join(folder, "plans"))).toEqual(["van-wiring.svg", "van.ferrule"]);
});
