// A hot conductor has a device that opens for it, and branch wiring one of its own.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;

describe("no device at all", () => {
	test("a generator without a breaker", () => {
		checkMarked(`generator gen 3000 W 120 V, bonds neutral to frame, no breaker
panel LC main 25 A from gen by 10-2, 12 ft
//                 ^^^^^^^^^^^^^^^^^^^^^^^ protection-missing "No breaker of its own protects 10 AWG in LC-1"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
	test("a generator with its own", () => {
		checkRight(`generator gen 3000 W 120 V, bonds neutral to frame
panel LC main 25 A from gen by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
	test("a generator of unknown rating is not called unprotected", () => {
		checkMarked(`generator gen 120 V, bonds neutral to frame
panel LC main 25 A from gen by 10-2, 12 ft
//                 ^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "the rating of gen is missing"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
});

describe("only the device of a supply or board", () => {
	test("a circuit straight from the inlet", () => {
		checkMarked(`inlet shore 30 A 120 V
feed bunks from shore by 12-2
  14 ft to p1: pump 500 W
//         ^^ protection-missing "only the 30 A breaker of the supply behind shore"
`);
	});
	test("straight from a supply that protects it", () => {
		checkRight(`inlet shore 20 A 120 V
feed bunks from shore by 12-2
  14 ft to b1: receptacle
`);
	});
	test("a circuit's hot under the bus instead of its breaker", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to p1: pump 500 W
at LC
  bunks-1.black on LC.bus.A
//^^^^^^^^^^^^^^^^^^^^^^^^^ protection-missing "only the 30 A breaker LC.main"
`);
	});
	test("a circuit's hot on the supply's side of the main", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to p1: pump 500 W
at LC
  bunks-1.black on LC.main.line
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ protection-missing "only the 30 A breaker of the supply behind shore"
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled
`);
	});
	test("joined with the feed before the main", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to p1: pump 500 W
at LC
  join LC-1.black, bunks-1.black, LC.main.line
//                 ^^^^^^^^^^^^^ protection-missing "only the 30 A breaker of the supply behind shore"
`);
	});
	test("landed by hand on its own breaker", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  bunks-1.black on LC.1.load
`);
	});
});
