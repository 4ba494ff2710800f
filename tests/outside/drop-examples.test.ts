// Against the outside: every published voltage-drop example, solved on a plan made from its inputs, within 1 % of what it prints.
import { describe, expect, test } from "vitest";
import { awg } from "../../src/base/gauge.ts";
import { celsius } from "../../src/base/measures.ts";
import { ohmsAt } from "../../src/figures/conductor-ohms.ts";
import { resistances20 } from "../../src/handbook/copper-resistance.ts";
import { marineAmpacity } from "../../src/handbook/marine-ampacity.ts";
import { steadyOf } from "../figures/plan-states.ts";
import { type Known, nameOf } from "./published.ts";

const read = (source: string): { source: string; known: Known } => ({ source, known: "read" });
const magazine = read("voltage-drop pages of a trade magazine");
const marine = read("marine article on conductor size");
const distributor = read("wire-size page of a marine distributor");

/** Volts lost on the way to the one load of a plan. */
function lostOn(text: string): { readonly volts: number; readonly percent: number } {
	const [load] = steadyOf(text).loads;
	if (load === undefined) throw new Error("the plan has no load");
	const volts = load.quiet - load.across;
	return { volts, percent: (volts / load.quiet) * 100 };
}

const mains = (cable: string, way: string, load: string) =>
	`plan "p"\n  rules building\ninlet pole 100 A, 120/240 V\npanel P main 100 A, legs 2 from pole by 2-3\ncircuit one from P breaker 30 A${load.includes("240 V") ? " two-pole" : ""} by ${cable}\n  ${way}${load.includes("240 V") ? ", white marked red at both ends" : ""} to h1: ${load}\n`;
const metric = (cable: string, way: string, volts: string, load: string) =>
	`plan "p"\n  region iec\n  rules building\ninlet pole 63 A ${volts}\npanel P main 63 A rcd 30 mA from pole by 3G16\ncircuit one from P breaker 32 A by ${cable}\n  ${way} to h1: ${load}\n`;

const examples: readonly (readonly [
	string,
	{ source: string; known: Known },
	string,
	{ readonly volts: number; readonly percent: number },
])[] = [
	[
		"120 V, 20 A, 100 ft of 12 AWG",
		magazine,
		mains("12-2 stranded", "100 ft", "load 20 A"),
		{ volts: 7.9, percent: 6.6 },
	],
	[
		"120 V, 20 A, 100 ft of 8 AWG",
		magazine,
		mains("8-2 stranded", "100 ft", "load 20 A"),
		{ volts: 3.1, percent: 2.6 },
	],
	[
		"120 V, 20 A, 100 ft of 10 AWG",
		magazine,
		mains("10-2 stranded", "100 ft", "load 20 A"),
		{ volts: 4.97, percent: 4.1 },
	],
	[
		// The page rounds 3.992 V up before it takes the percentage.
		"24 V, 4 A, 100 ft of 16 AWG",
		read("voltage-drop page with Chapter 9 Table 8"),
		`battery house agm 24 V 100 Ah\nfeed one from house.+, house.- by pair 16 AWG\n  100 ft to l1: load 4 A 24 V\n`,
		{ volts: 4, percent: 16.7 },
	],
	[
		"240 V, 20 A, 100 ft of 12 AWG",
		read("voltage-drop page with Chapter 9 Table 8"),
		mains("12-2 stranded", "100 ft", "load 20 A 240 V"),
		{ volts: 7.92, percent: 3.3 },
	],
	[
		"240 V, 6 kW, 16 m of 4 mm2, by 11 mV/A/m",
		read("voltage-drop page of a wiring guide"),
		metric("3G4", "16 m", "240 V", "load 25 A 240 V"),
		{ volts: 4.4, percent: 1.83 },
	],
	[
		"230 V, 21.74 A, 40 m of 6 mm2",
		read("wiring page of an unnamed host, whose arithmetic is right"),
		metric("3G6", "40 m", "230 V", "load 21.74 A"),
		{ volts: 6.45, percent: 2.8 },
	],
];

describe("the drop that is printed", () => {
	test.each(examples.map(([what, source, text, printed]) => [nameOf(source, what), text, printed] as const))(
		"%s",
		(_, text, printed) => {
			const lost = lostOn(text);
			// Within 1 %, or within half of the last digit that is printed.
			const roomFor = (value: number): number => Math.max(0.01 * value, 10 ** -decimalsOf(value) / 2);
			expect(Math.abs(lost.volts - printed.volts)).toBeLessThanOrEqual(roomFor(printed.volts));
			expect(Math.abs(lost.percent - printed.percent)).toBeLessThanOrEqual(roomFor(printed.percent));
		},
	);
});

function decimalsOf(value: number): number {
	return String(value).split(".")[1]?.length ?? 0;
}

/** The constant of ABYC E-11, 10.75 ohm cmil/ft, is that of copper at 29 °C: 10.371 (234.5 + 29) / (234.5 + 20) = 10.74. */
const coolCopper = celsius(29);
const dropIn = (gauge: number, feet: number, amperes: number): number =>
	ohmsAt({ gauge: awg(gauge), material: "copper", stranded: false, isFlexible: false }, coolCopper).value *
	feet *
	0.3048 *
	amperes;

describe("the size that is printed is the first that loses no more than it may", () => {
	test.each([
		[nameOf(distributor, "12 V, 10 A, 21 ft out and back, 10 %: 16 AWG"), 16, 18, 21, 10, 1.2],
		[nameOf(distributor, "12 V, 10 A, 21 ft out and back, 3 %: 12 AWG"), 12, 14, 21, 10, 0.36],
		[nameOf(marine, "12 V, 45 A, 40 ft out and back, 10 %: 8 AWG"), 8, 10, 40, 45, 1.2],
	] as const)("%s", (_, gauge, thinner, feet, amperes, most) => {
		expect(dropIn(gauge, feet, amperes)).toBeLessThanOrEqual(most);
		expect(dropIn(thinner, feet, amperes)).toBeGreaterThan(most);
	});

	test(nameOf(marine, "24 V, 100 A, 10 ft out and back, 3 %: 8 AWG by its drop, 6 AWG by what it carries"), () => {
		expect(dropIn(8, 10, 100)).toBeLessThanOrEqual(0.72);
		expect(marineAmpacity(awg(8), 105)?.ampere).toBe(80);
		expect(marineAmpacity(awg(6), 105)?.ampere).toBeGreaterThanOrEqual(100);
	});
});

describe("by constants of their own", () => {
	test(nameOf(marine, "12 V, 1 A, 20 m of 16 AWG by 0.01785 ohm mm2/m: 0.549 V"), () => {
		expect(Math.abs(dropIn(16, 40 / 0.3048, 1) / 0.549 - 1)).toBeLessThanOrEqual(0.01);
	});

	test(nameOf(marine, "12 V, 1.6 A, 22 m of 1.5 mm2: 0.38 V by a resistivity 5 % below that of copper"), () => {
		const millimetre = { system: "mm2", label: "1.5", mm2: 1.5 } as const;
		const row = ohmsAt({ gauge: millimetre, material: "copper", stranded: false, isFlexible: false }, celsius(20));
		const copper = 0.017241;
		// IEC 60228 prints the largest that is allowed, 5 % above what its area comes to.
		const allowed = 12.1 / ((copper / 1.5) * 1000);
		expect(Math.abs((row.value * 22 * 1.6 * 0.0164) / copper / allowed / 0.385 - 1)).toBeLessThanOrEqual(0.01);
	});

	test(
		nameOf(
			read("trade chart of direct-current wire"),
			"24 V, 10 A, 100 ft of 4 AWG: the chart rounds 2.07 % down to 2 %",
		),
		() => {
			const row = resistances20.rows.find(({ gauge }) => gauge.label === "4");
			const lost = ((row?.ohmsPerKilofoot ?? 0) / 1000) * 200 * 10;
			expect(lost).toBeCloseTo(0.497, 3);
			expect((lost / 24) * 100).toBeCloseTo(2.07, 2);
		},
	);
});
