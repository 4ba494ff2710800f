// Columns that must not turn back: what the tests hold tables of the handbook to.
import { expect } from "vitest";

/** Every value is larger than the one before. */
export function expectRising(values: readonly number[], what: string) {
	values.slice(1).forEach((value, index) => {
		expect(value, `${what}, row ${index + 2}`).toBeGreaterThan(values[index] ?? Number.NaN);
	});
}

/** No value is smaller than the one before. */
export function expectNotFalling(values: readonly number[], what: string) {
	values.slice(1).forEach((value, index) => {
		expect(value, `${what}, row ${index + 2}`).toBeGreaterThanOrEqual(values[index] ?? Number.NaN);
	});
}

/** The values that a table gives. */
export const given = (values: readonly (number | undefined)[]): number[] =>
	values.filter((value) => value !== undefined);
