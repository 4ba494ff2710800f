// More than one bond at a time.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

describe("bond-doubled is told", () => {
	test("shore and a bonded panel", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A bonded from shore by 10-2, 12 ft
//    ^^ bond-doubled "Neutral and ground are bonded twice: at the pedestal of shore, and again by the bonding screw of LC.neutral"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("an inverter-charger bonded to its frame, only while it passes shore through", () => {
		checkMarked(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral to frame
//               ^^^ bond-doubled "Neutral and ground are bonded twice in mode shore: at the pedestal of shore, and again in inv"
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("a bonded panel doubles every source in its turn", () => {
		checkMarked(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A bonded from inv.out by 10-2, 6 ft
//    ^^ bond-doubled "Neutral and ground are bonded twice: at the pedestal of shore and in inv, and again by the bonding screw of LC.neutral"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("a panel and a second panel behind it", () => {
		checkMarked(`generator gen 3000 W 120 V
panel LC main 25 A bonded from gen by 10-2, 12 ft
  slot 1: breaker 20 A
panel LD lugs only, bonded from LC.1 by 12-2, 20 ft
//    ^^ bond-doubled "Neutral and ground are bonded twice: by the bonding screw of LC.neutral, and again by the bonding screw of LD.neutral"
circuit bunks from LD breaker 15 A by 14-2
  14 ft to b1: receptacle
`);
	});

	test("a generator that stands still, with its neutral wired in and its hot not", () => {
		checkMarked(`inlet shore 30 A 120 V
generator gen 3000 W 120 V, bonds neutral to frame
//        ^^^ bond-doubled "at the pedestal of shore, and again in gen"
panel LC main 25 A from shore by 10-2, 12 ft
feed x from gen by 10-2
  10 ft to LC
circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
mode s: shore without gen
at LC
  x-1.black capped
`);
	});
});

describe("bond-doubled is not told of", () => {
	test("the relay of an inverter-charger gives way to shore", () => {
		checkRight(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("two sources, each with its own neutral and its own bond", () => {
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

	test("a bonded panel behind a supply that floats", () => {
		checkRight(`inlet pole 30 A 120 V floating
panel LC main 30 A bonded from pole by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
});

describe("a cord that is still in", () => {
	const machine = `inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
feed output from inv.out by 10-2
  6 ft to LC
panel LC main 30 A
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;
	test("with the neutrals joined past the transfer of the machine", () => {
		checkMarked(`inlet shore 30 A 120 V
//    ^^^^^ bond-doubled "in mode inv while the cord of shore is still in: in inv, and again at the pedestal of shore"
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
feed output from inv.out by 10-2
  6 ft to LC
panel LC main 30 A
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at inv
  join supply-1.white, output-1.white, inv.in.neutral, inv.out.neutral
`);
	});
	test("with both parted by the machine", () => {
		checkRight(machine);
	});
	test("with a machine made to lead the neutral on", () => {
		checkRight(machine.replace("pass-through 30 A,", "pass-through 30 A, transfers hot alone,"));
	});
});
