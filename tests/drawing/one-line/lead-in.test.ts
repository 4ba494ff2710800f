// Further sources: into the bus, the inverter or the converter that they feed, and with a flag where nothing is left to lead into.
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import { followPower } from "../../../src/drawing/one-line/follow.ts";
import { leadIn } from "../../../src/drawing/one-line/lead-in.ts";
import { drawOneLine } from "../../../src/drawing/one-line/one-line-sheet.ts";
import type { Chain } from "../../../src/drawing/one-line/steps.ts";
import { checkPlan } from "../../../src/pipeline.ts";
import { cabin, twoBatteries } from "../direct-current/plans.ts";
import { never } from "../measures/measure-sets.ts";

/** `part of the line that leads in > what it leads into`, for all of a plan, and how many chains are left. */
function ledIn(text: string): { readonly chains: number; readonly led: string[] } {
	const chains = leadIn(followPower(checkPlan(text, "plan").analysis.circuit));
	const tell = (chain: Chain): string[] =>
		chain.flatMap((step) => {
			if (!("names" in step)) return [];
			const [first] = "further" in step ? (step.further ?? []) : [];
			const own = first?.kind === "device" ? [`${first.parts.join("+")} > ${step.names[0]}`] : [];
			return [...own, ...("branches" in step ? step.branches.flatMap(tell) : [])];
		});
	return { chains: chains.length, led: chains.flatMap(tell) };
}

test("the shore leads into the inverter on the battery's line", () => {
	expect(ledIn(cabin)).toEqual({ chains: 1, led: ["shore > inv"] });
});

test("the second battery leads into the bus of the first", () => {
	const { chains, led } = ledIn(twoBatteries);
	expect(chains).toBe(1);
	expect(led).toEqual([expect.stringMatching(/^south > /)]);
});

test("a line to a panel keeps its flag: what feeds it may have to go through its main breaker", () => {
	const text = `plan "Two ways in"
inlet shore 30 A 120 V
inlet pole 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
feed second from pole by 10-2
  9 ft to LC
`;
	expect(ledIn(text)).toEqual({ chains: 2, led: [] });
});

test("all four further sources of a camper are drawn into what they feed, within every measure and without a flag", () => {
	const text = readFileSync("samples/badger-camper.ferrule", "utf8");
	expect(ledIn(text)).toEqual({
		chains: 1,
		led: ["HB2 > pair", "shore > inv", "engine > step", "PV1+PV2 > sun"],
	});
	const { analysis, findings } = checkPlan(text, "plan");
	const sheet = drawOneLine(analysis, findings, { number: 1, of: 1 });
	expect(brokenMeasures(sheet)).toEqual([]);
	expect(sheet.groups.filter(({ label }) => label?.startsWith("to "))).toEqual([]);
});

test("the words beside a line that leads in keep clear of the line that is there", () => {
	const { analysis, findings } = checkPlan(
		`plan "Two modules on a bus"
battery house lithium 12.8 V 200 Ah
feed plus from house.+ by single 4/0 red
  6 in to F1: fuse class-T 300 A
solar m1 179 W, open 38 V, short 6 A
solar m2 179 W, open 38 V, short 6 A
solar-controller sun 40 A 12 V, limit 100 V
feed one from m1.+ by single 12 AWG red 105 C
  7 ft to roof: bus 100 A
feed two from m2.+ by single 12 AWG red 105 C
  6 ft to roof
feed down from roof by single 8 AWG red
  9 ft to sun.in
`,
		"plan",
	);
	const sheet = drawOneLine(analysis, findings, { number: 1, of: 1 });
	expect(sheet.groups.map(({ name }) => name)).toEqual(expect.arrayContaining(["cable one-1", "cable two-1"]));
	expect(brokenMeasures(sheet).filter(({ name }) => never.has(name))).toEqual([]);
});
