// Path data: shortest form, true circles at corners, nothing left of what does not move.
import { describe, expect, test } from "vitest";
import { circlePath, figure, polyline, rectanglePath, roundedPolyline } from "../../src/svg/path-data.ts";

test("figures are rounded once and never odd", () => {
	expect([1, 1.005, -0.001, 1e-9, 1e6, 2 / 3, -2.5].map(figure)).toEqual([
		"1",
		"1",
		"0",
		"0",
		"1000000",
		"0.67",
		"-2.5",
	]);
});

test("a polyline uses the shortest strokes", () => {
	expect(
		polyline([
			{ x: 0, y: 0 },
			{ x: 5, y: 0 },
			{ x: 5, y: 5 },
			{ x: 5, y: 5 },
			{ x: 6, y: 7 },
		]),
	).toBe("M0 0H5V5L6 7");
	expect(polyline([])).toBe("");
});

describe("rounded corners", () => {
	test("are arcs of the radius where there is room", () => {
		expect(
			roundedPolyline(
				[
					{ x: 0, y: 0 },
					{ x: 50, y: 0 },
					{ x: 50, y: 40 },
				],
				7,
			),
		).toBe("M0 0H43A7 7 0 0 1 50 7V40");
		expect(
			roundedPolyline(
				[
					{ x: 0, y: 0 },
					{ x: 50, y: 0 },
					{ x: 50, y: -40 },
				],
				7,
			),
		).toBe("M0 0H43A7 7 0 0 0 50 -7V-40");
	});

	test("shrink on short segments and vanish on straight ways", () => {
		expect(
			roundedPolyline(
				[
					{ x: 0, y: 0 },
					{ x: 6, y: 0 },
					{ x: 6, y: 40 },
				],
				7,
			),
		).toBe("M0 0H3A3 3 0 0 1 6 3V40");
		expect(
			roundedPolyline(
				[
					{ x: 0, y: 0 },
					{ x: 6, y: 0 },
					{ x: 40, y: 0 },
				],
				7,
			),
		).toBe("M0 0H6H40");
		expect(
			roundedPolyline(
				[
					{ x: 0, y: 0 },
					{ x: 6, y: 0 },
					{ x: 0, y: 0 },
				],
				7,
			),
		).toBe("M0 0H6H0");
		expect(roundedPolyline([{ x: 3, y: 4 }], 7)).toBe("M3 4");
		expect(roundedPolyline([], 7)).toBe("");
	});

	test("touch both segments at oblique turns too", () => {
		const d = roundedPolyline(
			[
				{ x: 0, y: 0 },
				{ x: 100, y: 0 },
				{ x: 200, y: 100 },
			],
			20,
		);
		const [, start = 0, radius = 0, x = 0, y = 0] = (
			/^M0 0H([\d.]+)A([\d.]+) [\d.]+ 0 0 1 ([\d.]+) ([\d.]+)/.exec(d) ?? []
		).map(Number);
		// The centre is a radius away from the end of the first segment, square to it, and from the start of the second.
		expect(Math.hypot(x - start, y - radius)).toBeCloseTo(radius, 1);
		expect(radius).toBe(20);
	});
});

test("circles and rectangles close", () => {
	expect(circlePath(10, 10, 5)).toBe("M5 10a5 5 0 1 0 10 0a5 5 0 1 0 -10 0Z");
	expect(rectanglePath(1, 2, 30, 40, 0)).toBe("M1 2h30v40h-30Z");
	expect(rectanglePath(0, 0, 30, 40, 5)).toBe(
		"M5 0h20a5 5 0 0 1 5 5v30a5 5 0 0 1 -5 5h-20a5 5 0 0 1 -5 -5v-30a5 5 0 0 1 5 -5Z",
	);
});
