// Heat around a cable and company in it take from what it carries, and so from the device it may have.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;

describe("house cable, from its insulation of 90 °C", () => {
	test("12 AWG at 45 °C still carries 20 A: 30 A times 0.87 is 26 A", () => {
		checkRight(`place bay 45 C
${supply}circuit pump from LC breaker 20 A by 12-2
  9 ft to p1: pump 900 W in bay
`);
	});
	test("6 AWG at 45 °C keeps the 60 A device, at 70 °C not", () => {
		const feed = (celsius: number): string => `place bay ${celsius} C
inlet pole 60 A 120/240 V
`;
		checkRight(`${feed(45)}panel LC main 60 A 120/240 V in bay from pole by 6-3, 20 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
		// 75 A times 0.71 is 53.2 A, and the next standard rating 60 A; at 70 °C 0.58 leaves 43.5 A, and so 45 A.
		checkMarked(`${feed(70)}panel LC main 60 A 120/240 V in bay from pole by 6-3, 20 ft
//                                  ^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "45 A at most"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
	test("10 AWG in a plan at 65 °C: 40 A times 0.65 is 26 A, and 30 A the next standard rating", () => {
		checkRight(`plan "Desert"
  ambient 65 C
${supply}circuit bunks from LC breaker 15 A by 12-2
  14 ft to b1: receptacle
`);
	});
	test("14 AWG at 75 °C: 25 A times 0.5 is 12.5 A, and 15 A the next standard rating", () => {
		checkRight(`place bay 75 C
${supply}circuit bunks from LC breaker 15 A by 14-2
  14 ft to l1: light 9 W in bay
`);
	});
	test("14 AWG at 80 °C: 25 A times 0.41 is 10.2 A, and 15 A still the next standard rating", () => {
		checkRight(`place bay 80 C
${supply}circuit bunks from LC breaker 15 A by 14-2
  14 ft to l1: light 9 W in bay
`);
	});
	test("12 AWG at 80 °C: 30 A times 0.41 is 12.3 A, and 15 A the next standard rating", () => {
		checkMarked(`place bay 80 C
${supply}circuit pump from LC breaker 20 A by 12-2
  9 ft to p1: pump 900 W in bay
//        ^^ protection-too-large "15 A at most"
`);
	});
	test("hotter than any insulation of the table", () => {
		checkMarked(`place bay 90 C
${supply}circuit pump from LC breaker 20 A by 12-2
  9 ft to p1: pump 900 W in bay
//        ^^ protection-too-large "0 A at most"
`);
	});
});

describe("insulation that was said", () => {
	test("12 AWG at 75 °C in 40 °C carries 22 A (published example, read)", () => {
		checkRight(`place bay 40 C
${supply}circuit pump from LC breaker 20 A by 12-2 75 C
  9 ft to p1: pump 900 W in bay
`);
	});
	test("12 AWG at 60 °C in 45 °C carries 14.2 A", () => {
		checkMarked(`place bay 45 C
${supply}circuit pump from LC breaker 20 A by 12-2 60 C
  9 ft to p1: pump 900 W in bay
//        ^^ protection-too-large "15 A at most"
`);
	});
});

describe("where on its way it is hot", () => {
	test("only where it is led through", () => {
		checkMarked(`place flue 80 C
${supply}circuit pump from LC breaker 20 A by 12-2
  9 ft, 1 ft through flue to p1: pump 900 W
//                           ^^ protection-too-large "15 A at most"
`);
	});
	test("a hot place elsewhere is nothing to it", () => {
		checkRight(`place flue 80 C
${supply}circuit pump from LC breaker 20 A by 12-2
  9 ft to p1: pump 900 W
circuit lamp from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W in flue
`);
	});
});

describe("more than three conductors that carry current in a cable", () => {
	test("14-4 still may have 15 A: 25 A times 0.8 is 20 A", () => {
		checkRight(`${supply}circuit stairs from LC breaker 15 A by 14-2
  10 ft to s1: switch three-way
  14 ft by 14-4 to s2: switch three-way
   6 ft by 14-2 to l1: light 9 W
`);
	});
});

describe("cord", () => {
	test("10 AWG at 35 °C carries 27 A", () => {
		checkMarked(`plan "Desert"
  ambient 35 C
inlet shore 30 A 120 V
panel LC main 30 A from shore by cord 10-3, 12 ft
//                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ protection-too-large "27.3 A at most"
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`);
	});
});

describe("IEC", () => {
	const van = (celsius: number): string => `plan "Van"
  region iec
  ambient ${celsius} C
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3 m
`;
	test("1.5 mm2 at 40 °C carries 19.5 A times 0.87, on a wall", () => {
		checkRight(`${van(40)}circuit a from DB breaker 16 A two-pole by 3G1.5
  3 m to r1: socket
`);
	});
	test("and at 45 °C times 0.79", () => {
		checkMarked(`${van(45)}circuit a from DB breaker 16 A two-pole by 3G1.5
  3 m to r1: socket
//       ^^ protection-too-large "15.4 A at most"
`);
	});
});

describe("on boats", () => {
	test("10 AWG of 105 °C in an engine space carries 51 A (published example, read), less what its cable takes", () => {
		checkRight(`plan "Launch"
  rules boat
place engine-room engine-space
inlet dock 30 A 120 V
panel AC main 30 A two-pole 30 mA in engine-room from dock by triplex 10 AWG, 8 ft
circuit lamp from AC breaker 15 A by triplex 14 AWG
  6 ft to l1: light 9 W
`);
	});
	test("14 AWG in an engine space", () => {
		checkMarked(`plan "Launch"
  rules boat
place bilge 50 C
inlet dock 50 A 120 V
panel AC main 50 A two-pole 30 mA from dock by triplex 6 AWG, 8 ft
circuit pump from AC breaker 50 A by triplex 14 AWG
  6 ft to p1: pump 900 W in bilge
//        ^^ protection-too-large
`);
	});
});
