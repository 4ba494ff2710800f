// Terminals and joints hold no more conductors than they are made for, nor thicker ones.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const legs = `inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
`;
const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;

describe("terminals", () => {
	test("two under one screw", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  8 ft to l1: light 9 W
  6 ft to l2: light 9 W
at l1
  lights-1.black, lights-2.black on l1.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled "l1.hot holds 2 conductors, and takes 1"
`);
	});
	test("one on each of two screws of a duplex", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
  6 ft to b2: receptacle
at b1
  bunks-1.black, bunks-2.black on b1.hot
`);
	});
	test("three on the two screws of a duplex", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
  from b1
    6 ft to b2: receptacle
  from b1
    6 ft to b3: receptacle
at b1
  bunks-1.black, bunks-2.black, bunks-3.black on b1.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled "b1.hot holds 3 conductors, and takes 2"
`);
	});
	test("two under one clamp plate", () => {
		checkRight(`${supply}circuit galley from LC breaker 20 A by 12-2
  8 ft to g1: gfci
  from g1.line
    6 ft to b2: receptacle
at g1
  galley-1.black, galley-2.black on g1.line.hot
  galley-1.white, galley-2.white on g1.line.neutral
`);
	});
	test("two cables under one breaker", () => {
		checkMarked(`${supply}circuit one from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
circuit two from LC.1 by 12-2
//               ^^^^ slot-shared
  8 ft to b2: receptacle
at LC
  one-1.black on LC.1.load
  two-1.black on LC.1.load
//^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled "LC.1.load holds 2 conductors, and takes 1"
`);
	});
	test("a conductor on a stab that only plugs in", () => {
		checkMarked(`${supply}circuit one from LC breaker 20 A by 12-2
  8 ft to p1: pump 90 W
at LC
  one-1.black on LC.1.stab
//^^^^^^^^^^^^^^^^^^^^^^^^ protection-missing
//^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled "one-1.black lies on LC.1.stab, which takes no conductor"
`);
	});
});

describe("joints", () => {
	test("as many as it has ports", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
  6 ft to b2: receptacle
at b1
  join bunks-1.black, bunks-2.black, b1.hot by lever 3
`);
	});
	test("one more", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
  from b1
    6 ft to b2: receptacle
  from b1
    6 ft to b3: receptacle
at b1
  join bunks-1.black, bunks-2.black, bunks-3.black, b1.hot by lever 3
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled "holds 4 conductors, and its lever connector takes 3"
`);
	});
	test("a joint that is not said takes the next larger connector", () => {
		checkRight(`plan "Joints"
  joints lever 3
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
  from b1
    6 ft to b2: receptacle
  from b1
    6 ft to b3: receptacle
`);
	});
	test("two share a port", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
  6 ft to b2: receptacle
at b1
  join (bunks-1.black bunks-2.black), b1.hot by lever 2
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled "holds 3 conductors, and its lever connector takes 2"
`);
	});
});

describe("bars", () => {
	test("a neutral bar with too few ports", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  NB: neutral-bar ports 2
circuit one from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
circuit two from LC breaker 20 A by 12-2
//               ^^ terminal-overfilled "NB.2 holds 2 conductors"
  8 ft to b2: receptacle
`);
	});
	test("exactly enough ports", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  NB: neutral-bar ports 3
circuit one from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
circuit two from LC breaker 20 A by 12-2
  8 ft to b2: receptacle
`);
	});
	test("two grounds share a port of a ground bar", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  GB: ground-bar ports 2
circuit one from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
circuit two from LC breaker 20 A by 12-2
  8 ft to b2: receptacle
`);
	});
	test("two neutrals under one port by hand", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  NB: neutral-bar ports 8
circuit one from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
at LC
  LC-1.white, one-1.white on NB.1
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled "NB.1 holds 2 conductors, and takes 1"
`);
	});
});

describe("thickness", () => {
	test("8 AWG under a binding screw", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
  from b1 by single 8 AWG black
    6 ft to b2: box
at b1
  bunks-2.black on b1.hot
//^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled "8 AWG, and b1.hot takes 10 AWG at most"
`);
	});
	test("10 AWG under a binding screw", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 10-2
  8 ft to b1: receptacle
`);
	});
	test("a 50 A receptacle takes 6 AWG", () => {
		checkRight(`${legs}circuit work from LC breaker 50 A by 6-2
  8 ft to w1: receptacle 50 A duplex
`);
	});
});

describe("a device in the middle of a chain with two ends landed by hand", () => {
	const chain = (black: string, white: string): string => `${supply}circuit lights from LC breaker 15 A by 14-2
  8 ft to l1: light 9 W
  6 ft to l2: light 9 W
  6 ft to l3: light 9 W
at l2
  lights-2.black on l2.${black}
  lights-2.white on l2.${white}
`;
	test("exchanged is one cause: what is under the screws besides follows", () => {
		checkMarked(`${chain("neutral", "hot")}//^^^^^^^^^^^^^^^^^^^^^^^^ polarity-reversed
// also terminal-overfilled colour-misleading
`);
	});
	test("right is two conductors under each screw", () => {
		checkMarked(
			chain("hot", "neutral").replace("l2.hot\n", "l2.hot\n//^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled\n") +
				"//^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled\n",
		);
	});
});

describe("what is read off a lug or a bar", () => {
	const feeder = (words: string, cable: string) => `plan
  rules building
inlet pole 60 A 120/240 V
panel LC lugs only, legs 2 ${words} from pole by ${cable}, 12 ft
`;
	test("a lug that takes the size says so: nothing is asked", () => {
		const notes = checkRight(feeder("largest 2/0", "2-3 aluminium 75 C")).findings;
		expect(notes.filter(({ marks }) => marks.some((mark) => mark.startsWith("LC.bus")))).toEqual([]);
		const usual = checkRight(feeder("", "2-3 aluminium 75 C")).findings;
		expect(usual.filter(({ marks }) => marks.some((mark) => mark.startsWith("LC.bus"))).length).toBe(2);
	});
	test("one that does not is told", () => {
		const { findings } = checkPlan(feeder("largest 6 AWG", "4-3"), "plan");
		expect(findings.filter(({ level }) => level !== "note").map(({ title }) => title)).toEqual([
			"LC-1.black is 4 AWG, and LC.bus.A takes 6 AWG at most",
			"LC-1.red is 4 AWG, and LC.bus.B takes 6 AWG at most",
		]);
	});
	test("one that is too large is told", () => {
		const { findings } = checkPlan(feeder("smallest 2 AWG, largest 4/0", "4-3"), "plan");
		expect(findings.filter(({ level }) => level !== "note").map(({ title }) => title)).toEqual([
			"LC-1.black is 4 AWG, and LC.bus.A takes 2 AWG at least",
			"LC-1.red is 4 AWG, and LC.bus.B takes 2 AWG at least",
		]);
	});
	const bar = (words: string) => `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  GB: ground-bar 3 ${words}
circuit a from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
at LC
  LC-1.bare on GB.1
  a-1.bare on GB.1
`;
	test("a port that takes one conductor, or two", () => {
		checkRight(bar("takes 2"));
		checkMarked(`${bar("takes 1").trimEnd()}
//^^^^^^^^^^^^^^^^ terminal-overfilled "GB.1 holds 2 conductors, and takes 1"
`);
	});
	test.each([
		["largest", "unit-wrong"],
		["largest 40 A", "unit-wrong"],
		["largest 2/0 largest 4/0", "attribute-twice"],
	])("%s", (words, code) => {
		const { findings } = checkPlan(feeder(words, "4-3"), "plan");
		expect(findings.map((finding) => finding.code)).toContain(code);
	});
});
