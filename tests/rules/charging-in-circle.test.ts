// A charger never hangs on the inverter that its own battery feeds.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const bank = `battery house lithium 12.8 V 100 Ah, fault 3 kA
feed power from house.+, house.- by pair 2 AWG
  within 7 in to F1: fuse class-T 125 A interrupting 20 kA
  2 ft to inv.+
`;
const filled = (battery: string): string => `feed filled from ${battery}.+, ${battery}.- by pair 10 AWG
  within 7 in to F2: fuse 30 A interrupting 10 kA
  3 ft to ch.+
`;

describe("charging-in-circle is told", () => {
	test("of a charger on the inverter's own circuit", () => {
		checkMarked(`inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
${bank}circuit desk from inv.out by 12-2
  3 ft to ch: charger 20 A 12 V
//        ^^ charging-in-circle "ch charges the battery that inv feeds it from"
${filled("house")}`);
	});
	test("of one on the board that an inverter-charger feeds", () => {
		checkMarked(`inlet shore 30 A 120 V
inverter-charger inv 1000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 4 ft
${bank}circuit charge from LC breaker 15 A by 14-2
  3 ft to ch: charger 20 A 12 V
//        ^^ charging-in-circle
${filled("house")}`);
	});
});

describe("charging-in-circle is not told", () => {
	test("of a charger for another battery", () => {
		checkRight(`inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
${bank}circuit desk from inv.out by 12-2
  3 ft to ch: charger 20 A 12 V
battery engine flooded 12 V 80 Ah, fault 2 kA
${filled("engine")}`);
	});
	test("of a charger that shore alone feeds", () => {
		checkRight(`inlet shore 30 A 120 V
panel SB main 30 A from shore by 10-2, 12 ft
inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
${bank}circuit desk from inv.out by 12-2
  3 ft to r1: receptacle
circuit charge from SB breaker 15 A by 14-2
  3 ft to ch: charger 20 A 12 V
${filled("house")}`);
	});
});
