// A utility service: bonded at its meter, or without a ground of its own, which then begins at the first panel's bond.
import { describe, expect, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const cabin = (supply: string, panel = "") => `plan "Cabin"
  rules building
utility grid 60 A 120/240 V${supply}
panel LC main 60 A 120/240 V from grid by 4-3, 20 ft
${panel}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;

describe("bonded at the meter", () => {
	test("is right with an isolated neutral bar, and a mode of its own", () => {
		expect(checkRight(cabin("")).analysis.circuit.modes.map(({ name }) => name)).toEqual(["grid"]);
	});

	test("is bonded twice by a screw in the panel", () => {
		checkMarked(cabin("", "  bonding screw\n").replace("  bonding", "//    ^^ bond-doubled\n  bonding"));
	});
});

describe("without a ground", () => {
	test("has it from the panel's bonding screw", () => {
		const { circuit } = checkRight(cabin(" no ground", "  bonding screw\n")).analysis;
		const ground = circuit.points[circuit.sources[0]?.ground ?? -1];
		expect([ground?.enclosure.name, ground?.role]).toEqual(["LC", "ground"]);
	});

	test("has it nowhere without the screw", () => {
		const { circuit } = checkMarked(
			cabin(" no ground").replace("panel LC", "//      ^^^^ bond-missing\npanel LC"),
		).analysis;
		expect(circuit.sources[0]?.ground).toBeUndefined();
	});
});
