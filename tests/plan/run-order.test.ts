// Runs may stand in any order: one that begins at what a later one declares waits for it.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked } from "../check-plan.ts";

const house = "battery house lithium 12.8 V 100 Ah, fault 4 kA\n";
const bars = `feed plus from house.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 150 A interrupting 20 kA
  1 ft to D1: disconnect 300 A
  1 ft to plus: bus 250 A
feed minus from house.- by single 2 AWG black
  1 ft to minus: bus 250 A
`;
const small = `feed small from plus, minus by pair 8 AWG
  bolted to F2: fuse 60 A interrupting 10 kA
  3 ft to FB: fuse-block 100 A
    slot 1: fuse 10 A
`;
const lamp = "circuit lamp from FB.1 by pair 14 AWG\n  6 ft to l1: light 6 W\n";

/** Every conductor with where its ends are, whatever the order, a stud of a bus being as good as another. */
function landings(text: string): string[] {
	const { findings, analysis } = checkPlan(text, "plan");
	expect(findings).toEqual([]);
	const { conductors, points } = analysis.circuit;
	return conductors
		.map(({ name, ends }) =>
			[name, ...ends.map(({ point }) => points[point ?? -1]?.name.replace(/^(plus|minus)\.\d$/, "$1"))].join(" "),
		)
		.toSorted();
}

describe("runs in another order", () => {
	test.each([
		[small, bars, lamp],
		[lamp, small, bars],
		[bars, lamp, small],
		[lamp, bars, small],
	])("are the same circuit", (...runs) => {
		expect(landings(house + runs.join(""))).toEqual(landings(house + bars + small + lamp));
	});

	test("a chain that goes to what a later one declares", () => {
		expect(
			checkPlan(
				`${house}fuse-block FB 100 A
feed minus from house.- by single 2 AWG black
  1 ft to minus
feed other from FB.- by single 2 AWG black
  1 ft to minus: bus 250 A
`,
				"plan",
			).findings.map(({ code }) => code),
		).not.toContain("kind-missing");
	});

	test("runs that wait for each other, or for what nobody declares, are told", () => {
		checkMarked(`${house}feed one from two by single 2 AWG red
//            ^^^ name-unknown
  1 ft to uno: bus 100 A
feed three from uno by single 2 AWG red
  1 ft to tres: bus 100 A
feed four from five by single 2 AWG red
//             ^^^^ name-unknown
  1 ft to six: bus 100 A
feed seven from six by single 2 AWG red
  1 ft to five: bus 100 A
`);
	});
});
