import * as fs from "node:fs";
import { describe, expect, test } from "vitest";
import facts from "../../package.json" with { type: "json" };

const root = new URL("../../", import.meta.url);
const notice = fs.readFileSync(new URL("NOTICE", root), "utf8");

describe("what the licences of others ask", () => {
	const bundled = ["@svgdotjs/svg.js", "chevrotain", "elkjs", "svgdom"] as const;

	test.each(bundled)("%s is in NOTICE with its version and its licence", (name) => {
		const version = facts.devDependencies[name];
		expect(notice).toMatch(new RegExp(`^- ${name}\\b.* ${version.replaceAll(".", "\\.")}: `, "m"));
		const folder = new URL(`node_modules/${name}/`, root);
		const licence = fs.readdirSync(folder).find((file) => /^licen[cs]e/i.test(file)) ?? "";
		expect(notice).toContain(fs.readFileSync(new URL(licence, folder), "utf8").trim());
	});
});

test("versions are exact, so that everyone builds the same", () => {
	for (const version of Object.values(facts.devDependencies)) expect(version).toMatch(/^\d+\.\d+\.\d+$/);
});

test("nothing that is installed has a script of its own that must run", () => {
	const lock = JSON.parse(fs.readFileSync(new URL("package-lock.json", root), "utf8"));
	const needed = Object.entries<{ hasInstallScript?: boolean; optional?: boolean }>(lock.packages)
		.filter(([, entry]) => entry.hasInstallScript === true && entry.optional !== true)
		.map(([name]) => name);
	expect(needed).toEqual([]);
});

test("who installs the package installs nothing else: its types too ask for none of it", () => {
	expect(Object.keys(facts)).not.toContain("dependencies");
	const reached = new Set<string>();
	const asked = new Set<string>();
	const reach = (file: string): void => {
		if (reached.has(file)) return;
		reached.add(file);
		const text = fs.readFileSync(new URL(file), "utf8");
		for (const [, name = ""] of text.matchAll(/(?:\bfrom|\bimport\(?)\s*"([^"]+)"/g))
			if (name.startsWith(".")) reach(new URL(name.replace(/(?:\.d)?\.ts$/, ".d.ts"), file).href);
			else asked.add(name);
	};
	reach(new URL(facts.exports["."].types, root).href);
	expect(reached.size).toBeGreaterThan(10);
	expect([...asked]).toEqual([]);
});

test("what the package promises is there once it is built", () => {
	for (const path of [facts.bin.ferrule, facts.exports["."].types, facts.exports["."].default, "LICENSE", "NOTICE"])
		expect(fs.existsSync(new URL(path, root)), path).toBe(true);
	expect(fs.statSync(new URL(facts.bin.ferrule, root)).mode & 0o111).toBe(0o111);
	expect(facts.license).toBe("MIT");
});
