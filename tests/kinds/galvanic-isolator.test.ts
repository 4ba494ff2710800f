// A galvanic isolator: the ground lands on it and goes on through it, everything else goes past.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const boat = (feed: string) => `plan "Jetty"
  rules boat
inlet dock 30 A 120 V
${feed}circuit lamps from AC breaker 15 A by triplex 14 AWG
  6 ft to l1: light 9 W
`;
const onTheWay = boat(`feed supply from dock by triplex 10 AWG
  2 ft to GI: galvanic-isolator 30 A
  6 ft to AC: panel main 30 A two-pole 30 mA
`);

describe("on the way", () => {
	test("only the ground lands on it", () => {
		const { circuit } = checkRight(onTheWay).analysis;
		const landed = circuit.conductors.flatMap(({ name, ends }) =>
			ends.flatMap(({ point }) => {
				const at = circuit.points[point ?? -1];
				return at?.kind === "terminal" && at.part === "GI" ? [`${name} on ${at.terminal}`] : [];
			}),
		);
		expect(landed).toEqual(["supply-1.green on line", "supply-2.green on load"]);
	});

	test("the ground goes on through it", () => {
		checkMarked(`${onTheWay}at GI
  supply-2.green loose
//^^^^^^^^^^^^^^^^^^^^ ground-broken
// also enclosure-unbonded
`);
	});
});

describe("in a bond of its own", () => {
	test("begins at the inlet's terminal and ends on the panel's bar", () => {
		const { circuit } = checkRight(
			boat(`panel AC main 30 A two-pole 30 mA
cable two 10 AWG stranded, black hot, white neutral
feed supply from dock by two
  8 ft to AC
bond earth from dock.ground by single 10 AWG green
  2 ft to GI: galvanic-isolator 30 A
  6 ft to AC.ground
`),
		).analysis;
		const [first, second] = circuit.cables.filter(({ run }) => run === "earth");
		expect([first?.from.name, first?.to.name, second?.to.name]).toEqual(["dock", "GI", "AC"]);
	});
});

test("on a hop of hot and neutral it is told that its ground is missing", () => {
	const { findings } = checkPlan(
		boat(`cable two 10 AWG stranded, black hot, white neutral
feed supply from dock by two
  2 ft to GI: galvanic-isolator 30 A
  6 ft to AC: panel main 30 A two-pole 30 mA
`),
		"plan",
	);
	expect(findings.map(({ level }) => level)).toContain("danger");
});
