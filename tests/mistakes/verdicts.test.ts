// What is made of single slips: which are the same, which do no harm and why, and their near misses, which are found.
import { expect, test } from "vitest";
import { certain } from "../../src/base/certain.ts";
import { canonicalCircuit } from "../../src/documents/circuit-record.ts";
import { beforeMistakes, judgeMistake } from "../../src/mistakes/judge.ts";
import type { Verdict } from "../../src/mistakes/mistake.ts";
import { operators } from "../../src/mistakes/operators/index.ts";
import { checkCircuit, checkPlan } from "../../src/pipeline.ts";
import { rightSamples } from "./right-plans.ts";

const head = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
const bunks = `${head}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
`;
const lights = `${head}circuit lights from LC breaker 15 A by 14-2
  7 ft to s1: switch
  9 ft to l1: light 9 W
`;
const stair = `${head}circuit stair from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch three-way
  5 ft by 14-2 to l1: light 9 W
`;
const legs = `inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit heat from LC breaker 20 A two-pole by 12-2
  15 ft white marked red at both ends to h1: heater 3500 W 240 V, no neutral
`;
const galley = `place galley sink 3 ft
place hall "Hall"
${head}circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci in galley
circuit hall from LC breaker 20 A by 12-2
  11 ft to g2: gfci in hall
`;
const van = `battery house lithium 12.8 V 100 Ah, fault 1 kA
fuse-block FB 60 A, ways 2
  slot 1: fuse blade 5 A
  slot 2: fuse blade 10 A
feed small from house.+, house.- by pair 8 AWG
  within 7 in to F1: fuse cube 50 A interrupting 10 kA
  3 ft to FB
circuit lamps from FB.1 by pair 16 AWG
  6 ft to s1: switch
  3 ft to l1: light 6 W
circuit pump from FB.2 by pair 14 AWG
  6 ft to p1: pump 48 W
`;

const series = `battery A1 lithium 12.8 V 100 Ah
battery A2 lithium 12.8 V 100 Ah
chassis body
feed middle from A1.- by single 2/0 black
  1 ft to A2.+
feed bank from A1.+, A2.- by pair 12 AWG
  within 7 in to F1: fuse 30 A
  3 ft to l1: light 6 W 24 V
bond minus-body from A2.- by single 2/0 black
  2 ft to body
`;

function verdictOf(text: string, operator: string, at: string): Verdict {
	const { circuit } = checkPlan(text, "plan").analysis;
	const made = operators.filter(({ name }) => name === operator).flatMap(({ find }) => [...find(circuit)]);
	const mistake = certain(
		made.find((each) => each.at === at),
		`${at}, among ${made.map((each) => each.at).join("; ")},`,
	);
	return judgeMistake(beforeMistakes(circuit, checkCircuit), mistake, checkCircuit);
}

const exchanged = "two wires exchanged at a part";
const moved = "an end in the wrong place";

test.each([
	["neutrals on one bar", bunks, exchanged, "LC-1.white and bunks-1.white in LC"],
	["a neutral on another port", bunks, moved, "bunks-1.white on LC.neutral.3 instead of LC.neutral.2"],
])("the same: %s", (_, text, operator, at) => {
	expect(verdictOf(text, operator, at)).toEqual({ verdict: "same" });
});

test.each([
	["a wire on the splice or on the terminal it leads to", bunks, moved, "bunks-2.black on b1.hot instead of b1/hot"],
	["the two wires of a plain switch", lights, exchanged, "lights-1.black and lights-2.black in s1"],
	["two travellers", stair, exchanged, "stair-2.black and stair-2.red in s1"],
	["two legs of a heater", legs, exchanged, "heat-1.black and heat-1.white in h1"],
	["a breaker on the other leg", legs, "a breaker on the wrong leg", "LC.1.stab on LC.bus.B instead of LC.bus.A"],
	["a smaller breaker", bunks, "a protective device too small", "LC.1, 15 A instead of 20 A"],
	["a thinner wire that still carries its fuse", van, "a thinner conductor", "lamps-1, one size thinner"],
	["a larger fuse that the wire still has room for", van, "a protective device too big", "FB.1, 7.5 A instead of 5 A"],
	["protection where none is asked for", galley, "a plain device instead of a ground-fault one", "g2"],
	["a small switch for a small light", lights, "a device that may carry less", "s1, 10 A instead of 15 A"],
	["a 15 A pair of outlets on 20 A", galley, "a device that may carry less", "g2, 15 A instead of 20 A"],
	["a red lead inside a series", series, "the wrong colour", "middle-1.black, red"],
	["a green bond to the metal", series, "the wrong colour", "minus-body-1.black, green"],
	["a bond one size thinner than the positive", series, "a thinner conductor", "minus-body-1, one size thinner"],
	["two points that are one", bunks, "two points bridged", "b1.hot and b1/hot"],
])("harmless: %s", (_, text, operator, at) => {
	expect(verdictOf(text, operator, at)).toMatchObject({ verdict: "harmless" });
});

test.each([
	["hot and neutral", "polarity-reversed", bunks, exchanged, "bunks-2.black and bunks-2.white in b2"],
	[
		"a switch with both wires on one side",
		"switch-without-effect",
		lights,
		moved,
		"lights-1.black on s1.load instead of s1.line",
	],
	[
		"both poles on one leg",
		"load-voltage-wrong",
		legs,
		"a breaker on the wrong leg",
		"LC.2.stab.1 on LC.bus.B instead of LC.bus.A",
	],
	[
		"a wire too thin for its breaker",
		"protection-too-large",
		bunks,
		"a thinner conductor",
		"bunks-1, one size thinner",
	],
	[
		"a breaker too big for its wire",
		"protection-too-large",
		bunks,
		"a protective device too big",
		"LC.1, 25 A instead of 20 A",
	],
	["no protection by the sink", "ground-fault-missing", galley, "a plain device instead of a ground-fault one", "g1"],
	["hot to neutral", "poles-joined", bunks, "two points bridged", "b2.hot and b2.neutral"],
	[
		"a fuse too weak for its battery",
		"interrupting-rating-low",
		van.replace("fault 1 kA", "fault 4 kA"),
		"a fuse that cannot break the fault current",
		"F1, which breaks 1 kA, at house",
	],
	["a green lead inside a series", "colour-misleading", series, "the wrong colour", "middle-1.black, green"],
	["a red bond to the metal", "colour-misleading", series, "the wrong colour", "minus-body-1.black, red"],
	[
		"circuits exchanged at a fuse block",
		"circuit-mislabelled",
		van,
		"two wires exchanged in a box",
		"lamps-1.red and pump-1.red in FB",
	],
	[
		"a block fed through a circuit's fuse",
		"circuit-mislabelled",
		van,
		"two wires exchanged in a box",
		"small-2.red and pump-1.red in FB",
	],
	["two fuses joined", "circuits-joined", van, "two points bridged", "FB.1.load and FB.2.load"],
	["a battery turned round", "polarity-dc-reversed", van, "a battery or module turned round", "house"],
])("found: %s", (_, by, text, operator, at) => {
	expect(verdictOf(text, operator, at)).toMatchObject({ verdict: "found", by });
});

test("a joint with resistance is for the meter, which is told what to read", () => {
	const judged = verdictOf(bunks, "a joint with resistance", "b1/neutral");
	expect(judged).toMatchObject({ verdict: "meter-only" });
	expect("reading" in judged ? judged.reading : "").toContain("more than 0.1 V");
});

const sampleText = new Map(rightSamples("samples").map(({ name, text }) => [name, text]));

test.each([
	["alder-homestead", "one pole opened where two must be", "LC.10", "neutral-shared-unsafely"],
	["alder-homestead", "a breaker on the wrong leg", "LC.2.stab.1 on LC.bus.B instead of LC.bus.A", "leg-missing"],
	[
		"alder-homestead",
		"a breaker on the wrong leg",
		"SP.1.stab.1 on SP.bus.B instead of SP.bus.A",
		"load-voltage-wrong",
	],
	["heron-camper", "a conductor left out", "supply-1.black, from shore.hot to inv.in.hot", "end-loose"],
	["marten-van", "two points bridged", "inv.in.neutral and inv.out.neutral", "bond-doubled"],
	["puffin-cruiser", "two points bridged", "AC.main.line.neutral and AC.neutral.5", "neutral-borrowed"],
	["gull-sloop", "a plain device instead of a ground-fault one", "AC.main", "ground-fault-missing"],
	["badger-camper", "a conductor left out", "output-1.green, from inv.out.ground to LC.ground.1", "conductors-too-few"],
	["heron-camper", "a device that may carry less", "g3, 10 A instead of 15 A", "device-undersized"],
	["marten-van", "a device that may carry less", "c1, 15 A instead of 16 A", "receptacle-rating-wrong"],
	["otter-van", "a thinner conductor", "w1~ground, one size thinner", "ground-undersized"],
])("found in %s: %s: %s", (sample, operator, at, by) => {
	const text = certain(sampleText.get(`${sample}.ferrule`), sample);
	expect(verdictOf(text, operator, at)).toEqual({ verdict: "found", by, named: true });
});

test.each([
	["puffin-cruiser", "a plain device instead of a ground-fault one", "AC.main", "another device opens"],
	["gull-sloop", "a plain device instead of a ground-fault one", "AC.1", "stands where"],
	["heron-camper", "one pole opened where two must be", "wd", "still opens the hot"],
	["heron-camper", "trap: reversed at a box, and again behind it", "water-1 and water-2 in wd", "alike"],
	["puffin-cruiser", "a conductor left out", "up-1.yellow, from eminus.6 to step.in.-", "another lead that bears it"],
	["puffin-cruiser", "a protective device left out", "F3", "near enough to the post"],
	["trial-bench", "two wires exchanged in a box", "P-1.white and cord~neutral in cord", "in the box"],
	["rowan-stair", "two wires exchanged in a box", "step-1.white and l5~neutral in l5", "in the box"],
])("harmless in %s: %s: %s", (sample, operator, at, reason) => {
	const text = certain(sampleText.get(`${sample}.ferrule`), sample);
	expect(verdictOf(text, operator, at)).toEqual({ verdict: "harmless", reason: expect.stringContaining(reason) });
});

test.each([
	["heron-camper", "two wires exchanged at a part", "water-1.black and water-1.white in wd"],
	["badger-camper", "two points bridged", "inv.in.ground and inv.+"],
	["heron-camper", "two points bridged", "inv.in.ground and inv.+"],
])("no harmless one in %s: %s: %s", (sample, operator, at) => {
	const text = certain(sampleText.get(`${sample}.ferrule`), sample);
	expect(verdictOf(text, operator, at)).toMatchObject({ verdict: "found" });
});

const samples = rightSamples("samples").map(({ name, text }) => ({
	name,
	circuit: checkPlan(text, name).analysis.circuit,
}));

test.each(operators)("there is something to do for: $name", ({ find }) => {
	expect(samples.some(({ circuit }) => !(find(circuit)[Symbol.iterator]().next().done ?? false))).toBe(true);
});

test("the circuit that slips are made in stays as it was, and every slip but a bad joint changes it", () => {
	const { circuit } = checkPlan(van, "plan").analysis;
	const before = canonicalCircuit(circuit);
	for (const { name, find } of operators)
		for (const { at, wrong } of find(circuit))
			expect(wrong() === circuit, `${name}: ${at}`).toBe(name === "a joint with resistance");
	expect(canonicalCircuit(circuit)).toBe(before);
});

test("every operator has a name of its own", () => {
	expect(new Set(operators.map(({ name }) => name)).size).toBe(operators.length);
});
