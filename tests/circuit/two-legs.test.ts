// Supplies and panels with two hot legs: which slot is on which, what opens together, what shares a neutral, legs that are bridged.
import { describe, expect, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";
import { endsIn, wirePlan, wireRight } from "./wire-plan.ts";

const supply = "inlet pole 50 A 120/240 V\npanel LC main 50 A 120/240 V from pole by 6-3, 12 ft\n";

/** The bus terminals that each breaker of a panel plugs on to, by slot. */
function legsOf(text: string): Record<string, string[]> {
	const { links, points } = wireRight(text);
	const legs: Record<string, string[]> = {};
	for (const { between, part } of links) {
		const [bus] = between.map((point) => points[point]?.name ?? "");
		if (bus?.includes(".bus.") === true && part !== "LC.main") legs[part] = [...(legs[part] ?? []), bus.slice(-1)];
	}
	return legs;
}

describe("slots and legs", () => {
	test("a row of slots is one leg, the next row the other", () => {
		const circuits = ["a", "b", "c", "d", "e"].map(
			(name) => `circuit ${name} from LC breaker 15 A by 14-2\n  9 ft to ${name}1: light 9 W\n`,
		);
		expect(legsOf(supply + circuits.join(""))).toEqual({
			"LC.1": ["A"],
			"LC.2": ["A"],
			"LC.3": ["B"],
			"LC.4": ["B"],
			"LC.5": ["A"],
		});
	});
	test("two poles stand on two legs, the first on that of its slot", () => {
		expect(
			legsOf(`${supply}circuit a from LC.3 breaker two-pole 20 A by 12-3
  9 ft to a1: receptacle split
`),
		).toEqual({ "LC.3": ["B", "A"] });
	});
	test("both tandem halves of a slot are on its one leg", () => {
		expect(
			legsOf(`${supply}  slot 3A: breaker 15 A
  slot 3B: breaker 15 A
circuit a from LC.3A by 14-2
  9 ft to a1: light 9 W
circuit b from LC.3B by 14-2
  9 ft to b1: light 9 W
`),
		).toEqual({ "LC.3A": ["B"], "LC.3B": ["B"] });
	});
});

describe("handles that are tied", () => {
	const shared = (slots: string, second: string) => `${supply}${slots}circuit both from LC.1 by 12-3
  14 ft to k1: receptacle split
at LC
  both-1.red on LC.${second}.load
`;
	test("may share a neutral on two legs", () => {
		checkRight(shared("  slot 1: breaker 20 A\n  slot 3: breaker 20 A tied LC.1\n", "3"));
	});
	test("may be named by the slot alone, and from either side", () => {
		checkRight(shared("  slot 1: breaker 20 A tied 3\n  slot 3: breaker 20 A\n", "3"));
	});
	test("not tied, they may not", () => {
		const { findings } = checkMarked(`${supply}  slot 1: breaker 20 A
  slot 3: breaker 20 A
circuit both from LC.1 by 12-3
  14 ft to k1: receptacle split
//         ^^ neutral-shared-unsafely "do not open together"
at LC
  both-1.red on LC.3.load
`);
		expect(findings.filter(({ level }) => level !== "note").length).toBe(1);
	});
	test("tied on one leg, the currents add up in the neutral", () => {
		checkMarked(`${supply}  slot 1: breaker 20 A
  slot 2: breaker 20 A tied LC.1
circuit both from LC.1 by 12-3
  14 ft to k1: receptacle split
//         ^^ neutral-shared-unsafely "which are on one leg"
at LC
  both-1.red on LC.2.load
`);
	});
	const both = (second: string, words: string) => `${supply}  slot 1: breaker 20 A
  slot ${second}: breaker 20 A ${words}
circuit both from LC.1, LC.${second} by 12-3
  14 ft to k1: receptacle split
`;
	test("a circuit comes from both: black from the first, red from the other", () => {
		checkRight(both("3", "tied LC.1"));
		const circuit = wireRight(both("3", "tied LC.1"));
		expect(endsIn(circuit, "LC").filter((end) => end.startsWith("both-1"))).toEqual([
			"both-1.black on LC.1.load",
			"both-1.red on LC.3.load",
			"both-1.white on LC.neutral.2",
			"both-1.bare on LC.ground.2",
		]);
	});
	test("a 240 V load too, its white marked red", () => {
		checkRight(`${supply}  slot 1: breaker 20 A
  slot 3: breaker 20 A tied LC.1
circuit heat from LC.1, LC.3 by 12-2
  9 ft, white marked red at both ends to h1: heater 3000 W 240 V
`);
	});
	test("from two that are not tied is told", () => {
		checkMarked(`${supply}  slot 1: breaker 20 A
  slot 3: breaker 20 A
circuit both from LC.1, LC.3 by 12-3
  14 ft to k1: receptacle split
//         ^^ neutral-shared-unsafely "do not open together"
`);
	});
	test.each([
		["an empty slot", "tied 5"],
		["itself", "tied LC.3"],
		["what is no breaker", "tied pole"],
	])("tied to %s", (_, words) => {
		const { told } = wirePlan(`${supply}  slot 1: breaker 20 A\n  slot 3: breaker 20 A ${words}\n`);
		expect(told).toEqual(["4:3 name-unknown"]);
	});
	test("tied to nothing said", () => {
		const { told } = wirePlan(`${supply}  slot 1: breaker 20 A tied\n`);
		expect(told).toEqual(["3:tied quantity-missing"]);
	});
});

describe("one hot for two legs", () => {
	const circuits = `circuit a from LC breaker 20 A by 12-2
  9 ft to r1: receptacle
circuit b from LC.3 breaker 20 A by 12-2
  9 ft to r2: receptacle
`;
	test("an inlet of two legs on an adapter feeds both at 120 V", () => {
		const { analysis } = checkRight(`inlet pole 50 A 120/240 V, adapter 30 A
panel LC main 50 A 120/240 V from pole by 6-3, 12 ft
${circuits}`);
		const [source] = analysis.circuit.sources;
		expect([source?.hot.length, source?.limit]).toEqual([1, 30]);
	});
	test("there a 240 V load gets nothing, and a shared neutral carries both", () => {
		checkMarked(`inlet pole 50 A 120/240 V, adapter 30 A
panel LC main 50 A 120/240 V from pole by 6-3, 12 ft
circuit heat from LC breaker two-pole 20 A by 12-2
  9 ft, white marked red at both ends to h1: heater 3000 W 240 V
//                                       ^^ load-voltage-wrong "gets 0 V"
circuit both from LC breaker two-pole 20 A by 12-3
  9 ft to k1: receptacle split
//        ^^ neutral-shared-unsafely "which are on one leg"
`);
	});
	test("a panel with bridged legs on a supply of one", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A, legs 2, bridged legs from shore by 10-2, 12 ft
${circuits}`);
	});
	test("the bridge left in on a supply of two is a short circuit", () => {
		checkMarked(`inlet pole 50 A 120/240 V
panel LC main 50 A, legs 2, bridged legs from pole by 6-3, 12 ft
//                                       ^^^^^^^^^^^^^^^^^^^^^^^ poles-joined "its legs are bridged"
${circuits}`);
	});
	test("no bridge: the second leg is dead", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A, legs 2 from shore by 10-2, 12 ft
//    ^^ leg-missing
${circuits}// also end-loose
`);
	});
});

describe("240 V loads", () => {
	test("without and with a neutral, fixed and behind outlets", () => {
		checkRight(`${supply}circuit heat from LC breaker two-pole 20 A by 12-2
  9 ft, white marked red at both ends to h1: heater 3000 W 240 V
circuit range from LC breaker two-pole 50 A by 6-3
  9 ft to k1: load 8000 W 120/240 V
circuit welder from LC breaker two-pole 20 A by 12-2
  9 ft, white marked red at both ends to r1: receptacle 20 A 240 V
circuit dryer from LC breaker two-pole 30 A by 10-3
  9 ft to r2: receptacle 30 A 120/240 V
`);
	});
	test("a neutral that the cable does not bring", () => {
		checkMarked(`${supply}circuit range from LC breaker two-pole 30 A by 10-2
  9 ft, white marked red at both ends to r2: receptacle 30 A 120/240 V
//                                       ^^ conductors-too-few "has no neutral for r2.neutral"
// also end-loose
`);
	});
	test("a generator with two legs feeds them as a pedestal does", () => {
		checkRight(`generator gen 7200 W 120/240 V, bonds neutral to frame
panel LC main 30 A, legs 2 from gen by 10-3, 12 ft
circuit heat from LC breaker two-pole 20 A by 12-2
  9 ft, white marked red at both ends to h1: heater 3000 W 240 V
`);
	});
	test("on two slots of one leg it gets nothing", () => {
		checkMarked(`${supply}  slot 1: breaker 20 A
  slot 2: breaker 20 A tied LC.1
circuit heat from LC.1 by 12-2
  9 ft, white marked red at both ends to h1: heater 3000 W 240 V
//                                       ^^ load-voltage-wrong "both its hots are on one leg"
at LC
  heat-1.white on LC.2.load
`);
	});
});
