// Parts that the builder describes: wired, checked and told like any kind, and what is told of one that cannot be.
import { describe, expect, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";
import { endsIn, jointsIn, wirePlan, wireRight } from "../circuit/wire-plan.ts";
import { readPlan, supply } from "./read-plan.ts";

const timer = `part timer "Wall timer" 15 A, switch
  1 hot line, brass screw
  2 hot load, brass screw
  N neutral
  G ground, green screw
  link 1 2 when on
  draws 2 W from 1 to N
`;

describe("a part is wired by the roles and sides of its terminals", () => {
	test("fed on its line side, it goes on from its load side, and what it lacks passes it", () => {
		const circuit = wireRight(`${timer}${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to t1: timer
  6 ft to l1: light 9 W
`);
		expect(endsIn(circuit, "t1")).toEqual(
			expect.arrayContaining(["one-1.black on t1.1", "one-2.black on t1.2", "one-1.white on t1/neutral"]),
		);
		expect(jointsIn(circuit, "t1")).toEqual([
			"t1/neutral: one-1.white one-2.white t1~N",
			"t1/ground: one-1.bare one-2.bare t1~G",
		]);
	});

	test("without sides it is fed in parallel", () => {
		const circuit = wireRight(`part sign "House number, lit" light
  L hot
  N neutral
  PE ground
  draws 3 W from L to N
${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to n1..n2: sign
`);
		expect(jointsIn(circuit, "n1")[0]).toBe("n1/hot: one-1.black one-2.black n1~L");
		expect(endsIn(circuit, "n2")).toEqual(["one-2.black on n2.L", "one-2.white on n2.N", "one-2.bare on n2.PE"]);
	});

	test("a side of any name is reached by it", () => {
		const circuit = wireRight(`part changeover
  11 hot line
  12 hot load
  14 hot on back
  link 11 12 when off
  link 11 14 when on
${supply}circuit den from LC breaker 15 A by 14-2
  9 ft to k1: changeover
  4 ft to l2: light 9 W
  from k1.back
    5 ft to l3: light 9 W
`);
		expect(endsIn(circuit, "k1")).toEqual(
			expect.arrayContaining(["den-1.black on k1.11", "den-2.black on k1.12", "den-3.black on k1.14"]),
		);
		const contacts = circuit.links.filter(({ part }) => part === "k1").map(({ contact }) => contact);
		expect(contacts).toEqual([
			{ group: "k1:state", positions: 2, closed: [0] },
			{ group: "k1:state", positions: 2, closed: [1] },
		]);
	});

	test("it stands in a box, at the left edge, and lands as built by its own names", () => {
		const circuit = wireRight(`${timer}${supply}timer t2
circuit one from LC breaker 15 A by 14-2
  9 ft to j1: box
    r1: receptacle
    t1: timer
  6 ft to t2
at t2
  one-2.black on t2.1
`);
		expect(endsIn(circuit, "t2")).toContain("one-2.black on t2.1");
		expect(circuit.partByName.get("t1")).toMatchObject({ kind: "timer", face: { text: "Wall timer" } });
	});

	test("a case of metal joins its ground terminal, and is a box of its own", () => {
		checkRight(`part kiln
  L hot
  N neutral
  PE ground
  case metal, 200 cuin
  draws 1200 W from L to N
  text "Kiln, 1200 W, hard-wired"
${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to k1: kiln
`);
		checkMarked(`part kiln
  L hot
  N neutral
  case metal
  draws 1200 W from L to N
${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to k1: kiln
//        ^^ enclosure-unbonded
`);
	});

	test("a fuse in it protects what hangs on it", () => {
		const wired = (link: string) => `part spur "Fused spur" 13 A
  in hot line
  out hot load
  link in out${link}
cable thin 14 AWG, black hot, white neutral, bare ground
${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to s1: spur
  6 ft by thin to l1: light 9 W
`;
		checkRight(wired(" fuse 5 A"));
		checkMarked(`${wired("")}//                ^^ protection-too-large\n`);
	});

	test("its switch in the neutral is seen as any other", () => {
		checkMarked(`part odd switch
  a neutral line
  b neutral load
  link a b when on
${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to s1: odd
//        ^^ switch-in-neutral
  6 ft to l1: light 9 W
`);
	});
});

describe("what cannot be is told at its place, and the rest is checked", () => {
	test.each([
		["part x\n", ["1:x part-without-terminals"]],
		["part x\n  L\n", ["2:L role-missing"]],
		["part x\n  L hto\n", ["2:hto role-missing"]],
		["part x\n  L hot\n  L neutral\n", ["3:L terminal-twice"]],
		["part x\n  L hot also M\n  M neutral\n", ["3:M terminal-twice"]],
		["part x\n  L hot furry\n", ["2:furry attribute-unknown"]],
		["part x\n  L hot screw plate\n", ["2:plate attribute-twice"]],
		["part x\n  L hot takes\n", ["2:takes quantity-missing"]],
		["part x\n  L hot takes 0\n", ["2:0 quantity-out-of-range"]],
		["part x\n  L hot 12 AWG 10 AWG 8 AWG\n", ["2:8 AWG attribute-twice"]],
		["part x\n  L hot\n  link L\n", ["3:link L quantity-missing"]],
		["part x\n  L hot\n  link L M\n", ["3:M terminal-unknown"]],
		["part x\n  L hot\n  link L L\n", ["3:link L L link-impossible"]],
		["part x\n  L hot\n  G ground\n  link L G\n", ["4:link L G link-impossible"]],
		["part x\n  L hot\n  N neutral\n  link L N when on\n", ["4:link L N when on link-impossible"]],
		["part x\n  N neutral\n  G ground\n  link N G\n", ["4:link N G link-impossible"]],
		["part x\n  L hot\n  G ground\n  draws 5 W from L to G\n", ["4:draws 5 W from L to G link-impossible"]],
		["part x\n  L hot\n  N neutral\n  draws 5 ft from L to N\n", ["4:5 ft unit-wrong"]],
		["part x\n  L hot\n  N neutral\n  draws -5 W from L to N\n", ["4:-5 W quantity-out-of-range"]],
		["part x\n  L hot\n  M hot\n  link L M when\n", ["4:when quantity-missing"]],
		["part x\n  L hot\n  M hot\n  states off on\n  link L M when up\n", ["5:up attribute-unknown"]],
		["part x\n  L hot\n  M hot\n  states off\n", ["4:states off quantity-missing"]],
		["part x\n  L hot\n  M hot\n  link L M fuse\n", ["4:fuse quantity-missing"]],
		["part x\n  L hot\n  M hot\n  link L M fuse 10 V\n", ["4:10 V unit-wrong"]],
		["part x\n  L hot\n  M hot\n  link L M fuse 0 A\n", ["4:0 A quantity-out-of-range"]],
		["part x\n  L hot\n  M hot\n  link L M fuse 5 A\n  link M L fuse 6 A\n", ["5:6 A attribute-twice"]],
		["part x\n  L hot\n  case\n", ["3:case attribute-unknown"]],
		["part x\n  L hot\n  case metal 5 A\n", ["3:5 A unit-wrong"]],
		["part x\n  L hot\n  case metal\n  case metal\n", ["4:case attribute-twice"]],
		["part x\n  L hot\n  text timer\n", ["3:timer attribute-unknown"]],
		["part x 15 A 20 A\n  L hot\n", ["1:20 A attribute-twice"]],
		["part x 0 V\n  L hot\n", ["1:0 V quantity-out-of-range"]],
		["part x 15 W\n  L hot\n", ["1:15 W unit-wrong"]],
		["part x blender\n  L hot\n", ["1:blender attribute-unknown"]],
		["part receptacle\n  L hot\n", ["1:receptacle name-twice"]],
		["part x\n  L hot\npart X\n  L hot\n", ["3:X name-twice"]],
	])("%j", (text, told) => {
		expect(readPlan(text).told).toEqual(told);
	});

	test("a part without terminals is told once, where it is described, and not where it is used", () => {
		const { told } = wirePlan(`part x\n${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to a: x
  4 ft to b: lamp 9 W
`);
		expect(told).toEqual(["1:x part-without-terminals"]);
	});

	test("a misspelt part offers the nearest", () => {
		const { findings } = readPlan(`${timer}${supply}timr t1\n`);
		expect(findings[0]?.help).toContain("`timer`");
	});

	test("own parts take what any thing takes, and no more", () => {
		checkMarked(`${timer}place hall
${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to t1: timer "Hall" in hall, box 18 cuin metal
  9 ft to t2: timer furry
//                  ^^^^^ attribute-unknown
  9 ft to t3: timer in attic
//                     ^^^^^ place-unknown
  9 ft to l1: light 9 W
`);
	});
});
