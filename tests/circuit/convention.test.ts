// What is not said is landed by the trade's convention, conductor by conductor.
import { describe, expect, test } from "vitest";
import { endOf, endsIn, jointsIn, supply, wireRight } from "./wire-plan.ts";

const circuit = (lines: string, head = "circuit one from LC breaker 20 A by 12-2") =>
	wireRight(`${supply}${head}\n${lines}`);

describe("the end of a chain", () => {
	test("lands direct", () => {
		const wired = circuit("  14 ft to b1: receptacle\n");
		expect(endsIn(wired, "b1")).toEqual([
			"one-1.black on b1.hot",
			"one-1.white on b1.neutral",
			"one-1.bare on b1.ground",
		]);
		expect(jointsIn(wired, "b1")).toEqual([]);
	});

	test("is spliced all the same where `splices always` is set", () => {
		const wired = wireRight(
			`plan "x"\n  splices always\n${supply}circuit one from LC breaker 20 A by 12-2\n  14 ft to b1: receptacle\n`,
		);
		expect(jointsIn(wired, "b1")).toEqual([
			"b1/hot: one-1.black b1~hot",
			"b1/neutral: one-1.white b1~neutral",
			"b1/ground: one-1.bare b1~ground",
		]);
		expect(endsIn(wired, "b1")).toContain("b1~hot on b1.hot");
	});

	test("leaves a conductor that nothing there needs capped", () => {
		const wired = circuit("  14 ft to b1: receptacle\n", "circuit one from LC breaker 20 A by 12-3");
		expect(endsIn(wired, "b1")).toContain("one-1.red capped");
	});
});

describe("a box that a cable goes on from", () => {
	test("splices every role and takes a pigtail of its size and colour to the device", () => {
		const wired = circuit("  14 ft to b1: receptacle\n   9 ft to b2: receptacle\n");
		expect(jointsIn(wired, "b1")).toEqual([
			"b1/hot: one-1.black one-2.black b1~hot",
			"b1/neutral: one-1.white one-2.white b1~neutral",
			"b1/ground: one-1.bare one-2.bare b1~ground",
		]);
		const pigtail = wired.conductors.find((conductor) => conductor.name === "b1~hot");
		expect([pigtail?.sort, pigtail?.colour, pigtail?.gauge.label, pigtail?.cable]).toEqual([
			"pigtail",
			"black",
			"12",
			undefined,
		]);
		expect(endsIn(wired, "b2")).toEqual([
			"one-2.black on b2.hot",
			"one-2.white on b2.neutral",
			"one-2.bare on b2.ground",
		]);
	});

	test("splices three cables in a junction box, without pigtails where there is no device", () => {
		const wired = circuit(`  6 ft to j1: box
  from j1
    5 ft to b1: receptacle
  from j1
    8 ft to b2: receptacle
`);
		expect(jointsIn(wired, "j1")).toEqual([
			"j1/hot: one-1.black one-2.black one-3.black",
			"j1/neutral: one-1.white one-2.white one-3.white",
			"j1/ground: one-1.bare one-2.bare one-3.bare",
		]);
	});

	test("serves every device in it from the same joints", () => {
		const wired = circuit("  6 ft to j1: box\n    r1: receptacle\n    r2: receptacle\n");
		expect(jointsIn(wired, "j1")).toEqual([
			"j1/hot: one-1.black r1~hot r2~hot",
			"j1/neutral: one-1.white r1~neutral r2~neutral",
			"j1/ground: one-1.bare r1~ground r2~ground",
		]);
	});

	test("takes connectors with as many ports as are sold", () => {
		const wired = circuit("  6 ft to j1: box\n    r1: receptacle\n    r2: receptacle\n    r3: receptacle\n");
		const ports = wired.points.flatMap((point) => (point.kind === "splice" ? [point.ports] : []));
		expect(ports).toEqual([5, 5, 5]);
	});
});

describe("a switch", () => {
	test("is in the hot; neutral passes by in a splice, grounds are joined with a pigtail to it", () => {
		const wired = circuit("  7 ft to s1: switch\n  9 ft to l1: light 9 W\n");
		expect(endsIn(wired, "s1")).toEqual([
			"one-1.black on s1.line",
			"one-1.white on s1/neutral",
			"one-1.bare on s1/ground",
			"one-2.black on s1.load",
			"one-2.white on s1/neutral",
			"one-2.bare on s1/ground",
			"s1~ground on s1.ground",
			"s1~ground on s1/ground",
		]);
	});

	test("first in line governs all after it, and a branch from its line side goes past it", () => {
		const wired = circuit(`  7 ft to s1: switch
  9 ft to l1: light 9 W
  4 ft to l2: light 9 W
  from s1.line
    5 ft to b1: receptacle
`);
		expect(jointsIn(wired, "s1").toSorted()).toEqual([
			"s1/ground: one-1.bare one-2.bare one-4.bare s1~ground",
			"s1/hot: one-1.black one-4.black s1~line",
			"s1/neutral: one-1.white one-2.white one-4.white",
		]);
		expect(endsIn(wired, "s1")).toContain("one-2.black on s1.load");
		expect(jointsIn(wired, "l1")[0]).toBe("l1/hot: one-2.black one-3.black l1~hot");
	});

	test("before three conductors it passes the hot on and switches the second: half a split receptacle", () => {
		const wired = circuit("  7 ft to s1: switch\n  6 ft by 12-3 to r1: receptacle split\n");
		expect(endsIn(wired, "s1").filter((line) => !/white|bare|ground/.test(line))).toEqual([
			"one-1.black on s1/hot",
			"one-2.black on s1/hot",
			"one-2.red on s1.load",
			"s1~line on s1.line",
			"s1~line on s1/hot",
		]);
		expect(endsIn(wired, "r1")).toEqual([
			"one-2.black on r1.hot.lower",
			"one-2.red on r1.hot.upper",
			"one-2.white on r1.neutral",
			"one-2.bare on r1.ground",
		]);
	});

	test("with two poles opens hot and neutral", () => {
		const wired = circuit("  7 ft to s1: switch two-pole\n  9 ft to l1: light 9 W\n");
		expect(endsIn(wired, "s1").filter((line) => !line.includes("ground"))).toEqual([
			"one-1.black on s1.line.hot",
			"one-1.white on s1.line.neutral",
			"one-2.black on s1.load.hot",
			"one-2.white on s1.load.neutral",
		]);
	});

	test("two of them in one box each keep their own switched hot", () => {
		const wired = circuit(`  7 ft to j1: box
    s1: switch
    s2: switch
  from s1
    9 ft to l1: light 9 W
  from s2
    9 ft to l2: light 9 W
`);
		const ends = endsIn(wired, "j1");
		expect(ends).toContain("one-2.black on s1.load");
		expect(ends).toContain("one-3.black on s2.load");
		expect(jointsIn(wired, "j1").find((joint) => joint.includes("one-1.black"))).toBe(
			"j1/hot: one-1.black s1~line s2~line",
		);
	});
});

describe("a ground-fault receptacle", () => {
	test("is fed on line and goes on from load", () => {
		const wired = circuit("  11 ft to g1: gfci\n   5 ft to g2: receptacle\n");
		expect(endsIn(wired, "g1")).toEqual([
			"one-1.black on g1.line.hot",
			"one-1.white on g1.line.neutral",
			"one-1.bare on g1/ground",
			"one-2.black on g1.load.hot",
			"one-2.white on g1.load.neutral",
			"one-2.bare on g1/ground",
			"g1~ground on g1.ground",
			"g1~ground on g1/ground",
		]);
	});

	test("a branch from its line side is spliced ahead of it", () => {
		const wired = circuit(
			"  11 ft to g1: gfci\n   5 ft to g2: receptacle\n  from g1.line\n    6 ft to b1: receptacle\n",
		);
		expect(jointsIn(wired, "g1").filter((joint) => !joint.startsWith("g1/ground"))).toEqual([
			"g1/hot: one-1.black one-3.black g1~line.hot",
			"g1/neutral: one-1.white one-3.white g1~line.neutral",
		]);
		expect(endsIn(wired, "g1")).toContain("one-2.black on g1.load.hot");
	});
});

describe("grounds", () => {
	test("all in a box are joined, and a metal box with them", () => {
		const wired = circuit("  14 ft to b1: receptacle, box metal\n   9 ft to b2: receptacle\n");
		expect(jointsIn(wired, "b1").at(-1)).toBe("b1/ground: one-1.bare one-2.bare b1~ground b1~case");
		expect(endsIn(wired, "b1")).toContain("b1~case on b1.case");
	});

	test("at the end of a chain a metal box makes a joint of its one ground", () => {
		const wired = circuit("  14 ft to b1: receptacle, box metal\n");
		expect(jointsIn(wired, "b1")).toEqual(["b1/ground: one-1.bare b1~ground b1~case"]);
	});

	test("no neutral is joined to any of them", () => {
		const wired = circuit("  14 ft to b1: receptacle, box metal\n   9 ft to g1: gfci\n");
		for (const point of wired.points) {
			const roles = wired.conductors
				.filter(({ ends }) => ends.some((end) => end.point === point.index))
				.map(({ role }) => role);
			expect(roles.includes("neutral") && roles.includes("ground")).toBe(false);
		}
	});
});

describe("a panel", () => {
	test("is fed on its main and bars, and gives each circuit a breaker and a port of each bar", () => {
		const wired = wireRight(`${supply}circuit one from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit two from LC breaker 15 A by 14-2
  14 ft to b2: receptacle
`);
		expect(endsIn(wired, "LC")).toEqual([
			"LC-1.black on LC.main.line",
			"LC-1.white on LC.neutral.1",
			"LC-1.bare on LC.ground.1",
			"one-1.black on LC.1.load",
			"one-1.white on LC.neutral.2",
			"one-1.bare on LC.ground.2",
			"two-1.black on LC.2.load",
			"two-1.white on LC.neutral.3",
			"two-1.bare on LC.ground.3",
		]);
		expect(endsIn(wired, "shore")).toEqual([
			"LC-1.black on shore.hot",
			"LC-1.white on shore.neutral",
			"LC-1.bare on shore.ground",
		]);
	});

	test("with lugs only is fed on its bus", () => {
		const wired = wireRight("inlet s 15 A\npanel P lugs only from s by 14-2, 4 ft\n");
		expect(endsIn(wired, "P")).toContain("P-1.black on P.bus.A");
	});

	test("a small ground bar takes two grounds in a port once all have one", () => {
		const wired = wireRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  GB: ground-bar ports 2
circuit one from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit two from LC breaker 20 A by 12-2
  14 ft to b2: receptacle
`);
		expect(endsIn(wired, "LC").filter((line) => line.includes("bare"))).toEqual([
			"LC-1.bare on GB.1",
			"one-1.bare on GB.2",
			"two-1.bare on GB.1",
		]);
	});

	test("on two legs has two hots on main and bus", () => {
		const wired = wireRight("inlet pole 50 A, 120 V / 240 V\npanel LC main 50 A, legs 2 from pole by 6-3, 20 ft\n");
		expect(endsIn(wired, "LC")).toEqual([
			"LC-1.black on LC.main.line.1",
			"LC-1.red on LC.main.line.2",
			"LC-1.white on LC.neutral.1",
			"LC-1.bare on LC.ground.1",
		]);
	});

	test("a ground-fault breaker takes the circuit's neutral, and its own tail goes to the bar", () => {
		const wired = wireRight(`${supply}  slot 1: ground-fault-breaker 20 A
circuit bath from LC.1 by 12-2
  14 ft to b1: receptacle
`);
		expect(endsIn(wired, "LC").filter((line) => line.startsWith("bath") || line.startsWith("LC.1~"))).toEqual([
			"bath-1.black on LC.1.load.hot",
			"bath-1.white on LC.1.load.neutral",
			"bath-1.bare on LC.ground.2",
			"LC.1~tail on LC.1.tail",
			"LC.1~tail on LC.neutral.2",
		]);
	});

	test("behind a panel is fed from its breaker and bars", () => {
		const wired = wireRight(`${supply}feed second from LC breaker 20 A by 12-2
  12 ft to P2: panel main 20 A
circuit one from P2 breaker 15 A by 14-2
  5 ft to b1: receptacle
`);
		expect(endsIn(wired, "P2")).toEqual([
			"second-1.black on P2.main.line",
			"second-1.white on P2.neutral.1",
			"second-1.bare on P2.ground.1",
			"one-1.black on P2.1.load",
			"one-1.white on P2.neutral.2",
			"one-1.bare on P2.ground.2",
		]);
	});
});

describe("two hots", () => {
	const legs = "inlet pole 50 A, 120 V / 240 V\npanel LC main 50 A, legs 2 from pole by 6-3, 20 ft\n";

	test("a white re-marked red at both ends is the second hot", () => {
		const wired = wireRight(`${legs}circuit heat from LC breaker 20 A two-pole by 12-2
  15 ft white marked red at both ends to h1: heater 3500 W 240 V, no neutral
`);
		expect(endsIn(wired, "h1")).toEqual([
			"heat-1.black on h1.hot",
			"heat-1.white on h1.hot2",
			"heat-1.bare on h1.ground",
		]);
		expect(endsIn(wired, "LC")).toContain("heat-1.white on LC.1.load.2");
		expect(endOf(wired, "heat-1.white", "h1")?.marked).toBe("red");
	});

	test("two circuits share the white of one cable", () => {
		const wired = wireRight(`${legs}circuit shared from LC breaker 20 A two-pole by 12-3
  14 ft to k1: receptacle split
`);
		expect(endsIn(wired, "k1")).toEqual([
			"shared-1.black on k1.hot.lower",
			"shared-1.red on k1.hot.upper",
			"shared-1.white on k1.neutral",
			"shared-1.bare on k1.ground",
		]);
	});
});

describe("sources", () => {
	test("an inverter-charger is fed on its input and feeds from its output", () => {
		const wired = wireRight(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
`);
		expect(endsIn(wired, "inv")).toEqual([
			"LC-1.black on inv.out.hot",
			"LC-1.white on inv.out.neutral",
			"LC-1.bare on inv.out.ground",
			"supply-1.black on inv.in.hot",
			"supply-1.white on inv.in.neutral",
			"supply-1.bare on inv.in.ground",
		]);
	});

	test("a cut-off end in a wall has all its cores capped", () => {
		expect(endsIn(circuit("  14 ft to e1: end\n"), "e1")).toEqual([
			"one-1.black capped",
			"one-1.white capped",
			"one-1.bare capped",
		]);
	});
});

describe("how ends are made up", () => {
	const terminationsOf = (text: string, box: string) =>
		wireRight(text).conductors.flatMap(({ name, ends }) =>
			ends.filter((end) => end.enclosure.name === box).map((end) => `${name} ${end.termination}`),
		);
	const stranded = `${supply}circuit one from LC breaker 20 A by 12-2 stranded\n  14 ft to b1: receptacle\n   9 ft to g1: gfci\n`;

	test("solid stays solid", () => {
		expect(
			terminationsOf(`${supply}circuit one from LC breaker 20 A by 12-2\n  14 ft to b1: receptacle\n`, "b1"),
		).toEqual(["one-1.black solid", "one-1.white solid", "one-1.bare solid"]);
	});

	test("strands take a fork under a screw, a ferrule in a cage, and are bare in a joint and under a plate", () => {
		expect(terminationsOf(stranded, "b1")).toContain("b1~hot fork");
		expect(terminationsOf(stranded, "b1")).toContain("one-1.black bare");
		expect(terminationsOf(stranded, "g1")).toEqual(["one-2.black bare", "one-2.white bare", "one-2.green fork"]);
		expect(terminationsOf(stranded, "LC")).toContain("one-1.black ferrule");
	});

	test("the plan's `ends` hold under screws", () => {
		expect(terminationsOf(`plan "x"\n  ends ring\n${stranded}`, "b1")).toContain("b1~hot ring");
	});
});

describe("what was inferred", () => {
	test("is marked so, end by end", () => {
		const wired = circuit("  14 ft to b1: receptacle\n   9 ft to b2: receptacle\n");
		expect(wired.conductors.flatMap(({ ends }) => ends).filter((end) => end.said)).toEqual([]);
		expect(wired.points.filter((point) => point.kind === "splice" && point.said)).toEqual([]);
	});
});
