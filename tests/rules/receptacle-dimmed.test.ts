// Receptacles behind dimmers.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;

describe("behind a dimmer", () => {
	test("on a branch", () => {
		checkMarked(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to d1: dimmer
  9 ft to l1: light 5 W
  from d1
    4 ft to r1: receptacle
//          ^^ receptacle-dimmed "r1 is fed through the dimmer d1"
`);
	});
	test("further on, behind a switch", () => {
		checkMarked(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to d1: dimmer
  9 ft to s1: switch
  4 ft to r1: receptacle
//        ^^ receptacle-dimmed
`);
	});
	test("by a wire landed on the dimmed screw", () => {
		checkMarked(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to d1: dimmer
  4 ft to l1: light 5 W
  from d1.line
    4 ft to r1: receptacle
//          ^^ receptacle-dimmed
at d1
  a-1.black on d1.line
  join a-2.black, a-3.black, d1.load
`);
	});
	test("each of several", () => {
		checkMarked(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to d1: dimmer
  4 ft to r1: receptacle
//        ^^ receptacle-dimmed
  4 ft to r2: receptacle
//        ^^ receptacle-dimmed
`);
	});
});

describe("not behind it", () => {
	test("what is to be done, done: from its line side", () => {
		checkRight(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to d1: dimmer
  9 ft to l1: light 5 W
  from d1.line
    4 ft to r1: receptacle
`);
	});
	test("a receptacle ahead of the dimmer", () => {
		checkRight(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to r1: receptacle
  4 ft to d1: dimmer
  9 ft to l1: light 5 W
`);
	});
	test("a receptacle behind a switch", () => {
		checkRight(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to s1: switch
  4 ft to r1: receptacle
`);
	});
});
