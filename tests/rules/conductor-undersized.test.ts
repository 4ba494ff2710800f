// Fixed mains wiring has a least size, whatever protects it: 14 AWG, 16 AWG on boats, 1.5 mm2 under IEC (all recalled).
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
const van = `plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3.5 m
`;

describe("conductor-undersized is told", () => {
	test("1 mm2 behind 6 A", () => {
		checkMarked(`${van}circuit lights from DB breaker 6 A two-pole by 3G1
  2 m to l1: light 9 W
//       ^^ conductor-undersized "lights-1 is 1 mm2, and 1.5 mm2 is the least for fixed wiring"
`);
	});
	test("each cable of it", () => {
		checkMarked(`${van}circuit lights from DB breaker 6 A two-pole by 3G1.5
  2 m to l1: light 9 W
  2 m by 3G1 to l2: light 9 W
//              ^^ conductor-undersized "lights-2"
`);
	});
});

describe("conductor-undersized is not told", () => {
	test("1.5 mm2", () => {
		checkRight(`${van}circuit lights from DB breaker 6 A two-pole by 3G1.5
  2 m to l1: light 9 W
`);
	});
	test("14 AWG", () => {
		checkRight(`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
`);
	});
	test("a cord that comes with an appliance", () => {
		checkRight(`${supply}circuit lights from LC breaker 10 A by 14-2
  9 ft to d1: disconnect 20 A
  3 ft by cord 16-3 to l1: light 9 W
`);
	});
});
