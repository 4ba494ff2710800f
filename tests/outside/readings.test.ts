// Against the outside: what a meter and a three-lamp tester show at a receptacle, measured on the circuit by nodal analysis,
// and what the tool says of each miswiring, above all of those that no lamp can tell.
import { describe, expect, test } from "vitest";
import { testerReadings } from "../../src/handbook/tester-readings.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { frameOf, statesOf, wire } from "../judge/wiring.ts";
import { findingsOf, type Known, nameOf } from "./published.ts";

const plan = (wiring: string, shore = "") => `inlet shore 30 A 120 V${shore}
panel LC main 30 A from shore by 10-2, 12 ft
circuit one from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
${wiring}`;

/** Each state of a receptacle: its wiring, and the rules that must name it. */
const states: readonly (readonly [string, string, readonly string[]])[] = [
	["correct", plan(""), []],
	["open ground", plan("at b2\n  one-2.bare capped\n"), ["ground-broken"]],
	["open neutral", plan("at b2\n  one-2.white capped\n"), ["end-loose"]],
	["open hot", plan("at b2\n  one-2.black capped\n"), ["end-loose"]],
	[
		"hot and neutral reversed",
		plan("at b2\n  one-2.black on b2.neutral\n  one-2.white on b2.hot\n"),
		["polarity-reversed"],
	],
	[
		"hot and ground reversed",
		plan("at b2\n  one-2.black on b2.ground\n  one-2.bare on b2.hot\n"),
		["polarity-reversed"],
	],
	[
		"neutral and ground reversed",
		plan("at b2\n  one-2.white on b2.ground\n  one-2.bare on b2.neutral\n"),
		["neutral-ground-exchanged"],
	],
	["bootleg ground", plan("at b2\n  link b2.neutral, b2.ground by 12 AWG green\n"), ["neutral-not-isolated"]],
	[
		"reversed bootleg ground",
		plan(
			"at b2\n  one-2.black on b2.neutral\n  one-2.white on b2.hot\n  one-2.bare capped\n  link b2.neutral, b2.ground by 12 AWG green\n",
		),
		["polarity-reversed"],
	],
	["floating source", plan("", " floating"), ["bond-missing"]],
	[
		"reversed, ground open",
		plan("at b2\n  one-2.black on b2.neutral\n  one-2.white on b2.hot\n  one-2.bare capped\n"),
		["polarity-reversed", "ground-broken"],
	],
];

/** Volts between two holes of `b2`, as a good meter shows them; with `lamps` the three lamps of a tester are plugged in. */
function voltsAt(text: string, lamps: boolean, loads: "loaded" | "unloaded"): readonly [number, number, number] {
	const { circuit } = checkPlan(text, "plan").analysis;
	const frame = frameOf(circuit);
	const [state] = statesOf(frame, 2) ?? [];
	if (state === undefined) throw new Error("no state");
	const at = (hole: string): number => frame.nodes[circuit.pointByName.get(`b2.${hole}`) ?? -1] ?? 0;
	const holes = [
		[at("hot"), at("neutral")],
		[at("hot"), at("ground")],
		[at("neutral"), at("ground")],
	] as const;
	const tester = lamps ? holes.map(([from, to]) => ({ from, to, siemens: 1 / lampOhms })) : [];
	const { volts } = wire(frame, state, { groups: new Set(), sources: new Set() }, tester, loads);
	const [hotNeutral, hotGround, neutralGround] = holes.map(([from, to]) =>
		Math.abs((volts[from] ?? 0) - (volts[to] ?? 0)),
	);
	return [hotNeutral ?? 0, hotGround ?? 0, neutralGround ?? 0];
}

/** A neon lamp with its resistor, and the volts from which it glows: a common order. */
const lampOhms = 47_000;
const glows = 75;

function rowOf(name: string) {
	const row = testerReadings.rows.find(({ state }) => state === name);
	if (row === undefined) throw new Error(`no reading of ${name}`);
	return {
		...row,
		named: (what: string) => nameOf({ source: row.provenance.source, known: known(row.provenance.known) }, what),
	};
}

function known(how: string): Known {
	return how === "read" || how === "recalled" ? how : "common practice";
}

function expectReadings(name: string, text: string, loads: "loaded" | "unloaded"): void {
	const { hotNeutral, hotGround, neutralGround, lamps } = rowOf(name);
	const shown = voltsAt(text, false, loads);
	// What leaks decides how a floating source divides: about half and half.
	const within = lamps.includes("unsure") ? 10 : 2;
	for (const [index, volts] of [hotNeutral, hotGround, neutralGround].entries())
		if (volts !== "floats") expect(Math.abs((shown[index] ?? Number.NaN) - volts)).toBeLessThan(within);
	const [first, second, third] = voltsAt(text, true, loads);
	for (const [index, volts] of [third, first, second].entries())
		if (lamps[index] !== "unsure") expect([lamps[index], volts > glows]).toEqual([lamps[index], lamps[index] === "on"]);
}

describe("readings at a receptacle of 120 V", () => {
	test.each(states.map(([name, text]) => [rowOf(name).named(name), name, text] as const))("%s", (_, name, text) => {
		expectReadings(name, text, "unloaded");
	});

	test(rowOf("open neutral, load on").named("open neutral, load on: the same lamps as hot and ground reversed"), () => {
		const text = `${plan("")}   6 ft to l1: light 60 W\nat b1\n  one-1.white capped\n`;
		expectReadings("open neutral, load on", text, "loaded");
		expect(rowOf("open neutral, load on").lamps).toEqual(rowOf("hot and ground reversed").lamps);
	});
});

describe("what a lamp cannot tell, the tool tells", () => {
	test.each(states.map(([name, text, codes]) => [rowOf(name).named(name), text, codes] as const))(
		"%s",
		(_, text, codes) => {
			for (const code of codes) expect(findingsOf(text, code, true).length, code).toBeGreaterThan(0);
			if (codes.length === 0)
				expect(checkPlan(text, "plan").findings.filter(({ level }) => level !== "note")).toEqual([]);
		},
	);

	test(
		nameOf(
			{ source: "derived from the circuit", known: "common practice" },
			"neutral and ground exchanged, and both bootlegs, light the lamps of a healthy receptacle",
		),
		() => {
			const healthy = rowOf("correct").lamps;
			const alike = testerReadings.rows
				.filter(({ lamps }) => lamps.join() === healthy.join())
				.map(({ state }) => state);
			expect(alike).toEqual(["correct", "neutral and ground reversed", "bootleg ground", "reversed bootleg ground"]);
		},
	);
});
