// Joint connectors: ports, current and sizes, for the whole plan, for one joint, and for a joint that stands by itself.
import { describe, expect, test } from "vitest";
import { checkPlan, showPlan } from "../../src/pipeline.ts";
import { checkRight } from "../check-plan.ts";
import { endsIn, jointsIn, wireRight } from "../circuit/wire-plan.ts";
import { readPlan, supply } from "./read-plan.ts";

const two = `${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft to b1: receptacle\n  9 ft to b2: receptacle\n`;

/** The joints of a box as their connectors: `lever 3 of 32 A`. */
function makesIn(text: string, box: string): string[] {
	return wireRight(text).points.flatMap((point) =>
		point.kind === "splice" && point.enclosure.name === box
			? [`${point.connector} ${point.ports}${point.rating === undefined ? "" : ` of ${point.rating} A`}`]
			: [],
	);
}

describe("the connector of a plan and of one joint", () => {
	test("what the plan says holds for every joint, with spare ports", () => {
		const text = `plan\n  joints lever 5, 32 A, 24 AWG to 12 AWG\n${two}`;
		expect(makesIn(text, "b1")).toEqual(Array(3).fill("lever 5 of 32 A"));
		expect(showPlan(checkPlan(text, "plan")).text).toContain(
			"b1/hot: lever connector, 32 A, 24 AWG to 12 AWG, 5 ports, 2 free:",
		);
	});

	test("a joint of the same sort is the same connector, of another sort it is not", () => {
		const built = (connector: string) =>
			`plan\n  joints lever 3, 32 A\n${two}at b1\n  join one-1.black, one-2.black, b1.hot by ${connector}\n`;
		expect(makesIn(built("lever 5"), "b1")[0]).toBe("lever 5 of 32 A");
		expect(makesIn(built("push-in 4"), "b1")[0]).toBe("push-in 4");
		expect(makesIn(built("push-in 4, 24 A"), "b1")[0]).toBe("push-in 4 of 24 A");
	});

	test.each([
		["joints", "2:joints setting-wrong"],
		["joints glue", "2:glue attribute-unknown"],
		["joints lever 1", "2:1 quantity-out-of-range"],
		["joints lever 3 5", "2:5 attribute-twice"],
		["joints lever 3, 10 V", "2:10 V unit-wrong"],
		["joints lever 3, 0 A", "2:0 A quantity-out-of-range"],
		["joints lever 3, 10 A, 20 A", "2:20 A attribute-twice"],
		["joints lever push-in", "2:push-in attribute-twice"],
		["joints lever 24 AWG to 12 AWG 10 AWG", "2:10 AWG attribute-twice"],
	])("%s", (line, told) => {
		expect(readPlan(`plan\n  ${line}\n${supply}`).told).toEqual([told]);
	});
});

describe("a joint without a box", () => {
	test("joins direct current, and branches off", () => {
		const { analysis } = checkRight(`battery house lithium 12.8 V 100 Ah
feed lamps from house.+, house.- by pair 14 AWG
  6 in to F1: fuse 10 A
  9 ft to s1: splice crimp, ports 3
  6 ft to l1: light 5 W
  from s1
    6 ft to l2: light 5 W
`);
		expect(jointsIn(analysis.circuit, "s1").map((joint) => joint.split(" ").length)).toEqual([4, 4]);
	});
});

describe("ends of cables", () => {
	const ended = (words: string) => `${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft to e1: end${words}\n`;

	test("capped, and coiled up for later", () => {
		const circuit = wireRight(ended(" coiled 6 ft"));
		expect(endsIn(circuit, "e1")).toEqual(["one-1.black capped", "one-1.white capped", "one-1.bare capped"]);
		expect(circuit.conductors.find(({ name }) => name === "one-1.black")?.length).toBeCloseTo(15 * 0.3048);
		expect(circuit.partByName.get("e1")?.face.text).toBe("cable end, capped, 6 ft coiled");
	});

	test.each(["loose", "cut off"])("%s: bare and live", (state) => {
		const { findings, analysis } = checkPlan(ended(` ${state}`), "plan");
		expect(endsIn(analysis.circuit, "e1")).toContain("one-1.black loose");
		expect(findings.filter(({ level }) => level === "danger").map(({ title }) => title)).toEqual([
			"one-1.black is on nothing in e1, and live",
		]);
	});

	test("no state that is none", () => {
		expect(readPlan(ended(" frayed")).told).toEqual(["4:frayed attribute-unknown"]);
	});
});

test("cables of several circuits pass one box by themselves, and share its grounds", () => {
	const circuit = wireRight(`${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to j1: box metal, clamps inside
  9 ft to b1: receptacle
circuit two from LC breaker 20 A by 12-2
  9 ft to j1
  9 ft to b2: receptacle
`);
	expect(jointsIn(circuit, "j1").map((joint) => joint.split(": ")[1])).toEqual([
		"one-1.bare one-2.bare two-1.bare two-2.bare j1~case",
		"one-1.black one-2.black",
		"one-1.white one-2.white",
		"two-1.black two-2.black",
		"two-1.white two-2.white",
	]);
});
