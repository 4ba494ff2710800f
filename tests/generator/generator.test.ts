// What a generator of plans must do itself: the same text for the same number, the size and mix asked for, every kind in use.
import { describe, expect, test } from "vitest";
import { findKind, kinds } from "../../src/kinds/index.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { Chance } from "./chance.ts";
import { generatePlan } from "./generate-plan.ts";
import { type Part, partOf } from "./kind-parts.ts";
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

/** Parts that are counted as devices. */
const devices: ReadonlySet<Part> = new Set<Part>([
	"outlet",
	"ground-fault outlet",
	"load",
	"direct load",
	"charger",
	"switch",
	"dimmer",
	"relay",
	"transfer",
	"end",
]);

describe("plans", () => {
	test("the same number gives the same text, another number another", () => {
		expect(generatePlan(11).text).toBe(generatePlan(11).text);
		expect(generatePlan(11).text).not.toBe(generatePlan(12).text);
	});

	test.each([1, 2, 10, 60, 200])("%i devices are as many as asked for, within three", (wanted) => {
		for (const seed of [1, 2, 3]) {
			const { text } = generatePlan(seed, { devices: wanted });
			const { circuit } = checkPlan(text, "plan").analysis;
			const circuits = new Set(circuit.plan.runs.flatMap((run) => (run.sort === "circuit" ? [run.name] : [])));
			// What a board, a bank or a joint is made of is no device.
			const placed = circuit.parts.filter(({ name, kind, run }) => {
				const found = findKind(kind);
				const part = found === undefined ? undefined : partOf(found);
				if (part === "disconnect")
					return circuits.has(run ?? "") || circuit.plan.thingByName.get(name)?.run === undefined;
				return part !== undefined && devices.has(part);
			});
			expect(Math.abs(placed.length - wanted), text).toBeLessThanOrEqual(3);
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

	test("every kind and every attribute of it is said somewhere in the plans of a test run, but those whose reason is written down", () => {
		const said = new Set<string>();
		for (let seed = 0; seed < 300; seed++) for (const word of generatePlan(seed).said) said.add(word);
		const sayable = kinds.flatMap(({ name, attributes }) => [name, ...attributes.map((one) => `${name}: ${one.name}`)]);
		expect(sayable.filter((word) => !said.has(word)).toSorted()).toEqual([...unsaid.keys()].toSorted());
	});
});
