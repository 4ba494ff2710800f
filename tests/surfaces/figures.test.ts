// `ferrule figures`: tables, data and the working of one thing, on real plans; a working is done again from its printed lines alone.
import * as fs from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import schema from "../../grammar/figures.schema.json" with { type: "json" };
import { checkPlan, figurePlan } from "../../src/pipeline.ts";
import { samples } from "../figures/plan-states.ts";
import { generatePlan } from "../generator/generate-plan.ts";
import { findWords, makeFolder, run } from "./stand-in.ts";

/** The command on a plan, with the real check behind it. */
async function figures(text: string, ...words: readonly string[]) {
	const folder = makeFolder();
	fs.writeFileSync(join(folder, "van.ferrule"), text);
	return run(folder, ["figures", "van.ferrule", "--fail-on", "never", ...words], {
		checkPlan: (plan, file, find) => {
			const result = checkPlan(plan, file, find);
			return { ...findWords(plan, file, find), ...result, figures: (wish) => figurePlan(result, wish) };
		},
	});
}

const first = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
`;

test("a table for each circuit", async () => {
	// By hand: 24 ft of 10 AWG are 0.02904 ohm, 180 ft of 14 AWG 0.5526 ohm, 120 V squared over 1400 W 10.2857 ohm: 11.0422 A.
	const { output, status } = await figures(
		`${first}circuit heat from LC breaker 15 A by 14-2\n  90 ft to h1: heater 1400 W\n`,
	);
	expect(status).toBe(0);
	expect(output).toBe(`van.ferrule

Mode shore is live

shore gives 11.04 A, 1325 W (36.9 % of 30 A)

feed LC
  cable  wire  ft      A  lost V  to  left V  drop %  own %
  LC-1   10-2  12  11.05    0.33  LC  119.67    0.27   0.27

circuit bunks, LC.1: 0.00 A of 20 A, 0.0 %
  cable    wire  ft     A  lost V  to  left V  drop %  own %
  bunks-1  12-2  14  0.00    0.00  b1  119.67    0.27   0.00
  bunks-2  12-2   9  0.00    0.00  b2  119.67    0.27   0.00

circuit heat, LC.2: 11.05 A of 15 A, 73.7 %
  cable   wire  ft      A  lost V  to  left V  drop %  own %
  heat-1  14-2  90  11.05    6.11  h1  113.57    5.36   5.09  over 3 %, over 5 %

Limits: 5 % for feeder and branch circuit together (NFPA 70 210.19 and 215.2
informational notes); 3 % for branch circuit, farthest outlet (NFPA 70 210.19
and 215.2 informational notes).
\`drop\` counts from the source, \`own\` from where the circuit or feed begins.
\`ferrule figures PLAN --of THING\` tells how a figure comes about. The code in
force, the makers' papers and a licensed person decide.
`);
});

describe("a builder's questions are one command each", () => {
	test("the drop at the last outlet with 12 A if its cable were 40 ft long", async () => {
		const { output } = await figures(first, "--of", "b2", "--draw", "b2=12A", "--length", "bunks-2=40 ft");
		// 12 A through 12 ft of 10 AWG, 14 and 40 ft of 12 AWG, out and back.
		const lost = (12 * 2 * (12 * 1.21 + 54 * 1.93)) / 1000;
		expect(output).toContain(`120 V - ${lost.toFixed(4)} V = ${(120 - lost).toFixed(4)} V`);
		expect(output).toContain("bunks-2.black, 12 AWG, 40 ft");
	});

	test("whether two things may run together on a smaller supply", async () => {
		const text = `${first}circuit heat from LC breaker 15 A by 14-2\n  9 ft to h1: heater 1400 W\n  9 ft to h2: heater 900 W\n`;
		const both = ["--draw", "b1=12.5 A", "--on", "h1", "--limit", "shore=15A"];
		expect((await figures(text, ...both)).output).toMatch(/shore gives 24\.\d+ A, \d+ W \(16\d\.\d % of 15 A, OVER\)/);
		expect((await figures(text, "--on", "h1", "--limit", "shore=15A")).output).toMatch(/\(7\d\.\d % of 15 A\)/);
	});

	const van = `battery house lithium 12.8 V 280 Ah, fault 5 kA
inverter inv 2000 W 12 V / 120 V, surge 4000 W, efficiency 90 %, cut-off 11 V, bonds neutral when inverting
feed plus from house.+ by single 2/0 red
  6 in to F1: fuse class-T 250 A
  3 ft to inv.+
feed minus from house.- by single 2/0 black
  3 ft to inv.-
panel LC main 20 A from inv by 12-2, 6 ft
circuit one from LC breaker 15 A by 14-2
  10 ft to c1: fridge 200 W, surge START, lowest 100 V, daily 24 h, duty 50 %
`;

	test("whether the inverter holds the compressor's start", async () => {
		const held = (await figures(van.replace("START", "1500 W"))).output.replace(/\s+/g, " ");
		expect(held).toMatch(/c1 draws 12\.50 A: left 118\.\d\d V of 120 V; it runs from 100 V; it holds/);
		expect(held).toMatch(/inv gives 15\d\d W: within its 4000 W for a moment; goes on at 12\.\d\d V, cut-off 11 V/);
		expect((await figures(van.replace("START", "4200 W"))).output).toMatch(/inv gives 4\d\d\d W: OVER its 4000 W/);
	});

	test("how many days without sun", async () => {
		const { output } = await figures(van.replace("START", "1500 W"));
		// 200 W half of the day are 2400 Wh, over 90 % 2667 Wh, and a little in wires and battery; 12.8 V x 280 Ah x 80 % are 2867 Wh.
		expect(output.replace(/\s+/g, " ")).toMatch(
			/house gives 268\d Wh a day of 2867 Wh \(80 % of what it holds, common practice\): 1\.0 days/,
		);
	});

	test("in metres, the figures are the same", async () => {
		const [feet, metres] = [
			await figures(first, "--as", "json"),
			await figures(first, "--as", "json", "--units", "metres"),
		];
		expect(metres.output).toBe(feet.output);
		expect((await figures(first, "--units", "metres")).output).toContain("  bunks-1  12-2  4.3");
	});
});

describe("a working can be done again from its printed lines", () => {
	const cases = [
		["heron-camper", "wh", "inv"],
		["badger-camper", "u2", "inv"],
		["alder-homestead", "h1", "gen"],
		["marten-van", "e6", "shore"],
		["puffin-cruiser", "bp", "dock"],
	] as const;

	test.each(cases)("%s, %s in %s", async (name, thing, mode) => {
		const text = samples.find(([file]) => file === `samples/${name}.ferrule`)?.[1] ?? "";
		const { output } = await figures(text, "--of", thing, "--mode", mode);
		const told = output.replace(/\s+/g, " ");
		const products = [...told.matchAll(/V = I R = (-?[\d.]+) A x ([\d.]+) ohm = (-?[\d.]+) V/g)];
		expect(products.length).toBeGreaterThan(1);
		for (const [, amperes, ohms, volts] of products)
			expect(Math.abs(Number(amperes) * Number(ohms) - Number(volts))).toBeLessThan(2e-4);
		for (const [, row, ratio, length, ohms] of told.matchAll(
			/R = ([\d.]+) ohm\/(?:1000 ft|km)(?: x ([\d.]+))? x ([\d.]+) (?:ft|m) = ([\d.]+) ohm/g,
		)) {
			const redone = (Number(row) * Number(ratio ?? 1) * Number(length)) / 1000;
			expect(Math.abs(redone / Number(ohms) - 1)).toBeLessThan(1e-4);
		}
		const [, terms = "", lost] = /lost, there and back ([-+\d. ]+) = ([\d.]+) V/.exec(told) ?? [];
		const sum = terms
			.replace(/ ([+-]) /g, " $1")
			.split(" ")
			.reduce((total, term) => total + Number(term), 0);
		expect(Math.abs(sum - Number(lost))).toBeLessThan(1e-3);
		const [, from, less, left] = /left ([\d.]+) V - ([\d.]+) V = ([\d.]+) V/.exec(told) ?? [];
		expect(Math.abs(Number(from) - Number(less) - Number(left))).toBeLessThan(2e-4);
		expect(told).toMatch(/drop [\d.]+ V \/ [\d.]+ V x 100 = [\d.]+ %, (within|over) the [\d.]+ % of /);
	});
});

test("a circuit, a cable and a source have workings too", async () => {
	expect((await figures(first, "--of", "bunks", "--draw", "b1=5A")).output).toContain("Working of bunks, at b");
	expect((await figures(first, "--of", "bunks-1", "--draw", "b1=5A")).output).toContain("bunks-1.black, 12 AWG, 14 ft");
	expect((await figures(first, "--of", "bunks-1")).output.replace(/\s+/g, " ")).toContain(
		"bunks-1.black may be protected at 12 AWG copper may have 20 A at most = 20 A [NFPA 70 240.4(D)]",
	);
	expect((await figures(first, "--of", "shore", "--draw", "b1=5A")).output).toContain("P = V I = 120 V x 5 A = 600 W");
});

test("faults at the end of each cable, where they are asked for", async () => {
	expect((await figures(first)).output).not.toContain("faults");
	const { output } = await figures(first, "--faults");
	// (24 x 1.21 + 28 x 1.93) / 1000 ohm: 0.08308, and 120 V over it 1444 A, 72.2 times 20 A.
	expect(output).toMatch(/bunks-1 +to ground +0\.084 +1444 +72\.2 +LC\.1 +within 120 s/);
});

test("what is not there is refused with what is near", async () => {
	for (const [words, why] of [
		[["--of", "b22"], "There is nothing `b22` that figures are told of"],
		[["--mode", "shroe"], "The plan has no mode `shroe`. Did you mean `shore`?"],
		[["--draw", "b22=3A"], "There is no load or outlet `b22`. Did you mean `b2`?"],
		[["--draw", "b2=3V"], "`b2=3V` is not understood; write `NAME=12 A`."],
		[["--on", "b1,b22"], "There is no load or outlet `b22`. Did you mean `b2`?"],
		[["--limit", "shroe=15 A"], "There is no source `shroe`. Did you mean `shore`?"],
		[["--length", "bunks-2"], "`bunks-2` is not understood; write `NAME=40 ft`."],
	] as const) {
		const { messages, status } = await figures(first, ...words);
		expect(messages).toContain(why);
		expect(status).toBe(64);
	}
});

test("more than can come is said, with the largest that settles", async () => {
	const { output } = await figures(
		`battery house lithium 12.8 V 100 Ah\nfeed one from house.+, house.- by pair 14 AWG\n  40 ft to l1: load 400 W\n`,
	);
	expect(output.replace(/\s+/g, " ")).toMatch(
		/No steady state in house with everything on: .* The largest that settles is 40\.\d % of it: then l1 is left with \d\.\d V of 12\.8 V\./,
	);
});

describe("for programs", () => {
	const fits = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(schema);
	const plans = [
		...samples,
		...[1, 2, 3, 4, 5, 6].map((seed) => [`generated ${seed}`, generatePlan(seed).text] as const),
	];

	test.each(plans)("%s fits the schema, and every figure in it is one", async (_, text) => {
		const { output } = await figures(text, "--as", "json", "--faults");
		expect(output).not.toMatch(/NaN|Infinity/);
		const told: unknown = JSON.parse(output);
		expect([fits(told), fits.errors]).toEqual([true, null]);
	});

	test("a row for each cable, and no cell that a spreadsheet runs", async () => {
		const { output } = await figures(first, "--as", "csv");
		const [heads = "", ...rows] = output.trimEnd().split("\r\n");
		expect(heads.split(",").slice(0, 8)).toEqual(["plan", "mode", "run", "cable", "wire", "from", "to", "feet"]);
		expect(rows.map((row) => row.split(",")[3])).toEqual(["LC-1", "bunks-1", "bunks-2"]);
		expect(rows.every((row) => row.split(",").length === heads.split(",").length)).toBe(true);
	});
});
