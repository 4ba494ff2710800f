// `ferrule size`: what it prints of a circuit, for a reader and for programs.
import * as fs from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import schema from "../../grammar/sizes.schema.json" with { type: "json" };
import { checkPlan, sizePlan } from "../../src/pipeline.ts";
import { samples } from "../figures/plan-states.ts";
import { findWords, makeFolder, run } from "./stand-in.ts";

async function size(text: string, ...words: readonly string[]) {
	const folder = makeFolder();
	fs.writeFileSync(join(folder, "van.ferrule"), text);
	return run(folder, ["size", "van.ferrule", ...words], {
		checkPlan: (plan, file, find) => {
			const result = checkPlan(plan, file, find);
			return { ...findWords(plan, file, find), ...result, sizes: (circuit) => sizePlan(result, circuit) };
		},
	});
}

const plan = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit heat from LC breaker 15 A by 14-2
  90 ft to h1: heater 1400 W continuous
`;

test("sizes tried, the limit that governs, and the line to write", async () => {
	const { output, status } = await size(plan, "heat");
	expect(status).toBe(0);
	expect(output).toBe(`van.ferrule

circuit heat, LC.2 15 A, now 14 AWG
  size    device at most  drop %  own %
  14 AWG            15 A    5.36   5.09  it loses too much, now
  12 AWG            20 A    3.54   3.26  it loses too much
  10 AWG            30 A    2.35   2.07  fits
  - its fixed loads ask for 14.58 A (NFPA 70 Article 100, 210.19(A)(1) and
    210.20(A) (2020, 2023)): 15 A is the smallest standard rating that is enough
  - 10 AWG is the thinnest that keeps every limit; governed by its drop, 3 % for
    branch circuit, farthest outlet
  - 10 AWG copper may have 30 A at most (NFPA 70 240.4(D))
  - by its drop 14 AWG would do for about 0.59 times the load as it is, or for
    53 ft of cable in all at this load
  - write line 5: circuit heat from LC breaker 15 A by 10-2

Nothing is written into the plan. The code in force, the makers' papers and a
licensed person decide; what a cable is protected at, how it lies and what lies
beside it count too.
`);
});

test("a circuit that is not there is refused with what is near", async () => {
	const { messages, status } = await size(plan, "haet");
	expect([messages, status]).toEqual(["ferrule: van.ferrule has no circuit `haet`. Did you mean `heat`?\n", 64]);
});

const fits = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(schema);

test.each(samples)("%s for programs fits the schema", async (_, text) => {
	const { output } = await size(text, "--as", "json");
	expect(output).not.toMatch(/NaN|Infinity/);
	const told: unknown = JSON.parse(output);
	expect([fits(told), fits.errors]).toEqual([true, null]);
});
