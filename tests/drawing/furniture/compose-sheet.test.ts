// Sheets composed around drawings of many shapes: what is on them, on which paper, and how well they are filled.
import { describe, expect, test } from "vitest";
import { composeSheet, type SheetContent } from "../../../src/drawing/furniture/compose-sheet.ts";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import type { Sheet } from "../../../src/drawing/scene.ts";

function content(width: number, height: number, more: Partial<SheetContent> = {}): SheetContent {
	return {
		name: "wiring",
		title: "Wiring diagram",
		subtitle: "read left to right",
		description: "All of it",
		project: "Fern Cabin",
		number: 1,
		of: 2,
		facts: [
			{ name: "System", value: "120 V AC, 30 A" },
			{ name: "Checked by", value: "" },
		],
		paper: "",
		region: "iec",
		groups: [
			{
				name: "box b1",
				sort: "object",
				marks: [
					{
						kind: "rectangle",
						as: "enclosure",
						of: "b1",
						x: -50,
						y: 70,
						width,
						height,
						fill: "enclosure",
						stroke: "ink",
						strokeWidth: 1.6,
					},
				],
			},
		],
		legend: [
			{ sample: { kind: "conductor", colour: "black" }, code: "BK", text: "hot" },
			{ sample: { kind: "symbol", symbol: "switch" }, code: "", text: "Switch" },
			{ sample: { kind: "bar", paint: "hot-bus" }, code: "", text: "hot bus" },
		],
		notes: ["Neutral and ground meet at the supply only."],
		findings: [],
		...more,
	};
}

const shapes = [
	[200, 100],
	[900, 420],
	[1500, 300],
	[500, 900],
	[1980, 1500],
	[4000, 2500],
	[9000, 400],
	[300, 5000],
	[0, 0],
] as const;

describe.each(shapes)("a drawing of %d x %d", (width, height) => {
	test.each(["us", "iec"] as const)("is composed within the measures (%s)", (region) => {
		const sheet = composeSheet(content(width, height, { region }));
		expect(brokenMeasures(sheet)).toEqual([]);
	});

	test("is never made smaller", () => {
		const drawn = composeSheet(content(width, height)).groups.find(({ name }) => name === "box b1");
		expect(drawn?.at?.scale).toBeGreaterThanOrEqual(1);
	});
});

test("many findings and notes find their place", () => {
	const findings = Array.from({ length: 40 }, (_, index) => ({
		number: index + 1,
		level: (["danger", "error", "warning", "note"] as const)[index % 4] ?? "note",
		title: `The ground of box b${index} reaches no source, because galley-${index}.green is loose`,
	}));
	const sheet = composeSheet(content(900, 500, { findings, notes: findings.map(({ title }) => title) }));
	expect(brokenMeasures(sheet)).toEqual([]);
	expect(textsOf(sheet).filter((text) => /^\d+$/.test(text)).length).toBeGreaterThanOrEqual(80);
});

test("words of any length and script stay inside", () => {
	const long = "Donaudampfschifffahrtsgesellschaft".repeat(8);
	const sheet = composeSheet(
		content(600, 300, {
			project: long,
			title: "電気配線図",
			facts: [{ name: long, value: long }],
			notes: [long, "שלום עולם"],
			findings: [{ number: 123, level: "danger", title: long }],
		}),
	);
	expect(brokenMeasures(sheet)).toEqual([]);
});

describe("paper", () => {
	test("is the smallest that holds the drawing at full size", () => {
		expect(paperOf(composeSheet(content(500, 300)))).toMatch(/^A4/);
		expect(paperOf(composeSheet(content(1500, 700)))).toMatch(/^A3/);
		expect(paperOf(composeSheet(content(500, 300, { region: "us" })))).toMatch(/^Letter/);
		expect(paperOf(composeSheet(content(30_000, 20_000)))).toBe("own size");
	});

	test("is never smaller than what is asked for, and larger where that does not do", () => {
		expect(paperOf(composeSheet(content(500, 300, { paper: "A3" })))).toMatch(/^A3/);
		expect(paperOf(composeSheet(content(1600, 900, { paper: "A4" })))).toMatch(/^A2|^A3/);
		expect(paperOf(composeSheet(content(500, 300, { paper: "tabloid", region: "iec" })))).toMatch(/^Tabloid/);
	});

	test("has the size its name says, unless it is cut", () => {
		const sheet = composeSheet(content(1100, 900, { paper: "A3" }));
		expect(paperOf(sheet)).toBe("A3");
		expect([sheet.width / 4, sheet.height / 4]).toEqual([420, 297]);
	});
});

test("every sheet carries the caution, the title block and no date", () => {
	const words = textsOf(composeSheet(content(900, 420))).join(" ");
	for (const part of ["CAUTION", "prove dead", "licensed", "Fern Cabin", "1 of 2", "not to scale", "Checked by"])
		expect(words).toContain(part);
	expect(words).not.toMatch(/\b20\d\d\b/);
});

function textsOf(sheet: Sheet): string[] {
	return sheet.groups.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));
}

function paperOf(sheet: Sheet): string {
	return (textsOf(sheet).find((text) => text.endsWith(", not to scale")) ?? "").replace(", not to scale", "");
}
