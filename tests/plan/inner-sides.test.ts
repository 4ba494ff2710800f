// Sides within a side: the posts of a converter's output are named by themselves, and every side that a kind has can be written.
import { expect, test } from "vitest";
import { checkRight } from "../check-plan.ts";

test("a fuse stands on the plus of a converter's output, and the minus passes by it", () => {
	const { analysis } = checkRight(`battery bank lithium 25.6 V 100 Ah, fault 4 kA
converter step 30 A 24 V / 12 V
feed up from bank.+, bank.- by pair 8 AWG
  within 7 in to F1: fuse class-T 30 A interrupting 20 kA
  3 ft to step.in
feed down from step.out.+, step.out.- by pair 10 AWG
  bolted to F2: fuse 30 A interrupting 5 kA
  3 ft to l1: light 20 W 12 V
`);
	const { circuit } = analysis;
	const down = circuit.conductors.filter(({ cable }) => cable === "down-1");
	expect(down.map(({ ends: [from] }) => circuit.points[from.point ?? -1]?.name)).toEqual(["F2.load", "step.out.-"]);
});

test("single conductors reach each post of a solar controller", () => {
	checkRight(`solar roof 200 W, open 22 V, short 11 A
solar-controller sun 20 A 12 V, limit 50 V
battery house lithium 12.8 V 100 Ah, fault 4 kA
feed p1 from roof.+ by single 10 AWG red
  8 ft to cut: disconnect 30 A
  1 ft to sun.in.+
feed n1 from roof.- by single 10 AWG black
  9 ft to sun.in.-
feed p2 from house.+ by single 10 AWG red
  within 7 in to F1: fuse 30 A interrupting 10 kA
  3 ft to sun.out.+
feed n2 from house.- by single 10 AWG black
  3 ft to sun.out.-
`);
});
