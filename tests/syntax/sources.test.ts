// Texts that use others: read once each, circles named, limits told, and nothing outside the folder asked for.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { type FindSource, findByPath, readSources } from "../../src/syntax/sources.ts";
import { limits } from "../../src/syntax/vocabulary.ts";
import { outside } from "./outside-paths.ts";

const feed = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
const bunks = `circuit bunks from LC breaker 15 A by 14-2
  9 ft to b1: receptacle, box 18 cuin
`;

/** Reads `van.ferrule` among files; every path that is asked for is noted. */
function read(files: Readonly<Record<string, string>>, file = "van.ferrule") {
	const asked: string[] = [];
	const all = new Map(Object.entries(files));
	const find = findByPath((path) => {
		asked.push(path);
		return all.get(path);
	}, file);
	const { tree, findings, used } = readSources(all.get(file) ?? "", file, find);
	const told = findings.map(({ code, span, title }) => `${span.file}:${span.line}:${span.column} ${code} ${title}`);
	return { tree, told, used: [...used.keys()], asked, check: () => checkPlan(all.get(file) ?? "", file, find) };
}

describe("what a file says stands where the `use` line stood", () => {
	test("a feed, a cable and a part of other files", () => {
		const { told, used, check } = read({
			"van.ferrule": `use "feed.ferrule"\nuse "parts/own.ferrule"\ncircuit one from LC breaker 15 A by van\n  9 ft to t1: sign, box 18 cuin\n`,
			"feed.ferrule": feed,
			"parts/own.ferrule": `use "cable.ferrule"\npart sign light\n  L hot\n  N neutral\n  G ground\n  draws 3 W from L to N\n`,
			"parts/cable.ferrule": "cable van 14 AWG black hot, white neutral, bare ground\n",
		});
		expect(told).toEqual([]);
		expect(used).toEqual(["feed.ferrule", "parts/own.ferrule", "parts/cable.ferrule"]);
		expect(check().findings).toEqual([]);
		expect(check().analysis.circuit.parts.map(({ name }) => name)).toEqual(
			expect.arrayContaining(["shore", "LC", "t1"]),
		);
	});

	test("a file reached by two ways is read once", () => {
		const { told, used, check } = read({
			"van.ferrule": `use "left.ferrule"\nuse "right.ferrule"\n${bunks}`,
			"left.ferrule": 'use "feed.ferrule"\n',
			"right.ferrule": 'use "./sub/../feed.ferrule"\n',
			"feed.ferrule": feed,
		});
		expect(told).toEqual([]);
		expect(used).toEqual(["left.ferrule", "feed.ferrule", "right.ferrule"]);
		expect(check().findings).toEqual([]);
	});

	test("its settings hold for it alone, which is told", () => {
		const { told, check } = read({
			"van.ferrule": `use "feed.ferrule"\n${bunks}`,
			"feed.ferrule": `plan "Usual feed"\n  region iec\n${feed}`,
		});
		expect(told.map((line) => line.split(" ").slice(0, 2).join(" "))).toEqual([
			"feed.ferrule:1:1 file-settings-left-out",
		]);
		expect(check().analysis.circuit.plan.settings.region).toBe("us");
	});

	test("what is wrong in it is told at its own place, names of two files included", () => {
		const { check } = read({
			"van.ferrule": `use "feed.ferrule"\n\n\ninlet SHORE 30 A 120 V\n${bunks}`,
			"feed.ferrule": `${feed}circuit den from LC breaker 20 A by 14-2\n  4 ft to d1: receptacle, box 18 cuin\n  14 to d2: receptacle, box 18 cuin\n`,
		});
		expect(check().findings.map(({ code, span }) => `${span.file}:${span.line} ${code}`)).toEqual([
			"feed.ferrule:4 protection-too-large",
			"feed.ferrule:5 unit-missing",
			"van.ferrule:4 name-twice",
		]);
		const twice = check().findings.find(({ code }) => code === "name-twice");
		expect(twice?.also.map(({ span }) => `${span.file}:${span.line}`)).toEqual(["feed.ferrule:1"]);
	});

	test("one slip in two files at the same place is told twice", () => {
		const { check } = read({
			"van.ferrule": 'use "a.ferrule"\nuse "b.ferrule"\n',
			"a.ferrule": "lihgt l1\n",
			"b.ferrule": "lihgt l1\n",
		});
		expect(
			check()
				.findings.filter(({ code }) => code === "kind-unknown")
				.map(({ span }) => span.file),
		).toEqual(["a.ferrule", "b.ferrule"]);
	});
});

describe("what cannot be used is told at its line, and the rest is read", () => {
	test.each([
		["itself", { "van.ferrule": 'use "van.ferrule"\n' }, "van.ferrule:1:5 file-in-circle van.ferrule uses itself"],
		[
			"a circle",
			{ "van.ferrule": 'use "a.ferrule"\n', "a.ferrule": 'use "b.ferrule"\n', "b.ferrule": '\nuse "a.ferrule"\n' },
			"b.ferrule:2:5 file-in-circle a.ferrule uses b.ferrule uses a.ferrule: that is a circle",
		],
		["nothing", { "van.ferrule": 'use "a.ferrule"\n' }, "van.ferrule:1:5 file-missing There is no file `a.ferrule`"],
	])("%s", (_, files, line) => {
		const { told, tree } = read({ ...files, "van.ferrule": `${files["van.ferrule"]}${feed}` });
		expect(told).toEqual([line]);
		expect(tree.statements.map(({ kind }) => kind)).toEqual(["thing", "thing"]);
	});

	test("deeper than is read", () => {
		const files = Object.fromEntries(
			Array.from({ length: 12 }, (_, at) => [
				at === 0 ? "van.ferrule" : `f${at}.ferrule`,
				`use "f${at + 1}.ferrule"\n`,
			]),
		);
		expect(read(files).told).toEqual([
			`f8.ferrule:1:5 files-too-many \`f9.ferrule\` is not read: files use one another more than ${limits.useDepth} deep`,
		]);
	});

	test("more files than are read", () => {
		const names = Array.from({ length: limits.usedFiles + 2 }, (_, at) => `f${at}.ferrule`);
		const files = Object.fromEntries(names.map((name) => [name, ""]));
		const { told, used } = read({ ...files, "van.ferrule": names.map((name) => `use "${name}"\n`).join("") });
		expect(used.length).toBe(limits.usedFiles);
		expect(told.map((line) => line.split(" ").slice(0, 2).join(" "))).toEqual([
			"van.ferrule:65:5 files-too-many",
			"van.ferrule:66:5 files-too-many",
		]);
	});

	test("more characters than are read", () => {
		const text = `// ${"x".repeat(9_000)}\n`.repeat(200);
		const names = Array.from({ length: 5 }, (_, at) => `f${at}.ferrule`);
		const files = Object.fromEntries(names.map((name) => [name, text]));
		const { told } = read({ ...files, "van.ferrule": names.map((name) => `use "${name}"\n`).join("") });
		expect(told.map((line) => line.split(" ").slice(0, 2).join(" "))).toEqual(["van.ferrule:5:5 files-too-many"]);
	});

	test("without a way to other files a plan is read all the same", () => {
		const { findings, tree } = readSources(`use "feed.ferrule"\n${feed}`, "van.ferrule");
		expect(findings.map(({ code }) => code)).toEqual(["file-refused"]);
		expect(tree.statements.length).toBe(2);
	});
});

test.each(outside)("%j is refused before anything is asked for", (path) => {
	const find: FindSource = findByPath(() => {
		throw new Error("asked for");
	}, "plans/van.ferrule");
	expect(find(path, "plans/van.ferrule").kind).toBe("refused");
});

test("a name below a folder leads back up to the root, not above it", () => {
	const find = findByPath((path) => path, "plans/van.ferrule");
	expect(find("sub/a.ferrule", "plans/van.ferrule")).toMatchObject({ file: "plans/sub/a.ferrule" });
	expect(find("../b.ferrule", "plans/sub/a.ferrule")).toMatchObject({ file: "plans/b.ferrule" });
	expect(find("../../b.ferrule", "plans/sub/a.ferrule").kind).toBe("refused");
});

test("names that a missing file may declare are told behind it, and nothing else is", () => {
	const { check } = read({
		"van.ferrule": `use "feed.ferrule"\ncircuit one from LC breaker 15 A by van\n  9 ft to b1: receptacle\n  9 furlongs to b2: receptacle\n`,
	});
	const { findings } = check();
	const [root] = findings;
	expect(root?.code).toBe("file-missing");
	const behind = findings.filter(({ consequenceOf }) => consequenceOf === root?.key);
	expect(behind.map(({ code }) => code)).toEqual(["name-unknown", "cable-unknown", "source-missing"]);
	expect(findings.filter(({ level }) => level === "error").length).toBeGreaterThan(3);
});

test("with every file read, an unknown name is told by itself", () => {
	const { check } = read({ "van.ferrule": `use "feed.ferrule"\n${bunks.replace("LC", "LD")}`, "feed.ferrule": feed });
	expect(check().findings.find(({ code }) => code === "name-unknown")?.consequenceOf).toBeUndefined();
});
