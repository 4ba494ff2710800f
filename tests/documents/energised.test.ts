// What is told to be energised in each mode: on the direct-current side a battery is live whatever the mode says.
import { expect, test } from "vitest";
import { checkPlan, showPlan } from "../../src/pipeline.ts";

const plan = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
battery house lithium 12.8 V 100 Ah, fault 4 kA
feed small from house.+, house.- by pair 10 AWG
  within 7 in to F1: fuse 30 A interrupting 10 kA
  3 ft to l1: light 6 W
mode parked: shore
mode stored: shore without house
mode away: house
`;

test("behind a battery all is energised until the battery itself is taken out", () => {
	const modes = showPlan(checkPlan(plan, "van.ferrule"))
		.text.split("\n")
		.filter((line) => /^ {2}mode |energised|dead/.test(line));
	expect(modes).toMatchInlineSnapshot(`
		[
		  "  mode parked: shore and house are live",
		  "    energised: shore, LC, house, b1, F1, l1",
		  "  mode stored: shore is live",
		  "    energised: shore, LC, house, b1",
		  "    dead: F1, l1",
		  "  mode away: house is live",
		  "    energised: house, F1, l1",
		  "    dead: shore, LC, b1",
		]
	`);
});
