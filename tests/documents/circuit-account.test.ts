// The account of a circuit: told in words box by box, a line a box, and as data, all from the same circuit.
import { expect, test } from "vitest";
import { checkPlan, showPlan } from "../../src/pipeline.ts";

const plan = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle "Left bunk", box 18 cuin metal
  ? ft to s1: switch
at s1
  bunks-2.black bare on s1.line
  bunks-2.white loose
`;
const shown = showPlan(checkPlan(plan, "van.ferrule"));

test("a person can follow it box by box", () => {
	expect(shown.text).toMatchInlineSnapshot(`
		"van.ferrule
		  region us, rules for a camper, 30 °C
		  mode shore: shore is live
		    energised: shore, LC, b1, s1

		shore: equipment
		  goes LC-1: 10-2, 12 ft, to LC
		  shore: shore inlet 30 A · 120 V
		    shore.hot (brass) <- LC-1.black, black, 10 AWG, hot (solid, inferred)
		    shore.neutral (silver) <- LC-1.white, white, 10 AWG, neutral (solid, inferred)
		    shore.ground (green) <- LC-1.bare, bare, 10 AWG, ground (solid, inferred)

		LC: panel, metal
		  comes LC-1: 10-2, 12 ft, from shore
		  goes bunks-1: 12-2 stranded, 14 ft, to b1
		  LC: one leg · main 30 A
		  LC.main: 30 A main
		    LC.main.line (brass) <- LC-1.black, black, 10 AWG, hot (solid, inferred)
		  LC.neutral: neutral bar, isolated
		    LC.neutral.1 (silver) <- LC-1.white, white, 10 AWG, neutral (solid, inferred)
		    LC.neutral.2 (silver) <- bunks-1.white, white, 12 AWG, neutral (ferrule, inferred)
		  LC.ground: ground bar, bonded to the case
		    LC.ground.1 (green) <- LC-1.bare, bare, 10 AWG, ground (solid, inferred)
		    LC.ground.2 (green) <- bunks-1.green, green, 12 AWG, ground (ferrule, inferred)
		  LC.1: 20 A breaker
		    LC.1.load (brass) <- bunks-1.black, black, 12 AWG, hot (ferrule, inferred)
		  its metal: joined to LC.ground.1

		b1 "Left bunk": box, metal, 18 cuin
		  comes bunks-1: 12-2 stranded, 14 ft, from LC
		  goes bunks-2: 12-2 stranded, length not known, to s1
		  b1: 15 A duplex
		    b1.hot (brass) <- pigtail b1~hot, black, 12 AWG, hot (fork, inferred)
		    b1.neutral (silver) <- pigtail b1~neutral, white, 12 AWG, neutral (fork, inferred)
		    b1.ground (green) <- pigtail b1~ground, green, 12 AWG, ground (fork, inferred)
		  b1/hot: lever connector, 3 ports, none free: bunks-1.black, black, 12 AWG, hot (bare, inferred); bunks-2.black, black, 12 AWG, hot (bare, inferred); pigtail b1~hot, black, 12 AWG, hot (bare, inferred)
		  b1/neutral: lever connector, 3 ports, none free: bunks-1.white, white, 12 AWG, neutral (bare, inferred); bunks-2.white, white, 12 AWG, neutral (bare, inferred); pigtail b1~neutral, white, 12 AWG, neutral (bare, inferred)
		  b1/ground: lever connector, 5 ports, 1 free: bunks-1.green, green, 12 AWG, ground (bare, inferred); bunks-2.green, green, 12 AWG, ground (bare, inferred); pigtail b1~ground, green, 12 AWG, ground (bare, inferred); pigtail b1~case, green, 12 AWG, ground (bare, inferred)
		  its metal: pigtail b1~case, green, 12 AWG, ground (ring, inferred)

		s1: box
		  comes bunks-2: 12-2 stranded, length not known, from b1
		  s1: 15 A single-pole switch
		    s1.line (brass) <- bunks-2.black, black, 12 AWG, hot (bare, said)
		    s1.load (brass) <- nothing
		    s1.ground (green) <- bunks-2.green, green, 12 AWG, ground (fork, inferred)
		  bunks-2.white, white, 12 AWG, neutral is loose (said)
		"
	`);
});

test("it is listed a line a box", () => {
	expect(shown.short).toMatchInlineSnapshot(`
		"shore: shore inlet 30 A · 120 V; LC-1 to LC
		LC: one leg · main 30 A; 30 A main; neutral bar, isolated; ground bar, bonded to the case; 20 A breaker; LC-1 from shore; bunks-1 to b1
		b1: 15 A duplex; bunks-1 from LC; bunks-2 to s1
		s1: 15 A single-pole switch; bunks-2 from b1
		"
	`);
});

test("as data it names every conductor's two ends, and who decided them", () => {
	expect(shown.json.schema).toBe(1);
	const ends = shown.json.conductors.find((conductor) => conductor.name === "bunks-2.black")?.ends;
	expect(ends?.map((end) => [end.enclosure, end.on, end.termination, end.said])).toEqual([
		["b1", "b1/hot", "bare", false],
		["s1", "s1.line", "bare", true],
	]);
	const loose = shown.json.conductors.find((conductor) => conductor.name === "bunks-2.white")?.ends[1];
	expect(loose).toEqual({ enclosure: "s1", on: "loose", termination: "bare", said: true, line: 8 });
});

test("the data holds as many conductors and landings as the words tell", () => {
	const landed = shown.json.conductors
		.flatMap((conductor) => conductor.ends)
		.filter((end) => end.on !== "loose" && end.on !== "capped");
	const told = [...shown.text.matchAll(/\((?:solid|bare|fork|ring|ferrule|lug|pin)[^)]*, (?:said|inferred)\)/g)];
	expect(told.length).toBe(landed.length);
});
