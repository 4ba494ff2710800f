// The main of a panel behind a breaker is no larger than the feeder's wires may have.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const annex = (feeder: string, main: string): string => `inlet shore 50 A 120 V
panel LC main 50 A from shore by 6-2, 12 ft
  slot 1: breaker 30 A
feed annex from LC.1 by ${feeder}
  20 ft to SP: panel ${main}
circuit shed from SP breaker 15 A by 14-2
  9 ft to l1: light 9 W
`;

describe("main-too-large is told", () => {
	test("50 A behind 10 AWG", () => {
		checkMarked(
			annex("10-2", "main 50 A").replace(
				"circuit shed",
				'//         ^^ main-too-large "SP.main is 50 A, and its feeder annex-1 may have 30 A at most"\n// also protection-out-of-order\ncircuit shed',
			),
		);
	});
	test("45 A behind 8 AWG, which may have 40 A", () => {
		checkMarked(
			annex("8-2", "main 45 A").replace(
				"circuit shed",
				"//         ^^ main-too-large\n// also protection-out-of-order\ncircuit shed",
			),
		);
	});
});

describe("main-too-large is not told", () => {
	test("of 30 A, nor of lugs", () => {
		checkRight(annex("10-2", "main 30 A"));
		checkRight(annex("10-2", "lugs only"));
	});
	test("of 50 A behind 6 AWG: there only the order is wrong", () => {
		checkMarked(
			annex("6-2", "main 50 A").replace(
				"  slot 1: breaker 30 A\n",
				"  slot 1: breaker 30 A\n//     ^ protection-out-of-order\n",
			),
		);
	});
	test("of a main larger than its inlet: the pedestal protects", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 50 A from shore by 10-2, 12 ft
circuit shed from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
`);
	});
});
