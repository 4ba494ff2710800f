// Each measure fires on a fault planted for it, at the fault, and is silent on the clean sheet.
import { describe, expect, test } from "vitest";
import { brokenMeasures, measureSheet } from "../../../src/drawing/measures/index.ts";
import type { BoxTemplate, Group, Mark } from "../../../src/drawing/scene.ts";
import { smallSheet } from "./small-sheet.ts";

const text = { kind: "text", text: "planted", x: 350, y: 420, size: 11, anchor: "middle", paint: "ink" } as const;
const wire = { kind: "wire", of: "other", colour: "red", width: 3.4, radius: 7, run: "run" } as const;
const code = { ...text, text: "RD", of: "other" } as const;
const box = {
	kind: "rectangle",
	as: "enclosure",
	of: "b3",
	fill: "enclosure",
	stroke: "ink",
	strokeWidth: 1.6,
} as const;
const symbol = { kind: "symbol", symbol: "switch", of: "s1", x: 350, y: 340, scale: 1, paint: "ink" } as const;
const conductor = { kind: "line", as: "conductor", stroke: "ink", strokeWidth: 1.5 } as const;

test("the clean sheet breaks nothing", () => {
	expect(brokenMeasures(smallSheet())).toEqual([]);
	expect(new Set(measureSheet(smallSheet()).map(({ name }) => name)).size).toBe(measureSheet(smallSheet()).length);
});

const planted: readonly (readonly [measure: string, where: string, marks: readonly Mark[]])[] = [
	["text on text", "planted", [text, { ...text, text: "second", x: 352 }]],
	["text on wire or line", "planted", [text, { ...wire, points: at(300, 416, 420, 416) }, { ...code, y: 480 }]],
	["text on wire or line", "planted", [{ ...text, x: 350, y: 255 }]],
	["text on symbol", "planted", [{ ...text, x: 355, y: 370 }, symbol]],
	["text on an edge", "planted", [{ ...text, x: 300, y: 200 }]],
	["outside the frame", "planted", [{ ...text, x: 745 }]],
	["smallest capital, mm", "planted", [{ ...text, size: 10 }]],
	["text contrast, light", "planted", [{ ...text, paint: "faint" }]],
	["text contrast, dark", "planted", [{ ...text, paint: "faint" }]],
	["wire through a foreign box or device", "other", [{ ...wire, points: at(60, 290, 360, 290) }, code]],
	["wires on one line", "other", [{ ...wire, points: at(220, 250, 260, 250) }, code]],
	["oblique wires outside fans", "other", [{ ...wire, points: at(500, 400, 560, 460) }, code]],
	["kinks", "other", [{ ...wire, points: at(400, 400, 450, 400, 450, 405, 500, 405) }, code]],
	["distance of wires side by side", "other", [{ ...wire, points: at(200, 256, 290, 256) }, code]],
	[
		"cable crossings",
		"c2",
		[{ kind: "jacket", of: "c2", points: at(350, 200, 350, 300), width: 16, radius: 16, colour: "white" }],
	],
	["conductors with their letter code", "other", [{ ...wire, points: at(500, 400, 560, 400) }]],
	["gap between enclosures", "b3", [{ ...box, x: 100, y: 330, width: 200, height: 60 }]],
	["symbol on symbol", "s1", [symbol, { ...symbol, of: "s2", x: 356 }]],
	["line through symbol", "planted", [symbol, { ...conductor, points: at(300, 370, 400, 370) }]],
	[
		"crossings in a fallback box, each onward cable",
		"b1",
		[...[205, 220, 235, 250].map((x, index): Mark => ({ ...wire, of: `x${index}`, points: at(x, 230, x, 300) }))],
	],
	[
		"bends a conductor in boxes",
		"",
		[
			{ ...wire, points: at(420, 300, 440, 300, 440, 200, 480, 200, 480, 300) },
			{ ...code, x: 460, y: 260 },
		],
	],
	[
		"bends a cable between boxes",
		"",
		[
			{
				kind: "jacket",
				of: "c2",
				points: at(300, 290, 340, 290, 340, 300, 400, 300),
				width: 16,
				radius: 4,
				colour: "white",
			},
		],
	],
];

test.each(planted)("%s fires at %s", (measure, where, marks) => {
	const broken = brokenMeasures(smallSheet(marks)).find(({ name }) => name === measure);
	expect(broken?.name).toBe(measure);
	expect(broken?.where.join("\n") ?? "").toContain(where);
});

describe("in a box of a template", () => {
	const templates = [
		["panel", "crossings in a panel", 0],
		["tap", "crossings in a box with its device beside the rows", 3],
		["series", "crossings in a box with its device in series", 2],
		["end", "crossings in an end box", 0],
	] as const;
	/** The sheet with its first box of a template and `count` wires across its conductor. */
	const crossed = (template: BoxTemplate, count: number) =>
		brokenMeasures(
			smallSheet(
				[205, 230, 255, 280]
					.slice(0, count)
					.map((x, index) => ({ ...wire, of: `x${index}`, points: at(x, 230, x, 300) })),
				[boxOf(template)],
			),
		).map(({ name }) => name);

	test.each(templates)("%s: %s fires above %i", (template, measure, limit) => {
		expect(crossed(template, limit)).not.toContain(measure);
		expect(crossed(template, limit + 1)).toContain(measure);
	});

	test("wires may come closer only where no template fits", () => {
		const near = [
			{ ...wire, points: at(200, 262, 290, 262) },
			{ ...code, y: 480 },
		];
		const broken = (template: BoxTemplate) =>
			brokenMeasures(smallSheet(near, [boxOf(template)])).map(({ name }) => name);
		expect(broken("tap")).toContain("distance of wires side by side");
		expect(broken("fallback").filter((name) => name.startsWith("distance"))).toEqual([]);
		const nearer = [
			{ ...wire, points: at(200, 258, 290, 258) },
			{ ...code, y: 480 },
		];
		expect(brokenMeasures(smallSheet(nearer, [boxOf("fallback")])).map(({ name }) => name)).toContain(
			"distance of wires side by side, fallback boxes",
		);
	});

	function boxOf(template: BoxTemplate): Group {
		const [group] = smallSheet().groups.filter(({ name }) => name === "box b1");
		const marks = (group?.marks ?? []).map((mark) => (mark.kind === "rectangle" ? { ...mark, template } : mark));
		return { name: "box b1", sort: "object", marks };
	}
});

describe("of the whole sheet", () => {
	test("an odd shape fires", () => {
		const frame = (width: number, height: number): Group => ({
			name: "frame",
			sort: "decoration",
			marks: [{ kind: "rectangle", as: "frame", x: 40, y: 40, width, height }],
		});
		expect(names({ ...smallSheet([], [frame(720, 700)]) })).toContain("aspect of the drawing area, least");
		expect(names({ ...smallSheet([], [frame(1900, 480)]) })).toContain("aspect of the drawing area, most");
	});

	test("emptiness counts from six enclosures on, and by what is drawn", () => {
		const row = (width: number): Mark[] =>
			[0, 1, 2, 3].map((index) => ({ ...box, of: `e${index}`, x: 60 + index * 160, y: 360, width, height: 130 }));
		const wide: Group = {
			name: "frame",
			sort: "decoration",
			marks: [{ kind: "rectangle", as: "frame", x: 40, y: 40, width: 1700, height: 900 }],
		};
		expect(names(smallSheet(row(40), [wide]))).toContain("empty share");
		expect(names(smallSheet(row(130)))).not.toContain("empty share");
		expect(names(smallSheet(row(40).slice(0, 3), [wide]))).not.toContain("empty share");
	});

	test("a large empty rectangle counts from three enclosures on, and says where it is", () => {
		const third: Mark = { ...box, x: 640, y: 150, width: 80, height: 160 };
		const fillers = [
			{ y: 60, height: 70 },
			{ y: 330, height: 170 },
		].map((place): Mark => ({ ...box, as: "plate", x: 60, width: 660, ...place }));
		const broken = (marks: readonly Mark[]) =>
			brokenMeasures(smallSheet(marks)).find(({ name }) => name === "largest empty rectangle");
		const found = broken([third]);
		// Below the boxes, 720 wide and 200 high; on a grid of 12 units, of a space of 720 by 480.
		expect(found?.found).toBeCloseTo((720 * 204) / (720 * 480), 3);
		expect(found?.where).toEqual(["720 x 204 at 40, 316"]);
		expect(broken([])).toBeUndefined();
		expect(broken([third, ...fillers])).toBeUndefined();
	});

	test("a group name used twice fires", () => {
		const sheet = smallSheet();
		expect(names({ ...sheet, groups: [...sheet.groups, { name: "box b1", sort: "object", marks: [] }] })).toContain(
			"group names used twice",
		);
	});
});

function names(sheet: ReturnType<typeof smallSheet>): string[] {
	return brokenMeasures(sheet).map(({ name }) => name);
}

function at(...numbers: number[]): { x: number; y: number }[] {
	return numbers.flatMap((x, index) => (index % 2 === 0 ? [{ x, y: numbers[index + 1] ?? 0 }] : []));
}
