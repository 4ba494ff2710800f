// No word is ignored in silence: a word that means nothing, put behind any line of any sample, is told.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";

const samples = join(import.meta.dirname, "../../samples");
const nonsense = "zqxj";

describe.each(readdirSync(samples).filter((name) => name.endsWith(".ferrule")))("%s", (name) => {
	const lines = readFileSync(join(samples, name), "utf8").split("\n");
	const known = new Set(checkPlan(lines.join("\n"), name).findings.map(({ code, title }) => `${code} ${title}`));

	/** Lines that say something, without their remarks. */
	const saying = lines.flatMap((line, index) => {
		const said = line.replace(/\/\/.*$/, "").trimEnd();
		return said === "" ? [] : [{ said, index }];
	});

	test("a word behind a line is told, at that line", () => {
		const silent = saying.filter(({ said, index }) => {
			const text = lines.with(index, `${said} ${nonsense}`).join("\n");
			const { findings } = checkPlan(text, name);
			return !findings.some(({ code, title, span }) => span.line === index + 1 && !known.has(`${code} ${title}`));
		});
		expect(silent.map(({ said }) => said)).toEqual([]);
	});
});
