// One-line sheets as a whole: every sample and generated plan within the measures, everything on it, findings under their numbers.
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Cable } from "../../../src/circuit/circuit.ts";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import { drawOneLine } from "../../../src/drawing/one-line/one-line-sheet.ts";
import type { Sheet } from "../../../src/drawing/scene.ts";
import type { Role } from "../../../src/kinds/kind.ts";
import { checkPlan } from "../../../src/pipeline.ts";

const texts = ["samples", "seeds"].flatMap((folder) =>
	readdirSync(folder)
		.filter((file) => file.endsWith(".ferrule"))
		.map((file) => [`${folder}/${file}`, readFileSync(`${folder}/${file}`, "utf8")] as const),
);

describe.each(texts)("%s", (file, text) => {
	const { analysis, findings } = checkPlan(text, file);
	const sheet = drawOneLine(analysis, findings, { number: 1, of: 1 });

	test("is within every measure", () => {
		expect(brokenMeasures(sheet).map(({ name }) => name)).toEqual([]);
	});

	test("shows every device and every cable of power once", () => {
		const names = wordsOf(sheet, "device ");
		const shown = new Set(names);
		expect(names.length).toBe(shown.size);
		const bringsPower = ({ runSort, conductors }: Cable): boolean =>
			runSort !== "bond" && conductors.some((index) => !isReturn(analysis.circuit.conductors[index]?.role));
		const met = (cables: readonly Cable[]): Set<string> =>
			new Set(cables.flatMap(({ from, to }) => [from.name, to.name]));
		const fed = met(analysis.circuit.cables.filter(bringsPower));
		const returned = met(analysis.circuit.cables.filter((cable) => !bringsPower(cable)));
		for (const part of analysis.circuit.parts) {
			const { traits } = part.face;
			// A shunt, a negative bus, a chassis: what nothing but a return or a bond leads to stands on no line.
			if (returned.has(part.enclosure.name) && !fed.has(part.enclosure.name)) continue;
			// A bus is a bar with its name, and what is on it.
			if (traits.includes("hot-bus")) continue;
			if (traits.includes("panel") || traits.includes("neutral-bar") || traits.includes("ground-bar")) continue;
			if (traits.includes("junction")) continue;
			expect(shown, part.name).toContain(part.name);
		}
		// Straps between studs stand there beside the cables.
		const cables = wordsOf(sheet, "cable ").filter((tag) => analysis.circuit.cableByTag.has(tag));
		expect(cables.toSorted()).toEqual(
			analysis.circuit.cables
				.filter(bringsPower)
				.map(({ tag }) => tag)
				.toSorted(),
		);
	});

	test("is the same for the same plan", () => {
		expect(drawOneLine(checkPlan(text, file).analysis, findings, { number: 1, of: 1 })).toEqual(sheet);
	});
});

test("a finding has its number in the list and at its place", () => {
	const { analysis, findings } = checkPlan(readFileSync("samples/faulty-galley.ferrule", "utf8"), "faulty-galley");
	const sheet = drawOneLine(analysis, findings, { number: 1, of: 1 });
	const numbers = (groups: readonly { readonly marks: Sheet["groups"][number]["marks"] }[]): string[] =>
		groups.flatMap(({ marks }) =>
			marks.flatMap((mark) => (mark.kind === "text" && mark.of?.startsWith("finding ") ? [mark.text] : [])),
		);
	const listed = numbers(sheet.groups.filter(({ name }) => name === "findings"));
	const placed = numbers(sheet.groups.filter(({ name }) => name !== "findings"));
	expect(findings.length).toBeGreaterThan(0);
	expect(listed).toEqual(findings.map(({ number }) => String(number)));
	expect(new Set(placed).size).toBe(placed.length);
	for (const number of placed) expect(listed).toContain(number);
	const danger = findings.find(({ level }) => level === "danger");
	expect(placed).toContain(String(danger?.number));
});

test("any number of circuits and hops stays within the measures", () => {
	const kinds = ["receptacle", "gfci", "switch", "light 9 W", "heater 500 W", "fan 30 W", "receptacle split"];
	const circuits = fc.array(fc.array(fc.constantFrom(...kinds), { minLength: 1, maxLength: 9 }), {
		minLength: 1,
		maxLength: 16,
	});
	fc.assert(
		fc.property(circuits, (all) => {
			const lines = all.flatMap((hops, circuit) => [
				`circuit c${circuit} from LC breaker 20 A by 12-2`,
				...hops.map((kind, hop) => `  ${3 + hop} ft to d${circuit}x${hop}: ${kind}`),
			]);
			const text = [
				"inlet shore 30 A 120 V",
				"panel LC main 30 A spaces 42 from shore by 10-2, 12 ft",
				...lines,
				"",
			].join("\n");
			const { analysis, findings } = checkPlan(text, "plan");
			const sheet = drawOneLine(analysis, findings, { number: 1, of: 1 });
			const broken = brokenMeasures(sheet).filter(({ name }) => !name.includes("empty"));
			expect(broken).toEqual([]);
		}),
		{ numRuns: 25, seed: 7 },
	);
});

test.each([
	["no text at all", ""],
	["a title alone", 'plan "Nothing yet"\n'],
	["a source alone", "inlet shore 30 A 120 V\n"],
	[
		"long names and labels",
		`inlet shore "${"A very long label ".repeat(10)}" 30 A 120 V\npanel ${"L".repeat(60)} main 30 A from shore by 10-2, 12 ft\n`,
	],
	[
		"forty hops in a row",
		`inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\ncircuit a from LC breaker 20 A by 12-2\n${Array.from({ length: 40 }, (_, hop) => `  3 ft to d${hop}: ${["receptacle", "light 9 W"][hop % 2]}\n`).join("")}`,
	],
])("%s still gives a sheet within the measures", (_, text) => {
	const { analysis, findings } = checkPlan(text, "plan");
	expect(brokenMeasures(drawOneLine(analysis, findings, { number: 1, of: 1 }))).toEqual([]);
});

test("three thousand hops in a row, and four hundred partings in partings, are drawn", () => {
	const head =
		"inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\ncircuit a from LC breaker 20 A by 12-2\n";
	const hops = (count: number): string =>
		Array.from({ length: count }, (_, hop) => `  3 ft to d${hop}: receptacle ${hop % 2 ? "single" : "duplex"}\n`).join(
			"",
		);
	const row = checkPlan(head + hops(3000), "row");
	expect(wordsOf(drawOneLine(row.analysis, [], { number: 1, of: 1 }), "cable ")).toHaveLength(3001);
	const branches = Array.from({ length: 400 }, (_, hop) => `  from d${hop}\n    2 ft to e${hop}: light 9 W\n`).join("");
	const comb = checkPlan(head + hops(400) + branches, "comb");
	const sheet = drawOneLine(comb.analysis, [], { number: 1, of: 1 });
	expect(sheet.groups.some(({ label }) => label?.endsWith("more lines"))).toBe(true);
});

function isReturn(role: Role | undefined): boolean {
	return role === "negative" || role === "ground";
}

/** The names in the group names that begin with `prefix`. */
function wordsOf(sheet: Sheet, prefix: string): string[] {
	return sheet.groups
		.filter(({ name }) => name.startsWith(prefix) && !name.endsWith(" outlets"))
		.flatMap(({ name }) => name.slice(prefix.length).split(" "));
}

test("the label of a device that hangs from an arm stands clear of its symbol", () => {
	const { analysis, findings } = checkPlan(
		`plan "x"
  rules boat
inlet shore 30 A 120 V
panel LC main 30 A two-pole from shore by triplex 10 AWG, 12 ft
circuit a roughed in from LC breaker 20 A two-pole by triplex 12 AWG
  6 ft to g1: gfci 20 A trip 5 mA weatherproof
  6 ft to r1: receptacle duplex 15 A
`,
		"plan",
	);
	const sheet = drawOneLine(analysis, findings, { number: 1, of: 1 });
	expect(brokenMeasures(sheet).map(({ name }) => name)).not.toContain("text on symbol");
});
