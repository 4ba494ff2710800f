// Names: unique whatever their case, each sort for itself; a name that nothing has offers the nearest.
import { describe, expect, test } from "vitest";
import { readPlan, supply } from "./read-plan.ts";

describe("names used twice", () => {
	test("two things", () => {
		expect(readPlan("inlet shore 30 A\ninlet shore 30 A\n").told).toEqual(["2:shore name-twice"]);
	});

	test("upper and lower case do not tell names apart", () => {
		expect(readPlan("inlet shore 30 A\ninlet Shore 30 A\n").told).toEqual(["2:Shore name-twice"]);
	});

	test("composed and decomposed letters do not either", () => {
		expect(readPlan("inlet caf\u00e9 30 A\ninlet cafe\u0301 30 A\n").told).toEqual(["2:cafe\u0301 name-twice"]);
	});

	test("a device on a hop and a thing", () => {
		const { told } = readPlan(`${supply}circuit bunks from LC breaker 20 A by 12-2\n  14 ft to shore: receptacle\n`);
		expect(told).toEqual(["4:shore name-twice"]);
	});

	test("two places", () => {
		expect(readPlan("place porch outdoor\nplace Porch wet\n").told).toEqual(["2:Porch name-twice"]);
	});

	test("two runs", () => {
		const { told } = readPlan(`${supply}circuit one from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit one from LC breaker 20 A by 12-2
  14 ft to b2: receptacle
`);
		expect(told).toEqual(["5:one name-twice"]);
	});

	test("two `plan` lines", () => {
		expect(readPlan('plan "One"\nplan "Two"\n').told.map((line) => line.split(" ").at(-1))).toEqual(["name-twice"]);
	});

	test("a place, a run, a cable and a thing may share one", () => {
		const { told } = readPlan(`place bunks outdoor
${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft as bunks to bunks: receptacle in bunks
`);
		expect(told).toEqual([]);
	});

	test("the first one stays what it was", () => {
		const { plan } = readPlan("inlet shore 30 A\ninlet shore 50 A\n");
		expect(plan.things.map((thing) => thing.said.quantity("rating")?.value)).toEqual([30]);
	});
});

describe("names that nothing has", () => {
	test.each([
		[
			"where a supply comes from",
			"inlet shore 30 A\npanel LC main 30 A from shor by 10-2, 12 ft\n",
			"2:shor name-unknown",
		],
		[
			"where a run comes from",
			"inlet shore 30 A\nfeed one from shorre by 10-2\n  4 ft to j1: box\n",
			"2:shorre name-unknown",
		],
		["of an `at` block", `${supply}at LD\n  shore capped\n`, "3:LD name-unknown"],
	])("%s", (_, text, told) => {
		expect(readPlan(text).told).toContain(told);
	});

	test("offers the nearest", () => {
		const { findings } = readPlan("inlet shore 30 A\npanel LC main 30 A from shor by 10-2, 12 ft\n");
		expect(findings.map((finding) => finding.help).join("")).toContain("Did you mean `shore`?");
	});

	test("a hop to something new without its kind", () => {
		const { told } = readPlan(`${supply}circuit one from LC breaker 20 A by 12-2\n  14 ft to b1\n`);
		expect(told).toEqual(["4:b1 kind-missing"]);
	});

	test("a branch from something that is not there", () => {
		const { told } = readPlan(`${supply}circuit one from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
  from b9
    3 ft to b2: receptacle
`);
		expect(told).toEqual(["5:b9 name-unknown"]);
	});

	test("what hangs on a thing of no known kind is told once, at that thing", () => {
		expect(readPlan("galvanic-insulator iso 30 A\nfeed one from iso by 10-2\n  4 ft to j1: box\n").told).toEqual([
			"1:galvanic-insulator kind-unknown",
		]);
	});
});

describe("names that programs stumble over", () => {
	test.each(["__proto__", "constructor", "toString", "hasOwnProperty", "valueOf"])(
		"%s is a name like any other",
		(name) => {
			const { plan, told } = readPlan(`place ${name} outdoor
inlet shore 30 A 120 V in ${name}
panel LC main 30 A from shore by 10-2, 12 ft
circuit ${name} from LC breaker 20 A by 12-2
  14 ft as ${name} to ${name}: receptacle in ${name}
at ${name}
  ${name}.black on ${name}.hot
`);
			expect(told).toEqual([]);
			expect(plan.thingByName.get(name.toLowerCase())?.place?.name).toBe(name);
			expect(plan.runs.at(-1)?.hops.map((hop) => hop.tag)).toEqual([name]);
		},
	);

	test.each(["__proto__", "constructor", "toString"])("%s is no kind, setting, attribute or side by itself", (word) => {
		const { told } = readPlan(`plan "x"
  ${word} 1
${word} x 30 A
inlet shore 30 A ${word}
panel LC main 30 A from shore.${word} by 10-2, 12 ft
`);
		expect(told.map((line) => line.split(" ").at(-1)).toSorted()).toEqual([
			"attribute-unknown",
			"kind-unknown",
			"setting-unknown",
			"side-unknown",
		]);
	});
});

describe("names with dots", () => {
	test("lead to a slot, and into a thing", () => {
		const { plan, told } = readPlan(`${supply}inverter-charger inv 2000 W
feed one from LC.1 breaker 20 A by 12-2
  4 ft to inv.in
`);
		expect(told).toEqual([]);
		const hop = plan.runs.at(-1)?.hops[0];
		expect([hop?.from.thing, hop?.to.thing, hop?.to.side]).toEqual(["LC.1", "inv", "in"]);
	});

	test("a side the thing does not have", () => {
		const { told } = readPlan(`${supply}circuit one from LC breaker 20 A by 12-2
  4 ft to g1: gfci
  from g1.lode
    3 ft to b1: receptacle
`);
		expect(told).toEqual(["5:g1.lode side-unknown"]);
	});
});
