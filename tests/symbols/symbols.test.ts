// Every symbol: named once, drawn inside its box, with a stroke that leads to each of its ports.
import { describe, expect, test } from "vitest";
import {
	findSymbol,
	regionalSymbol,
	type Shape,
	type SymbolDesign,
	symbolNames,
	symbols,
} from "../../src/symbols/index.ts";

test("names are unique and found", () => {
	expect(new Set(symbolNames).size).toBe(symbolNames.length);
	for (const name of symbolNames) expect(findSymbol(name)?.name).toBe(name);
	expect(findSymbol("constructor")).toBeUndefined();
	expect(findSymbol("__proto__")).toBeUndefined();
});

test("a region gets its own form, else the common one", () => {
	expect(regionalSymbol("breaker", "us")?.name).toBe("breaker-us");
	expect(regionalSymbol("breaker", "iec")?.name).toBe("breaker-iec");
	expect(regionalSymbol("switch", "iec")?.name).toBe("switch");
	expect(regionalSymbol("no-such-thing", "us")).toBeUndefined();
});

test("both regions have every one-line form that has regions", () => {
	const regional = (region: string) =>
		symbolNames.filter((name) => name.endsWith(`-${region}`)).map((name) => name.slice(0, -region.length - 1));
	expect(regional("us").toSorted()).toEqual(regional("iec").toSorted());
});

describe.each(symbols.map((design) => [design.name, design] as const))("%s", (_, design) => {
	test("stands inside its box", () => {
		const slack = 1.5;
		for (const { x, y } of design.shapes.flatMap(pointsOf)) {
			expect(x).toBeGreaterThanOrEqual(design.origin.x + design.box.x - slack);
			expect(x).toBeLessThanOrEqual(design.origin.x + design.box.x + design.box.width + slack);
			expect(y).toBeGreaterThanOrEqual(design.origin.y + design.box.y - slack);
			expect(y).toBeLessThanOrEqual(design.origin.y + design.box.y + design.box.height + slack);
		}
	});

	test("has its ports on the edge of its box, and a stroke to each", () => {
		expect(new Set(design.ports.map(({ name }) => name)).size).toBe(design.ports.length);
		for (const port of design.ports) {
			expect(isOnEdge(design, port)).toBe(true);
			const [x, y] = [port.x + design.origin.x, port.y + design.origin.y];
			const nearest = Math.min(...design.shapes.flatMap(pointsOf).map((point) => Math.hypot(point.x - x, point.y - y)));
			expect(nearest).toBeLessThan(0.01);
		}
	});
});

function isOnEdge({ box }: SymbolDesign, port: { x: number; y: number; direction: string }): boolean {
	switch (port.direction) {
		case "north":
			return port.y === box.y;
		case "south":
			return port.y === box.y + box.height;
		case "west":
			return port.x === box.x;
		default:
			return port.x === box.x + box.width;
	}
}

/** The points a shape is drawn through; of an arc or a curve its ends and control points. */
function pointsOf(shape: Shape): { x: number; y: number }[] {
	switch (shape.kind) {
		case "line":
			return pairs(shape.points);
		case "circle":
			return [
				{ x: shape.x - shape.radius, y: shape.y - shape.radius },
				{ x: shape.x + shape.radius, y: shape.y + shape.radius },
			];
		case "rectangle":
			return [
				{ x: shape.x, y: shape.y },
				{ x: shape.x + shape.width, y: shape.y + shape.height },
			];
		case "path":
			return pathPoints(shape.d);
	}
}

function pairs(numbers: readonly number[]): { x: number; y: number }[] {
	return numbers.flatMap((x, index) => (index % 2 === 0 ? [{ x, y: numbers[index + 1] ?? 0 }] : []));
}

function pathPoints(d: string): { x: number; y: number }[] {
	const points: { x: number; y: number }[] = [];
	let [x, y] = [0, 0];
	for (const [, command = "", list = ""] of d.matchAll(/([A-Z])([^A-Z]*)/g)) {
		const numbers = list.trim() === "" ? [] : list.trim().split(/[ ,]+/).map(Number);
		expect(numbers.every(Number.isFinite)).toBe(true);
		if (command === "H") x = numbers.at(-1) ?? x;
		else if (command === "V") y = numbers.at(-1) ?? y;
		else if (command === "A") [x, y] = [numbers[5] ?? x, numbers[6] ?? y];
		else if (command !== "Z") {
			points.push(...pairs(numbers));
			[x, y] = [numbers.at(-2) ?? x, numbers.at(-1) ?? y];
		}
		points.push({ x, y });
	}
	return points;
}
