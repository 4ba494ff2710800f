// The page of the kinds is what they say today; refresh it with `npx vitest run tests/grammar -u` and read what changed.
import { describe, expect, test } from "vitest";
import { kinds } from "../../src/kinds/index.ts";
import type { Kind } from "../../src/kinds/kind.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { planCodes } from "../../src/plan/codes.ts";
import { exampleOf, writeKindsPage } from "../../src/surfaces/reference/kinds-page.ts";
import { quietWorld } from "../surfaces/quiet-world.ts";

const written = writeKindsPage(kinds, quietWorld().pages());
const ofTexts = new Set<string>(planCodes.map(({ code }) => code));

test("grammar/kinds.md is fresh", async () => {
	await expect(written).toMatchFileSnapshot("../../grammar/kinds.md");
});

describe.each(kinds.map((kind) => [kind.name, kind] as const))("%s", (_, kind) => {
	const part = written.split(`\n## ${kind.name}\n`)[1]?.split("\n## ")[0] ?? "";

	test("has its words, where it stands and lands, and its plan", () => {
		expect(part).toContain(kind.example.trimEnd());
		for (const word of kind.also ?? []) expect(part).toContain(word);
		expect(part).toContain("- **stands:** ");
	});

	test("has an example of every attribute, each of which is understood", () => {
		for (const attribute of kind.attributes) {
			const example = exampleOf(attribute);
			expect(part).toContain(`| \`${example}\` |`);
			const others = kind.attributes.filter(
				(other) => other !== attribute && other.takes === "quantity" && other.required === true,
			);
			const told = errorsOn(kind, [...others.map(exampleOf), example].join(" "));
			expect(told, example).toEqual([]);
		}
	});
});

/** What is not understood of a thing of a kind with these words behind it. */
function errorsOn(kind: Kind, words: string): string[] {
	const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n  slot 3: breaker 15 A\n";
	const line = kind.stands.includes("top")
		? `${kind.name} x ${words}`
		: kind.stands.includes("panel")
			? `  ${kind.name.endsWith("bar") ? "x" : "slot 1"}: ${kind.name} ${words}`
			: `circuit one from LC.3 by 14-2\n  3 ft to x: ${kind.name} ${words}`;
	return checkPlan(`${supply}${line}\n`, "plan")
		.findings.filter(({ code, level }) => ofTexts.has(code) && level === "error")
		.map(({ title }) => title);
}
