// Stands in for the test library in the files of rule tests: takes their tests down instead of running them.
import { expect } from "vitest";

export { expect };

/** A test as it was written down. */
export interface Collected {
	/** The file it stands in, without its ending. */
	readonly file: string;
	readonly name: string;
	readonly run: () => unknown;
}

/** All that was taken down so far. */
export const collected: Collected[] = [];

const path: string[] = [];
let file = "";

/** Says which file is read next. */
export function openFile(name: string): void {
	file = name;
}

type Body = (...values: never[]) => unknown;

function describeOne(name: string, body: () => void): void {
	path.push(name);
	body();
	path.pop();
}

function testOne(name: string, run: () => unknown): void {
	collected.push({ file, name: [...path, name].join(" > "), run });
}

/** Calls a body with a row: the items of a list one by one, anything else as it is. */
function spread(body: Body, row: unknown): unknown {
	return Reflect.apply(body, undefined, Array.isArray(row) ? row : [row]);
}

function each(one: (name: string, run: () => void) => void) {
	return (rows: readonly unknown[]) =>
		(name: string, body: Body): void => {
			for (const [index, row] of rows.entries()) one(`${name} #${index + 1}`, () => void spread(body, row));
		};
}

function testEach(rows: readonly unknown[]) {
	return (name: string, body: Body): void => {
		for (const [index, row] of rows.entries()) testOne(`${name} #${index + 1}`, () => spread(body, row));
	};
}

export const describe = Object.assign(describeOne, { each: each(describeOne) });
export const test = Object.assign(testOne, { each: testEach });
export const it = test;
