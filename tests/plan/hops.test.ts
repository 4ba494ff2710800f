// Chains: every hop is one cable from where the chain stands to the thing it arrives at.
import { describe, expect, test } from "vitest";
import { readPlan, runOf, supply, tellHop } from "./read-plan.ts";

/** The hops of the circuit `one`, told line by line, and what was found. */
function follow(
	lines: string,
	head = "circuit one from LC breaker 20 A by 12-2",
): { hops: string[]; told: readonly string[] } {
	const { plan, told } = readPlan(`${supply}${head}\n${lines}`);
	return { hops: runOf(plan, "one")?.hops.map(tellHop) ?? [], told };
}

describe("a chain", () => {
	test("goes on from where it arrived", () => {
		expect(follow("  14 ft to b1: receptacle\n   9 ft to b2: receptacle\n")).toEqual({
			hops: ["one-1: LC.1 -> b1 by 12-2 14 ft", "one-2: b1 -> b2 by 12-2 9 ft"],
			told: [],
		});
	});

	test("goes by another cable from a hop on", () => {
		expect(follow("  14 ft to b1: receptacle\n  9 ft by 14-2 to b2: light\n  5 ft to b3: light\n").hops).toEqual([
			"one-1: LC.1 -> b1 by 12-2 14 ft",
			"one-2: b1 -> b2 by 14-2 9 ft",
			"one-3: b2 -> b3 by 14-2 5 ft",
		]);
	});

	test("has lengths in sums and other units", () => {
		const { plan } = readPlan(`${supply}circuit one from LC breaker 20 A by 12-2
  4 ft 6 in to b1: receptacle
  2.5 m to b2: receptacle
  ? to b3: receptacle
  to b4: receptacle
`);
		const lengths = runOf(plan, "one")?.hops.map((hop) => hop.length?.value);
		expect(lengths?.map((length) => (length === undefined ? undefined : Number(length.toFixed(4))))).toEqual([
			1.3716,
			2.5,
			undefined,
			undefined,
		]);
	});

	test("arrives at a thing that is declared elsewhere", () => {
		const { plan, told } = readPlan(`box j1\n${supply}circuit one from LC breaker 20 A by 12-2\n  4 ft to j1\n`);
		expect(told).toEqual([]);
		expect(runOf(plan, "one")?.hops.map(tellHop)).toEqual(["one-1: LC.1 -> j1 by 12-2 4 ft"]);
	});

	test("`via` is a hop without a length of its own", () => {
		expect(follow("  via s1: switch\n  4 ft to l1: light\n").hops).toEqual([
			"one-1: LC.1 -> s1 by 12-2",
			"one-2: s1 -> l1 by 12-2 4 ft",
		]);
	});

	test("says by every hop where its head says no cable", () => {
		const { hops, told } = follow(
			"  4 ft by 14-2 to l1: light\n  3 ft to l2: light\n",
			"circuit one from LC breaker 15 A",
		);
		expect(told).toEqual([]);
		expect(hops).toEqual(["one-1: LC.1 -> l1 by 14-2 4 ft", "one-2: l1 -> l2 by 14-2 3 ft"]);
	});

	test("may be roughed in", () => {
		const { plan, told } = readPlan(
			`${supply}circuit one roughed in from LC breaker 20 A by 12-2\n  4 ft as later to e1: end\n`,
		);
		expect([told, runOf(plan, "one")?.roughedIn, runOf(plan, "one")?.protection]).toEqual([[], true, "LC.1"]);
	});
});

describe("branches", () => {
	const branched = `  4 ft to j1: box
  from j1
    3 ft to b1: receptacle
    2 ft to b2: receptacle
  from j1 by 14-2
    6 ft to b3: light
`;

	test("start where they say, by the chain's cable or their own", () => {
		expect(follow(branched)).toEqual({
			hops: [
				"one-1: LC.1 -> j1 by 12-2 4 ft",
				"one-2: j1 -> b1 by 12-2 3 ft",
				"one-3: b1 -> b2 by 12-2 2 ft",
				"one-4: j1 -> b3 by 14-2 6 ft",
			],
			told: [],
		});
	});

	test("leave from a side", () => {
		expect(
			follow(
				"  4 ft to g1: gfci\n  from g1.line\n    3 ft to b1: receptacle\n  from g1.load\n    3 ft to b2: receptacle\n",
			).hops,
		).toEqual([
			"one-1: LC.1 -> g1 by 12-2 4 ft",
			"one-2: g1>line -> b1 by 12-2 3 ft",
			"one-3: g1>load -> b2 by 12-2 3 ft",
		]);
	});

	test("a chain goes on after a branch from where it stood", () => {
		expect(
			follow("  4 ft to b1: receptacle\n  from b1\n    3 ft to b2: receptacle\n  5 ft to b3: receptacle\n").hops.at(-1),
		).toBe("one-3: b1 -> b3 by 12-2 5 ft");
	});
});

describe("tags", () => {
	test("are the run's name and a running number, or what is said", () => {
		expect(
			follow("  4 ft as den to b1: receptacle\n  4 ft to b2: receptacle\n").hops.map((hop) => hop.split(":")[0]),
		).toEqual(["den", "one-2"]);
	});

	test("one tag twice", () => {
		expect(follow("  4 ft as den to b1: receptacle\n  4 ft as DEN to b2: receptacle\n").told).toEqual([
			"5:DEN tag-twice",
		]);
	});

	test("a row of them for a row of things", () => {
		const { hops, told } = follow("  4 ft as a-1..a-3 to l1..l3: light 2 W each\n");
		expect([hops.map((hop) => hop.split(":")[0]), told]).toEqual([["a-1", "a-2", "a-3"], []]);
	});

	test("more or fewer of them than cables", () => {
		expect(follow("  4 ft as a-1..a-3 to l1..l2: light 2 W each\n").told).toEqual(["4:a-1..a-3 tags-too-many"]);
		expect(follow("  4 ft as a-1..a-2 to l1..l3: light 2 W each\n").told).toEqual(["4:a-1 tag-twice"]);
	});

	test("a tag that an automatic one has", () => {
		expect(follow("  4 ft to b1: receptacle\n  4 ft as one-1 to b2: receptacle\n").told).toEqual(["5:one-1 tag-twice"]);
	});
});

describe("rows of names", () => {
	test("are one hop each, one behind the other", () => {
		expect(follow("  9 ft to l1..l3: light 2 W each\n")).toEqual({
			hops: ["one-1: LC.1 -> l1 by 12-2 9 ft", "one-2: l1 -> l2 by 12-2 9 ft", "one-3: l2 -> l3 by 12-2 9 ft"],
			told: [],
		});
	});

	const wattsOf = (words: string): (number | undefined)[] =>
		readPlan(`${supply}circuit one from LC breaker 20 A by 12-2\n  9 ft to l1..l3: light ${words}\n`)
			.plan.things.filter((thing) => thing.kind.name === "light")
			.map((thing) => thing.blueprint.loads?.[0]?.watts);

	test("`each` and `together` say whose the figure is", () => {
		expect(wattsOf("6 W each")).toEqual([6, 6, 6]);
		expect(wattsOf("6 W together")).toEqual([2, 2, 2]);
	});

	test("a figure without either is one finding", () => {
		expect(follow("  9 ft to l1..l3: light 6 W\n").told).toEqual(["4:light quantity-missing"]);
	});

	test("no figure, no question", () => {
		expect(follow("  9 ft to b1..b3: receptacle\n").told).toEqual([]);
	});

	test("a long row is whole", () => {
		expect(follow("  9 ft to l1..l999: light\n").hops.length).toBe(999);
	});

	test.each(["l9..l1", "l1..m3", "l1..l1001"])("%s is no row", (row) => {
		expect(follow(`  9 ft to ${row}: light\n`).told).toEqual([`4:${row} row-unclear`]);
	});
});

describe("boxes with several devices", () => {
	const text = `${supply}circuit one from LC breaker 20 A by 12-2
  4 ft to j1: box 34 cuin metal "Corner"
    r1: receptacle "Left half"
    s1: switch
  from s1
    6 ft to l1: light
`;

	test("hold them, and a chain goes on from the box or from one of them", () => {
		const { plan, told } = readPlan(text);
		expect(told).toEqual([]);
		expect(plan.things.filter((thing) => thing.owner === "j1").map((thing) => [thing.name, thing.label])).toEqual([
			["r1", "Left half"],
			["s1", "s1"],
		]);
		expect(runOf(plan, "one")?.hops.map(tellHop)).toEqual([
			"one-1: LC.1 -> j1 by 12-2 4 ft",
			"one-2: s1 -> l1 by 12-2 6 ft",
		]);
		expect(plan.thingByName.get("j1")?.box).toMatchObject({ metal: true, volume: { written: 34, unit: "cuin" } });
	});

	test("a device is where its box is", () => {
		const { plan } = readPlan(`place porch outdoor\n${text.replace('"Corner"', "in porch")}`);
		expect(plan.thingByName.get("r1")?.place?.name).toBe("porch");
	});

	test("a panel in a box", () => {
		expect(readPlan("box j1\n  p1: panel main 30 A\n").told).toEqual(["2:panel kind-misplaced"]);
	});

	test("`box 18 cuin` among the attributes of a device states its box", () => {
		const { plan, told } = readPlan(
			`${supply}circuit one from LC breaker 20 A by 12-2\n  4 ft to r1: receptacle, box 18 cuin metal\n`,
		);
		expect(told).toEqual([]);
		expect(plan.thingByName.get("r1")?.box).toMatchObject({ metal: true, volume: { written: 18, unit: "cuin" } });
	});
});

describe("a supply at the end of a declaration", () => {
	test("is a feed of one hop, named after the thing", () => {
		const { plan } = readPlan(supply);
		expect(plan.runs.map((run) => [run.name, run.sort, ...run.hops.map(tellHop)])).toEqual([
			["LC", "feed", "LC-1: shore -> LC by 10-2 12 ft"],
		]);
	});

	test("may come from a side", () => {
		const { plan } = readPlan("inverter-charger inv 2000 W\npanel LC main 30 A from inv.out by 10-2, 3 ft\n");
		expect(plan.runs[0]?.hops.map(tellHop)).toEqual(["LC-1: inv>out -> LC by 10-2 3 ft"]);
	});

	test("without a cable", () => {
		expect(
			readPlan("inlet shore 30 A\npanel LC main 30 A from shore\n").told.map((line) => line.split(" ").at(-1)),
		).toEqual(["cable-missing"]);
	});
});

describe("what is wrong with hops", () => {
	test.each([
		["a run that goes nowhere", "", "3:one cable-goes-nowhere"],
		["a length no cable has", "  9000 ft to b1: receptacle\n", "4:9000 ft quantity-out-of-range"],
		["a place that is not declared", "  9 ft through attic to b1: receptacle\n", "4:attic place-unknown"],
		["a word that says nothing of a cable", "  9 ft bundeled 3 to b1: receptacle\n", "4:bundeled 3 attribute-unknown"],
		["a bundle without its number", "  9 ft bundled to b1: receptacle\n", "4:bundled quantity-missing"],
		["a bundle of one", "  9 ft bundled 1 to b1: receptacle\n", "4:1 quantity-missing"],
		["a bundle in feet", "  9 ft bundled 3 ft to b1: receptacle\n", "4:3 ft quantity-missing"],
		["what is bolted on", "  bolted to b1: receptacle\n", "4:b1 stud-missing"],
		[
			"a mark on a core that is not there",
			"  9 ft purple marked red at both ends to b1: receptacle\n",
			"4:purple core-unknown",
		],
		["a mark at neither end", "  9 ft white marked red at j9 to b1: receptacle\n", "4:j9 name-unknown"],
	])("%s", (_, lines, told) => {
		expect(follow(lines).told).toContain(told);
	});

	test("a bundle is kept with its hop", () => {
		const { plan } = readPlan(
			`${supply}circuit one from LC breaker 20 A by 12-2\n  9 ft bundled 3 to b1: receptacle\n  9 ft to b2: receptacle\n`,
		);
		expect(runOf(plan, "one")?.hops.map(({ bundled }) => bundled)).toEqual([3, undefined]);
	});

	test.each([
		["it says its own", "  from b1 by 12-2\n    3 ft to b3: receptacle\n", []],
		["each of its hops does", "  from b1\n    3 ft by 12-2 to b3: receptacle\n", []],
		["it was reached by the same", "  from b2\n    3 ft to b3: receptacle\n", []],
		["nothing is said", "  from b1\n    3 ft to b3: receptacle\n", ["6:from b1 cable-carried-over"]],
	])("a branch takes the last cable, which is told, but not where %s", (_, branch, told) => {
		const lines = `  9 ft to b1: receptacle\n  9 ft by 12-3 to b2: receptacle\n${branch}`;
		expect(follow(lines).told).toEqual(told);
	});

	test("a run without a cable", () => {
		expect(follow("  4 ft to b1: receptacle\n", "circuit one from LC breaker 20 A").told).toEqual([
			"3:one cable-missing",
		]);
	});

	test("a further pole that is not there", () => {
		expect(follow("  4 ft to b1: receptacle\n", "circuit one from LC, shoer breaker 20 A by 12-2").told).toEqual([
			"3:shoer name-unknown",
		]);
	});

	test("a broken hop hides nothing of the others", () => {
		const { hops } = follow("  4 ft to b1: receptacle\n  4 ft to b2: receptacel\n  4 ft to b3: receptacle\n");
		expect(hops).toContain("one-1: LC.1 -> b1 by 12-2 4 ft");
	});

	test("one mistake in a row of things is told once", () => {
		expect(follow("  9000 ft to l1..l6: light\n").told).toEqual(["4:9000 ft quantity-out-of-range"]);
	});
});

describe("marks on cores", () => {
	const marksOf = (words: string) =>
		runOf(
			readPlan(`${supply}circuit one from LC breaker 20 A by 12-2\n  9 ft ${words} to b1: receptacle\n`).plan,
			"one",
		)?.hops[0]?.markings;

	test("at both ends, or at one by the thing there or what that sits in", () => {
		expect(marksOf("white marked red at both ends")).toEqual([{ core: "white", colour: "red" }]);
		expect(marksOf("white marked red at b1")).toEqual([{ core: "white", colour: "red", at: "b1" }]);
		expect(marksOf("white marked red at LC")).toEqual([{ core: "white", colour: "red", at: "LC.1" }]);
	});
});

describe("where a cable runs", () => {
	test("through a place, all of it or a part", () => {
		const { plan } = readPlan(`place bay 45 C\n${supply}circuit one from LC breaker 20 A by 12-2
  9 ft, 2 ft through bay, to b1: receptacle
  9 ft through bay to b2: receptacle
`);
		expect(
			runOf(plan, "one")?.hops.map((hop) => hop.through.map(({ place, length }) => [place.name, length?.written])),
		).toEqual([[["bay", 2]], [["bay", 9]]]);
	});
});
