// Cables that take the hot to a switch and bring it back: which core lands where, and what is told of a wrong one.
import { describe, expect, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";
import { endsIn, wirePlan, wireRight } from "./wire-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";
const one = `${supply}circuit one from LC breaker 15 A by 14-2\n`;
const marked = "white marked black at both ends";

describe("one switch", () => {
	test("white takes the hot to it, black brings it back to the light", () => {
		const circuit = wireRight(`${one}  9 ft to l1: light 9 W\n  6 ft, ${marked} to s1: switch\n`);
		expect(endsIn(circuit, "l1")).toEqual([
			"one-1.black on l1/hot",
			"one-1.white on l1.neutral",
			"one-1.bare on l1/ground",
			"one-2.black on l1.hot",
			"one-2.white on l1/hot",
			"one-2.bare on l1/ground",
			"l1~ground on l1.ground",
			"l1~ground on l1/ground",
		]);
		expect(endsIn(circuit, "s1")).toEqual([
			"one-2.black on s1.load",
			"one-2.white on s1.line",
			"one-2.bare on s1.ground",
		]);
	});

	test("is the same where the loop is said or seen by its mark", () => {
		const said = `${one}  9 ft to l1: light 9 W\n  6 ft loop, ${marked} to s1: switch\n`;
		const seen = `${one}  9 ft to l1: light 9 W\n  6 ft, ${marked} to s1: switch\n`;
		expect(endsIn(wireRight(said), "l1")).toEqual(endsIn(wireRight(seen), "l1"));
	});

	test("three conductors: black there, red back, and a neutral that waits in the switch's box", () => {
		const circuit = wireRight(`${one}  9 ft to l1: light 9 W\n  6 ft loop by 14-3 to s1: switch\n`);
		expect(endsIn(circuit, "s1")).toEqual([
			"one-2.black on s1.line",
			"one-2.red on s1.load",
			"one-2.white capped",
			"one-2.bare on s1.ground",
		]);
	});

	test("what goes on from the light is live, what goes on from its switched side is switched", () => {
		const circuit = wireRight(`${one}  9 ft to l1: light 9 W
  6 ft, ${marked} to s1: switch
  from l1
    5 ft to r1: receptacle
  from l1.switched
    5 ft to l2: light 5 W
`);
		expect(endsIn(circuit, "l1").filter((end) => /black|one-2.white/.test(end))).toEqual([
			"one-1.black on l1/hot",
			"one-2.black on l1/l1.switched",
			"one-2.white on l1/hot",
			"one-3.black on l1/hot",
			"one-4.black on l1/l1.switched",
		]);
	});

	test("a dimmer takes a loop as a switch does", () => {
		checkRight(`${one}  9 ft to l1: light 9 W\n  6 ft, ${marked} to d1: dimmer\n`);
	});

	test("two legs of one feed through a box are no loop", () => {
		const circuit = wireRight(`inlet pole 50 A 120/240 V
panel LC legs 2, main 50 A from pole by 6-3, 12 ft
circuit heat from LC breaker two-pole 20 A by 12-2
  9 ft, white marked red at both ends to j1: box
  9 ft, white marked red at both ends to s1: switch two-pole
  3 ft, white marked red at both ends to h1: heater 3000 W 240 V
`);
		expect(endsIn(circuit, "s1").filter((end) => end.startsWith("heat-2"))).toEqual([
			"heat-2.black on s1.line.hot",
			"heat-2.white on s1.line.hot2",
			"heat-2.bare on s1/ground",
		]);
	});
});

describe("a white that is not re-marked", () => {
	test("is told", () => {
		checkMarked(`${one}  9 ft to l1: light 9 W
//        ^^ colour-misleading "one-2.white carries the hot"
  6 ft loop to s1: switch
`);
	});
	test("is told between three-way switches too", () => {
		checkMarked(`${one}  9 ft to l1: light 9 W
  6 ft loop, ${marked} to s1: switch three-way
//                                              ^^ colour-misleading "one-3.white carries the hot"
  9 ft loop by 14-3 to s2: switch three-way
`);
	});
	test("may be left white where it is the neutral", () => {
		checkRight(`${one}  9 ft to l1: light 9 W\n  6 ft loop by 14-3 to s1: switch\n`);
	});
});

describe("loops wired wrongly", () => {
	test("the feed and the loop's return joined: the switch has no effect", () => {
		checkMarked(`${one}  9 ft to l1: light 9 W
  6 ft, ${marked} to s1: switch
at l1
  join one-1.black, one-2.white, one-2.black, l1.hot
//                  ^^^^^^^^^^^ switch-without-effect
`);
	});
	test("a traveller on the common of the second switch", () => {
		checkMarked(`${one}  9 ft to l1: light 9 W
  6 ft, ${marked} to s1: switch three-way
//                                         ^^ switch-without-effect "s1 and s2 do not all switch l1"
  9 ft by 14-3, ${marked} to s2: switch three-way
at s2
  one-3.white on s2.traveller.1
  one-3.black on s2.common
`);
	});
	test("a cable with a spare hot that goes on from the light brings no travellers", () => {
		checkRight(`${one}  9 ft to l1: light 9 W
  6 ft, ${marked} to s1: switch three-way
  9 ft by 14-3, ${marked} to s2: switch three-way
  from l1
    8 ft to l2: light 5 W
`);
	});
	test("two conductors where the travellers need three", () => {
		checkMarked(`${one}  9 ft to l1: light 9 W
  6 ft, ${marked} to s1: switch three-way
//                                         ^^ end-loose "l1 has no hot: one-2.white is capped in s1"
  9 ft loop, ${marked} to s2: switch three-way
//                                              ^^ switch-without-effect "s2 switches nothing: nothing is on s2.common"
`);
	});
	test.each([
		["from a ground-fault receptacle", "  9 ft to g1: gfci\n  6 ft loop to s1: switch\n", "g1"],
		["to a receptacle", "  9 ft to l1: light 9 W\n  6 ft loop to r1: receptacle\n", "r1"],
	])("a loop %s", (_, wiring, name) => {
		const { findings } = wirePlan(one + wiring);
		const loops = findings.filter(({ code }) => code === "loop-misplaced");
		expect(loops.map(({ title }) => title.endsWith(name))).toEqual([true]);
	});
});
