// Sizes: the thinnest that keeps every limit, tried again by hand; what is written is found right by the check.
import { describe, expect, test } from "vitest";
import { formatGauge } from "../../src/base/gauge.ts";
import { sizeCircuits } from "../../src/figures/sizing.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { generatePlan } from "../generator/generate-plan.ts";
import { analysisOf, samples } from "./plan-states.ts";

const plan = (breaker: number, cable: string, feet: number, load: string) =>
	`inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\ncircuit shed from LC breaker ${breaker} A by ${cable}\n  ${feet} ft to h1: ${load}\n`;
const sizeOf = (text: string, name?: string) => {
	const [size] = sizeCircuits(analysisOf(text), name);
	if (size === undefined) throw new Error("there is no circuit to size");
	return size;
};

describe("the limit that governs", () => {
	test("is the device on a short run", () => {
		const size = sizeOf(plan(20, "14-2", 10, "load 10 A"));
		expect(size.chosen === undefined ? "" : formatGauge(size.chosen.gauge)).toBe("12 AWG");
		expect(size.governing).toBe("what its device may be");
		expect(size.write).toEqual({ from: "14-2", to: "12-2" });
	});

	test("is the drop on a long one", () => {
		// 10 A over 100 ft: 14 AWG loses 5.1 %, 12 AWG 3.2 %, 10 AWG 2.0 % of 120 V behind its breaker.
		const size = sizeOf(plan(15, "14-2", 100, "load 10 A"));
		expect(size.tried.map(({ gauge, keepsDrop }) => [formatGauge(gauge), keepsDrop])).toEqual([
			["14 AWG", false],
			["12 AWG", false],
			["10 AWG", true],
		]);
		expect(size.tried.map(({ worst }) => worst?.ownPercent.toFixed(1))).toEqual(["5.1", "3.2", "2.0"]);
		expect(size.governing).toBe("its drop, 3 % for branch circuit, farthest outlet");
	});

	test("is none where the thinnest usual size does", () => {
		const size = sizeOf(plan(15, "12-2", 10, "load 10 A"));
		expect([size.governing, size.write?.to]).toEqual(["", "14-2"]);
	});
});

describe("protection", () => {
	test("what runs for hours counts 125 %", () => {
		const size = sizeOf(plan(15, "14-2", 10, "heater 1500 W continuous"));
		expect([size.asked, size.needed]).toEqual([15.625, 20]);
	});

	test("a circuit of outlets is counted with four fifths at the farthest", () => {
		const size = sizeOf(
			`inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\ncircuit one from LC breaker 20 A by 12-2\n  14 ft to b1: receptacle\n  9 ft to b2: receptacle\n`,
		);
		expect(size.plugged).toEqual({ part: "b2", amperes: 16 });
		expect(size.asked).toBe(0);
	});
});

test("a run that the present cable would do for, does; a longer one does not", () => {
	const { reach } = sizeOf(plan(15, "14-2", 40, "load 10 A"));
	const feet = (reach?.longest ?? 0) / 0.3048;
	expect(sizeOf(plan(15, "14-2", Math.floor(feet), "load 10 A")).now.keepsDrop).toBe(true);
	expect(sizeOf(plan(15, "14-2", Math.ceil(feet), "load 10 A")).now.keepsDrop).toBe(false);
});

test("what is to be written is right by the check", () => {
	for (const [breaker, feet, load] of [
		[15, 100, "load 10 A"],
		[20, 20, "load 12 A"],
		[15, 70, "heater 1200 W"],
	] as const) {
		const text = plan(breaker, "14-2", feet, load);
		const { write } = sizeOf(text);
		expect(write).toBeDefined();
		const codes = (of: string) =>
			checkPlan(of, "plan").findings.flatMap(({ code, level }) => (level === "note" ? [] : [code]));
		expect(codes(text)).not.toEqual([]);
		expect(codes(text.replace(`by ${write?.from}`, `by ${write?.to}`))).toEqual([]);
	}
});

test.each([
	...samples,
	...[11, 12, 13, 14, 15, 16].map((seed) => [`generated ${seed}`, generatePlan(seed).text] as const),
])("%s: what is chosen fits, and nothing thinner does", (_, text) => {
	for (const { tried, chosen, now } of sizeCircuits(analysisOf(text))) {
		expect(tried.filter(({ fits }) => fits)).toEqual(chosen === undefined ? [] : [chosen]);
		if (now.fits) expect(chosen === undefined || chosen.gauge.mm2 <= now.gauge.mm2 * 1.001).toBe(true);
		for (const { worst } of tried) if (worst !== undefined) expect(worst.percent).toBeGreaterThanOrEqual(0);
	}
});
