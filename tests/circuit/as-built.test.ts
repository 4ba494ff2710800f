// Landings as built: what is said replaces the convention for that end alone, in every way a landing can be said.
import { describe, expect, test } from "vitest";
import { endOf, endsIn, jointsIn, membersOf, supply, wirePlan, wireRight } from "./wire-plan.ts";

const two = `${supply}circuit one from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
`;
const end = `${supply}circuit one from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;

describe("a landing", () => {
	test("takes one end, and leaves the others to the convention", () => {
		const wired = wireRight(`${end}at b1\n  one-1.black on b1.neutral\n`);
		expect(endsIn(wired, "b1")).toEqual([
			"one-1.black on b1.neutral",
			"one-1.white on b1.neutral",
			"one-1.bare on b1.ground",
		]);
		expect(endsIn(wired, "LC")).toContain("one-1.black on LC.1.load");
	});

	test("is marked as said, with its own place; what was inferred is not", () => {
		const wired = wireRight(`${end}at b1\n  one-1.black on b1.hot\n`);
		expect(endOf(wired, "one-1.black", "b1")).toMatchObject({ said: true, span: { line: 6, column: 3 } });
		expect(endOf(wired, "one-1.white", "b1")?.said).toBe(false);
		expect(endOf(wired, "one-1.black", "LC")?.said).toBe(false);
	});

	test("says how the end is made up", () => {
		const wired = wireRight(
			`${end.replace("12-2", "12-2 stranded")}at b1\n  one-1.black ring on b1.hot\n  one-1.white on b1.neutral\n`,
		);
		expect(endOf(wired, "one-1.black", "b1")?.termination).toBe("ring");
		expect(endOf(wired, "one-1.white", "b1")?.termination).toBe("fork");
	});

	test("takes several conductors under one terminal", () => {
		const wired = wireRight(`${two}at b1\n  one-1.black, one-2.black on b1.hot\n`);
		expect(membersOf(wired, wired.pointByName.get("b1.hot") ?? -1)).toEqual(["one-1.black", "one-2.black"]);
		expect(jointsIn(wired, "b1").map((joint) => joint.split(":")[0])).toEqual(["b1/neutral", "b1/ground"]);
	});

	test.each(["b1.brass", "b1.hot"])("%s is the same screw", (screw) => {
		expect(endsIn(wireRight(`${end}at b1\n  one-1.black on ${screw}\n`), "b1")[0]).toBe("one-1.black on b1.hot");
	});

	test("green is read for the bare one, capitals do not matter in names", () => {
		expect(endsIn(wireRight(`${end}at B1\n  ONE-1.green on B1.ground\n`), "b1")[2]).toBe("one-1.bare on b1.ground");
	});

	test("of two ends in one box is told apart by the thing it is at", () => {
		const { circuit, told } = wirePlan(`${end}at b1\n  one-1@b1.black on b1.hot\n  one-1@LC.white on b1.neutral\n`);
		expect(endOf(circuit, "one-1.black", "b1")?.said).toBe(true);
		expect(told).toEqual(["7:one-1@LC.white core-unknown"]);
	});

	test("of a cable that meets a box twice is told apart by the things, or by the sides of the one thing", () => {
		const ring = `${supply}circuit one from LC breaker 20 A by 12-2
  14 ft to j1: box
    r1: receptacle
    g1: gfci 20 A
  from r1
    1 ft to g1
at j1
  one-2@g1.black loose
  one-2@r1.white loose
`;
		const ends = endsIn(wireRight(ring), "j1").filter((line) => /one-2[.](black|white)/.test(line));
		expect(ends).toEqual([
			"one-2.black on j1/hot",
			"one-2.black loose",
			"one-2.white loose",
			"one-2.white on j1/neutral",
		]);
		const round = `${supply}inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A
feed round from inv.out by 10-2
  3 ft to inv.in
at inv
  round-1@inv.in.white capped
`;
		expect(endsIn(wireRight(round), "inv").slice(2, 4)).toEqual([
			"round-1.white on inv.out.neutral",
			"round-1.white capped",
		]);
	});

	test("of a device's own lead", () => {
		const wired = wireRight(
			`${supply}circuit one from LC ground-fault-breaker 20 A by 12-2\n  9 ft to b1: receptacle\nat LC\n  LC.1.tail on LC.neutral.7\n`,
		);
		expect(endsIn(wired, "LC")).toContain("LC.1~tail on LC.neutral.7");
		expect(
			endsIn(
				wireRight(`${supply}circuit one from LC ground-fault-breaker 20 A by 12-2
  9 ft to b1: receptacle
at LC
  LC.1.tail.white loose
`),
				"LC",
			),
		).toContain("LC.1~tail loose");
	});

	test("in a panel lands on its breakers, main, bus and bars", () => {
		const wired = wireRight(
			`${end}at LC\n  one-1.black on LC.main.line\n  one-1.white on LC.neutral\n  one-1.bare on LC.ground.7\n`,
		);
		expect(endsIn(wired, "LC").slice(-3)).toEqual([
			"one-1.black on LC.main.line",
			"one-1.white on LC.neutral.1",
			"one-1.bare on LC.ground.7",
		]);
	});

	test("on the metal of a box", () => {
		const wired = wireRight(
			`${end.replace("receptacle", "receptacle, box metal")}at b1\n  one-1.bare ring on b1.case\n`,
		);
		expect(endsIn(wired, "b1")).toContain("one-1.bare on b1.case");
	});

	test("on a bar named as a whole takes the next port with room, on a port that port", () => {
		const wired = wireRight(`${two}circuit two from LC breaker 20 A by 12-2
  4 ft to b3: receptacle
at LC
  one-1.white on LC.neutral
  two-1.white on LC.neutral
  LC-1.white on LC.neutral.1
`);
		expect(endsIn(wired, "LC").filter((line) => line.includes("white"))).toEqual([
			"LC-1.white on LC.neutral.1",
			"one-1.white on LC.neutral.1",
			"two-1.white on LC.neutral.2",
		]);
	});

	test("the first core of a colour may be said so; a second one that is not there is a finding", () => {
		expect(endsIn(wireRight(`${end}at b1\n  one-1.black(1) on b1.hot\n`), "b1")[0]).toBe("one-1.black on b1.hot");
		expect(wirePlan(`${end}at b1\n  one-1.black(2) on b1.hot\n`).told).toEqual(["6:one-1.black(2) core-unknown"]);
	});
});

describe("what is joined by hand", () => {
	test("is one splice, with a pigtail to each terminal among its members", () => {
		const wired = wireRight(`${two}at b1\n  join one-1.black, one-2.black, b1.hot by lever 3\n`);
		expect(jointsIn(wired, "b1")[0]).toBe("b1/hot: one-1.black one-2.black b1~hot");
		expect(wired.points.find((point) => point.name === "b1/hot")).toMatchObject({
			connector: "lever",
			ports: 3,
			said: true,
		});
		expect(endsIn(wired, "b1")).toContain("b1~hot on b1.hot");
	});

	test("without a connector takes the plan's usual one", () => {
		const wired = wireRight(`plan "x"\n  joints push-in 4\n${two}at b1\n  join one-1.black, one-2.black\n`);
		expect(wired.points.find((point) => point.kind === "splice" && point.said)).toMatchObject({
			connector: "push-in",
			ports: 4,
		});
	});

	test("says how the ends of its members are made up", () => {
		const wired = wireRight(
			`${two.replace("12-2", "12-2 stranded")}at b1\n  join one-1.black ferrule, one-2.black, b1.hot ring\n`,
		);
		expect(endOf(wired, "one-1.black", "b1")?.termination).toBe("ferrule");
		expect(endOf(wired, "one-2.black", "b1")?.termination).toBe("bare");
		expect(endOf(wired, "b1~hot", "b1")?.termination).toBe("ring");
		expect(endOf(wired, "b1~ground", "b1")?.termination).toBe("fork");
	});

	test("with brackets shares a port", () => {
		const wired = wireRight(`${two}at b1\n  join (one-1.black one-2.black), b1.hot\n`);
		expect(wired.points.find((point) => point.kind === "splice" && point.said)).toMatchObject({ ports: 2 });
		expect(jointsIn(wired, "b1")[0]).toBe("b1/hot: one-1.black one-2.black b1~hot");
	});

	test("of other roles is wired as said", () => {
		const wired = wireRight(`${two}at b1\n  join one-1.black, one-2.white\n`);
		expect(jointsIn(wired, "b1").some((joint) => joint.endsWith(": one-1.black one-2.white"))).toBe(true);
	});

	test("terminals alone are joined by pigtails of what comes into the box", () => {
		const wired = wireRight(`${supply}circuit one from LC breaker 20 A by 12-2
  14 ft to j1: box
    r1: receptacle
    r2: receptacle
at j1
  join r1.hot, r2.hot
`);
		expect(jointsIn(wired, "j1").some((joint) => joint.endsWith(": r1~hot r2~hot"))).toBe(true);
	});
});

describe("a jumper", () => {
	test("joins two terminals by a conductor of its own", () => {
		const wired = wireRight(`${supply}circuit one from LC breaker 20 A by 12-2
  14 ft to j1: box
    r1: receptacle
    r2: receptacle
at j1
  link r1.hot, r2.hot by single 12 AWG black
`);
		const jumper = wired.conductors.find((conductor) => conductor.name === "r1.hot~r2.hot");
		expect(jumper?.ends.map((found) => wired.points[found.point ?? -1]?.name)).toEqual(["r1.hot", "r2.hot"]);
		expect([jumper?.colour, jumper?.gauge.label, jumper?.ends[0].said]).toEqual(["black", "12", true]);
	});

	test("in a row joins each to the next", () => {
		const wired = wireRight(`${supply}circuit one from LC breaker 20 A by 12-2
  14 ft to j1: box
    r1: receptacle
    r2: receptacle
    r3: receptacle
at j1
  link r1.hot, r2.hot, r3.hot by single 12 AWG black
`);
		expect(
			wired.conductors.map((conductor) => conductor.name).filter((name) => name.includes("~") && name.includes(".")),
		).toEqual(expect.arrayContaining(["r1.hot~r2.hot", "r2.hot~r3.hot"]));
	});
});

describe("ends that go nowhere", () => {
	test("loose and capped", () => {
		const wired = wireRight(`${end}at b1\n  one-1.black loose\n  one-1.white capped\n`);
		expect(endsIn(wired, "b1")).toEqual(["one-1.black loose", "one-1.white capped", "one-1.bare on b1.ground"]);
		expect(endOf(wired, "one-1.black", "b1")).toMatchObject({ said: true });
	});
});

describe("what cannot be landed", () => {
	test.each([
		["a conductor that does not come in", "  one-9.black on b1.hot\n", "6:one-9.black core-unknown"],
		["a colour the cable does not have", "  one-1.red on b1.hot\n", "6:one-1.red core-unknown"],
		["a cable without a colour", "  one-1 on b1.hot\n", "6:one-1 core-unknown"],
		["a terminal the device does not have", "  one-1.black on b1.hott\n", "6:b1.hott terminal-unknown"],
		["a terminal in another box", "  one-1.black on LC.main.line\n", "6:LC.main.line terminal-unknown"],
		["a device as a whole", "  one-1.black on b1\n", "6:b1 terminal-unknown"],
		["a word for no end", "  one-1.black knotted on b1.hot\n", "6:knotted attribute-unknown"],
		["a connector that is none", "  join one-1.black, b1.hot by glue 3\n", "6:glue attribute-unknown"],
		[
			"a jumper of several conductors",
			"  link b1.hot, b1.neutral by 12-2\n",
			"6:link b1.hot, b1.neutral by 12-2 cable-unknown",
		],
	])("%s", (_, lines, told) => {
		expect(wirePlan(`${end}at b1\n${lines}`).told).toEqual([told]);
	});

	test("a misspelt one offers the nearest, and changes nothing", () => {
		const { circuit, findings } = wirePlan(`${end}at b1\n  one-1.blak on b1.hot\n`);
		expect(findings[0]?.help).toContain("Did you mean `one-1.black`");
		expect(endsIn(circuit, "b1")[0]).toBe("one-1.black on b1.hot");
		expect(endOf(circuit, "one-1.black", "b1")?.said).toBe(false);
	});

	test.each([
		["on two terminals", "  one-1.black on b1.hot\n  one-1.black on b1.neutral\n"],
		["on a terminal and in a joint", "  one-1.black on b1.hot\n  join one-1.black, b1.neutral\n"],
		["on a terminal and loose", "  one-1.black on b1.hot\n  one-1.black loose\n"],
	])("one end %s: the first holds", (_, lines) => {
		const { circuit, told } = wirePlan(`${end}at b1\n${lines}`);
		expect(told).toEqual(["7:one-1.black landed-twice"]);
		expect(endsIn(circuit, "b1")[0]).toBe("one-1.black on b1.hot");
	});

	test("a box that is not there hides nothing of the others", () => {
		const { circuit, told } = wirePlan(`${end}at b9\n  one-1.black loose\nat b1\n  one-1.white loose\n`);
		expect(told).toEqual(["5:b9 name-unknown"]);
		expect(endsIn(circuit, "b1")[1]).toBe("one-1.white loose");
	});
});

describe("what is left to the convention beside it", () => {
	test("a pair landed by hand on a ground-fault receptacle leaves its ground joined", () => {
		const wired = wireRight(`${supply}circuit one from LC breaker 20 A by 12-2
  11 ft to g1: gfci
   5 ft to g2: receptacle
at g1
  one-1.black on g1.load.hot
  one-1.white on g1.load.neutral
  one-2.black on g1.line.hot
  one-2.white on g1.line.neutral
`);
		expect(endsIn(wired, "g1").slice(0, 6)).toEqual([
			"one-1.black on g1.load.hot",
			"one-1.white on g1.load.neutral",
			"one-1.bare on g1/ground",
			"one-2.black on g1.line.hot",
			"one-2.white on g1.line.neutral",
			"one-2.bare on g1/ground",
		]);
	});

	test("one of two hots landed by hand: the other still reaches the device", () => {
		const wired = wireRight(`${two}at b1\n  one-1.black on b1.hot\n`);
		const hot = wired.pointByName.get("b1.hot") ?? -1;
		expect(membersOf(wired, hot)).toContain("one-1.black");
		const second = endOf(wired, "one-2.black", "b1");
		expect(second?.state).toBe("landed");
	});
});
