// Chains in free places: clear of each other, in the holes of the largest, within the width, the same for the same boxes.
import fc from "fast-check";
import { expect, test } from "vitest";
import { type Box, boxesMeet } from "../../../src/drawing/bounds.ts";
import { placeApart, shapeOf } from "../../../src/drawing/one-line/place-chains.ts";

const gap = 34;

function placed(sets: readonly (readonly Box[])[], width: number): { boxes: Box[][]; width: number; height: number } {
	const places = placeApart(
		sets.map((boxes) => shapeOf(boxes, gap)),
		width,
	);
	const boxes = sets.map((set, index) => {
		const { x, y } = places.at[index] ?? { x: 0, y: 0 };
		return set.map((box) => ({ ...box, x: box.x + x, y: box.y + y }));
	});
	return { boxes, width: places.width, height: places.height };
}

test("a short chain goes beside the stem of a large one, above its bus", () => {
	const large: Box[] = [
		{ x: -10, y: 0, width: 20, height: 300 },
		{ x: -400, y: 300, width: 800, height: 200 },
	];
	const short: Box[] = [{ x: -40, y: 0, width: 80, height: 200 }];
	const { width, height } = placed([short, large], 800);
	expect({ width, height }).toEqual({ width: 800, height: 500 });
});

test("what is wider than the width stands below all others", () => {
	const { boxes } = placed([[{ x: 0, y: 0, width: 900, height: 20 }], [{ x: 0, y: 0, width: 300, height: 400 }]], 500);
	expect(boxes[0]?.[0]?.y).toBeGreaterThanOrEqual(400 + gap);
});

test("nothing that is placed meets another, and all of it lies in the space that is told", () => {
	const box = fc.record({
		x: fc.integer({ min: -300, max: 300 }),
		y: fc.integer({ min: -20, max: 400 }),
		width: fc.integer({ min: 1, max: 200 }),
		height: fc.integer({ min: 1, max: 200 }),
	});
	const sets = fc.array(fc.array(box, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 7 });
	fc.assert(
		fc.property(sets, fc.integer({ min: 200, max: 2000 }), (all, width) => {
			const { boxes, ...space } = placed(all, width);
			boxes.forEach((set, index) => {
				for (const one of set) {
					expect(one.x).toBeGreaterThanOrEqual(0);
					expect(one.y).toBeGreaterThanOrEqual(0);
					expect(one.x + one.width).toBeLessThanOrEqual(space.width);
					expect(one.y + one.height).toBeLessThanOrEqual(space.height);
					for (const other of boxes.slice(index + 1).flat()) expect(boxesMeet(one, other)).toBe(false);
				}
			});
			expect(placed(all, width)).toEqual({ boxes, ...space });
		}),
		{ numRuns: 200, seed: 11 },
	);
});
