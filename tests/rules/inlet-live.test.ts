// Sources that are off and live from another.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

describe("inlet-live is told", () => {
	test("two inlets on one panel, each in its turn", () => {
		checkMarked(`inlet shore 30 A 120 V
inlet aux 30 A 120 V
//    ^^^ inlet-live "aux and shore feed the same wires: while one is on, the terminals of the other are live"
panel LC main 30 A from shore by 10-2, 12 ft
feed second from aux by 10-2
  5 ft to LC
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("a shore inlet and a generator on one input", () => {
		checkMarked(`inlet shore 30 A 120 V
generator gen 3600 W 120 V, bonds neutral to frame
//        ^^^ inlet-live "gen and shore feed the same wires: while one is on, the terminals of the other are live"
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
feed backup from gen by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
// also bond-doubled
`);
	});

	test("an inverter that stands still on the shore's panel", () => {
		checkMarked(`inlet shore 30 A 120 V
inverter inv 2000 W 12 V / 120 V, bonds neutral never
//       ^^^ inlet-live "inv and shore feed the same wires: while one is on, the terminals of the other are live"
panel LC main 30 A from shore by 10-2, 12 ft
feed backup from inv by 10-2
  5 ft to LC
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
mode camp: shore
`);
	});
});

describe("inlet-live is not told of", () => {
	test("shore behind an inverter-charger that makes its own power", () => {
		checkRight(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("an inverter-charger that moves the hot alone", () => {
		checkRight(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting, transfers hot alone
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("an inverter with a panel of its own", () => {
		checkRight(`inlet shore 30 A 120 V
inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
panel LC main 30 A from shore by 10-2, 12 ft
panel LI lugs only from inv by 12-2, 5 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit desk from LI breaker 15 A by 14-2
  5 ft to d1: receptacle
`);
	});
});
