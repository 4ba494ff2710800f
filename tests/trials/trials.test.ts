// Trials of the notation: large plans with unusual wiring, written from the reference page alone, taken through everything.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { canonicalCircuit } from "../../src/documents/circuit-record.ts";
import { brokenMeasures } from "../../src/drawing/measures/index.ts";
import { drawSheets } from "../../src/drawing/sheet-set.ts";
import { checkPlan, showPlan, tidyPlan, writeOutPlan } from "../../src/pipeline.ts";
import { untruths as directUntruths, draw as drawDirect } from "../drawing/direct-current/drawn.ts";
import { draw as drawWiring } from "../drawing/wiring/drawn.ts";
import { untruths } from "../drawing/wiring/drawn-truth.ts";

/** What a trial shows besides being right: its notes, a line each, and the measures that its sheets are known to miss. */
interface Trial {
	readonly file: string;
	readonly notes: readonly string[];
	readonly gaps: readonly string[];
}

const trials: readonly Trial[] = [
	{
		file: "tiny-house.ferrule",
		notes: ["34 note terminal-overfilled", "35 note terminal-overfilled", "41 note box-overfilled"],
		gaps: [
			"wiring-LC.2: crossings in a box with its device beside the rows",
			"wiring-LC.2: crossings in a fallback box, each onward cable",
			"wiring-LC.3: empty share",
			"one-line: empty share",
		],
	},
	{
		file: "two-inlet-boat.ferrule",
		notes: ["45 note box-overfilled"],
		gaps: [
			"wiring-P1: empty share",
			"direct-current: empty share",
			"direct-current: largest empty rectangle",
			"one-line: empty share",
			"one-line: largest empty rectangle",
		],
	},
	{
		file: "long-camper.ferrule",
		notes: [
			"23 note circuit-overloaded",
			"30 note protection-out-of-order",
			"41 note box-overfilled",
			"98 note voltage-rating-low",
		],
		gaps: [
			"wiring-MP: empty share",
			"wiring-IP: crossings in a fallback box, each onward cable",
			"one-line: empty share",
		],
	},
	{
		file: "homestead.ferrule",
		notes: [
			"19 note terminal-overfilled",
			"41 note not-understood-yet",
			"53 note not-understood-yet",
			"107 note capped-end-live",
			"112 note terminal-overfilled",
			"113 note terminal-overfilled",
		],
		gaps: [
			"wiring-MP.2: crossings in a fallback box, each onward cable",
			"wiring-MP.2: empty share",
			"wiring-MP.3: crossings in a box with its device beside the rows",
			"wiring-MP.3: crossings in a fallback box, each onward cable",
			"one-line: empty share",
		],
	},
	{
		file: "narrowboat.ferrule",
		notes: [
			"17 note not-understood-yet",
			"62 note not-understood-yet",
			"98 note voltage-rating-low",
			"124 note not-understood-yet",
			"129 note not-understood-yet",
		],
		gaps: [
			"wiring: crossings in a box with its device beside the rows",
			"wiring: empty share",
			"direct-current: empty share",
			"one-line: empty share",
		],
	},
	{
		file: "overlander.ferrule",
		notes: [
			"34 note box-overfilled",
			"52 note not-understood-yet",
			"115 note voltage-rating-low",
			"147 note not-understood-yet",
			"148 note terminal-overfilled",
		],
		gaps: [
			"wiring: crossings in a fallback box, each onward cable",
			"direct-current: empty share",
			"direct-current: largest empty rectangle",
			"direct-current: kinks",
			"one-line: empty share",
		],
	},
];

describe.each(trials)("$file", ({ file, notes, gaps }) => {
	const text = readFileSync(new URL(file, import.meta.url), "utf8");
	const checked = checkPlan(text, file);
	const { circuit } = checked.analysis;

	test("has more than sixty devices, each with its place in the account", () => {
		const devices = circuit.parts.filter(({ face }) => !face.traits.includes("junction"));
		expect(devices.length).toBeGreaterThan(60);
		const { text: account } = showPlan(checked);
		for (const { name } of circuit.enclosures) expect(account).toMatch(new RegExp(`^${name}[: ]`, "m"));
	});

	test("has nothing above a note", () => {
		const found = new Set(checked.findings.map(({ level, code, span }) => `${span.line} ${level} ${code}`));
		expect([...found]).toEqual(notes);
	});

	test("is laid out as tidy lays it out, and written out is the same circuit", async () => {
		expect(await tidyPlan(text, file)).toEqual({ text, kept: [] });
		const written = await writeOutPlan(checked, text);
		expect(canonicalCircuit(checkPlan(written, file).analysis.circuit)).toBe(canonicalCircuit(circuit));
	});

	test("is drawn conductor by conductor", async () => {
		const wiring = await drawWiring(text);
		expect(untruths(wiring.circuit, wiring.sheets)).toEqual([]);
		const hasDirect = circuit.sources.some(({ system }) => system === "dc");
		expect(directUntruths(await drawDirect(text))).toEqual(hasDirect ? [] : ["there is no sheet"]);
	});

	test("is drawn within the measures, but for the known gaps", async () => {
		const broken: string[] = [];
		for await (const sheet of drawSheets(checked.analysis, checked.findings, "all"))
			broken.push(...brokenMeasures(sheet).map(({ name }) => `${sheet.name}: ${name}`));
		expect(broken.filter((name) => !gaps.includes(name))).toEqual([]);
	});
});
