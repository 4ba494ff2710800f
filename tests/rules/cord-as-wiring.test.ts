// Flexible cord is for what is plugged in, an appliance, or the supply; fixed wiring is cable.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;

describe("cord-as-wiring is told", () => {
	test("to an outlet", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 15 A by cord 14-3
  14 ft to b1: receptacle
//         ^^ cord-as-wiring
`);
	});
	test("from a switch to a light", () => {
		checkMarked(`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to s1: switch
  6 ft by cord 14-3 to l1: light 9 W
//                     ^^ cord-as-wiring "lights-2 (cord 14-3)"
`);
	});
});

describe("cord-as-wiring is not told", () => {
	test("of the cord from the supply", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by cord 10-3, 12 ft
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`);
	});
	test("of an appliance behind its disconnect", () => {
		checkRight(`${supply}circuit heat from LC breaker 15 A by 14-2
  9 ft to d1: disconnect 20 A
  3 ft by cord 14-3 to h1: heater 1400 W
`);
	});
});
