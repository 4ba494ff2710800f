// Switches, dimmers and disconnects against what is behind and ahead of them.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;

describe("against the load behind", () => {
	test("15 A carries 1800 W on 120 V", () => {
		checkRight(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to s1: switch 15 A
  9 ft to h1: heater 1800 W
`);
	});
	test("and no more", () => {
		checkMarked(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to s1: switch 15 A
//        ^^ device-undersized "s1 is rated 15 A, and h1 behind it counts 15.1 A"
  9 ft to h1: heater 1812 W
`);
	});
	test("what runs for hours counts 125 %: 1440 W are 15 A", () => {
		checkRight(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to s1: switch 15 A
  9 ft to h1: heater 1440 W continuous
`);
	});
	test("1500 W for hours are 15.6 A", () => {
		checkMarked(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to s1: switch 15 A
//        ^^ device-undersized "counts 15.6 A, with what runs for hours at 125 %"
  9 ft to h1: heater 1500 W continuous
`);
	});
	test("the sum of several, on a dimmer", () => {
		checkMarked(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to d1: dimmer 5 A
//        ^^ device-undersized "l1 and 2 more behind it count 7.5 A"
  9 ft to l1..l3: light 300 W each
`);
	});
	test("what hangs ahead of it does not count", () => {
		checkRight(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to h1: heater 1200 W
  9 ft to s1: switch 5 A
  9 ft to l1: light 600 W
`);
	});
	test("a two-pole switch of a 240 V heater carries the amperes once", () => {
		checkRight(`inlet pole 50 A 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
circuit a from LC breaker 20 A two-pole by 12-3
  9 ft to hd: disconnect 20 A 240 V
  3 ft to h1: heater 4000 W 240 V
`);
	});
	test("in IEC countries the sum as it is", () => {
		checkRight(`plan
  region iec
inlet shore 16 A 230 V
panel LC main 16 A two-pole from shore by 3G2.5, 12 m
circuit a from LC ground-fault-breaker 16 A trip 30 mA by 3G2.5
  9 m to s1: switch 10 A
  9 m to h1: heater 2200 W continuous
`);
	});
});

describe("against no more than the device ahead lets through", () => {
	const loads = `circuit a from LC breaker 20 A by 12-2
  9 ft to h1: heater 1800 W
circuit b from LC breaker 20 A by 12-2
  9 ft to h2: heater 2000 W
`;
	test("a main switch as large as the breaker before it, with more behind it than both", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A switch from shore by 10-2, 12 ft
${loads}`);
	});
	test("a smaller one is told all the same, and what would be enough", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 25 A switch from shore by 10-2, 12 ft
//    ^^ device-undersized "LC.main is rated 25 A, and h2 and 1 more behind it count 31.7 A"
${loads}`);
	});
	test("so is what runs for hours below that", () => {
		checkMarked(`${supply}circuit a from LC breaker 15 A by 14-2
//             ^^ circuit-overloaded
  9 ft to s1: switch 15 A
//        ^^ device-undersized "counts 15.6 A, with what runs for hours at 125 %"
  9 ft to h1: heater 1500 W continuous
`);
	});
});

describe("a disconnect against the device ahead", () => {
	test("of its rating", () => {
		checkRight(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to hd: disconnect 20 A
  3 ft to h1: heater 1200 W
`);
	});
	test("larger than it", () => {
		checkMarked(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to hd: disconnect 15 A
//        ^^ device-undersized "hd is rated 15 A, and LC.1 ahead of it lets 20 A through"
  3 ft to h1: heater 1200 W
`);
	});
	test("with a load that is too large besides, one finding", () => {
		checkMarked(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to hd: disconnect 15 A
//        ^^ device-undersized "h1 behind it counts 15.8 A"
  3 ft to h1: heater 1900 W
`);
	});
	test("a switch of 15 A may stand behind 20 A", () => {
		checkRight(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to s1: switch 15 A
  3 ft to h1: heater 1200 W
`);
	});
});

describe("a switch that governs an outlet", () => {
	const corner = (size: string, breaker: string): string => `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit corner from LC breaker ${breaker} by 12-2
  9 ft to s1: switch ${size}
`;
	test("of 10 A before half a receptacle of 15 A", () => {
		checkMarked(`${corner("10 A", "20 A")}//        ^^ device-undersized "what is plugged in at r1 may draw 15 A through it"
  9 ft by 12-3 to r1: receptacle split
`);
	});
	test("of 15 A before a receptacle of 20 A on 20 A", () => {
		checkMarked(`${corner("15 A", "20 A")}//        ^^ device-undersized "may draw 20 A"
  9 ft to r1: receptacle 20 A duplex
`);
	});
	test("of 10 A before a socket of 16 A", () => {
		checkMarked(`plan
  region iec
  rules building
inlet supply 16 A 230 V
panel DB main 16 A rcbo 30 mA from supply by 3G2.5, 3.5 m
circuit corner from DB breaker 16 A by 3G2.5
  3 m to s1: switch 10 A
//       ^^ device-undersized
  2 m to a1: socket
`);
	});
	test("of 15 A before half a receptacle of 15 A, on 20 A", () => {
		checkRight(`${corner("15 A", "20 A")}  9 ft by 12-3 to r1: receptacle split
`);
	});
	test("of 15 A before a receptacle of 20 A that is on 15 A", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit corner from LC breaker 15 A by 14-2
  9 ft to s1: switch 15 A
  9 ft to r1: receptacle
`);
	});
	test("of 10 A that the outlet is led past", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit corner from LC breaker 20 A by 12-2
  9 ft to s1: switch 10 A
  9 ft to l1: light 9 W
  from s1.line
    9 ft to r1: receptacle
`);
	});
});
