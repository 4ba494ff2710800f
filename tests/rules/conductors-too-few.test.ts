// A cable has a conductor for everything that what it feeds cannot do without.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const legs = `inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
`;
const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;

describe("no ground", () => {
	test("two-core cord to a device with a ground screw", () => {
		checkMarked(`${supply}circuit fan from LC breaker 15 A by cord 14-2
  8 ft to f1: fan 60 W
//        ^^ conductors-too-few "fan-1 (cord 14-2) has no ground for f1.ground"
// also ground-broken
`);
	});
	test("cord with a ground", () => {
		checkRight(`${supply}circuit fan from LC breaker 15 A by cord 14-3
  8 ft to f1: fan 60 W
`);
	});
	test("what hangs behind it goes without too, and is one finding", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 15 A by 14-2
  8 ft by cord 14-2 to b1: receptacle
//                     ^^ conductors-too-few "has no ground for b1.ground and b2.ground"
//                     ^^ cord-as-wiring
  6 ft by 14-2 to b2: receptacle
// also ground-broken
`);
	});
	test("a metal box goes without", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 15 A by cord 14-2
  8 ft to j1: box metal
//        ^^ conductors-too-few "has no ground for"
//        ^^ cord-as-wiring
  5 ft to j2: box metal
//        ^^ cord-as-wiring
// also enclosure-unbonded
`);
	});
	test("the feed of a panel", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A from shore by cord 10-2, 12 ft
//                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ conductors-too-few "LC-1 (cord 10-2) has no ground for"
circuit bunks from LC breaker 15 A by 14-2
  8 ft to b1: receptacle
// also enclosure-unbonded ground-broken
`);
	});
	test("the ground comes by a conductor of its own", () => {
		checkRight(`${supply}circuit pump from LC breaker 15 A by cord 14-2
  8 ft to p1: pump 60 W
bond shell from LC.ground by single 14 AWG green
  8 ft to p1
`);
	});
});

describe("no neutral", () => {
	test("a single hot to a light", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by single 14 AWG black
  8 ft to l1: light 9 W
//        ^^ conductors-too-few "lights-1 (single 14 AWG black) has no ground and no neutral"
// also end-loose ground-broken
`);
	});
	test("three singles", () => {
		checkRight(`${supply}circuit lights from LC breaker 15 A by single 14 AWG black
  8 ft to l1: light 9 W
feed back from LC.neutral by single 14 AWG white
  8 ft to l1
bond shell from LC.ground by single 14 AWG green
  8 ft to l1
`);
	});
	test("what needs no neutral", () => {
		checkRight(`${legs}circuit heat from LC breaker 20 A two-pole by 12-2
  15 ft white marked red at both ends to h1: heater 3500 W 240 V, no neutral
`);
	});
});

describe("no second hot", () => {
	test("240 V by two conductors that are hot and neutral", () => {
		checkMarked(`${legs}circuit heat from LC breaker 20 A two-pole by 12-2
  15 ft to h1: heater 3500 W 240 V, no neutral
//         ^^ conductors-too-few "has no second hot for h1.hot2"
// also end-loose
`);
	});
	test("three conductors", () => {
		checkRight(`${legs}circuit heat from LC breaker 20 A two-pole by 12-3
  15 ft to h1: heater 3500 W 240 V
`);
	});
	test("a split receptacle behind a two-conductor cable", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
   7 ft to s1: switch
   6 ft to r1: receptacle split
//         ^^ conductors-too-few "has no second hot for r1.hot.upper"
// also end-loose
`);
	});
	test("a split receptacle with a switched half", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
   7 ft to s1: switch
   6 ft by 12-3 to r1: receptacle split
`);
	});
	test("a split receptacle joined by hand", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
   7 ft to r1: receptacle split
at r1
  join bunks-1.black, r1.hot.lower, r1.hot.upper
`);
	});
});

describe("what is there but not joined is told elsewhere", () => {
	test("nothing hot comes to it", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit later from LC breaker 15 A by cord 14-2
  8 ft to e1: end
`);
	});
});

describe("what is to be done, done", () => {
	const twoLegs = `inlet pole 50 A 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
`;
	test("the white of a 240 V load that takes no neutral is marked at both ends", () => {
		const { findings } = checkMarked(`${twoLegs}circuit a from LC breaker 20 A two-pole by 12-2
  9 ft to h1: heater 3000 W 240 V, no neutral
//        ^^ conductors-too-few
// also end-loose
`);
		expect(findings[0]?.help).toContain("`white marked red at both ends`");
		checkRight(`${twoLegs}circuit a from LC breaker 20 A two-pole by 12-2
  9 ft white marked red at both ends to h1: heater 3000 W 240 V, no neutral
`);
	});
	test("marked at one end only is one cause", () => {
		checkMarked(`${twoLegs}circuit a from LC breaker 20 A two-pole by 12-2
  9 ft white marked red at LC to h1: heater 3000 W 240 V, no neutral
//                               ^^ conductors-too-few
// also end-loose colour-misleading
`);
	});
});

describe("a ground that comes by another way than its hot", () => {
	const bonded = (make: string, bond: string): string => `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit work from LC breaker 20 A by 12-2
  9 ft to j1: box metal
  3 ft by ${make} to j2: box metal
    r1: receptacle
${bond}`;
	const toPanel = `bond one from LC.ground by single 8 AWG green
  12 ft to j2
`;
	const beside = `bond one from j1 by single 12 AWG green
  3 ft to j2
`;
	const tooFew = (text: string): readonly string[] =>
		checkPlan(text, "plan").findings.flatMap(({ code, level, title }) =>
			code === "conductors-too-few" ? [`${level}: ${title}`] : [],
		);
	test("over a bond to the panel, with a cord of two cores", () => {
		expect(tooFew(bonded("cord 12-2", toPanel))).toEqual([
			"error: work-2 (cord 12-2) has no ground: j2 gets its own by another way than its hot",
		]);
	});
	test("in the cable", () => {
		expect(tooFew(bonded("12-2", toPanel))).toEqual([]);
	});
	test("by a conductor of its own beside the cord", () => {
		expect(tooFew(bonded("cord 12-2", beside))).toEqual([]);
	});
});
