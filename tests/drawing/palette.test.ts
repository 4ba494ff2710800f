// The palette: every colour of the handbook has a look, text can be read in both themes, and nothing stays light on dark paper.
import { describe, expect, test } from "vitest";
import { conductorLook, contrast, hueTone, jacketTones, paintValue } from "../../src/drawing/palette.ts";
import type { Paint } from "../../src/drawing/scene.ts";
import { colourNames } from "../../src/handbook/colours.ts";

const themes = ["light", "dark"] as const;

test("contrast is that of WCAG 2", () => {
	// Read in WCAG 2: black on white is 21, a colour on itself 1. #777 on white is 4.48 (published example, recalled).
	expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 9);
	expect(contrast("#336699", "#336699")).toBe(1);
	expect(contrast("#ffffff", "#777777")).toBeCloseTo(4.48, 2);
});

describe.each(themes)("%s", (theme) => {
	const grounds: readonly Paint[] = ["paper", "enclosure", "panel", "item", "caution"];

	test.each(grounds)("ink, soft and fault can be read on %s", (ground) => {
		for (const paint of ["ink", "soft", "fault"] as const)
			expect(contrast(paintValue(paint, theme), paintValue(ground, theme)), paint).toBeGreaterThanOrEqual(4.5);
	});

	test("a badge's number can be read on its badge", () => {
		expect(contrast(paintValue("paper", theme), paintValue("fault", theme))).toBeGreaterThanOrEqual(4.5);
	});

	test("a screw's slot and the bolt of a warning can be told from what they stand on", () => {
		for (const ground of ["brass", "silver", "green", "warning"] as const)
			expect(contrast(paintValue("engraving", theme), paintValue(ground, theme)), ground).toBeGreaterThanOrEqual(3);
		expect(contrast(paintValue("paper", theme), paintValue("dark", theme))).toBeGreaterThanOrEqual(3);
	});

	test("lines stand out from paper", () => {
		for (const paint of ["ink", "soft", "fault", "casing", "caution-line", "faint"] as const)
			expect(contrast(paintValue(paint, theme), paintValue("paper", theme)), paint).toBeGreaterThanOrEqual(3);
	});

	test("every strand is edged by its casing, whatever its colour", () => {
		const casing = paintValue("casing", theme);
		expect(contrast(casing, paintValue("paper", theme))).toBeGreaterThanOrEqual(3);
	});
});

test("surfaces are darker on dark paper than on light", () => {
	const surfaces: readonly Paint[] = [
		"paper",
		"enclosure",
		"panel",
		"item",
		"gland",
		"caution",
		"hot-bus",
		"neutral-bar",
		"ground-bar",
		"fault-soft",
	];
	for (const paint of surfaces)
		expect(contrast(paintValue(paint, "dark"), "#000000"), paint).toBeLessThan(
			contrast(paintValue(paint, "light"), "#000000"),
		);
	for (const paint of ["neutral-bar", "ground-bar", "hot-bus"] as const)
		expect(contrast(paintValue(paint, "dark"), "#ffffff"), paint).toBeGreaterThan(4);
});

test("every colour a plan can name has a look of its own", () => {
	const looks = colourNames.rows.map(({ name }) => [name, conductorLook(name)] as const);
	for (const [name, look] of looks) {
		if (name !== "grey") expect(look.core, name).not.toBe("grey");
		for (const value of hueTone(look.core)) expect(value).toMatch(/^#[0-9a-f]{6}$/);
	}
	expect(new Set(looks.map(([, look]) => JSON.stringify(look))).size).toBe(looks.length);
	expect(conductorLook("green-yellow")).toEqual({ core: "green", stripe: "yellow", pattern: "blocks" });
	expect(conductorLook("white-black")).toEqual({ core: "white", stripe: "black", pattern: "line" });
	expect(conductorLook("__proto__")).toEqual({ core: "grey" });
});

test("an unknown sheath is grey", () => {
	expect(jacketTones("constructor").name).toBe("grey");
	expect(jacketTones("yellow").name).toBe("yellow");
});
