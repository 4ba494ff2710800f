// Feeders of aluminium: what may protect them, and how thick their grounds must be.
import { describe, expect, test } from "vitest";
import { aluminiumAmpacities, smallAluminiums } from "../../src/handbook/aluminium-ampacity.ts";
import { copperAmpacities } from "../../src/handbook/copper-ampacity.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const feeder = (amperes: number, cable: string) => `plan
  rules building
inlet pole ${amperes} A 120/240 V
panel LC main ${amperes} A 120/240 V from pole by ${cable}, 12 ft
`;

describe("an aluminium feeder", () => {
	test.each([
		[40, "6-3 aluminium"],
		[60, "4-3 aluminium"],
		[90, "2-3 aluminium 75 C"],
	])("behind %i A by %s", (amperes, cable) => {
		checkRight(feeder(amperes, cable));
	});
	test("too thin for its device, where copper would do", () => {
		checkRight(feeder(40, "8-3"));
		checkMarked(`plan
  rules building
inlet pole 40 A 120/240 V
panel LC main 40 A 120/240 V from pole by 8-3 aluminium, 12 ft
//                           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "8 AWG in LC-1: 35 A at most"
`);
	});
	test("its ground thinner than 20 A asks for in aluminium, where copper would do", () => {
		const bonded = (metal: string) => `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit pump from LC breaker 20 A by single 10 AWG black
  8 ft to p1: pump 60 W, copper and aluminium
feed back from LC.neutral by single 10 AWG white
  8 ft to p1
bond shell from LC.ground by single 12 AWG green ${metal}
  8 ft to p1`;
		checkRight(bonded("copper"));
		checkMarked(`${bonded("aluminium")}
//        ^^ ground-undersized "20 A ahead asks for 10 AWG"
`);
	});
});

describe("the tables of aluminium", () => {
	test("carry less than copper of one size, about as much as copper two sizes thinner", () => {
		for (const row of aluminiumAmpacities.rows) {
			const copper = copperAmpacities.rows.find(({ gauge }) => gauge.label === row.gauge.label);
			for (const column of ["at60", "at75", "at90"] as const) {
				expect(row[column]).toBeLessThan(copper?.[column] ?? 0);
				expect(row[column] / (copper?.[column] ?? 1)).toBeGreaterThan(0.7);
			}
		}
	});
	test("never let a thin conductor have more than it carries at 75 C", () => {
		for (const { gauge, largest } of smallAluminiums.rows)
			expect(aluminiumAmpacities.rows.find((row) => row.gauge.label === gauge.label)?.at75).toBeGreaterThanOrEqual(
				largest,
			);
	});
});
