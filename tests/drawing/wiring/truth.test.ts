// The drawing shows the circuit as it is: every conductor on its point, in right plans, in wrong ones and in plans by chance.
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import { untruths as directUntruths, draw as drawDirect } from "../direct-current/drawn.ts";
import { asTheTradeWires, never } from "../measures/measure-sets.ts";
import { draw } from "./drawn.ts";
import { untruths } from "./drawn-truth.ts";
import { randomPlan } from "./random-plan.ts";

const folder = new URL("../../../samples/", import.meta.url);
const samples = readdirSync(folder).filter((name) => name.endsWith(".ferrule"));

describe("samples", () => {
	test.each(samples)("%s is drawn conductor by conductor, within every measure", async (name) => {
		const text = readFileSync(new URL(name, folder), "utf8");
		const { circuit, sheets } = await draw(text);
		expect(untruths(circuit, sheets)).toEqual([]);
		expect(sheets.flatMap(brokenMeasures)).toEqual([]);
		const direct = await drawDirect(text);
		if (direct.sheet === undefined) return;
		expect(directUntruths(direct)).toEqual([]);
		expect(brokenMeasures(direct.sheet)).toEqual([]);
	});

	test.each(samples)("%s is drawn the same twice", async (name) => {
		const text = readFileSync(new URL(name, folder), "utf8");
		expect(JSON.stringify((await draw(text)).sheets)).toBe(JSON.stringify((await draw(text)).sheets));
	});
});

const seeds = Array.from({ length: 40 }, (_, index) => index);

describe("plans by chance", () => {
	test.each(seeds)("plan %i, as the trade would wire it", async (seed) => {
		const { circuit, sheets } = await draw(randomPlan(seed, { asBuilt: false }));
		expect(untruths(circuit, sheets)).toEqual([]);
		const broken = sheets.flatMap(brokenMeasures).map(({ name }) => name);
		expect(broken.filter((name) => never.has(name) || asTheTradeWires.has(name))).toEqual([]);
	});

	test.each(seeds)("plan %i, miswired", async (seed) => {
		const { circuit, sheets } = await draw(randomPlan(seed, { asBuilt: true }));
		expect(untruths(circuit, sheets)).toEqual([]);
		expect(sheets.flatMap(brokenMeasures).filter(({ name }) => never.has(name))).toEqual([]);
	});

	test.each(seeds.slice(0, 15))("plan %i with rings", async (seed) => {
		const { circuit, sheets } = await draw(randomPlan(seed, { asBuilt: false, rings: true }));
		expect(untruths(circuit, sheets)).toEqual([]);
		// Cables of a net that is no tree may have to cross.
		const broken = sheets.flatMap(brokenMeasures).filter(({ name }) => never.has(name) && name !== "cable crossings");
		expect(broken).toEqual([]);
	});
});
