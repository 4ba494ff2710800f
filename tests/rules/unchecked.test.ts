// What tells that something was not checked is marked so, that reports can gather it. Read off the rules' own texts.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const folder = join(import.meta.dirname, "../../src/rules");
const titles = readdirSync(folder).flatMap((name) => {
	const lines = readFileSync(join(folder, name), "utf8").split("\n");
	return lines.flatMap((line, index) =>
		/^\s*(title: )?.*[`?] ?`?.*(not checked|nothing about .* checked).*[`,]$/.test(line) &&
		!/^\s*(what|why|help):/.test(line)
			? [{ name, line: line.trim(), around: lines.slice(Math.max(0, index - 5), index + 6).join("\n") }]
			: [],
	);
});

test("there are such titles", () => {
	expect(titles.length).toBeGreaterThan(8);
});

test.each(titles)("$name: $line", ({ around }) => {
	expect(around).toMatch(/unchecked: true/);
});
