// Colours that contradict what a wire carries.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("colour-misleading is told", () => {
	test("exchanged at one end and exchanged back at the other", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  bunks-1.black on LC.neutral
//^^^^^^^^^^^^^^^^^^^^^^^^^^^ colour-misleading "bunks-1.black carries the neutral and bunks-1.white carries the hot, which the colour does not say"
  bunks-1.white on LC.1.load
at b1
  bunks-1.black on b1.neutral
  bunks-1.white on b1.hot
`);
	});

	test("a white as the return of a switch", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
  7 ft to s1: switch
at l1
  join lights-1.black, lights-2.black
  lights-1.white on l1.neutral
  lights-2.white on l1.hot
at s1
  lights-2.black on s1.line
  lights-2.white on s1.load
//^^^^^^^^^^^^^^^^^^^^^^^^^ colour-misleading "lights-2.white carries the hot, which the colour does not say"
`);
	});

	test("a white re-marked at one end only", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
  7 ft white marked black at s1 to s1: switch
at l1
  join lights-1.black, lights-2.black
  lights-1.white on l1.neutral
  lights-2.white on l1.hot
//^^^^^^^^^^^^^^^^^^^^^^^^ colour-misleading "lights-2.white carries the hot, which the colour does not say"
at s1
  lights-2.black on s1.line
  lights-2.white on s1.load
`);
	});

	test("a bare wire as a hot is a danger, re-marked or not", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
  7 ft bare marked black at both ends to s1: switch
//                                       ^^ conductors-too-few
at l1
  join lights-1.black, lights-2.black
  lights-1.white on l1.neutral
  lights-2.bare on l1.hot
//^^^^^^^^^^^^^^^^^^^^^^^ colour-misleading "lights-2.bare carries the hot, which the colour does not say"
  lights-1.bare on l1.ground
  lights-2.white capped
at s1
  lights-2.black on s1.line
  lights-2.bare on s1.load
  lights-2.white capped
// also ground-broken
`);
	});

	test("what follows from an exchange follows from it", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  bunks-1.black on LC.neutral
//^^^^^^^^^^^^^^^^^^^^^^^^^^^ polarity-reversed
  bunks-1.white on LC.1.load
// also colour-misleading
`);
	});

	test("a blue as a hot in an IEC country", () => {
		checkMarked(`plan "p"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A two-pole from shore by 3G2.5, 4 m
circuit a from DB ground-fault-breaker 10 A trip 30 mA by 3G1.5
  3 m to l1: light 9 W
  3 m to s1: switch
at l1
  join a-1.brown, a-2.brown
  a-1.blue on l1.N
  a-2.blue on l1.L
at s1
  a-2.brown on s1.line
  a-2.blue on s1.load
//^^^^^^^^^^^^^^^^^^^ colour-misleading "a-2.blue carries the hot, which the colour does not say"
`);
	});
});

describe("colour-misleading is not told of", () => {
	test("a white re-marked at both ends", () => {
		checkRight(`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
  7 ft white marked red at both ends to s1: switch
at l1
  join lights-1.black, lights-2.black
  lights-1.white on l1.neutral
  lights-2.white on l1.hot
at s1
  lights-2.black on s1.line
  lights-2.white on s1.load
`);
	});

	test("a red as a second hot", () => {
		checkRight(`${supply}circuit shelf from LC breaker 20 A by 12-2
  5 ft to s1: switch
  6 ft by 12-3 to r1: receptacle split
`);
	});

	test("a brown re-marked black in an IEC country", () => {
		checkRight(`plan "p"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A two-pole from shore by 3G2.5, 4 m
circuit a from DB ground-fault-breaker 10 A trip 30 mA by 3G1.5
  3 m to a1: socket
  3 m brown marked black at both ends to a2: socket
`);
	});

	test("colours of a boat", () => {
		checkRight(`plan "p"
  rules boat
inlet dock 30 A 120 V
panel AC main 30 A from dock by triplex 10 AWG, 4 m
circuit port from AC ground-fault-breaker 15 A by triplex 14 AWG
  2 m to p1: receptacle
`);
	});
});

const pair = (link: string, bond: string): string => `battery A1 lithium 12.8 V 100 Ah
battery A2 lithium 12.8 V 100 Ah
chassis body
feed middle from A1.- by single 2/0 ${link}
  1 ft to A2.+
feed bank from A1.+, A2.- by pair 12 AWG
  within 7 in to F1: fuse 30 A
  3 ft to l1: light 6 W 24 V
bond minus-body from A2.- by single 2/0 ${bond}
  2 ft to body
`;

/** The plan with a finding marked under the line that the hop of a run is on. */
function marked(text: string, line: string, mark: string): string {
	return text.replace(line, `${line}\n${mark}`);
}

describe("colour-misleading of direct current is told", () => {
	test("a green lead in the middle of a series", () => {
		checkMarked(
			marked(
				pair("green", "black"),
				"  1 ft to A2.+",
				'//        ^^^^ colour-misleading "middle-1.green carries the middle of a series, which the colour does not say"',
			),
		);
	});
	test("a red bond of the minus to the metal", () => {
		checkMarked(
			marked(
				pair("black", "red"),
				"  2 ft to body",
				'//        ^^^^ colour-misleading "minus-body-1.red bonds the negative, which the colour does not say"',
			),
		);
	});
	test("both, each by itself", () => {
		const { findings } = checkPlan(pair("white", "orange"), "plan");
		expect(
			findings.filter(({ code, consequenceOf }) => code === "colour-misleading" && consequenceOf === undefined),
		).toHaveLength(2);
	});
});

describe("colour-misleading of direct current is not told of", () => {
	test.each([
		["black", "black"],
		["red", "green"],
		["black", "bare"],
		["red", "yellow"],
	])("a %s lead in a series, and a %s bond", (link, bond) => {
		checkRight(pair(link, bond));
	});
	test("a brown bond, as many vehicles have", () => {
		checkRight(pair("black", "brown"));
	});
});
