// Every kind that direct current may reach, by its own example: each conductor on its terminal, the measures of quality held.
import { describe, expect, test } from "vitest";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import { partSystems } from "../../../src/drawing/system-parts.ts";
import { kinds } from "../../../src/kinds/index.ts";
import { checkPlan } from "../../../src/pipeline.ts";
import { draw, untruths } from "./drawn.ts";

const direct = kinds.filter(
	({ example }) => partSystems(checkPlan(example, "example.ferrule").analysis.circuit).direct !== undefined,
);

test("there are examples with direct current", () => {
	expect(direct.length).toBeGreaterThan(10);
});

describe.each(direct.map(({ name, example }) => ({ name, example })))("$name", ({ example }) => {
	test("every conductor ends on its terminal", async () => {
		expect(untruths(await draw(example))).toEqual([]);
	});

	test("the measures hold", async () => {
		const { sheet } = await draw(example);
		expect(sheet === undefined ? [] : brokenMeasures(sheet)).toEqual([]);
	});
});
