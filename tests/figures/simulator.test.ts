// Against a general circuit simulator: every node voltage within 0.1 % or 1 mV, every branch current within 0.1 % or 1 mA.
import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import type { Steady } from "../../src/figures/steady-state.ts";
import { generatePlan } from "../generator/generate-plan.ts";
import { type Simulated, simulate } from "./netlist.ts";
import { samples, steadiesOf } from "./plan-states.ts";

/** What of a state the simulator sees otherwise, a line each; and how much was compared. */
function compare(
	steady: Steady,
	simulated: Simulated | undefined,
): { readonly differences: readonly string[]; readonly compared: number } {
	if (simulated === undefined) throw new Error("the simulator told nothing of it");
	const differences: string[] = [];
	let compared = 0;
	const hold = (what: string, ours: number, theirs: number): void => {
		compared++;
		if (!(Math.abs(ours - theirs) <= Math.max(1e-3, 1e-3 * Math.abs(theirs))))
			differences.push(`${steady.mode}, ${steady.loading}: ${what} ${ours}, by the simulator ${theirs}`);
	};
	const { circuit } = steady;
	for (const [point, volts] of simulated.volts) hold(circuit.points[point]?.name ?? "", steady.voltsAt(point), volts);
	for (const [index, amperes] of simulated.conductors)
		hold(circuit.conductors[index]?.name ?? "", steady.amperesIn(index), amperes);
	for (const [index, amperes] of simulated.links)
		hold(circuit.links[index]?.part ?? "", steady.amperesThrough(index), amperes);
	return { differences, compared };
}

function compareAll(texts: readonly string[]): void {
	const steadies = texts.flatMap((text) => [...steadiesOf(text)]);
	const simulated = simulate(steadies);
	const all = steadies.map((steady, at) => compare(steady, simulated[at]));
	expect(all.flatMap(({ differences }) => differences)).toEqual([]);
	expect(all.every(({ compared }) => compared > 0)).toBe(true);
}

test("the simulator is installed: without it none of these figures is proven", () => {
	const { error, stdout } = spawnSync("ngspice", ["--version"], { encoding: "utf8" });
	expect(error === undefined ? stdout : "ngspice IS MISSING: install the package ngspice").toContain("ngspice-");
});

describe("samples and starters", () => {
	test.each(samples)("%s", (_, text) => compareAll([text]));
});

describe("three hundred generated plans", () => {
	test.each(Array.from({ length: 30 }, (_, at) => 1 + at * 10))("ten from number %i on", (first) => {
		compareAll(Array.from({ length: 10 }, (_, at) => generatePlan(first + at).text));
	});
});

test("a wrong figure is seen", () => {
	const [first] = steadiesOf(samples.find(([name]) => name.includes("heron"))?.[1] ?? "");
	expect(first).toBeDefined();
	if (first === undefined) return;
	const shifted: Steady = { ...first, amperesIn: (index) => first.amperesIn(index + 1) };
	expect(compare(shifted, simulate([first])[0]).differences.length).toBeGreaterThan(0);
});
