import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { placeWords } from "../../src/plan/places.ts";
import { settingWords } from "../../src/plan/settings.ts";
import { sharedWords } from "../../src/plan/shared-words.ts";
import { connectors, terminations } from "../../src/plan/wiring-words.ts";
import { readText } from "../../src/syntax/read.ts";
import { findByPath } from "../../src/syntax/sources.ts";
import { landingWords, lineWords, statementWords } from "../../src/syntax/vocabulary.ts";
import { compact } from "../syntax/compact.ts";
import { examples } from "./page.ts";

describe("the reference page", () => {
	const all = examples();

	it("has an example for every statement, and says what some of them are read as", () => {
		const kinds = new Set(all.flatMap(({ plan }) => readText(plan, "page").tree.statements.map(({ kind }) => kind)));
		expect([...kinds].sort()).toEqual(
			["accept", "at", "definition", "mode", "place", "plan", "reading", "run", "thing", "use"].sort(),
		);
		expect(all.filter(({ readAs }) => readAs !== undefined).length).toBeGreaterThan(8);
	});

	it("shows every word of the notation in an example that runs", () => {
		const runs = all.filter(({ says }) => says === "whole" || says === "shows").map(({ plan }) => plan);
		const shown = new Set(runs.flatMap((plan) => plan.match(/[a-z0-9-]+/gi) ?? []));
		const words = [
			...[...statementWords, ...landingWords, ...lineWords, ...settingWords, ...placeWords, ...sharedWords],
			...[...connectors, ...terminations, "slack", "bundled", "loop", "switched", "second"],
		];
		expect(words.filter((word) => !shown.has(word) && word !== "reading")).toEqual([]);
	});

	it.each(all)("line $line: is read with the findings it names", ({ plan, finds }) => {
		const codes = readText(plan, "page").findings.map(({ code }) => code);
		expect([...new Set(codes)].sort()).toEqual([...finds].sort());
	});

	it.each(all.filter(({ readAs }) => readAs !== undefined))("line $line: is read as the page says", (example) => {
		expect(compact(readText(example.plan, "page").tree)).toBe(example.readAs);
	});

	it("says of each example what comes of it", () => {
		expect(all.filter(({ says }) => says === "nothing")).toEqual([]);
		expect(all.filter(({ says }) => says === "whole").length).toBeGreaterThan(15);
	});

	it.each(all.filter(({ says }) => says === "whole"))("line $line: is a whole plan that checks clean", ({ plan }) => {
		expect(open(plan).map(({ code, title }) => `${code}: ${title}`)).toEqual([]);
	});

	it.each(all.filter(({ says }) => says === "shows"))("line $line: shows what it names", ({ plan, shows }) => {
		const codes = open(plan).map(({ code }) => code);
		expect([...new Set(codes)].sort()).toEqual([...shows].sort());
	});

	it.each(all.filter(({ says }) => says === "later"))("line $line: is read, and has no meaning yet", ({ plan }) => {
		const codes = new Set(open(plan).map(({ code }) => code));
		expect(codes).toContain("not-understood-yet");
		codes.delete("not-understood-yet");
		codes.delete("plan-empty");
		expect([...codes]).toEqual([]);
	});
});

/** The examples that are files of their own. */
function readExample(path: string): string | undefined {
	return examples().find(({ file }) => file === path)?.plan;
}

/** What there is to put right, or what is not understood. */
function open(plan: string) {
	return checkPlan(plan, "page", findByPath(readExample, "page")).findings.filter(
		({ level, accepted }) => level !== "note" && accepted === undefined,
	);
}
