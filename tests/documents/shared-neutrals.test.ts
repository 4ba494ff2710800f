// What is told of neutrals that two legs share: each leg's current, and what is left in the neutral.
import { describe, expect, test } from "vitest";
import { checkPlan, showPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet pole 50 A 120/240 V\npanel LC main 50 A 120/240 V from pole by 6-3, 12 ft\n";
const shared = (left: string, right: string) => `${supply}circuit both from LC breaker two-pole 20 A by 12-3
  14 ft to j1: box
  from j1
    5 ft by 12-2 to ${left}
  from j1.second
    6 ft by 12-2 to ${right}
`;
const told = (text: string): string[] =>
	(showPlan(checkPlan(text, "plan")).text.split("shared neutrals in mode pole\n")[1] ?? "")
		.split("\n")
		.filter((line) => line !== "");

describe("neutral current by leg", () => {
	test("is the difference of the two legs, and with one off the whole of the other", () => {
		const text = shared("h1: heater 1200 W", "h2: heater 600 W");
		checkRight(text);
		expect(told(text)).toEqual([
			"  both-1.white: leg A 10 A (h1), leg B 5 A (h2); 5 A in the neutral with every fixed load on, 10 A with one leg off",
			"  pole.neutral: leg A 10 A (h1), leg B 5 A (h2); 5 A in the neutral with every fixed load on, 10 A with one leg off",
		]);
	});
	test("is nothing where both draw the same", () => {
		expect(told(shared("h1: heater 900 W", "h2: heater 900 W"))[0]).toContain("; 0 A in the neutral");
	});
	test("what is plugged in comes on top", () => {
		expect(told(shared("h1: heater 900 W", "r1: receptacle"))[0]).toBe(
			"  both-1.white: leg A 7.5 A (h1), leg B outlets (r1); 7.5 A in the neutral with every fixed load on, 7.5 A with one leg off, and what is plugged in",
		);
	});
	test("circuits of one leg each share no neutral but the supply's", () => {
		const text = `${supply}circuit a from LC.1 breaker 15 A by 14-2
  9 ft to h1: heater 1200 W
circuit b from LC.3 breaker 15 A by 14-2
  9 ft to h2: heater 240 W
`;
		expect(told(text)).toEqual([
			"  pole.neutral: leg A 10 A (h1), leg B 2 A (h2); 8 A in the neutral with every fixed load on, 10 A with one leg off",
		]);
	});
	test("nothing is told of a supply with one leg", () => {
		const text = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit a from LC breaker 15 A by 14-2
  9 ft to h1: heater 1200 W
`;
		expect(showPlan(checkPlan(text, "plan")).text).not.toContain("shared neutrals");
	});
});

describe("the second hot of a cable goes on from where it has come", () => {
	test("to a load on the other leg", () => {
		const { analysis } = checkRight(shared("h1: heater 900 W", "h2: heater 900 W"));
		const [state] = analysis.states;
		const pole = (name: string) => [...(state?.poles.rolesAt(analysis.circuit.pointByName.get(name) ?? -1) ?? [])];
		expect([pole("h1.hot"), pole("h2.hot")]).toEqual([["hot"], ["hot2"]]);
	});
	test("where none has come, what hangs on it is dead", () => {
		checkMarked(`${supply}circuit one from LC breaker 20 A by 12-2
  14 ft to j1: box
//         ^^ end-loose "h2 has no hot"
  from j1.second
    6 ft to h2: heater 600 W
`);
	});
});
