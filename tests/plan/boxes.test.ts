// What is said of the box around a thing and of its terminals: taken up, told in the account, refused where it cannot be.
import { describe, expect, test } from "vitest";
import { checkPlan, showPlan } from "../../src/pipeline.ts";
import { checkMarked } from "../check-plan.ts";
import { wireRight } from "../circuit/wire-plan.ts";
import { readPlan, supply } from "./read-plan.ts";

const one = (words: string) => `${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft to x: ${words}\n`;

describe("a box", () => {
	test.each([
		["box metal, gangs 2, clamps inside, cover blank", { gangs: 2, clamps: "inside", cover: "blank" }],
		["box clamps outside, no cover, partition", { clamps: "outside", cover: "none", partition: true }],
		[
			"receptacle, box gangs 1, no clamps, cover weatherproof, no partition",
			{ gangs: 1, clamps: "none", cover: "weatherproof", partition: false },
		],
		["light 9 W", undefined],
	])("%s", (words, fittings) => {
		expect(wireRight(one(words)).enclosureByName.get("x")?.fittings).toEqual(fittings);
	});

	test("is told as it is said", () => {
		const { text } = showPlan(checkPlan(one("box metal, gangs 2, clamps inside, cover blank, partition"), "plan"));
		expect(text).toContain("x: box, metal, 2 gangs, clamps inside, blank cover, a partition\n");
	});

	test("at the left edge and with devices in it", () => {
		const circuit = wireRight(`${supply}box j1 gangs 2
  r1: receptacle
  r2: receptacle
circuit one from LC breaker 15 A by 14-2
  9 ft to j1
`);
		expect(circuit.enclosureByName.get("j1")?.fittings).toEqual({ gangs: 2 });
	});
});

describe("terminals as they are", () => {
	const clampsOf = (words: string) => {
		const circuit = wireRight(one(words));
		return circuit.points.flatMap((point) =>
			point.kind === "terminal" && point.part === "x" ? [`${point.terminal} ${point.clamp} ${point.capacity}`] : [],
		);
	};

	test.each([
		["receptacle", ["hot screw 2", "neutral screw 2", "ground screw 1"]],
		["receptacle terminals plate", ["hot plate 2", "neutral plate 2", "ground plate 2"]],
		["light 9 W terminals port", ["hot port 1", "neutral port 1", "ground port 1"]],
		["heater 900 W terminals stud", ["hot stud 4", "neutral stud 4", "ground stud 4"]],
		["switch terminals cage", ["line cage 1", "load cage 1", "ground cage 1"]],
	])("%s", (words, clamps) => {
		expect(clampsOf(words)).toEqual(clamps);
	});

	test("bare strands under a plate are held, under a plain screw they creep out", () => {
		const built = (terminals: string) => `${supply}circuit one from LC breaker 15 A by 14-2 stranded
  9 ft to x: light 9 W${terminals}
at x
  one-1.black bare on x.hot
`;
		expect(checkPlan(built(" terminals plate"), "plan").findings.map(({ code }) => code)).not.toContain(
			"strands-unterminated",
		);
		expect(checkPlan(built(""), "plan").findings.map(({ code }) => code)).toContain("strands-unterminated");
	});
});

describe("what cannot be is told at its place", () => {
	test.each([
		["box gangs", ["4:gangs quantity-missing"]],
		["box gangs two", ["4:two attribute-unknown", "4:two quantity-missing"]],
		["box gangs 0", ["4:0 quantity-out-of-range"]],
		["box gangs 2 gangs 3", ["4:gangs attribute-twice"]],
		["box gangs 2 A", ["4:2 A quantity-missing"]],
		["box clamps", ["4:clamps attribute-unknown"]],
		["box clamps insde", ["4:insde attribute-unknown"]],
		["box cover glass", ["4:glass attribute-unknown"]],
		["box cover blank, no cover", ["4:cover attribute-twice"]],
		["box partition, no partition", ["4:partition attribute-twice"]],
		["light 9 W terminals glue", ["4:glue attribute-unknown"]],
		["light 9 W terminals port, terminals cage", ["4:terminals attribute-twice"]],
		["light 9 W no furniture", ["4:furniture attribute-unknown"]],
	])("%s", (words, told) => {
		expect(readPlan(one(words)).told.toSorted()).toEqual(told);
	});

	test("of a thing that has no box of its own", () => {
		checkMarked(`inlet shore 30 A 120 V gangs 2
//                     ^^^^^ attribute-unknown
panel LC main 30 A cover blank from shore by 10-2, 12 ft
//                 ^^^^^ attribute-unknown
circuit one from LC breaker 15 A by 14-2
  9 ft to j1: box gangs 2
    r1: receptacle clamps inside
//                 ^^^^^^ attribute-unknown
  9 ft to e1: end partition
//                ^^^^^^^^^ attribute-unknown
`);
	});
});
