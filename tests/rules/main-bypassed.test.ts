// Panels that are fed past their main.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("main-bypassed is told", () => {
	test("the feed on the bus", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.black on LC.bus.A
//^^^^^^^^^^^^^^^^^^^^^^ main-bypassed "The bus of LC is fed past LC.main: LC-1.black is on LC.bus.A"
`);
	});

	test("the feed on a branch breaker", () => {
		checkMarked(`${supply}  slot 2: breaker 30 A
circuit bunks from LC.1 breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.black on LC.2.load
//^^^^^^^^^^^^^^^^^^^^^^^ main-bypassed "The bus of LC is fed past LC.main: LC-1.black is on LC.2.load"
`);
	});

	test("a jumper beside the main, wherever the feed comes in", () => {
		const wired = `${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
`;
		checkMarked(`${wired}  link LC.bus.A, LC.main.line by 10 AWG black
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ main-bypassed "The bus of LC is fed past LC.main: LC.bus.A~LC.main.line is on LC.bus.A"
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled
`);
		checkMarked(`${wired}  join LC-1.black, LC.main.line, LC.bus.A
//                               ^^^^^^^^ main-bypassed "LC.bus.A is in a joint ahead of it"
`);
	});

	test("one of two legs", () => {
		checkMarked(`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.red on LC.bus.B
//^^^^^^^^^^^^^^^^^^^^ main-bypassed "The bus of LC is fed past LC.main: LC-1.red is on LC.bus.B"
`);
	});
});

describe("what follows from a main passed by", () => {
	test("the feed and a circuit exchanged: ratings in the wrong order are no mistake of their own", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.black on LC.1.load
//^^^^^^^^^^^^^^^^^^^^^^^ main-bypassed
  bunks-1.black on LC.main.line
// also protection-out-of-order receptacle-rating-wrong
`);
	});
});

describe("main-bypassed is not told of", () => {
	test("lugs without a main", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC lugs only from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("a feed on the main", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});

	test("a jumper from bus to bus, behind the main", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A two-pole, legs 2 from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  link LC.bus.A, LC.bus.B by 10 AWG black
`);
	});

	test("two legs on the main, either way round", () => {
		checkRight(`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.red on LC.main.line.1
  LC-1.black on LC.main.line.2
`);
	});
});
