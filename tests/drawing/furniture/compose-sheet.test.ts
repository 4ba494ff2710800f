// Sheets composed around drawings of many shapes: what is on them, on which paper, and how well they are filled.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { composeSheet, type SheetContent } from "../../../src/drawing/furniture/compose-sheet.ts";
import { planFurniture } from "../../../src/drawing/furniture/plan-furniture.ts";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import type { Sheet } from "../../../src/drawing/scene.ts";
import { checkPlan } from "../../../src/pipeline.ts";

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
		expect(sheetSize(content(1100, 900))).toEqual(["A3", 420, 297]);
		const small = sheetSize(content(500, 300));
		expect(small[1]).toBeLessThanOrEqual(297);
		expect(sheetSize(content(500, 300, { region: "us" }))[1]).toBeLessThanOrEqual(11 * 25.4);
	});

	test("is kept where it is asked for and holds the drawing", () => {
		expect(sheetSize(content(500, 300, { paper: "A3" }))).toEqual(["A3", 420, 297]);
		expect(sheetSize(content(500, 300, { paper: "A1" }))).toEqual(["A1", 841, 594]);
		const [name, width] = sheetSize(content(500, 300, { paper: "tabloid" }));
		expect([name, Math.round(width)]).toEqual(["Tabloid", Math.round(17 * 25.4)]);
	});

	test("is larger where what is asked for does not do, and a note says so", () => {
		const sheet = composeSheet(content(1600, 900, { paper: "A4" }));
		expect(paperOf(sheet)).toBe("A2");
		expect(brokenMeasures(sheet)).toEqual([]);
		expect(textsOf(sheet).join(" ")).toContain("needs larger paper than the A4 asked for");
		expect(textsOf(composeSheet(content(500, 300, { paper: "A4" }))).join(" ")).not.toContain("larger paper");
	});

	test("of no standard size is told by its sides", () => {
		const sheet = composeSheet(content(30_000, 20_000));
		expect(paperOf(sheet)).toBe(`custom, ${sheet.width / 4} x ${sheet.height / 4} mm`);
		const inches = composeSheet(content(30_000, 20_000, { region: "us" }));
		expect(paperOf(inches)).toBe(
			`custom, ${(inches.width / 101.6).toFixed(1)} x ${(inches.height / 101.6).toFixed(1)} in`,
		);
	});
});

test("a finding that is accepted says so with its reason, in a ring of its own", () => {
	const sheet = composeSheet(
		content(900, 420, {
			findings: [
				{ number: 1, level: "error", title: "No ground" },
				{ number: 2, level: "error", title: "No ground", accepted: "the maker's own lead" },
				{ number: 3, level: "danger", title: "No ground", accepted: "the maker's own lead" },
			],
		}),
	);
	const words = textsOf(sheet).join(" ");
	expect(words).toContain("Error, accepted: No ground. Reason: the maker's own lead");
	const rings = sheet.groups
		.filter(({ name }) => name === "findings")
		.flatMap(({ marks }) =>
			marks.flatMap((mark) => (mark.kind === "circle" ? [[mark.fill, mark.stroke, mark.dashed === true]] : [])),
		);
	expect(rings).toEqual([
		["fault", "fault", false],
		["paper", "soft", true],
		["paper", "fault", true],
	]);
});

test("a title too long for its two lines ends in an ellipsis", () => {
	const words = textsOf(composeSheet(content(900, 420, { project: "The long way round the lake ".repeat(9) })));
	expect(words.filter((text) => text.endsWith("…"))).toHaveLength(1);
	expect(textsOf(composeSheet(content(900, 420))).some((text) => text.endsWith("…"))).toBe(false);
});

test("the way of a finding is lit in the legend as on the drawing", () => {
	const legend = [{ sample: { kind: "bar", paint: "fault-soft" }, code: "", text: "way of a finding" } as const];
	const lit = composeSheet(content(900, 420, { legend }))
		.groups.filter(({ name }) => name === "legend")
		.flatMap(({ marks }) => marks.filter((mark) => mark.kind === "wire" && mark.finding !== undefined));
	expect(lit).toHaveLength(1);
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

/** The paper as the title block names it. */
function paperOf(sheet: Sheet): string {
	const texts = textsOf(sheet);
	return texts[texts.indexOf("Paper (not to scale)") + 1] ?? "";
}

/** The paper's name with its sides in millimetres. */
function sheetSize(of: SheetContent): readonly [string, number, number] {
	const sheet = composeSheet(of);
	return [paperOf(sheet), sheet.width / 4, sheet.height / 4];
}

test.each([
	["marten-van", "230 V AC, 16 A · 25.6 V DC"],
	["badger-camper", "120 V AC, 30 A · 12.8 V DC"],
])(
	"the title block of %s tells the volts of its bank: those of batteries in series together, not side by side",
	(name, system) => {
		const { analysis } = checkPlan(readFileSync(`samples/${name}.ferrule`, "utf8"), name);
		expect(planFurniture(analysis.circuit, []).facts).toContainEqual({ name: "System", value: system });
	},
);
