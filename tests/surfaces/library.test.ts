// The library as others use it: built, bundled for a browser, and run where there is nothing of Node.
import * as fs from "node:fs";
import { fileURLToPath } from "node:url";
import { createContext, runInContext } from "node:vm";
import fc from "fast-check";
import { rolldown } from "rolldown";
import { expect, test } from "vitest";
import { checkPlan, drawPlan } from "../../src/pipeline.ts";

const library = fileURLToPath(new URL("../../dist/library.js", import.meta.url));
const plan = fs.readFileSync(new URL("../../samples/heron-camper.ferrule", import.meta.url), "utf8");

/** The library as one script that leaves itself under the name `ferrule`. */
async function bundleForBrowser() {
	const bundle = await rolldown({ input: library, platform: "browser", logLevel: "silent", treeshake: false });
	const { output } = await bundle.generate({ format: "iife", name: "ferrule", codeSplitting: false });
	return output;
}

test("nothing of Node is imported, and nothing else is left outside", async () => {
	const output = await bundleForBrowser();
	const own = output.map((chunk) => chunk.fileName);
	for (const chunk of output) {
		if (chunk.type !== "chunk") throw new Error(`${chunk.fileName} is not code`);
		expect([...chunk.imports, ...chunk.dynamicImports].filter((name) => !own.includes(name))).toEqual([]);
		expect(chunk.code).not.toMatch(/\brequire\(|["']node:|\beval\(|new Function\b/);
	}
});

test("where there is nothing but the language it checks and draws the same", async () => {
	const [chunk] = await bundleForBrowser();
	const code = chunk?.type === "chunk" ? chunk.code : "";
	const context = createContext({ plan });
	const text = await runInContext(
		`${code};
		(async () => {
			const result = ferrule.check(plan, "van.ferrule");
			const sheets = await ferrule.draw(result, "all");
			const { tree } = ferrule.parse(plan, "van.ferrule");
			const parts = ferrule.build(tree).circuit.parts.length;
			return JSON.stringify({ findings: result.findings, sheets, parts, shown: ferrule.show(result) });
		})()`,
		context,
	);
	const result = checkPlan(plan, "van.ferrule");
	const report = JSON.parse(text);
	expect(report.findings).toEqual(JSON.parse(JSON.stringify(result.findings)));
	expect(report.sheets).toEqual(await drawPlan(result, "all"));
	expect(report.sheets.length).toBeGreaterThan(0);
	expect(report.parts).toBe(result.analysis.circuit.parts.length);
	expect(report.shown.text).not.toBe("");
});

test("the built library says of any text what the rooms say", async () => {
	const built: { check: typeof checkPlan } = await import(library);
	const samples = new URL("../../samples/", import.meta.url);
	const texts = fs
		.readdirSync(samples)
		.filter((name) => name.endsWith(".ferrule"))
		.map((name) => fs.readFileSync(new URL(name, samples), "utf8"));
	const words = [...new Set(texts.join(" ").split(/\s+/))];
	const soup = fc.array(fc.array(fc.constantFrom(...words), { maxLength: 10 }), { maxLength: 8 });
	const any = fc.oneof(
		fc.constantFrom(...texts),
		soup.map((lines) => lines.map((line) => line.join(" ")).join("\n  ")),
		fc.tuple(fc.constantFrom(...texts), soup, fc.nat()).map(([text, lines, at]) => {
			const rows = text.split("\n");
			return rows.toSpliced(at % rows.length, 1, ...lines.map((line) => line.join(" "))).join("\n");
		}),
	);
	fc.assert(
		fc.property(any, (text) => {
			expect(built.check(text, "van.ferrule").findings).toEqual(checkPlan(text, "van.ferrule").findings);
		}),
		{ numRuns: 300 },
	);
});
