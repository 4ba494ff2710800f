// Chargers between two banks that lead from the wrong one to the other, and banks that nothing leads back to.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkRight } from "../check-plan.ts";

/** Two banks with a charger from the first, in a place of its own, to the second. */
function banks(first: string, more = ""): string {
	return `place bonnet "Under the bonnet" engine-space
battery start ${first}
battery house lithium 12.8 V 100 Ah
dc-dc step 20 A 12 V / 12 V
feed up from start.+, start.- by pair 8 AWG
  within 12 in to F1: fuse 40 A
  9 ft to D1: disconnect 60 A
  1 ft to step.in
feed filled from house.+, house.- by pair 10 AWG
  within 12 in to F2: fuse 30 A
  2 ft to D2: disconnect 60 A
  1 ft to step.out
${more}`;
}

function turned(text: string): string {
	return text.replace("step.in", "step.IN").replace("step.out", "step.in").replace("step.IN", "step.out");
}

function told(text: string): readonly string[] {
	return checkPlan(text, "plan")
		.findings.filter(({ code }) => code === "charging-reversed")
		.map(({ title, level }) => `${level}: ${title}`);
}

const engine =
	"warning: In and out of step are exchanged: it charges start, which stands beside the engine, from the other one";

describe("a charger that fills the engine's battery from the other is told", () => {
	test.each([
		["flooded", "flooded 12 V 60 Ah in bonnet"],
		["agm", "agm 12 V 60 Ah in bonnet"],
	])("a %s one beside the engine", (_, first) => {
		expect(told(turned(banks(first)))).toEqual([engine]);
	});
	test("the positives alone exchanged", () => {
		const text = `${banks("flooded 12 V 60 Ah in bonnet")}at step
  up-3.red on step.out.+
  filled-3.red on step.in.+
`;
		expect(told(text)).toEqual([engine]);
	});
});

describe("and not", () => {
	test("the right way round", () => {
		checkRight(banks("flooded 12 V 60 Ah in bonnet"));
	});
	test("where neither stands beside the engine", () => {
		expect(told(turned(banks("flooded 12 V 60 Ah")))).toEqual([]);
	});
	test("where the one beside the engine is no battery that cranks", () => {
		expect(told(turned(banks("lithium 12.8 V 60 Ah in bonnet")))).toEqual([]);
	});
	test("where an alternator fills the other", () => {
		const alternator = `alternator alt 60 A 14 V
feed charge from house.+, house.- by pair 4 AWG
  within 7 in to F3: fuse 80 A
  4 ft to alt
`;
		expect(told(turned(banks("agm 12 V 60 Ah in bonnet", alternator)))).toEqual([]);
	});
});

describe("batteries in parallel that nothing leads back to", () => {
	const bank = (minus: string): string => `${[1, 2]
		.map(
			(number) => `battery b${number} agm 12 V 100 Ah
feed up${number} from b${number}.+ by single 4 AWG red
  within 7 in to F${number}: fuse 100 A
  1 ft to plus${number === 1 ? ": bus 250 A" : ""}
feed down${number} from b${number}.- by single 4 AWG black
  1 ft to minus${number === 1 ? ": bus 250 A" : ""}
`,
		)
		.join("")}battery start flooded 12 V 60 Ah
feed small from plus, ${minus} by pair 12 AWG
  bolted to F3: fuse 15 A
  6 ft to l1: light 6 W
`;
	const unjoined = (text: string): readonly string[] =>
		checkPlan(text, "plan").findings.flatMap(({ code, level, marks }) =>
			code === "source-unjoined" && level === "error" ? marks : [],
		);

	test("are told, though a current could go round between them", () => {
		expect(unjoined(bank("start.-"))).toContain("b1");
	});
	test("and not where their minus leads to what they feed", () => {
		expect(unjoined(bank("minus"))).toEqual([]);
	});
});
