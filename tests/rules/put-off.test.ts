// What a transfer switch parts from its supply in a mode is off on purpose, also where the neutrals stay joined.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkRight } from "../check-plan.ts";

const house = `inlet shore 30 A 120 V
generator gen 3600 W 120 V, floating
panel MP main 30 A from shore by 10-2, 12 ft
transfer-switch TS 30 A single-pole centre off
feed normal from MP breaker 20 A by 12-2
  4 ft to TS.1
feed backup from gen by 10-2
  8 ft to TS.2
panel CP main 20 A from TS by 10-2, 6 ft
circuit always from CP breaker 15 A by 14-2
  14 ft to b1: receptacle
circuit rest from MP breaker 15 A by 14-2
  14 ft to c1: receptacle
mode day: shore
mode storm: gen TS at gen
mode parted: shore TS at off
`;

describe("what a transfer parts", () => {
	test("is no break", () => {
		checkRight(house);
	});

	test.each([
		["before it", "at TS\n  normal-1.black loose\n"],
		["behind it", "at TS\n  CP-1.black loose\n"],
	])("a wire that is off %s is one all the same", (_, landing) => {
		const found = checkPlan(house + landing, "plan").findings.filter(({ code }) => code === "end-loose");
		expect(found.map(({ title }) => title).join("\n")).toContain("b1");
	});
});
