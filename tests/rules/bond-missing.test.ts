// Sources whose neutral is joined to ground nowhere.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("bond-missing is told", () => {
	test("a generator of which nothing is said", () => {
		checkMarked(`generator gen 3000 W 120 V
//        ^^^ bond-missing "The neutral of gen is joined to ground nowhere"
panel LC main 25 A from gen by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("an inverter-charger without a relay, only while it makes its own power", () => {
		checkMarked(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A
//               ^^^ bond-missing "The neutral of inv is joined to ground nowhere"
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("an inverter that floats on purpose ahead of a ground-fault receptacle", () => {
		checkMarked(`inverter inv 2000 W 12 V / 120 V, bonds neutral never
//       ^^^ bond-missing "The neutral of inv floats, so g1 cannot sense a ground fault"
panel LC lugs only from inv by 12-2, 5 ft
circuit desk from LC breaker 15 A by 14-2
  5 ft to g1: gfci
`);
	});
});

describe("bond-missing is not told of", () => {
	test("a generator bonded to its frame", () => {
		checkRight(`generator gen 3000 W 120 V, bonds neutral to frame
panel LC main 25 A from gen by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("an inverter that floats on purpose ahead of an outlet of its own", () => {
		checkRight(`inverter inv 300 W 12 V / 120 V, bonds neutral never
circuit desk from inv by 14-2
  3 ft to d1: receptacle
`);
	});

	test("a floating generator behind which the panel is bonded", () => {
		checkRight(`generator gen 3000 W 120 V, floating
panel LC main 25 A bonded from gen by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("shore, whose pedestal bonds", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
});
