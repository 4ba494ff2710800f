// What several fuses let through together: behind batteries in parallel, and back through negatives that serve many loads.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkRight } from "../check-plan.ts";

/** Two batteries in parallel, each with a fuse of 200 A, on a bus that feeds an inverter and what is small. */
function bank(main: string, inverter: string, minus: string): string {
	return `${[1, 2]
		.map(
			(number) => `battery b${number} lithium 12.8 V 200 Ah
feed up${number} from b${number}.+ by single 1/0 red
  within 7 in to F${number}: fuse class-T 200 A
  2 ft to pair${number === 1 ? ": bus 600 A" : ""}
feed down${number} from b${number}.- by single 1/0 black
  2 ft to joined${number === 1 ? ": bus 600 A" : ""}
`,
		)
		.join("")}feed main from pair by single ${main} red 105 C
  3 ft to plus: bus 600 A
feed back from joined by single ${minus} black 105 C
  3 ft to minus: bus 600 A
inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
feed inv-plus from plus by single ${inverter} red
  bolted to F3: fuse class-T 250 A
  3 ft to inv.+
feed inv-minus from minus by single ${inverter} black
  3 ft to inv.-
circuit desk from inv.out by 12-2
  3 ft to d1: receptacle
feed small from plus, minus by pair 10 AWG
  bolted to F4: fuse 60 A
  3 ft to l1: load 300 W 12 V
`;
}

/** Two batteries in series with one fuse. */
function row(link: string, back: string): string {
	return `battery b1 lithium 12.8 V 200 Ah
battery b2 lithium 12.8 V 200 Ah
feed middle from b1.- by single ${link} black
  1 ft to b2.+
feed main from b1.+ by single 2/0 red
  within 7 in to F1: fuse class-T 200 A
  1 ft to plus: bus 300 A
feed back from b2.- by single ${back} black
  1 ft to minus: bus 300 A
feed big from plus, minus by pair 4 AWG
  bolted to F2: fuse 125 A
  3 ft to l1: load 1000 W 24 V
feed more from plus, minus by pair 4 AWG
  bolted to F3: fuse 125 A
  3 ft to l2: load 1000 W 24 V
`;
}

function tooLarge(text: string): readonly string[] {
	return checkPlan(text, "plan")
		.findings.filter(({ code, level }) => code === "protection-too-large" && level !== "note")
		.map(({ title, level }) => `${level}: ${title}`);
}

describe("behind batteries in parallel with a fuse each", () => {
	test("a main that bears one fuse and not both", () => {
		expect(tooLarge(bank("1 AWG", "2/0", "4/0"))).toEqual([
			expect.stringContaining("F1 and F2 with 400 A together are too large for 1 AWG in main-1: 250 A at most"),
		]);
	});
	test("a smaller fuse behind them that no single one of them would reach", () => {
		expect(tooLarge(bank("4/0", "1 AWG", "4/0"))).toEqual([
			expect.stringContaining("The 250 A fuse F3 is too large for 1 AWG in inv-plus-1: 200 A at most"),
			expect.stringContaining("The negative inv-minus-1.black is too thin"),
		]);
	});
	test("a negative that brings back what both let out", () => {
		expect(tooLarge(bank("4/0", "2/0", "1 AWG"))).toEqual([
			expect.stringContaining(
				"The negative back-1.black is too thin for what inv and l1 may draw through F3 and F4, 310 A together: 250 A at most",
			),
		]);
	});
	test("not the leads of one battery, which carry their own fuse", () => {
		checkRight(bank("4/0", "2/0", "4/0"));
	});
	test("not two banks that a switch ties to crank an engine", () => {
		expect(
			tooLarge(
				bank("4/0", "2/0", "4/0")
					.replace("  2 ft to pair\n", "  1 ft to tie: disconnect 300 A\n  1 ft to pair\n")
					.replace("main from pair by single 4/0", "main from pair by single 1/0"),
			),
		).toEqual([]);
	});
});

describe("batteries in series", () => {
	test("a lead between them that bears less than their fuse", () => {
		expect(tooLarge(row("2 AWG", "2/0"))).toEqual([
			expect.stringContaining(
				"The negative middle-1.black is too thin for what l1 and l2 may draw through the 200 A fuse F1",
			),
		]);
	});
	test("a minus that bears each load and not both", () => {
		expect(tooLarge(row("2/0", "2 AWG"))).toEqual([
			expect.stringContaining(
				"The negative back-1.black is too thin for what l1 and l2 may draw through the 200 A fuse F1",
			),
		]);
	});
	test("neither, where both are as thick as the main", () => {
		checkRight(row("2/0", "2/0"));
	});
});
