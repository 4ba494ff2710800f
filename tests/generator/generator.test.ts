// What a generator of plans must do itself: the same text for the same number, the size and mix asked for, every kind in use.
import { describe, expect, test } from "vitest";
import { kinds } from "../../src/kinds/index.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { Chance } from "./chance.ts";
import { generatePlan } from "./generate-plan.ts";
import { partOf } from "./kind-parts.ts";
import { unsaid } from "./unsaid.ts";

describe("chance", () => {
	test("is the same for the same seed, and another for another", () => {
		const draws = (seed: number) => {
			const chance = new Chance(seed);
			return Array.from({ length: 8 }, () => chance.draw());
		};
		expect(draws(7)).toEqual(draws(7));
		expect(draws(7)).not.toEqual(draws(8));
	});

	test("spreads evenly", () => {
		const chance = new Chance(1);
		const counts = new Map<number, number>();
		for (let number = 0; number < 6000; number++) {
			const drawn = chance.count(1, 6);
			counts.set(drawn, (counts.get(drawn) ?? 0) + 1);
		}
		expect([...counts.keys()].toSorted()).toEqual([1, 2, 3, 4, 5, 6]);
		for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(150);
	});
});

describe("plans", () => {
	test("the same number gives the same text, another number another", () => {
		expect(generatePlan(11).text).toBe(generatePlan(11).text);
		expect(generatePlan(11).text).not.toBe(generatePlan(12).text);
	});

	test.each([1, 2, 10, 60, 200])("%i devices are as many as asked for, within three", (devices) => {
		for (const seed of [1, 2, 3]) {
			const { text } = generatePlan(seed, { devices });
			const { circuit } = checkPlan(text, "plan").analysis;
			// A box is no device, and neither is what a board is made of.
			const placed = circuit.parts.filter(
				({ enclosure, face }) =>
					enclosure.sort !== "panel" && !face.traits.includes("source") && !face.traits.includes("junction"),
			);
			expect(Math.abs(placed.length - devices), text).toBeLessThanOrEqual(3);
		}
	});

	test.each([
		["us", "camper"],
		["us", "boat"],
		["us", "building"],
		["iec", "camper"],
		["iec", "boat"],
		["iec", "building"],
	] as const)("region %s and rules %s are those asked for", (region, rules) => {
		const { settings } = checkPlan(generatePlan(5, { region, rules }).text, "plan").analysis.circuit.plan;
		expect([settings.region, settings.rules]).toEqual([region, rules]);
	});

	test("every kind that has a part, and every attribute of it, is said somewhere, but those whose reason is written down", () => {
		const said = new Set<string>();
		for (let seed = 0; seed < 1500; seed++) for (const word of generatePlan(seed).said) said.add(word);
		// A kind without a part, as those of direct current, has no place in generated plans yet; what is kept for lists alone is no wiring.
		const sayable = kinds
			.filter((kind) => partOf(kind) !== undefined)
			.flatMap(({ name, attributes }) => [
				name,
				...attributes.flatMap((one) => (one.kept === true ? [] : `${name}: ${one.name}`)),
			]);
		expect(sayable.filter((word) => !said.has(word)).toSorted()).toEqual([...unsaid.keys()].toSorted());
	});
});
