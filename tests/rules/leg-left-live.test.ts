// What opens one of two hots.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet pole 50 A 120/240 V\npanel LC main 50 A 120/240 V from pole by 6-3, 12 ft\n";
const marked = "white marked red at both ends";

describe("leg-left-live is told", () => {
	test("a switch in one of two hots", () => {
		checkMarked(`${supply}circuit heat from LC breaker two-pole 20 A by 12-2
  9 ft, ${marked} to s1: switch
//                                       ^^ leg-left-live "s1 opens one hot of h1 and leaves h1.hot2 live"
  9 ft, ${marked} to h1: heater 3000 W 240 V
`);
	});
	test("a disconnect with one pole", () => {
		checkMarked(`${supply}circuit heat from LC breaker two-pole 20 A by 12-2
  9 ft, ${marked} to hd: disconnect single-pole
//                                       ^^ leg-left-live
  9 ft, ${marked} to h1: heater 3000 W 240 V
`);
	});
	test("two breakers that are not tied", () => {
		checkMarked(`${supply}  slot 1: breaker 20 A
//     ^ leg-left-live "LC.1 and LC.3 open the two hots of h1 one by one"
  slot 3: breaker 20 A
circuit heat from LC.1 by 12-2
  9 ft, ${marked} to h1: heater 3000 W 240 V
at LC
  heat-1.white on LC.3.load
`);
	});
	test("before an outlet for 240 V", () => {
		checkMarked(`${supply}circuit heat from LC breaker two-pole 20 A by 12-2
  9 ft, ${marked} to s1: switch 20 A
//                                       ^^ leg-left-live "leaves r1.hot2 live"
  9 ft, ${marked} to r1: receptacle 20 A 240 V
`);
	});
});

describe("leg-left-live is not told of", () => {
	test.each([
		["a switch with two poles", "switch two-pole"],
		["a disconnect", "disconnect"],
	])("%s", (_, kind) => {
		checkRight(`${supply}circuit heat from LC breaker two-pole 20 A by 12-2
  9 ft, ${marked} to s1: ${kind}
  9 ft, ${marked} to h1: heater 3000 W 240 V
`);
	});
	test("two breakers with tied handles", () => {
		checkRight(`${supply}  slot 1: breaker 20 A
  slot 3: breaker 20 A tied LC.1
circuit heat from LC.1 by 12-2
  9 ft, ${marked} to h1: heater 3000 W 240 V
at LC
  heat-1.white on LC.3.load
`);
	});
	test("a switch in the one hot of a 120 V load", () => {
		checkRight(`${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to s1: switch
  9 ft to l1: light 9 W
`);
	});
	test("a range with a neutral", () => {
		checkRight(`${supply}circuit range from LC breaker two-pole 50 A by 6-3
  9 ft to k1: load 8000 W 120/240 V
circuit dryer from LC breaker two-pole 30 A by 10-3
  9 ft to k2: receptacle 30 A 120/240 V
`);
	});
});
