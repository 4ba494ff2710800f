// A device is no larger than the thinnest conductor behind it may have, by the tables for boats.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

describe("boats", () => {
	test("boat wire of 105 °C carries more", () => {
		checkRight(`plan "Sloop"
  rules boat
inlet dock 30 A 120 V
panel AC main 30 A two-pole 30 mA from dock by triplex 12 AWG, 4 m
circuit heater from AC breaker 30 A by triplex 14 AWG
  5 m to hw: heater 1200 W
`);
	});
	test("14 AWG boat wire carries 35 A, not 40 A", () => {
		checkMarked(`plan "Sloop"
  rules boat
inlet dock 50 A, 120 V / 240 V
panel AC main 50 A 30 mA, legs 2 from dock by 6-3, 4 m
circuit heater from AC breaker 40 A by triplex 14 AWG
  5 m to hw: heater 1200 W
//       ^^ protection-too-large "35 A at most"
`);
	});
});

describe("metric wire on boats goes by the next thinner size of the table", () => {
	test("1.5 mm2 behind 16 A", () => {
		checkRight(`plan "Narrow boat"
  region iec
  rules boat
inlet dock 16 A 230 V
panel DB main 16 A two-pole from dock by 3G2.5 stranded, 4 m
circuit s from DB ground-fault-breaker 16 A trip 30 mA by 3G1.5 stranded
  4 m to s1: socket
`);
	});
	test("1.5 mm2 behind 20 A", () => {
		checkMarked(`plan "Narrow boat"
  region iec
  rules boat
inlet dock 20 A 230 V
panel DB main 20 A two-pole from dock by 3G4 stranded, 4 m
circuit p from DB ground-fault-breaker 20 A trip 30 mA by 3G1.5 stranded
  4 m to p1: pump 500 W
//       ^^ protection-too-large "16 A at most"
`);
	});
});

describe("heat on boats", () => {
	const boat = (rating: number, cable: string, way = "") => `plan "Sloop"
  rules boat
place eng engine-space
inlet dock 50 A 120 V
panel DB main 50 A from dock by triplex 6 AWG, 12 ft
circuit bilge from DB ground-fault-breaker ${rating} A trip 30 mA by ${cable}
  14 ft${way} to p1: pump 900 W
`;
	test("35 A for 14 AWG outside an engine space, 30 A through one", () => {
		checkRight(boat(35, "triplex 14 AWG"));
		checkMarked(`${boat(35, "triplex 14 AWG", " through eng")}//                     ^^ protection-too-large "30 A at most"
`);
		checkRight(boat(30, "triplex 14 AWG", " through eng"));
	});
	test("as well where the cable ends in one", () => {
		const text = boat(35, "triplex 14 AWG").replace("900 W", "900 W in eng");
		checkMarked(`${text}//         ^^ protection-too-large "30 A at most"
`);
	});
	test("it says by what", () => {
		const [found] = checkPlan(boat(35, "triplex 14 AWG", " through eng"), "plan").findings.filter(
			({ code }) => code === "protection-too-large",
		);
		expect(found?.why).toContain("35 A at 105 °C, in an engine space 0.85 times as much, which is 29.7 A");
		expect(found?.basis).toContain("note 1");
	});
	test("three that carry current in one cable keep each other warm", () => {
		checkRight(boat(20, "14-2"));
		checkMarked(`${boat(20, "14-3")}//         ^^ protection-too-large "15 A at most"
`);
		checkRight(boat(15, "14-3"));
	});
	test("a metric boat is told that the table stands in", () => {
		const [found] = checkPlan(
			`plan "Narrow boat"
  region iec
  rules boat
inlet dock 20 A 230 V
panel DB main 20 A two-pole from dock by 3G4 stranded, 4 m
circuit p from DB ground-fault-breaker 20 A trip 30 mA by 3G1.5 stranded
  4 m to p1: pump 500 W
`,
			"plan",
		).findings.filter(({ code }) => code === "protection-too-large");
		expect(found?.why).toContain("law of the United States, which stands in for ISO 13297");
	});
});
