// Fault loops: what the rows of the handbook come to by hand, and what the published bands say of it.
import { describe, expect, test } from "vitest";
import { certain } from "../../src/base/certain.ts";
import { findFaultLoops } from "../../src/figures/fault-loops.ts";
import { setUpMode } from "../../src/figures/steady-state.ts";
import { generatePlan } from "../generator/generate-plan.ts";
import { analysisOf, samples } from "./plan-states.ts";

const faultsOf = (text: string) => findFaultLoops(setUpMode(certain(analysisOf(text).states[0], "a mode")));
const at = (text: string, cable: string) => faultsOf(text).find((faults) => faults.cable.tag === cable);

const shed = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit shed from LC breaker 15 A by 14-2
  50 ft to b1: receptacle
`;

describe("a loop", () => {
	test("is out by the hot and back by the ground, at the temperature of the row", () => {
		// 12 ft of 10 AWG and 50 ft of 14 AWG, twice: (24 x 1.21 + 100 x 3.07) / 1000 ohm.
		const [ground, poles] = at(shed, "shed-1")?.loops ?? [];
		expect(ground?.ohms).toBeCloseTo(0.33604, 9);
		expect(ground?.amperes).toBeCloseTo(120 / 0.33604, 6);
		expect(ground?.multiple).toBeCloseTo(120 / 0.33604 / 15, 6);
		expect(ground?.opens).toBe("within 120 s");
		expect(poles?.ohms).toBeCloseTo(0.33604, 9);
	});

	test("without a ground that leads back has no current, and says that nothing opens", () => {
		const [ground] = at(`${shed}at LC\n  shed-1.bare loose\n`, "shed-1")?.loops ?? [];
		expect([ground?.sort, ground?.amperes, ground?.opens]).toEqual([
			"to ground",
			undefined,
			"no way back: nothing opens",
		]);
	});

	test("by the bands of IEC breakers", () => {
		const metric = (metres: number) => `plan "p"
  region iec
inlet supply 16 A 230 V TN-S
panel DB main 16 A two-pole from supply by 3G2.5, 8 m
circuit lights from DB breaker 10 A by 3G1.5
  ${metres} m to l1: light 9 W
`;
		// (16 x 7.41 + 2 x metres x 12.1) / 1000 x 304.5 / 254.5 ohm.
		const near = at(metric(10), "lights-1")?.loops[0];
		expect(near?.ohms).toBeCloseTo(((16 * 7.41 + 20 * 12.1) / 1000) * (304.5 / 254.5), 9);
		expect(near?.opens).toBe("at once if of type B or C or D");
		expect(at(metric(60), "lights-1")?.loops[0]?.opens).toBe("at once if of type B or C");
		expect(at(metric(500), "lights-1")?.loops[0]?.opens).toBe("not at once, whatever its type");
	});

	test("through the earth of a TT supply is left to residual-current devices", () => {
		const [ground] =
			at(
				`plan "p"\n  region iec\ninlet supply 16 A 230 V TT\npanel DB main 25 A rcd 30 mA from supply by 3G2.5, 8 m\ncircuit lights from DB breaker 6 A by 3G1.5\n  4 m to l1: light 9 W\n`,
				"lights-1",
			)?.loops ?? [];
		expect([ground?.amperes, ground?.opens]).toEqual([
			undefined,
			"through the earth (TT): by a residual-current device only",
		]);
	});

	test("of a battery counts what it resists itself", () => {
		const [poles] =
			at(
				`battery house lithium 12.8 V 280 Ah, fault 5 kA
feed one from house.+, house.- by pair 8 AWG
  bolted to F1: fuse 60 A
  10 ft to l1: load 10 A
`,
				"one-1",
			)?.loops ?? [];
		expect(poles?.ohms).toBeCloseTo(12.8 / 5000 + (20 * 0.778) / 1000, 9);
	});
});

test.each([
	...samples,
	...[1, 2, 3, 4, 5, 6, 7, 8].map((seed) => [`generated ${seed}`, generatePlan(seed).text] as const),
])("every loop of %s is a figure or says why not, and the longer way has more ohms", (_, text) => {
	for (const state of analysisOf(text).states)
		for (const { loops } of findFaultLoops(setUpMode(state)))
			for (const { ohms, amperes, opens } of loops) {
				expect(opens).not.toBe("");
				if (ohms !== undefined) expect(Number.isFinite(ohms) && ohms >= 0).toBe(true);
				if (amperes !== undefined) expect(Number.isFinite(amperes) && amperes > 0).toBe(true);
			}
});
