// What reaches a load against what it is made for.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const one = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
const two = `inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
`;
const iec = `plan
  region iec
inlet shore 16 A 230 V
panel LC main 16 A two-pole from shore by 3G2.5, 12 m
`;

describe("no voltage between two hots of one pole", () => {
	test("a two-pole breaker on a bus of one leg", () => {
		checkMarked(`${one}circuit a from LC breaker 20 A two-pole by 12-3
  9 ft to h1: heater 1500 W 240 V
//        ^^ load-voltage-wrong "0 V: shore has one hot leg only"
`);
	});
	test("the same by joining the second hot to the first", () => {
		checkMarked(`${one}circuit a from LC breaker 20 A by 12-3
  9 ft to h1: heater 1500 W 240 V
//        ^^ load-voltage-wrong "0 V"
at LC
  join a-1.black, a-1.red, LC.1.load
`);
	});
	test("the second hot capped, for there is no second leg", () => {
		checkMarked(`${one}circuit a from LC breaker 20 A by 12-3
  9 ft to h1: heater 1500 W 240 V
//        ^^ load-voltage-wrong "0 V"
// also end-loose
`);
	});
	test("both hots on one leg of two", () => {
		checkMarked(`${two}circuit a from LC breaker 20 A by 12-3
  9 ft to h1: heater 1500 W 240 V
//        ^^ load-voltage-wrong "0 V: both its hots are on one leg"
at LC
  join a-1.black, a-1.red, LC.1.load
`);
	});
});

describe("too much and too little", () => {
	test("120 V on 230 V", () => {
		checkMarked(`${iec}circuit a from LC ground-fault-breaker 16 A trip 30 mA by 3G2.5
  9 m to h1: heater 1500 W 120 V
//       ^^ load-voltage-wrong "is made for 120 V and gets 230 V"
`);
	});
	test("110 V on 120 V is within what supplies vary by", () => {
		checkRight(`${one}circuit a from LC breaker 20 A by 12-2
  9 ft to h1: heater 1500 W 110 V
`);
	});
	test("100 V on 120 V is not", () => {
		checkMarked(`${one}circuit a from LC breaker 20 A by 12-2
  9 ft to h1: heater 1000 W 100 V
//        ^^ load-voltage-wrong "is made for 100 V and gets 120 V"
`);
	});
	test("140 V on 120 V is too little", () => {
		checkMarked(`${one}circuit a from LC breaker 20 A by 12-2
  9 ft to h1: heater 1000 W 140 V
//        ^^ load-voltage-wrong "is made for 140 V and gets 120 V"
`);
	});
	test("130 V on 120 V is within", () => {
		checkRight(`${one}circuit a from LC breaker 20 A by 12-2
  9 ft to h1: heater 1000 W 130 V
`);
	});
});

describe("right", () => {
	test("240 V between two legs, 120 V on each", () => {
		checkRight(`${two}circuit a from LC breaker 20 A two-pole by 12-3
  9 ft to h1: heater 1500 W 240 V
circuit b from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
circuit c from LC breaker 15 A by 14-2
  9 ft to l2: light 9 W
`);
	});
	test("220 V on 230 V", () => {
		checkRight(`${iec}circuit a from LC ground-fault-breaker 16 A trip 30 mA by 3G2.5
  9 m to h1: heater 1500 W 220 V
`);
	});
	test("what is to be done, done: a 120 V model", () => {
		checkRight(`${one}circuit a from LC breaker 20 A by 12-2
  9 ft to h1: heater 1500 W 120 V
`);
	});
});

describe("an outlet for two hots", () => {
	const weld = `circuit weld from LC breaker two-pole 20 A by 12-2
  9 ft, white marked red at both ends to w1: receptacle 20 A 240 V
`;
	test("where the supply has one", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit weld from LC breaker two-pole 20 A by 12-2
  9 ft, white marked red at both ends to w1: receptacle 20 A 240 V
//                                       ^^ load-voltage-wrong "w1 is made for 240 V and gets 0 V: shore has one hot leg only"
`);
	});
	test("where both its hots are on one leg", () => {
		checkMarked(`inlet pole 50 A 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
  slot 1: breaker 20 A
  slot 5: breaker 20 A tied LC.1
circuit weld from LC.1, LC.5 by 12-2
  9 ft, white marked red at both ends to w1: receptacle 20 A 240 V
//                                       ^^ load-voltage-wrong "both its hots are on one leg"
`);
	});
	test("between two legs", () => {
		checkRight(`inlet pole 50 A 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
${weld}`);
	});
});
