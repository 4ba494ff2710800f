// Plans that use other files, on a real disk: what may be read, what never is, and how findings in used files are told.
import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { checkPlan, showPlan } from "../../src/pipeline.ts";
import type { CheckPlan } from "../../src/surfaces/checker.ts";
import { outside } from "../syntax/outside-paths.ts";
import { makeFolder, run } from "./stand-in.ts";

const feed = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
const bunks = `circuit bunks from LC breaker 15 A by 14-2
  9 ft to b1: receptacle box 18 cuin
`;
const secret = "panel secret main 30 A furry\n";

const reallyCheck: CheckPlan = (text, file, find) => {
	const result = checkPlan(text, file, find);
	return {
		...result,
		draw: async () => [],
		repairs: async () => new Map(),
		writeOut: async () => "",
		makeMistakes: async () => [],
		sizes: async () => ({ sizes: [], circuits: [], units: "feet" }),
		figures: async () => ({ kind: "refused", why: "" }),
		show: () => showPlan(result),
	};
};

/** A folder with `plans/van.ferrule` and what else is given, by path. */
function folderWith(van: string, others: Readonly<Record<string, string>> = {}): string {
	const folder = makeFolder();
	for (const [path, text] of Object.entries({ "plans/van.ferrule": van, ...others })) {
		fs.mkdirSync(dirname(join(folder, path)), { recursive: true });
		fs.writeFileSync(join(folder, path), text);
	}
	return folder;
}

describe("a file of a folder that another plan uses", () => {
	const common = "cable van 14 AWG, black hot, white neutral, green ground\n";

	test("and that wires nothing is no plan by itself, unless it is named", async () => {
		const folder = folderWith(`use "parts/common.ferrule"\n${feed}${bunks}`, { "plans/parts/common.ferrule": common });
		const whole = await run(folder, ["check", "plans", "--as", "json"], { checkPlan: reallyCheck });
		expect(JSON.parse(whole.output).plans.map(({ file }: { file: string }) => file)).toEqual(["plans/van.ferrule"]);
		expect(whole.status).toBe(0);
		const named = await run(folder, ["check", "plans/parts/common.ferrule"], { checkPlan: reallyCheck });
		expect(named.status).toBe(1);
	});

	test("and that nobody uses is one that cannot be wired", async () => {
		const folder = folderWith(`${feed}${bunks}`, { "plans/parts/common.ferrule": common });
		expect((await run(folder, ["check", "plans"], { checkPlan: reallyCheck })).status).toBe(1);
	});
});

function check(folder: string, ...words: string[]) {
	return run(folder, ["check", "plans/van.ferrule", ...words], { checkPlan: reallyCheck });
}

describe("what may be read", () => {
	test("files beside the plan and below, from wherever the call is made", async () => {
		const folder = folderWith(`use "feed.ferrule"\n${bunks}`, {
			"plans/feed.ferrule": 'use "sub/shore.ferrule"\n',
			"plans/sub/shore.ferrule": feed,
		});
		expect((await check(folder)).output).toContain("plans/van.ferrule: nothing to put right");
		const inside = await run(join(folder, "plans"), ["check", "van.ferrule"], { checkPlan: reallyCheck });
		expect(inside.output).toContain("van.ferrule: nothing to put right");
	});

	test("files of the library folder, and those beside the plan first", async () => {
		const folder = folderWith(`use "feed.ferrule"\nuse "cable.ferrule"\n${bunks.replace("14-2", "van")}`, {
			"plans/cable.ferrule": "cable van 14 AWG black hot, white neutral, bare ground\n",
			"library/cable.ferrule": "cable other 14 AWG black hot\n",
			"library/feed.ferrule": 'use "shore.ferrule"\n',
			"library/shore.ferrule": feed,
		});
		expect((await check(folder, "--library", "library")).output).toContain("nothing to put right");
		expect((await check(folder)).output).toContain("There is no file `feed.ferrule`");
	});

	test("a library that is no folder is told, and the plan is checked", async () => {
		const { status, messages } = await check(folderWith(`${feed}${bunks}`), "--library", "nowhere");
		expect([status, messages]).toEqual([66, expect.stringContaining("nowhere is no folder to use files from")]);
	});

	test("a link to a file below the folder, once whichever way it is reached", async () => {
		const folder = folderWith(`use "one.ferrule"\nuse "sub/feed.ferrule"\nuse "sub/van.ferrule"\n${bunks}`, {
			"plans/sub/feed.ferrule": feed,
		});
		fs.symlinkSync("sub/feed.ferrule", join(folder, "plans/one.ferrule"));
		fs.symlinkSync("../van.ferrule", join(folder, "plans/sub/van.ferrule"));
		const { output } = await check(folder, "--as", "short");
		expect(output).toBe("plans/van.ferrule:3:5: file-in-circle plans/van.ferrule uses itself\n");
	});

	test("standard input uses files beside the name it goes by", async () => {
		const folder = folderWith("", { "plans/feed.ferrule": feed });
		const bytes = new TextEncoder().encode(`use "feed.ferrule"\n${bunks}`);
		const world = {
			checkPlan: reallyCheck,
			readInput: async () => ({ kind: "bytes", bytes, identity: { device: -1n, inode: -1n } }) as const,
		};
		const { output } = await run(folder, ["check", "-", "--stdin-name", "plans/new.ferrule"], world);
		expect(output).toContain("plans/new.ferrule: nothing to put right");
	});

	test("show and draw use them too", async () => {
		const folder = folderWith(`use "feed.ferrule"\n${bunks}`, { "plans/feed.ferrule": feed });
		const { output } = await run(folder, ["show", "plans/van.ferrule"], { checkPlan: reallyCheck });
		expect(output).toContain("LC: panel, metal");
	});
});

describe("what is never read", () => {
	/** The one finding of a plan that uses `path`, and what the plan's own lines give. */
	async function refusal(folder: string, path: string, ...words: string[]): Promise<string> {
		fs.writeFileSync(join(folder, "plans/van.ferrule"), `use "${path}"\n${feed}${bunks}`);
		const { status, output } = await check(folder, "--as", "short", ...words);
		expect(status).toBe(1);
		expect(output).not.toContain("secret");
		expect(output).not.toContain("furry");
		return output;
	}

	test.each(outside.filter((path) => !/[\0\n"]/.test(path)))("%j", async (path) => {
		const folder = folderWith("", { "feed.ferrule": secret, "con.ferrule": secret, "plans/feed.txt": secret });
		expect(await refusal(folder, path)).toContain("plans/van.ferrule:1:5: file-refused");
	});

	test("a name that leads out of the plan's folder does not lead into the library either", async () => {
		const folder = folderWith("", { "feed.ferrule": secret, "library/feed.ferrule": secret });
		expect(await refusal(folder, "../feed.ferrule", "--library", "library")).toContain("file-refused");
		expect(await refusal(folder, "../library/feed.ferrule", "--library", "library")).toContain("file-refused");
	});

	test("a link that leads out, of a file or of a folder on the way", async () => {
		const folder = folderWith("", { "feed.ferrule": secret, "out/feed.ferrule": secret });
		fs.symlinkSync("../feed.ferrule", join(folder, "plans/link.ferrule"));
		fs.symlinkSync("../out", join(folder, "plans/sub"));
		fs.symlinkSync(join(folder, "feed.ferrule"), join(folder, "plans/far.ferrule"));
		for (const path of ["link.ferrule", "sub/feed.ferrule", "far.ferrule"])
			expect(await refusal(folder, path)).toContain("a link leads out of the plan's folder");
	});

	test("a folder whose name only begins like that of the plan's", async () => {
		const folder = folderWith("", { "plans-of-others/feed.ferrule": secret });
		fs.symlinkSync("../plans-of-others/feed.ferrule", join(folder, "plans/link.ferrule"));
		expect(await refusal(folder, "link.ferrule")).toContain("a link leads out");
	});

	test("links in a circle, a folder, a device, a pipe, a file too large, what is no text", async () => {
		const folder = folderWith("");
		const at = (name: string) => join(folder, "plans", name);
		fs.symlinkSync("round.ferrule", at("round.ferrule"));
		fs.mkdirSync(at("folder.ferrule"));
		fs.symlinkSync("/dev/zero", at("device.ferrule"));
		expect(spawnSync("mkfifo", [at("pipe.ferrule")]).status).toBe(0);
		fs.writeFileSync(at("large.ferrule"), "x".repeat(2_000_001));
		fs.writeFileSync(at("binary.ferrule"), new Uint8Array([0, 1, 2, 3]));
		expect(await refusal(folder, "round.ferrule")).toContain("its links lead round in a circle");
		expect(await refusal(folder, "folder.ferrule")).toContain("it is a folder");
		expect(await refusal(folder, "device.ferrule")).toContain("a link leads out");
		expect(await refusal(folder, "pipe.ferrule")).toContain("it is not a regular file");
		expect(await refusal(folder, "large.ferrule")).toContain("it has 2000001 bytes, and at most 2000000 are read");
		expect(await refusal(folder, "binary.ferrule")).toContain("plans/binary.ferrule:1:1: text-unreadable");
	});

	test("a file that is exchanged between looking and reading", async () => {
		const folder = folderWith(`use "feed.ferrule"\n${feed}${bunks}`, {
			"plans/feed.ferrule": "\n",
			"secret.ferrule": secret,
		});
		const path = join(folder, "plans/feed.ferrule");
		const files = {
			...fs,
			openSync: (opened: fs.PathLike, flags: fs.OpenMode) => {
				if (opened === path) {
					fs.unlinkSync(path);
					fs.symlinkSync("../secret.ferrule", path);
				}
				return fs.openSync(opened, flags);
			},
		};
		const { output } = await run(folder, ["check", "plans/van.ferrule", "--as", "short"], {
			checkPlan: reallyCheck,
			files,
		});
		expect(output).toBe(
			"plans/van.ferrule:1:5: file-refused `feed.ferrule` cannot be used: it was exchanged while it was read\n",
		);
	});

	test("nothing of a folder outside is told, not even which names are near", async () => {
		const folder = folderWith(`use "sub/secret.ferrule"\n${feed}${bunks}`, { "out/secret1.ferrule": "" });
		fs.symlinkSync("../out", join(folder, "plans/sub"));
		expect((await check(folder)).output).not.toContain("secret1");
	});
});

describe("how it is told", () => {
	const folderWithSlip = () =>
		folderWith(`use "feed.ferrule"\n${bunks}`, { "plans/feed.ferrule": `${feed}lihgt l1\n` });

	test("a missing file offers the nearest name, with its folder", async () => {
		const folder = folderWith('use "parts/fed.ferrule"\n', { "plans/parts/feed.ferrule": feed });
		expect((await check(folder)).output).toContain("Did you mean `parts/feed.ferrule`?");
	});

	test("a finding in a used file shows the line of that file", async () => {
		const { output } = await check(folderWithSlip());
		expect(output).toContain("place  plans/feed.ferrule:3:1");
		expect(output).toContain("3  lihgt l1");
	});

	test("another place of a finding in another file shows its line under its name", async () => {
		const folder = folderWith(`use "feed.ferrule"\ninlet shore 30 A 120 V\n${bunks}`, { "plans/feed.ferrule": feed });
		const { output } = await check(folder);
		expect(output).toContain("plans/feed.ferrule:1:7\n");
		expect(output).toContain("1  inlet shore 30 A 120 V\n");
	});

	test("short and json name the file", async () => {
		const folder = folderWithSlip();
		expect((await check(folder, "--as", "short")).output).toMatch(/^plans\/feed\.ferrule:3:1: kind-unknown/);
		const { findings, plans } = JSON.parse((await check(folder, "--as", "json")).output);
		expect(findings[0]).toMatchObject({ file: "plans/feed.ferrule", line: 3, column: 1 });
		expect(plans.map(({ file }: { file: string }) => file)).toEqual(["plans/van.ferrule"]);
	});

	test("a library outside of the working folder goes by what the call says, and by no path of the machine in json", async () => {
		const folder = folderWith(`use "feed.ferrule"\n${bunks}`, { "library/feed.ferrule": `${feed}lihgt l1\n` });
		const from = join(folder, "plans");
		const call = ["check", "van.ferrule", "--library", join(folder, "library")];
		const text = await run(from, [...call, "--as", "short"], { checkPlan: reallyCheck });
		expect(text.output).toContain(`${join(folder, "library")}/feed.ferrule:3:1`);
		const json = await run(from, [...call, "--as", "json"], { checkPlan: reallyCheck });
		expect(JSON.parse(json.output).findings[0].file).toBe("../library/feed.ferrule");
	});
});
