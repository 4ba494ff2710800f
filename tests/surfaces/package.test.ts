import * as fs from "node:fs";
import { describe, expect, test } from "vitest";
import facts from "../../package.json" with { type: "json" };

const root = new URL("../../", import.meta.url);
const notice = fs.readFileSync(new URL("NOTICE", root), "utf8");

describe("what the licences of others ask", () => {
	test.each(Object.entries(facts.dependencies))("%s %s is in NOTICE with its licence", (name, version) => {
		expect(notice).toMatch(new RegExp(`^- ${name}\\b.* ${version.replaceAll(".", "\\.")}: `, "m"));
		const folder = new URL(`node_modules/${name}/`, root);
		const licence = fs.readdirSync(folder).find((file) => /^licen[cs]e/i.test(file)) ?? "";
		expect(notice).toContain(fs.readFileSync(new URL(licence, folder), "utf8").trim());
	});
});

test("versions are exact, so that everyone builds the same", () => {
	for (const version of Object.values({ ...facts.dependencies, ...facts.devDependencies }))
		expect(version).toMatch(/^\d+\.\d+\.\d+$/);
});

test("nothing that is installed has a script of its own that must run", () => {
	const lock = JSON.parse(fs.readFileSync(new URL("package-lock.json", root), "utf8"));
	const needed = Object.entries<{ hasInstallScript?: boolean; optional?: boolean }>(lock.packages)
		.filter(([, entry]) => entry.hasInstallScript === true && entry.optional !== true)
		.map(([name]) => name);
	expect(needed).toEqual([]);
});

test("what the package promises is there once it is built", () => {
	for (const path of [facts.bin.ferrule, facts.exports["."].types, facts.exports["."].default, "LICENSE", "NOTICE"])
		expect(fs.existsSync(new URL(path, root)), path).toBe(true);
	expect(fs.statSync(new URL(facts.bin.ferrule, root)).mode & 0o111).toBe(0o111);
	expect(facts.license).toBe("MIT");
});
