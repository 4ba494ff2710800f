// Two sources for alternating current never feed the same wires at one time.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const board = `panel LC main 30 A from shore by 10-2, 12 ft
`;
const branch = `circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;

describe("sources-paralleled is told", () => {
	test("an inverter on the panel that shore feeds", () => {
		checkMarked(`inlet shore 30 A 120 V
inverter inv 2000 W 12 V / 120 V, bonds neutral never
${board}feed backup from inv by 10-2
  5 ft to LC
//        ^^ sources-paralleled "inv and shore are joined in LC"
${branch}mode both: shore, inv
`);
	});
	test("two inverters on one panel", () => {
		checkMarked(`inverter one 2000 W 12 V / 120 V, bonds neutral when inverting
inverter two 2000 W 12 V / 120 V, bonds neutral never
panel LC main 15 A from one by 12-2, 12 ft
feed second from two by 12-2
  6 ft to LC
//        ^^ sources-paralleled
circuit lights from LC breaker 15 A by 14-2
  14 ft to l1: light 9 W
`);
	});
	test("a generator behind a breaker of the board", () => {
		checkMarked(`inlet shore 30 A 120 V
generator gen 3600 W 120 V
${board}  slot 6: breaker 30 A held down
feed second from gen by 10-2
  9 ft to LC.6
//        ^^^^ sources-paralleled
${branch}mode both: shore, gen
`);
	});
});

describe("sources-paralleled is not told", () => {
	const behind = (mode: string): string => `inlet shore 30 A 120 V
generator gen 3600 W 120 V, bonds neutral to frame
transfer-switch TS 30 A two-pole
feed line from shore by 10-2
  12 ft to TS.1
feed backup from gen by 10-2
  8 ft to TS.2
panel LC main 30 A from TS by 10-2, 6 ft
${branch}${mode}`;
	test("behind a transfer switch, with one on", () => {
		checkRight(behind(""));
	});
	test("nor with both on", () => {
		checkRight(behind("mode both: shore, gen TS at gen\n"));
	});
	test("of an inverter-charger that passes shore power through", () => {
		checkRight(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
${branch}mode both: shore, inv
`);
	});
});
