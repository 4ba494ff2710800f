// Sparse elimination against plain Gaussian elimination with pivoting, on networks of every shape.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Elimination } from "../../src/figures/elimination.ts";
import { solveDense } from "./dense.ts";

/** A network of conductances with leaks to the reference, as its equations. */
function equationsOf(count: number, ways: readonly (readonly [number, number, number])[], leaks: readonly number[]) {
	const matrix = Array.from({ length: count }, () => new Array<number>(count).fill(0));
	const diagonal = new Float64Array(count);
	const add = (row: number, column: number, value: number): void => {
		const at = matrix[row];
		if (at !== undefined) at[column] = (at[column] ?? 0) + value;
	};
	leaks.forEach((leak, at) => {
		diagonal[at] = leak;
	});
	for (const [one, other, siemens] of ways) {
		if (one === other) continue;
		diagonal[one] = (diagonal[one] ?? 0) + siemens;
		diagonal[other] = (diagonal[other] ?? 0) + siemens;
		add(one, other, -siemens);
		add(other, one, -siemens);
	}
	diagonal.forEach((value, at) => {
		add(at, at, value);
	});
	return { matrix, diagonal };
}

const network = fc.integer({ min: 1, max: 24 }).chain((count) =>
	fc.record({
		ways: fc.array(
			fc.tuple(
				fc.integer({ min: 0, max: count - 1 }),
				fc.integer({ min: 0, max: count - 1 }),
				fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
			),
			{ maxLength: 60 },
		),
		leaks: fc.array(fc.double({ min: 1e-2, max: 10, noNaN: true }), { minLength: count, maxLength: count }),
		right: fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: count, maxLength: count }),
	}),
);

test("agrees with dense elimination", () => {
	fc.assert(
		fc.property(network, ({ ways, leaks, right }) => {
			const { matrix, diagonal } = equationsOf(leaks.length, ways, leaks);
			const elimination = new Elimination(
				leaks.length,
				ways.map(([one, other]) => [one, other]),
			);
			const pairs = Float64Array.from(ways, ([one, other, siemens]) => (one === other ? 0 : -siemens));
			expect(elimination.factor(diagonal, pairs)).toBe(true);
			const solved = elimination.solve(Float64Array.from(right));
			const dense = solveDense(matrix, right);
			const scale = Math.max(1e-9, ...dense.map(Math.abs));
			dense.forEach((value, at) => {
				expect(Math.abs((solved[at] ?? Number.NaN) - value)).toBeLessThanOrEqual(1e-9 * scale);
			});
		}),
		{ numRuns: 300 },
	);
});

describe("what has no answer", () => {
	test("a network that hangs on nothing is refused", () => {
		const elimination = new Elimination(2, [[0, 1]]);
		expect(elimination.factor(Float64Array.from([1, 1]), Float64Array.from([-1]))).toBe(false);
	});

	test("a negative resistance that outweighs the others is refused", () => {
		const elimination = new Elimination(1, []);
		expect(elimination.factor(Float64Array.from([-0.5]), new Float64Array(0))).toBe(false);
	});
});

test("a row of ten thousand takes no longer than walking it: nothing fills in", () => {
	const count = 10_000;
	const elimination = new Elimination(
		count,
		Array.from({ length: count - 1 }, (_, at) => [at, at + 1] as const),
	);
	const diagonal = new Float64Array(count).fill(2);
	diagonal[count - 1] = 1;
	expect(elimination.factor(diagonal, new Float64Array(count - 1).fill(-1))).toBe(true);
	// One ampere in at the far end, one ohm a step: as many volts as steps.
	const right = new Float64Array(count);
	right[count - 1] = 1;
	expect(elimination.solve(right)[count - 1]).toBeCloseTo(count, 5);
});
