// Widths of text against what a rasteriser makes of the same text in the font the table was read from.
import { Resvg } from "@resvg/resvg-js";
import { describe, expect, test } from "vitest";
import {
	printedCapital,
	roomFor,
	shortenText,
	smallestCapital,
	smallestText,
	textBox,
	textWidth,
	wrapText,
} from "../../src/drawing/text-metrics.ts";
import { fontsThere, pictureFonts } from "../tools/picture.ts";

describe("width", () => {
	test("is the sum of published advances", () => {
		// H is 1479 and i is 455 of 2048 in the regular face (read in the font).
		expect(textWidth("Hi", { size: 20.48 })).toBeCloseTo(14.79 + 4.55, 6);
		expect(textWidth("", { size: 12 })).toBe(0);
	});

	test.runIf(fontsThere).each([
		["Load centre LC1", false],
		["12-2 stranded · galley-4 · 14 + 9 ft", false],
		["CAUTION: prove dead", true],
		["Küche, links: 2,5 mm², 230 V ≥ ½", false],
	])("of %s is what a rasteriser draws, to 3 %%", (text, bold) => {
		const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="2000" height="100"><text x="10" y="60" font-family="Liberation Sans" font-size="40" font-weight="${bold ? 700 : 400}">${text}</text></svg>`;
		const drawn = new Resvg(svg, { font: { fontFiles: pictureFonts, loadSystemFonts: false } }).getBBox()?.width ?? 0;
		const measured = textWidth(text, { size: 40, bold });
		expect(drawn / measured).toBeGreaterThan(0.95);
		expect(drawn / measured).toBeLessThan(1.01);
	});

	test("keeps 15 % in reserve", () => {
		expect(roomFor("main", { size: 12 })).toBeCloseTo(1.15 * textWidth("main", { size: 12 }), 9);
	});

	test("of unknown letters is a full square each, astral ones once", () => {
		expect(textWidth("電\u{1f50c}", { size: 10 })).toBe(20);
	});
});

test("the smallest type prints at 1.8 mm, and nothing smaller does", () => {
	expect(printedCapital(smallestText)).toBeGreaterThanOrEqual(smallestCapital);
	expect(printedCapital(smallestText - 0.1)).toBeLessThan(smallestCapital);
});

test("a box follows the anchor", () => {
	const mark = { kind: "text", text: "LC", size: 10, x: 100, y: 50, paint: "ink" } as const;
	const width = textWidth("LC", { size: 10 });
	expect(textBox({ ...mark, anchor: "start" }).x).toBe(100);
	expect(textBox({ ...mark, anchor: "middle" }).x).toBeCloseTo(100 - width / 2, 9);
	expect(textBox({ ...mark, anchor: "end" }).x).toBeCloseTo(100 - width, 9);
});

describe("wrapping", () => {
	test("fills lines and loses no word", () => {
		const text = "Switch off, unplug and lock out every source, then prove dead before you touch.";
		const lines = wrapText(text, { size: 11 }, 150);
		expect(lines.join(" ")).toBe(text);
		expect(lines.length).toBeGreaterThan(2);
		for (const line of lines) expect(textWidth(line, { size: 11 })).toBeLessThanOrEqual(150.001);
	});

	test("breaks a word that alone is too wide, and ends for any text", () => {
		const lines = wrapText("x".repeat(500), { size: 11 }, 60);
		expect(lines.join("")).toBe("x".repeat(500));
		for (const line of lines) expect(textWidth(line, { size: 11 })).toBeLessThanOrEqual(60);
		expect(wrapText("W W", { size: 11 }, 1)).toEqual(["W", "W"]);
		expect(wrapText(" \t\n ", { size: 11 }, 60)).toEqual([]);
	});

	test("shortens with an ellipsis only where it must", () => {
		expect(shortenText("short", { size: 11 }, 200)).toBe("short");
		const cut = shortenText("a label that is far too long for its place", { size: 11 }, 80);
		expect(cut.endsWith("…")).toBe(true);
		expect(textWidth(cut, { size: 11 })).toBeLessThanOrEqual(80);
	});
});
