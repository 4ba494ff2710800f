// Against the outside: a plan made from each published worked example. What it concludes is right has no findings;
// what it concludes is wrong is found where a rule decides it, and is reckoned as it says from the handbook.
import { describe, expect, test } from "vitest";
import { awg } from "../../src/base/gauge.ts";
import { boxAllowance, conductorVolume } from "../../src/handbook/box-fill.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { checkRight } from "../check-plan.ts";
import { findingsOf, type Known, nameOf } from "./published.ts";

const read = (source: string): { source: string; known: Known } => ({ source, known: "read" });
const house = 'plan "p"\n  rules building\n';
const pole = `${house}inlet pole 100 A, 120/240 V\npanel P main 100 A, legs 2 from pole by 2-3, 10 ft\n`;
const bank = (cable: string, volts: string, fuse: number, things: string) => `plan "p"
  rules boat
battery house lithium ${volts} 280 Ah, fault 2 kA
feed main from house.+ by single 2/0 red
  7 in to F1: fuse class-T 300 A
  1 ft to plus: bus 300 A
feed back from house.- by single 2/0 black
  1 ft to minus: bus 300 A
feed run from plus, minus by ${cable}
  bolted to F2: fuse class-T ${fuse} A
${things}`;

/** Published examples whose conclusion is that it fits. */
const right: readonly (readonly [string, { source: string; known: Known }, string])[] = [
	[
		"20 A at 120 V over 100 ft: 8 AWG loses 2.6 %",
		read("voltage-drop pages of a trade magazine"),
		`${pole}circuit one from P breaker 30 A by 8-2\n  100 ft to r1: receptacle 30 A single\n`,
	],
	[
		"12 V, 10 A, 21 ft out and back, 10 %: 16 AWG",
		read("wire-size page of a marine distributor"),
		bank("pair 16 AWG", "12.8 V", 15, "  10.5 ft to l1: load 10 A\n"),
	],
	[
		"12 V, 10 A, 21 ft out and back, 3 %: 12 AWG",
		read("wire-size page of a marine distributor"),
		bank("pair 12 AWG", "12.8 V", 15, "  10.5 ft to l1: load 10 A\n"),
	],
	[
		"12 V, 45 A, 40 ft out and back, 10 %: 8 AWG",
		read("marine article on conductor size"),
		bank("pair 8 AWG", "12.8 V", 60, "  20 ft to w1: load 45 A\n"),
	],
	[
		"24 V, 100 A, 10 ft out and back: 6 AWG, for what it carries and not for its drop",
		read("marine article on conductor size"),
		bank("pair 6 AWG", "25.6 V", 125, "  5 ft to w1: load 100 A\n"),
	],
	[
		"240 V, 6 kW over 16 m of 4 mm2: 1.83 %",
		read("voltage-drop page of a wiring guide"),
		`plan "p"\n  region iec\n  rules building\ninlet pole 63 A 240 V\npanel P main 63 A rcd 30 mA from pole by 3G16, 4 m\ncircuit one from P breaker 32 A by 3G4\n  16 m to h1: load 6000 W 240 V\n`,
	],
	[
		"16 A for three hours or more: a 20 A circuit, exactly",
		read("electrician's journal"),
		`${pole}circuit one from P breaker 20 A by 12-2\n  20 ft to h1: heater 16 A continuous\n`,
	],
	[
		"24 A for three hours or more: a 30 A circuit",
		read("vehicle forum"),
		`${pole}circuit one from P breaker 30 A by 10-2\n  20 ft to h1: heater 24 A continuous\n`,
	],
	[
		"a 50 A breaker with 6 AWG and a 10 AWG copper ground",
		read("trade page on Table 250.122"),
		`${pole}circuit one from P breaker 50 A by 6-2\n  20 ft to h1: load 40 A 120 V\n`,
	],
	[
		"4500 VA of lights: three circuits of 15 A",
		read("NFPA 70 Annex D1(a), in a reprint"),
		`${pole}${["a", "b", "c"]
			.map((name) => `circuit ${name} from P breaker 15 A by 14-2\n  12 ft to ${name}1..${name}5: light 300 W each\n`)
			.join("")}`,
	],
	[
		"4500 VA of lights: two circuits of 20 A",
		read("NFPA 70 Annex D1(a), in a reprint"),
		`${pole}${["a", "b"]
			.map((name) => `circuit ${name} from P breaker 20 A by 12-2\n  12 ft to ${name}1..${name}5: light 450 W each\n`)
			.join("")}`,
	],
	[
		"a dwelling of 18,600 VA, 77.5 A a leg, on 100 A",
		read("NFPA 70 Annex D1(a), in a reprint"),
		`${pole}circuit range from P breaker 40 A two-pole by 8-3\n  20 ft to r1: receptacle 50 A 120/240 V\ncircuit dryer from P breaker 30 A two-pole by 10-3\n  20 ft to r2: receptacle 30 A 120/240 V\n`,
	],
	[
		"a 40 ft park trailer, 47 A on the fuller leg: a supply of 50 A",
		{ source: "NFPA 70 Annex D12", known: "recalled" },
		`${house}inlet pole 50 A, 120/240 V
panel P main 50 A, legs 2 from pole by 6-3, 10 ft
circuit heat from P breaker 20 A two-pole by 12-2
  12 ft, white marked red at both ends to h1: heater 1000 W 240 V
circuit fan from P breaker 15 A by 14-2
  12 ft to f1: fan 200 W
circuit dish from P breaker 20 A by 12-2
  12 ft to d1: load 400 W 120 V
`,
	],
	[
		"two 12-2 cables, clamps and a duplex in 18.0 cubic inches",
		read("box-fill page of a teaching site"),
		`${pole}circuit one from P breaker 20 A by 12-2\n  12 ft to b1: receptacle, box 18 cuin\n  12 ft to b2: receptacle\n`,
	],
	[
		"four 14 AWG, grounds and one device in 14 cubic inches",
		read("box-fill page of a teaching site"),
		`${pole}circuit one from P breaker 15 A by 14-2\n  12 ft to s1: switch, box 14 cuin\n  12 ft to l1: light 9 W\n`,
	],
	[
		"a light on two 12-2 cables in a box of 21.5 cubic inches",
		read("trade-school page on box fill"),
		`${pole}circuit one from P breaker 20 A by 12-2\n  12 ft to l1: light 9 W, box 21.5 cuin\n  12 ft to l2: light 9 W\n`,
	],
	[
		"nine 12 AWG in a 4 by 1-1/2 square box: four cables and a spare",
		read("NFPA 70 314.16(A), in a trade magazine"),
		`${pole}circuit one from P breaker 20 A by 12-2\n  12 ft to j1: box 21 cuin\n  12 ft to b1: receptacle\n  from j1\n    9 ft to b2: receptacle\n`,
	],
];

/** Published examples whose conclusion, or whose next step, is that it does not fit. */
const wrong: readonly (readonly [string, { source: string; known: Known }, string, string])[] = [
	[
		"16.1 A for three hours or more on 20 A",
		read("electrician's journal"),
		`${pole}circuit one from P breaker 20 A by 12-2\n  20 ft to h1: heater 16.1 A continuous\n`,
		"circuit-overloaded",
	],
	[
		"24.1 A for three hours or more on 30 A",
		read("vehicle forum"),
		`${pole}circuit one from P breaker 30 A by 10-2\n  20 ft to h1: heater 24.1 A continuous\n`,
		"circuit-overloaded",
	],
	[
		"24 V, 100 A on 8 AWG: its drop would do, what it carries does not",
		read("marine article on conductor size"),
		bank("pair 8 AWG", "25.6 V", 125, "  5 ft to w1: load 100 A\n"),
		"protection-too-large",
	],
	[
		"4500 VA of lights on two circuits of 15 A",
		read("NFPA 70 Annex D1(a), in a reprint"),
		`${pole}${["a", "b"]
			.map((name) => `circuit ${name} from P breaker 15 A by 14-2\n  12 ft to ${name}1..${name}5: light 450 W each\n`)
			.join("")}`,
		"circuit-overloaded",
	],
	[
		"a 50 A breaker with a ground of 12 AWG",
		read("trade page on Table 250.122"),
		`${house}generator g 100 A 120 V, bonds neutral to frame\npanel P main 100 A from g by 2-2, 3 m\ncircuit one from P breaker 50 A by single 6 AWG black\n  8 ft to p1: pump\nfeed back from P.neutral by single 6 AWG white\n  8 ft to p1\nbond shell from P.ground by single 12 AWG green\n  8 ft to p1\n`,
		"ground-undersized",
	],
	[
		"12 AWG on 25 A, though 75 C insulation carries as much",
		read("NFPA 70 240.4(D)"),
		`${pole}circuit one from P breaker 25 A by 12-2 75 C\n  20 ft to h1: load 20 A 120 V\n`,
		"protection-too-large",
	],
];

describe("a plan made from a published example is right", () => {
	test.each(right.map(([what, row, text]) => [nameOf(row, what), text] as const))("%s", (_, text) => {
		checkRight(text);
	});
});

describe("what a published example warns of is found", () => {
	test.each(wrong.map(([what, row, text, code]) => [nameOf(row, what), text, code] as const))("%s", (_, text, code) => {
		expect(findingsOf(text, code, true).length).toBeGreaterThan(0);
	});
});

describe("box fill, reckoned as published", () => {
	const cubic = (gauge: number) => conductorVolume(awg(gauge))?.cubicInches ?? Number.NaN;
	const count = (content: Parameters<typeof boxAllowance>[0]) => boxAllowance(content).allowances;

	test(nameOf(read("trade-school page on box fill"), "a stud, clamps, two fixture wires of 18 AWG: 18.75"), () => {
		const twelve = 4 + count("equipment grounds, up to four") + 1 + count("internal clamps");
		expect(twelve * cubic(12) + 2 * cubic(18)).toBe(18.75);
	});

	test(
		nameOf(read("box-fill page of a teaching site"), "14 and 12 AWG in 21.0: 21.5 by the largest in the box"),
		() => {
			const both = 4 * cubic(14) + 2 * cubic(12);
			const rest = count("internal clamps") + count("equipment grounds, up to four") + count("device yoke");
			expect(both + rest * cubic(12)).toBe(21.5);
			// By the largest that lands on the device, as the code has it, the box is exactly full.
			expect(both + 2 * cubic(12) + count("device yoke") * cubic(14)).toBe(21);
		},
	);
});

describe("what is left open is said", () => {
	test(nameOf(read("marine distributor page"), "a run whose length is not known is noted, never taken as none"), () => {
		const text = `${pole}circuit one from P breaker 20 A by 12-2\n  to b1: receptacle\n`;
		const { analysis } = checkPlan(text, "plan");
		expect(analysis.circuit.cableByTag.get("one-1")?.length).toBeUndefined();
	});
});
