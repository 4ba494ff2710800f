// Places that ask for ground-fault protection.
import { describe, expect, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("ground-fault-missing is told", () => {
	test("outdoors", () => {
		checkMarked(`place porch outdoor
${supply}circuit porch from LC breaker 20 A by 12-2
  14 ft to p1: receptacle in porch
//         ^^ ground-fault-missing "p1 is outdoors (porch) and has no ground-fault protection"
`);
	});

	test("exactly six feet from a basin", () => {
		checkMarked(`place galley sink 6 ft
${supply}circuit galley from LC breaker 20 A by 12-2
  5 ft to g1: receptacle in galley
//        ^^ ground-fault-missing "g1 is within 6 ft of a basin (galley) and has no ground-fault protection"
`);
	});

	test("in a bath, a receptacle and a light over it", () => {
		checkMarked(`place bath bath
${supply}circuit bath from LC breaker 15 A by 14-2
  5 ft to n1: receptacle in bath
//        ^^ ground-fault-missing "n1 is by a bath (bath) and has no ground-fault protection"
  5 ft to n2: light 9 W in bath
//        ^^ ground-fault-missing "n2 is over a bath (bath) and has no ground-fault protection"
`);
	});

	test("ahead of the device instead of behind it", () => {
		checkMarked(`place galley sink 3 ft
${supply}circuit galley from LC breaker 20 A by 12-2
  5 ft to g1: receptacle in galley
//        ^^ ground-fault-missing "g1 is within 6 ft of a basin (galley) and has no ground-fault protection"
  5 ft to g2: gfci in galley
`);
	});

	test("on LINE of the device instead of on LOAD", () => {
		checkMarked(`place galley sink 3 ft
${supply}circuit galley from LC breaker 20 A by 12-2
  5 ft to g1: gfci in galley
  5 ft to g2: receptacle in galley
//        ^^ ground-fault-missing "g2 is within 6 ft of a basin (galley) and has no ground-fault protection"
at g1
  galley-1.black, galley-2.black on g1.line.hot
  galley-1.white, galley-2.white on g1.line.neutral
`);
	});

	test("behind a device that opens too late", () => {
		checkMarked(`place porch outdoor
${supply}circuit porch from LC ground-fault-breaker 20 A trip 30 mA by 12-2
  14 ft to p1: receptacle in porch
//         ^^ ground-fault-missing "p1 is outdoors (porch), and LC.1 ahead of it opens only at 30 mA"
`);
	});

	test("a device the wrong way round protects nothing", () => {
		checkMarked(`place porch outdoor
${supply}circuit porch from LC breaker 20 A by 12-2
  5 ft to g1: gfci
  14 ft to p1: receptacle in porch
at g1
  porch-1.black on g1.load.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^ line-load-reversed
  porch-1.white on g1.load.neutral
  porch-2.black on g1.line.hot
  porch-2.white on g1.line.neutral
// also ground-fault-missing
`);
	});

	test("a damp place in a building", () => {
		checkMarked(`plan "p"
  rules building
place cellar damp
${supply}circuit cellar from LC breaker 20 A by 12-2
  14 ft to p1: receptacle in cellar
//         ^^ ground-fault-missing "p1 is in a place that is damp (cellar) and has no ground-fault protection"
`);
	});

	test("every circuit of a caravan", () => {
		checkMarked(`plan "p"
  region iec
inlet shore 16 A 230 V
//    ^^^^^ ground-fault-missing "Nothing on shore opens at 30 mA of leakage or less before a1"
panel DB main 16 A two-pole from shore by 3G2.5, 4 m
circuit a from DB breaker 10 A two-pole by 3G1.5
  3 m to a1: socket
`);
	});

	test("a caravan's device that opens above 30 mA", () => {
		checkMarked(`plan "p"
  region iec
inlet shore 16 A 230 V
//    ^^^^^ ground-fault-missing "Nothing on shore opens at 30 mA of leakage or less before a1"
panel DB main 16 A two-pole from shore by 3G2.5, 4 m
circuit a from DB ground-fault-breaker 10 A trip 31 mA by 3G1.5
  3 m to a1: socket
`);
	});
});

describe("ground-fault-missing is not told of", () => {
	test("an inch more than six feet from a basin", () => {
		checkRight(`place galley sink 6 ft 1 in
${supply}circuit galley from LC breaker 20 A by 12-2
  5 ft to g1: receptacle in galley
`);
	});

	test("behind a ground-fault receptacle, and the receptacle itself", () => {
		checkRight(`place galley sink 3 ft
place porch outdoor
${supply}circuit galley from LC breaker 20 A by 12-2
  5 ft to g1: gfci in galley
  5 ft to p1: receptacle in porch
`);
	});

	test("behind a ground-fault breaker of 5 mA", () => {
		checkRight(`place porch outdoor
${supply}circuit porch from LC ground-fault-breaker 20 A trip 5 mA by 12-2
  14 ft to p1: receptacle in porch
`);
	});

	test("a light outdoors", () => {
		checkRight(`place porch outdoor
${supply}circuit porch from LC breaker 15 A by 14-2
  14 ft to p1: light 9 W in porch
`);
	});

	test("a caravan behind 30 mA", () => {
		checkRight(`plan "p"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A two-pole from shore by 3G2.5, 4 m
circuit a from DB ground-fault-breaker 10 A trip 30 mA by 3G1.5
  3 m to a1: socket
`);
	});

	test("a damp place in a camper", () => {
		checkRight(`place locker damp
${supply}circuit locker from LC breaker 20 A by 12-2
  14 ft to p1: receptacle in locker
`);
	});
});

describe("a whole supply without a device", () => {
	const van = `plan "p"
  region iec
inlet shore 16 A 230 V
//    ^^^^^ ground-fault-missing "before a1, b1, c1 and d1"
panel DB main 16 A two-pole from shore by 3G2.5, 4 m
${["a", "b", "c", "d"].map((run) => `circuit ${run} from DB breaker 10 A two-pole by 3G1.5\n  3 m to ${run}1: socket\n`).join("")}`;
	test("four circuits are one finding, put right by one device ahead of the panel", () => {
		const [found] = checkMarked(van).findings.filter(({ level }) => level === "error");
		expect(found?.help).toContain("`main 16 A rcbo 30 mA`");
		expect(found?.help).toContain("`to R1: rcd 25 A 30 mA`");
		const right = van.replace(/\/\/.*\n/, "");
		checkRight(right.replace("main 16 A two-pole", "main 16 A rcbo 30 mA"));
		checkRight(
			right.replace(
				"main 16 A two-pole from shore by 3G2.5, 4 m",
				`main 16 A two-pole
feed entry from shore by 3G2.5
  1 m to R1: rcd 25 A 30 mA
  3 m to DB`,
			),
		);
	});
	test("a device that opens late protects no person", () => {
		checkMarked(van.replace("main 16 A two-pole", "main 16 A rcbo 30 mA selective"));
	});
});

describe("lights over a bath", () => {
	const bath = (head: string, device: string, cable: string): string => `plan "p"
${head}place bath bath
inlet shore 16 A ${head.includes("iec") ? 230 : 120} V
panel DB main 16 A from shore by ${cable}, 4 m
circuit a from DB ${device} by ${cable}
  3 m to l1: light 9 W in bath
`;
	const iec = "  region iec\n  rules building\n";
	test("by IEC in a building, with help for a light", () => {
		const [found] = checkMarked(`${bath(iec, "breaker 10 A", "3G2.5")}//       ^^ ground-fault-missing "over a bath"
`).findings.filter(({ code }) => code === "ground-fault-missing");
		expect(found?.help).toMatch(/^Feed l1 from the LOAD side/);
		expect(found?.help).toContain("recalled from memory");
		checkRight(bath(iec, "ground-fault-breaker 10 A trip 30 mA", "3G2.5"));
	});
	test("not in a building in the United States", () => {
		checkRight(bath("  rules building\n", "breaker 15 A", "12-2"));
	});
});

describe("shore power of a boat in North America", () => {
	const boat = `plan
  rules boat
`;
	test("with a plain main", () => {
		checkMarked(`${boat}inlet dock 30 A 120 V
//    ^^^^ ground-fault-missing "Nothing on dock opens at 30 mA of leakage or less before hw"
panel AC main 30 A from dock by triplex 10 AWG, 2 m
circuit heater from AC breaker 20 A by triplex 12 AWG
  5 m to hw: heater 1200 W
`);
	});
	test("with a main that opens too late", () => {
		checkMarked(`${boat}inlet dock 30 A 120 V
//    ^^^^ ground-fault-missing
panel AC main 30 A two-pole 100 mA from dock by triplex 10 AWG, 2 m
circuit heater from AC breaker 20 A by triplex 12 AWG
  5 m to hw: heater 1200 W
`);
	});
	test("with one circuit past what watches the other", () => {
		checkMarked(`${boat}inlet dock 30 A 120 V
//    ^^^^ ground-fault-missing "before hw"
panel AC main 30 A from dock by triplex 10 AWG, 2 m
circuit heater from AC breaker 20 A by triplex 12 AWG
  5 m to hw: heater 1200 W
circuit charger from AC ground-fault-breaker 15 A trip 30 mA by triplex 14 AWG
  2 m to ch: load 600 W
`);
	});
	test("with a main that watches", () => {
		checkRight(`${boat}inlet dock 30 A 120 V
panel AC main 30 A two-pole 30 mA from dock by triplex 10 AWG, 2 m
circuit heater from AC breaker 20 A by triplex 12 AWG
  5 m to hw: heater 1200 W
`);
	});
	test("with every circuit watched", () => {
		checkRight(`${boat}inlet dock 30 A 120 V
panel AC main 30 A from dock by triplex 10 AWG, 2 m
circuit heater from AC ground-fault-breaker 20 A trip 30 mA by triplex 12 AWG
  5 m to hw: heater 1200 W
`);
	});
	test("not from a generator on board", () => {
		checkRight(`${boat}generator gen 3600 W 120 V, bonds neutral to frame
panel AC main 30 A from gen by triplex 10 AWG, 2 m
circuit heater from AC breaker 20 A by triplex 12 AWG
  5 m to hw: heater 1200 W
`);
	});
});
